// This year's weather to date: ends mid-day, gaps, leap day, over New Year, southern hemisphere, typed outlook.
#include <doctest/doctest.h>

#include <cmath>
#include <limits>

#include "outlook/outlook.hpp"

using namespace maybough;

namespace {
constexpr double missing = std::numeric_limits<double>::quiet_NaN();
constexpr double north = 50;
constexpr double south = -35;

/// Days from `first` to `last` whose temperatures tell the date apart.
WeatherRecord record_of(Date first, Date last) {
    WeatherRecord record{"made up", first, {}};
    for (Date date = first; date <= last; date += std::chrono::days{1}) {
        const double wave = 3 * std::sin(0.7 * static_cast<double>(date.time_since_epoch().count()));
        record.days.push_back({15 + wave, 5 + wave, 0.5 + wave > 3 ? 2.0 : 0.0, 3 + wave / 4});
    }
    return record;
}
DayOfWeather& on(WeatherRecord& record, Date date) {
    return record.days[static_cast<std::size_t>((date - record.first).count())];
}
bool whole(const DayOfWeather& day) {
    return !std::isnan(day.tmax_c) && !std::isnan(day.tmin_c);
}

Scenario plain_scenario(double latitude_deg) {
    Scenario scenario;
    scenario.land.centre = {latitude_deg, 0};
    MonthlyNormals normals;
    normals.tmax_c = {6, 7, 11, 15, 19, 22, 25, 24, 20, 15, 10, 7};
    normals.tmin_c = {0, 0, 2, 5, 9, 12, 14, 14, 11, 7, 3, 1};
    normals.rain_mm = {60, 50, 55, 50, 60, 60, 65, 60, 55, 65, 65, 65};
    normals.wet_days = {12, 10, 11, 10, 11, 10, 10, 9, 9, 11, 12, 12};
    scenario.climate = climate_from_normals(normals, scenario.parameters.weather);
    return scenario;
}
}  // namespace

TEST_CASE("days of the simulated year up to today, and none after it") {
    const WeatherRecord record = record_of(make_date(2024, 3, 1), make_date(2026, 6, 30));
    const ThisYear year = this_year(record, make_date(2026, 4, 20), north, {});
    CHECK(year.known.first == make_date(2026, 1, 1));
    CHECK(year.known.days.size() == 110);
    CHECK(year.known_until == make_date(2026, 4, 20));
    CHECK(year.recorded_days == 110);
    CHECK(year.missing_days == 0);
    CHECK(year.notes.empty());

    WeatherRecord shorter = record;
    shorter.days.resize(static_cast<std::size_t>((make_date(2026, 4, 20) - shorter.first).count()) + 1);
    const ThisYear same = this_year(shorter, make_date(2026, 4, 20), north, {});
    for (std::size_t i = 0; i < 110; ++i) CHECK(same.known.days[i].tmax_c == year.known.days[i].tmax_c);
}

TEST_CASE("a record that ends mid-day: the day without its maximum is not known yet") {
    WeatherRecord record = record_of(make_date(2026, 1, 1), make_date(2026, 4, 20));
    record.days.back().tmax_c = missing;
    const ThisYear year = this_year(record, make_date(2026, 4, 20), north, {});
    CHECK(year.known_until == make_date(2026, 4, 19));
    CHECK(year.missing_days == 1);
    REQUIRE(year.notes.size() == 1);
    CHECK(year.notes[0].find("1 day before") != std::string::npos);
}

TEST_CASE("short gaps are filled, long ones left to the generator and told") {
    WeatherRecord record = record_of(make_date(2026, 1, 1), make_date(2026, 4, 20));
    on(record, make_date(2026, 2, 10)) = {missing, missing, missing, missing};
    for (int day = 1; day <= 9; ++day) on(record, make_date(2026, 3, day)) = {missing, missing, missing, missing};
    const ThisYear year = this_year(record, make_date(2026, 4, 20), north, {});
    CHECK(whole(year.known.days[40]));
    CHECK(year.quality.filled_days == 1);
    CHECK(year.missing_days == 9);
    REQUIRE(year.notes.size() == 1);
    CHECK(year.notes[0].find("9 days") != std::string::npos);

    const WeatherYear member = member_weather(plain_scenario(north), year, Continuation::generated, {3, 5});
    REQUIRE(member.days.size() == 365);
    for (const DayOfWeather& day : member.days) CHECK(whole(day));
    CHECK(member.days[40].tmax_c == year.known.days[40].tmax_c);
    const WeatherYear other = member_weather(plain_scenario(north), year, Continuation::generated, {3, 6});
    CHECK(other.days[62].tmax_c != member.days[62].tmax_c);
    CHECK(other.days[80].tmax_c == member.days[80].tmax_c);
}

TEST_CASE("a record that begins late in the year has its first days made") {
    const WeatherRecord record = record_of(make_date(2026, 2, 1), make_date(2026, 4, 20));
    const ThisYear year = this_year(record, make_date(2026, 4, 20), north, {});
    CHECK(year.known.first == make_date(2026, 1, 1));
    CHECK(year.missing_days == 31);
    const WeatherYear member = member_weather(plain_scenario(north), year, Continuation::generated, {3, 5});
    for (const DayOfWeather& day : member.days) CHECK(whole(day));
    CHECK(member.days[31].tmax_c == record.days[0].tmax_c);
}

