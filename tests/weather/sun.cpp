// Sun: limits at the poles, both hemispheres, and the two ways of asking.
#include <doctest/doctest.h>

#include <cmath>

#include "weather/weather.hpp"

using namespace maybough;

TEST_CASE("beyond the polar circle the sun stays up in summer and down in winter") {
    for (const double latitude : {70.0, 85.0, 90.0}) {
        const SunDay summer = sun_day(latitude, make_date(2026, 6, 21));
        CHECK(summer.sunrise_h == 0);
        CHECK(summer.sunset_h == 24);
        const SunDay winter = sun_day(latitude, make_date(2026, 12, 21));
        CHECK(winter.sunrise_h == 12);
        CHECK(winter.sunset_h == 12);
        CHECK(winter.extraterrestrial_mj_m2 == 0);
        CHECK(summer.extraterrestrial_mj_m2 > 38);
        // South of the equator the other way about.
        CHECK(sun_day(-latitude, make_date(2026, 12, 21)).sunset_h == 24);
        CHECK(sun_day(-latitude, make_date(2026, 6, 21)).sunset_h == 12);
    }
}

TEST_CASE("days lengthen from the winter solstice to the summer solstice and are even about noon") {
    for (int day = 1; day < 170; ++day) {
        const SunDay today = sun_day(45, make_date(2026, 1, 1) + std::chrono::days{day});
        const SunDay yesterday = sun_day(45, make_date(2026, 1, 1) + std::chrono::days{day - 1});
        CHECK(today.sunset_h - today.sunrise_h > yesterday.sunset_h - yesterday.sunrise_h);
        CHECK(today.sunrise_h + today.sunset_h == doctest::Approx(24).epsilon(1e-12));
    }
}

TEST_CASE("a day of year stands for the year midway between leap years") {
    const SunDay by_number = sun_day(50, 100);
    const SunDay by_date = sun_day(50, make_date(2026, 4, 10));
    CHECK(by_number.sunrise_h == by_date.sunrise_h);
    CHECK(by_number.extraterrestrial_mj_m2 == by_date.extraterrestrial_mj_m2);
    // Other years lie within the half day that the leap cycle moves the sun: about 2 minutes of day length here.
    for (const int year : {2023, 2024, 2025}) {
        const SunDay other = sun_day(50, make_date(year, 1, 1) + std::chrono::days{99});
        CHECK(std::abs(other.sunset_h - by_number.sunset_h) < 2.0 / 60);
    }
}
