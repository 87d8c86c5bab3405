// Sun and light against the handbook's worked examples and a table of day lengths.
#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <numbers>

#include "weather/hours.hpp"

using namespace maybough;

// Source: Allen, Pereira, Raes and Smith 1998, "Crop evapotranspiration", FAO Irrigation and Drainage Paper 56.
TEST_CASE("FAO-56 example 8: radiation at the top of the atmosphere, 20 S on 3 September, 32.2 MJ m-2 d-1") {
    CHECK(sun_day(-20, 246).extraterrestrial_mj_m2 == doctest::Approx(32.2).epsilon(0.05 / 32.2));
}

TEST_CASE("FAO-56 example 9: daylight at 20 S on 3 September, 11.7 h (sunset angle 1.527 rad)") {
    const SunDay day = sun_day(-20, 246);
    CHECK(std::abs(day.sunset_angle_rad - 1.527) < 0.001);
    CHECK(std::abs(24 / std::numbers::pi * day.sunset_angle_rad - 11.7) < 0.05);
    // Refraction and the sun's upper limb add 0.833 degrees of sun path at each end, about 7 minutes a day.
    CHECK(day.sunset_h - day.sunrise_h - 24 / std::numbers::pi * day.sunset_angle_rad ==
          doctest::Approx(0.118).epsilon(0.15));
}

// From memory of the handbook's annex 2, table 2.6 (daily Ra on the 15th of the month) to its rounding, 0.1.
TEST_CASE("FAO-56 annex table 2.6: radiation at the top of the atmosphere at the equator, March and June") {
    CHECK(std::abs(sun_day(0, 74).extraterrestrial_mj_m2 - 37.9) < 0.15);
    CHECK(std::abs(sun_day(0, 166).extraterrestrial_mj_m2 - 33.4) < 0.15);
}

TEST_CASE("FAO-56 example 15: light from the range of temperature, Lyon in July, 22.3 MJ m-2 d-1") {
    // 45 deg 43' N, 15 July, mean extremes 26.6 and 14.8 C, inland coefficient 0.16: Ra 40.6 (40.55), Rs 22.3.
    WeatherParameters inland;
    inland.radiation_coefficient = 0.16;
    const SunDay sun = sun_day(45.0 + 43.0 / 60, 196);
    CHECK(std::abs(sun.extraterrestrial_mj_m2 - 40.6) < 0.1);
    CHECK(std::abs(radiation_of({26.6, 14.8, 0, 0}, sun, inland) - 22.3) < 0.1);
}

// Source: Meeus 1998, "Astronomical Algorithms", example 25.a: apparent declination -7.78507 degrees on 1992 October 13
// at 0 h. Our days are taken at noon; the mean of the noons on either side stands for midnight to 0.0005 degrees.
TEST_CASE("Meeus example 25.a: declination on 1992 October 13") {
    const double before = sun_day(0, make_date(1992, 10, 12)).declination_rad;
    const double after = sun_day(0, make_date(1992, 10, 13)).declination_rad;
    CHECK(std::abs((before + after) / 2 * 180 / std::numbers::pi + 7.78507) < 0.001);
}

// Source: PyEphem 4.1.4 (horizon -0:34, pressure 0, upper limb, sea level, longitude 0), computed for this test.
// Tolerance: one minute.
TEST_CASE("day lengths of 2024 from 45 S to 66 N agree with an ephemeris to a minute") {
    struct Row {
        double latitude_deg;
        std::array<int, 4> seconds;
    };
    const auto hms = [](int h, int m, int s) { return 3600 * h + 60 * m + s; };
    const std::array<Row, 8> table{{
        {-45, {hms(12, 8, 4), hms(8, 45, 48), hms(12, 9, 6), hms(15, 37, 21)}},
        {-33.9, {hms(12, 7, 4), hms(9, 53, 39), hms(12, 7, 45), hms(14, 25, 0)}},
        {0, {hms(12, 6, 30), hms(12, 7, 19), hms(12, 6, 28), hms(12, 7, 32)}},
        {20, {hms(12, 7, 22), hms(13, 20, 32), hms(12, 6, 56), hms(10, 55, 26)}},
        {35, {hms(12, 8, 48), hms(14, 30, 46), hms(12, 8, 0), hms(9, 48, 8)}},
        {47.6, {hms(12, 11, 1), hms(15, 59, 8), hms(12, 9, 47), hms(8, 25, 36)}},
        {60, {hms(12, 15, 13), hms(18, 51, 57), hms(12, 13, 18), hms(5, 52, 16)}},
        {66, {hms(12, 18, 53), hms(24, 0, 0), hms(12, 16, 24), hms(2, 46, 39)}},
    }};
    const std::array<Date, 4> dates{make_date(2024, 3, 20), make_date(2024, 6, 20), make_date(2024, 9, 22),
                                    make_date(2024, 12, 21)};
    for (const Row& row : table) {
        for (std::size_t i = 0; i < dates.size(); ++i) {
            CAPTURE(row.latitude_deg);
            CAPTURE(iso(dates[i]));
            const SunDay day = sun_day(row.latitude_deg, dates[i]);
            CHECK(std::abs((day.sunset_h - day.sunrise_h) * 3600 - row.seconds[i]) < 60);
        }
    }
}

// Source: PyEphem 4.1.4: equinoxes of 2024 on 03-20 03:06 and 09-22 12:44, solstices on 06-20 20:51 and 12-21 09:20
// UTC.
TEST_CASE("the sun turns and crosses the equator on the ephemeris's days of 2024") {
    const auto declination = [](int month, int day) { return sun_day(0, make_date(2024, month, day)).declination_rad; };
    CHECK(declination(3, 19) < 0);
    CHECK(declination(3, 20) > 0);
    CHECK(declination(9, 21) > 0);
    CHECK(std::abs(declination(9, 22)) < 0.0005);
    CHECK(declination(9, 23) < 0);
    CHECK(declination(6, 20) > declination(6, 19));
    CHECK(declination(6, 21) > declination(6, 22));
    CHECK(declination(12, 21) < declination(12, 20));
    CHECK(declination(12, 21) < declination(12, 22));
}
