// Dates of a season from its swarms by day, and their odds over members.
#include <doctest/doctest.h>

#include <cmath>
#include <limits>

#include "outlook/outlook.hpp"

using namespace maybough;

namespace {
std::vector<int> season_with(std::initializer_list<std::pair<int, int>> swarms) {
    std::vector<int> on(365, 0);
    for (const auto& [day, count] : swarms) on[static_cast<std::size_t>(day)] = count;
    return on;
}
double at(const SeasonDates& dates, Milestone what) {
    return dates[static_cast<std::size_t>(what)];
}
constexpr double none = std::numeric_limits<double>::quiet_NaN();
}  // namespace

TEST_CASE("dates of a season of twenty swarms") {
    const SeasonDates dates =
        dates_of(season_with({{100, 1}, {110, 1}, {120, 6}, {122, 4}, {140, 6}, {160, 1}, {200, 1}}));
    CHECK(at(dates, Milestone::first) == 100);
    CHECK(at(dates, Milestone::first_tenth) == 110);
    CHECK(at(dates, Milestone::half) == 122);
    CHECK(at(dates, Milestone::peak) == 121);  // days 119..123 all have ten swarms within three days
    CHECK(at(dates, Milestone::nine_tenths) == 140);
    CHECK(at(dates, Milestone::last) == 200);
}

TEST_CASE("one swarm makes all dates, none makes none") {
    for (const double date : dates_of(season_with({{77, 1}}))) CHECK(date == 77);
    for (const double date : dates_of(season_with({}))) CHECK(std::isnan(date));
    // At the very edges the window is cut, not the date.
    CHECK(at(dates_of(season_with({{0, 3}})), Milestone::last) == 0);
    CHECK(at(dates_of(season_with({{364, 3}})), Milestone::first) == 364);
}

TEST_CASE("odds of a date over members") {
    std::vector<double> dates;
    std::vector<double> normal;
    for (int i = 1; i <= 20; ++i) {
        dates.push_back(100 + i);
        normal.push_back(105 + i);
    }
    const DateOdds odds = date_odds(dates, normal, {110}, 365);
    CHECK(odds.day_10.value == 102);
    CHECK(odds.day_50.value == 110);
    CHECK(odds.day_90.value == 118);
    CHECK(odds.odds_past == doctest::Approx(0.5));
    CHECK(odds.normal_day_50.value == 115);
    CHECK(odds.days_late.mean == doctest::Approx(-5));
    CHECK(odds.days_late.se == doctest::Approx(0));
    CHECK(odds.odds_later == doctest::Approx(0));
    REQUIRE(odds.by_day.size() == 365);
    CHECK(odds.by_day[100] == doctest::Approx(0));
    CHECK(odds.by_day[101] == doctest::Approx(0.05));
    CHECK(odds.by_day[120] == doctest::Approx(1));
    for (std::size_t day = 1; day < 365; ++day) CHECK(odds.by_day[day] >= odds.by_day[day - 1]);
}

TEST_CASE("members without a swarm are left out of dates and of the comparison") {
    const DateOdds odds =
        date_odds(std::vector<double>{none, 120, 130, 140}, std::vector<double>{100, none, 130, 150}, {125}, 365);
    CHECK(odds.day_50.value == 130);
    CHECK(odds.odds_past == doctest::Approx(1.0 / 3));
    CHECK(odds.days_late.n == 2);
    CHECK(odds.days_late.mean == doctest::Approx(-5));
    CHECK(odds.odds_later == doctest::Approx(0.25));
    const DateOdds empty = date_odds(std::vector<double>{none}, std::vector<double>{none}, {10}, 365);
    CHECK(empty.odds_past == 0);
    CHECK(empty.by_day.back() == 0);
}