TEST_CASE("leap years, with today on the leap day") {
    const WeatherRecord record = record_of(make_date(2027, 12, 1), make_date(2028, 12, 31));
    const ThisYear year = this_year(record, make_date(2028, 2, 29), north, {});
    CHECK(year.known.days.size() == 60);
    const WeatherYear member = member_weather(plain_scenario(north), year, Continuation::generated, {3, 5});
    CHECK(member.days.size() == 366);
}

TEST_CASE("south of the equator the year begins in July and goes on over New Year") {
    const WeatherRecord record = record_of(make_date(2024, 1, 1), make_date(2026, 3, 31));
    const ThisYear year = this_year(record, make_date(2026, 1, 10), south, {});
    CHECK(year.known.first == make_date(2025, 7, 1));
    CHECK(year.known.days.size() == 194);
    CHECK(year.known_until == make_date(2026, 1, 10));
    Scenario scenario = plain_scenario(south);
    CHECK(scenario_of_year(scenario, make_date(2026, 1, 10)).first_day() == make_date(2025, 7, 1));
    CHECK(scenario_of_year(scenario, make_date(2026, 7, 1)).first_day() == make_date(2026, 7, 1));
    CHECK(member_weather(scenario, year, Continuation::generated, {3, 5}).days.size() == 365);
}

TEST_CASE("a record of other years is refused in words") {
    const WeatherRecord record = record_of(make_date(2024, 1, 1), make_date(2025, 12, 31));
    CHECK_THROWS_WITH_AS(this_year(record, make_date(2026, 4, 20), north, {}),
                         "made up: knows nothing of this year: it runs from 2024-01-01 to 2025-12-31, expected days "
                         "from 2026-01-01 to 2026-04-20; give this year's record, or another day with --today",
                         InputError);
    CHECK_THROWS_AS(this_year({"empty", {}, {}}, make_date(2026, 4, 20), north, {}), InputError);
}

TEST_CASE("a typed outlook takes the place of the next days for every member") {
    const WeatherRecord record = record_of(make_date(2026, 1, 1), make_date(2026, 4, 20));
    WeatherRecord outlook{"typed", make_date(2026, 4, 19), {}};
    for (int i = 0; i < 30; ++i) outlook.days.push_back({30.0 + i, 15, missing, missing});
    const ThisYear year = this_year(record, make_date(2026, 4, 20), north, {}, &outlook);
    CHECK(year.typed_days == longest_outlook_days);
    CHECK(year.known_until == make_date(2026, 4, 20));
    CHECK(year.missing_days == 0);
    REQUIRE(year.notes.size() == 1);  // of the days before and those too far ahead
    CHECK(year.notes[0].find("14 days") != std::string::npos);
    const WeatherYear a = member_weather(plain_scenario(north), year, Continuation::generated, {3, 5});
    const WeatherYear b = member_weather(plain_scenario(north), year, Continuation::generated, {3, 6});
    CHECK(a.days[109].tmax_c == record.days.back().tmax_c);
    CHECK(a.days[110].tmax_c == 32);
    CHECK(a.days[125].tmax_c == b.days[125].tmax_c);
    CHECK(a.days[126].tmax_c != b.days[126].tmax_c);
    for (const DayOfWeather& day : a.days) CHECK_FALSE(std::isnan(day.rain_mm));

    outlook.first = make_date(2026, 3, 1);
    CHECK_THROWS_AS(this_year(record, make_date(2026, 4, 20), north, {}, &outlook), InputError);
}

TEST_CASE("tomorrow's update keeps the luck of the days still to come") {
    // The same member from records a day apart: wet and dry days far ahead are drawn with the same numbers. Where the
    // next day turned out as drawn, nothing changes at all.
    const Scenario scenario = plain_scenario(north);
    WeatherRecord record = record_of(make_date(2026, 1, 1), make_date(2026, 4, 20));
    const ThisYear today = this_year(record, make_date(2026, 4, 20), north, {});
    const WeatherYear before = member_weather(scenario, today, Continuation::generated, {3, 5});
    record.days.push_back(before.days[110]);
    const ThisYear tomorrow = this_year(record, make_date(2026, 4, 21), north, {});
    const WeatherYear after = member_weather(scenario, tomorrow, Continuation::generated, {3, 5});
    int alike = 0;
    double apart = 0;
    for (std::size_t day = 112; day < 365; ++day) {
        alike += (before.days[day].rain_mm > 0) == (after.days[day].rain_mm > 0) ? 1 : 0;
        apart = std::max(apart, std::abs(before.days[day].tmax_c - after.days[day].tmax_c));
    }
    CHECK(alike == 253);
    CHECK(apart < 0.3);  // a day more moves what is learnt of this year's offset by little
    const WeatherYear stranger = member_weather(scenario, tomorrow, Continuation::generated, {3, 6});
    CHECK(std::abs(stranger.days[150].tmax_c - after.days[150].tmax_c) > 0.3);
}
