// The whole forecast and hindcast on the demonstration area: same bits whatever the threads, odds that hang together.
#include <doctest/doctest.h>

#include <cmath>
#include <numeric>

#include "outlook/outlook.hpp"

using namespace maybough;

namespace {
const Scenario& area() {
    static const Scenario scenario = read_scenario(MAYBOUGH_SOURCE_DIR "/scenarios/brindle-ferry");
    return scenario;
}
Scenario without_traps() {
    Scenario scenario = area();
    scenario.placement.clear();
    return scenario;
}
ThisYear as_of(Date today) {
    return this_year(area().record, today, area().land.centre.latitude_deg, area().parameters.weather);
}
Effort effort(unsigned threads) {
    Effort effort;
    effort.threads = threads;
    return effort;
}
ForecastOptions members(std::uint32_t count) {
    ForecastOptions options;
    options.members = count;
    return options;
}
}  // namespace

TEST_CASE("without traps the same swarms hang in the area, though fewer colonies are simulated") {
    for (std::uint32_t k = 0; k < 8; ++k) {
        const Chance chance{1, k};
        const Parameters parameters = draw_beliefs(area(), 1, k);
        const WeatherYear weather = generate_year(area().climate, area().first_day(), area().days(), chance);
        const MemberSeason narrow = member_season(area(), parameters, weather, {}, chance);
        const MemberSeason whole = member_season(area(), parameters, weather, area().placement, chance);
        CHECK(narrow.swarms_on == whole.swarms_on);
        CHECK(narrow.catches_on.empty());
        CHECK(whole.catches_on.size() == whole.swarms_on.size());
    }
}

TEST_CASE("a forecast is the same for any number of threads, and its odds hang together") {
    const ThisYear weather = as_of(make_date(2025, 5, 20));
    const Forecast one = make_forecast(without_traps(), weather, effort(1), members(24));
    const Forecast five = make_forecast(without_traps(), weather, effort(5), members(24));
    CHECK(one.swarms.mean == five.swarms.mean);
    CHECK(one.odds_over == five.odds_over);
    CHECK(one.swarms.mean > 1);
    REQUIRE(one.weeks.size() == five.weeks.size());
    double weekly = 0;
    for (std::size_t w = 0; w < one.weeks.size(); ++w) {
        CHECK(one.weeks[w].swarms.mean == five.weeks[w].swarms.mean);
        weekly += one.weeks[w].swarms.mean;
    }
    CHECK(weekly == doctest::Approx(one.swarms.mean).epsilon(1e-12));
    for (std::size_t what = 0; what < milestone_kinds; ++what) {
        CHECK(one.dates[what].by_day == five.dates[what].by_day);
        CHECK(one.dates[what].day_10 <= one.dates[what].day_50);
        CHECK(one.dates[what].day_50 <= one.dates[what].day_90);
    }
    REQUIRE(one.next.size() == next_days);
    CHECK(one.next.front().date == make_date(2025, 5, 21));
    for (const DayOdds& day : one.next) CHECK(day.odds_swarm <= day.odds_fit);
    for (std::size_t i = 1; i < one.agenda.size(); ++i) CHECK(one.agenda[i - 1].date <= one.agenda[i].date);
}

TEST_CASE("at the end of the year the season is over and nothing is left to chance of weather") {
    const Forecast late = make_forecast(without_traps(), as_of(make_date(2025, 12, 30)), effort(2), members(8));
    CHECK(late.odds_over == 1);
    CHECK(late.to_come.mean == 0);
    CHECK(late.next.size() == 1);  // the year's last day
}

TEST_CASE("a warm typed outlook brings more fit days than a cold one") {
    const auto with = [](double tmax_c, double rain_mm) {
        WeatherRecord outlook{"typed", make_date(2025, 5, 21), {}};
        for (int i = 0; i < 10; ++i) outlook.days.push_back({tmax_c, tmax_c - 11, rain_mm, 2});
        const ThisYear weather = this_year(area().record, make_date(2025, 5, 20), area().land.centre.latitude_deg,
                                           area().parameters.weather, &outlook);
        return make_forecast(without_traps(), weather, effort(2), members(16));
    };
    const Forecast warm = with(25, 0);
    const Forecast cold = with(9, 12);
    for (std::size_t day = 0; day < next_days; ++day) {
        CHECK(warm.next[day].typed);
        CHECK(warm.next[day].odds_fit == 1);
        CHECK(cold.next[day].odds_fit == 0);
        CHECK(cold.next[day].odds_swarm == 0);
    }
}

TEST_CASE("a forecast of the scenario for another year moves it there; analogue years serve too") {
    ForecastOptions options = members(4);
    options.continuation = Continuation::analogue;
    const Forecast forecast = make_forecast(without_traps(), as_of(make_date(2020, 2, 29)), effort(2), options);
    CHECK(forecast.first_day == make_date(2020, 1, 1));
    CHECK(forecast.days == 366);
    CHECK(forecast.weather.known.days.size() == 60);
}

TEST_CASE("a hindcast scores every fortnight and never lets truths share the members' land") {
    HindcastOptions options;
    options.members = 8;
    options.truths = 3;
    options.years = 3;
    options.issues = 3;
    const ObservedFirsts observed{
        {2024, make_date(2024, 5, 2)}, {2025, make_date(2025, 5, 9)}, {1990, make_date(1990, 5, 1)}};
    const Hindcast hindcast = make_hindcast(area(), area().record, observed, effort(2), options);
    CHECK(hindcast.years == std::vector<int>{2023, 2024, 2025});
    CHECK(hindcast.left_out);
    CHECK(hindcast.first_issue == make_date(2025, 3, 1));
    REQUIRE(hindcast.scores.size() == 6);
    for (const HindcastScore& score : hindcast.scores) {
        CHECK(score.truths + hindcast.truths_without_swarms >= 9);
        CHECK(score.crps_days > 0);
        CHECK(std::accumulate(score.ranks.begin(), score.ranks.end(), 0.0) == doctest::Approx(1));
        CHECK(score.skill == doctest::Approx(1 - score.crps_days / score.crps_normal_days));
    }
    REQUIRE(hindcast.observed.size() == 3);
    for (const ObservedScore& score : hindcast.observed) CHECK(score.years == 2);
    CHECK(hindcast.notes.size() == 1);

    const Hindcast again = make_hindcast(area(), area().record, observed, effort(1), options);
    for (std::size_t i = 0; i < hindcast.scores.size(); ++i) {
        CHECK(hindcast.scores[i].crps_days == again.scores[i].crps_days);
    }
    CHECK_THROWS_AS(make_hindcast(area(), {"short", make_date(2025, 1, 1), {}}, {}, effort(1), options), InputError);
}
