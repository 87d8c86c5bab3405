// Analogue years: whole years only, all alike when nothing is known, likelier when more alike.
#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <map>

#include "climates.hpp"

using namespace maybough;

namespace {
const WeatherParameters defaults;
constexpr double missing = std::numeric_limits<double>::quiet_NaN();

/// Years 2001.. whose every day has the year's number for a maximum.
WeatherRecord numbered_record(int years) {
    WeatherRecord record{"numbered", make_date(2001, 1, 1), {}};
    for (int year = 2001; year < 2001 + years; ++year) {
        const int days = days_in_year_from(make_date(year, 1, 1));
        for (int i = 0; i < days; ++i) record.days.push_back({year - 2000.0, 0, 0, 2});
    }
    return record;
}
}  // namespace

TEST_CASE("with nothing known every complete year is drawn alike") {
    WeatherRecord record = numbered_record(10);
    record.days[365 * 4 + 100].tmin_c = missing;  // a day of 2005
    std::map<int, int> drawn;
    const int draws = 9000;
    for (std::uint32_t k = 0; k < draws; ++k) {
        const WeatherYear year = pick_year(record, make_date(2026, 1, 1), 365, defaults, Chance{1, k});
        REQUIRE(year.days.size() == 365);
        REQUIRE(year.days.front().tmax_c == year.days.back().tmax_c);
        ++drawn[static_cast<int>(year.days[0].tmax_c)];
    }
    CHECK(drawn.size() == 9);
    CHECK(drawn.count(5) == 0);
    // 9000 draws of 9 years: 1000 each, spread sqrt(1000 * 8/9) = 29.8; z = 4.4.
    for (const auto& [year, count] : drawn) CHECK(std::abs(count - 1000) < 4.4 * 29.8);
}

TEST_CASE("years most like this one to date are likelier, by 1/rank among the nearest sqrt(n)") {
    const WeatherRecord record = numbered_record(16);
    const WeatherYear so_far = test::steady_year(make_date(2026, 1, 1), 40, {7.2, 0, 0, 2});
    std::map<int, int> drawn;
    const int draws = 10000;
    for (std::uint32_t k = 0; k < draws; ++k) {
        const WeatherYear year = pick_year(record, so_far.first, 365, defaults, Chance{1, k}, &so_far);
        REQUIRE(year.days[39].tmax_c == 7.2);
        ++drawn[static_cast<int>(year.days[40].tmax_c)];
    }
    // Nearest of 16: years 7, 8, 6, 9 with weights 1, 1/2, 1/3, 1/4.
    CHECK(drawn.size() == 4);
    const double whole = 1 + 1.0 / 2 + 1.0 / 3 + 1.0 / 4;
    const std::map<int, double> expected{{7, 1 / whole}, {8, 0.5 / whole}, {6, 1 / whole / 3}, {9, 0.25 / whole}};
    for (const auto& [year, share] : expected) {
        CHECK(std::abs(drawn[year] - draws * share) < 4.4 * std::sqrt(draws * share * (1 - share)));
    }
}

TEST_CASE("a year of the record itself is not its own analogue") {
    const WeatherRecord record = numbered_record(6);
    const WeatherYear so_far = test::steady_year(make_date(2003, 1, 1), 60, {3, 0, 0, 2});
    for (std::uint32_t k = 0; k < 200; ++k) {
        const WeatherYear year = pick_year(record, so_far.first, 365, defaults, Chance{4, k}, &so_far);
        CHECK(year.days[200].tmax_c != 3);
    }
}

TEST_CASE("leap days and years that span New Year") {
    WeatherRecord record{"days", make_date(2001, 1, 1), {}};
    for (int i = 0; i < 365 * 3; ++i) record.days.push_back({static_cast<double>(i % 365), 0, 0, 2});  // 2001 to 2003
    // 2004 has a 29 February, none of the record's years does: its 28 February stands in, and March stays March.
    const WeatherYear leap = pick_year(record, make_date(2004, 1, 1), 366, defaults, Chance{1, 0});
    CHECK(leap.days[58].tmax_c == 58);
    CHECK(leap.days[59].tmax_c == 58);
    CHECK(leap.days[60].tmax_c == 59);
    CHECK(leap.days[365].tmax_c == 364);
    // A southern year: July to June, two such lie in the record.
    const WeatherYear south = pick_year(record, make_date(2010, 7, 1), 365, defaults, Chance{1, 0});
    CHECK(south.days[0].tmax_c == 181);
    CHECK(south.days[184].tmax_c == 0);
}

TEST_CASE("no complete year is the user's error; rain or wind that are not on record are none and the default") {
    WeatherRecord record = numbered_record(1);
    record.days.resize(300);
    CHECK_THROWS_AS(pick_year(record, make_date(2026, 1, 1), 365, defaults, Chance{1, 0}), InputError);
    WeatherRecord bare = numbered_record(2);
    for (DayOfWeather& day : bare.days) day.rain_mm = day.wind_ms = missing;
    const WeatherYear year = pick_year(bare, make_date(2026, 1, 1), 365, defaults, Chance{1, 0});
    CHECK(year.days[10].rain_mm == 0);
    CHECK(year.days[10].wind_ms == defaults.wind_ms);
}
