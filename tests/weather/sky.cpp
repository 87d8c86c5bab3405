// Sky: when bees forage, scouts fly and swarms leave, and what stops them; sums, hemispheres, odd inputs.
#include <doctest/doctest.h>

#include <cmath>

#include "climates.hpp"

using namespace maybough;
using test::steady_year;
using test::sum_of;

namespace {
const WeatherParameters defaults;
const Date may = make_date(2026, 5, 1);

DayOfSky day_under(DayOfWeather weather, double latitude_deg = 45, Date date = may) {
    return sky_of(steady_year(date, 3, weather), latitude_deg, defaults).days[1];
}
}  // namespace

TEST_CASE("nothing flies in the cold, in a gale, or in an all-day rain") {
    for (const DayOfWeather& weather : {DayOfWeather{11, 3, 0, 2}, DayOfWeather{24, 12, 0, 16}}) {
        const DayOfSky day = day_under(weather);
        CHECK(day.foraging_h == 0);
        CHECK(sum_of(day.scouting) == 0);
        CHECK(sum_of(day.departure) == 0);
    }
    const DayOfSky flood = day_under({24, 12, 100, 2});
    CHECK(sum_of(flood.scouting) == 0);
    CHECK(sum_of(flood.departure) == 0);
    const DayOfSky fine = day_under({24, 12, 0, 2});
    CHECK(fine.foraging_h > 8);
    CHECK(fine.foraging_h < fine.daylight_h());
    CHECK(sum_of(fine.scouting) > 10);
    CHECK(sum_of(fine.departure) > 3);
}

TEST_CASE("a shower takes some hours, a wet day more, and never all of a warm day's") {
    const double dry = sum_of(day_under({22, 12, 0, 2}).scouting);
    double shower = 0;
    double wet = 0;
    const int days = 60;
    const SkyYear showers = sky_of(steady_year(may, days, {22, 12, 2, 2}), 45, defaults);
    const SkyYear rains = sky_of(steady_year(may, days, {22, 12, 15, 2}), 45, defaults);
    for (int day = 0; day < days; ++day) {
        shower += sum_of(showers[Day{day}].scouting) / days;
        wet += sum_of(rains[Day{day}].scouting) / days;
    }
    CHECK(shower < dry);
    CHECK(wet < shower);
    CHECK(wet > 0.3 * dry);
}

TEST_CASE("swarms leave only between ten and sixteen hours solar time, most about noon") {
    const DayOfSky day = day_under({26, 14, 0, 1});
    for (std::size_t hour = 0; hour < 24; ++hour) {
        CAPTURE(hour);
        CHECK((day.departure[hour] > 0) == (hour >= 10 && hour < 16));
        CHECK(day.departure[hour] <= 1);
        CHECK(day.departure[hour] <= std::max(day.departure[11], day.departure[12]));
    }
    // Warm, dry and dull: scouts fly, swarms wait.
    const DayOfSky dull = day_under({20, 18, 0, 1});
    CHECK(sum_of(dull.departure) == 0);
    CHECK(sum_of(dull.scouting) > 8);
    // Sunny but no more than 14 degrees: some scouts, no swarm.
    const DayOfSky cool = day_under({14.5, 4, 0, 1});
    CHECK(sum_of(cool.departure) == 0);
    CHECK(sum_of(cool.scouting) > 0);
}

TEST_CASE("hours lie within the day's light at every latitude and season") {
    for (const double latitude : {-85.0, -66.0, -34.0, 0.0, 47.0, 60.0, 69.0, 89.9}) {
        const SkyYear sky = sky_of(steady_year(make_date(2024, 1, 1), 366, {30, 22, 0, 1}), latitude, defaults);
        for (const DayOfSky& day : sky.days) {
            double scouting = 0;
            for (std::size_t hour = 0; hour < 24; ++hour) {
                REQUIRE(day.scouting[hour] >= 0);
                REQUIRE(day.scouting[hour] <= 1);
                REQUIRE(day.departure[hour] >= 0);
                REQUIRE(day.departure[hour] <= 1);
                const bool dark =
                    static_cast<double>(hour) >= day.sunset_h || static_cast<double>(hour) + 1 <= day.sunrise_h;
                if (dark) REQUIRE(day.scouting[hour] == 0);
                scouting += static_cast<double>(day.scouting[hour]);
            }
            REQUIRE(scouting == doctest::Approx(day.daylight_h()).epsilon(1e-5));
            REQUIRE(day.foraging_h >= 0);
            REQUIRE(day.foraging_h <= day.daylight_h());
            REQUIRE(std::isfinite(day.radiation_mj_m2));
        }
    }
}

TEST_CASE("degree-days add up from the first day, and hours do not hang on what came long before") {
    const WeatherYear year = generate_year(test::cool_climate(), make_date(2026, 1, 1), 365, Chance{7, 0});
    const SkyYear sky = sky_of(year, 42, defaults);
    double sum = 0;
    for (const DayOfSky& day : sky.days) {
        sum += degree_days_sine(day.weather.tmin_c, day.weather.tmax_c, 10);
        CHECK(day.degree_days_sum_c == doctest::Approx(sum));
    }
    const WeatherYear tail{year.first + std::chrono::days{100}, {year.days.begin() + 100, year.days.end()}};
    const SkyYear later = sky_of(tail, 42, defaults);
    CHECK(later.days[20].foraging_h == sky.days[120].foraging_h);
    CHECK(later.days[20].departure == sky.days[120].departure);
}

TEST_CASE("a southern place with its seasons half a year on lives the same year") {
    // 1 July to 30 June is the southern year; half the orbit is not quite half the days, so hours differ a little.
    const Climate north = climate_from_normals(test::cool_normals(), defaults);
    const Climate south = climate_from_normals(test::southern(test::cool_normals()), defaults);
    double north_hours = 0;
    double south_hours = 0;
    for (std::uint32_t k = 0; k < 40; ++k) {
        const SkyYear here = sky_of(generate_year(north, make_date(2025, 1, 1), 365, Chance{3, k}), 42, defaults);
        const SkyYear there = sky_of(generate_year(south, make_date(2025, 7, 1), 365, Chance{3, k}), -42, defaults);
        for (const DayOfSky& day : here.days) north_hours += day.foraging_h / 40;
        for (const DayOfSky& day : there.days) south_hours += day.foraging_h / 40;
    }
    // Same keys, same luck: what differs is the shift of seasons by a few days and the sun's distance.
    CHECK(south_hours == doctest::Approx(north_hours).epsilon(0.03));
}

TEST_CASE("an empty year and a single day are no trouble") {
    CHECK(sky_of({may, {}}, 45, defaults).days.empty());
    CHECK(sky_of(steady_year(may, 1, {20, 10, 0, 2}), 45, defaults).days[0].foraging_h > 0);
}
