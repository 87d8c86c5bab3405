// Hours of a day: the temperature curve's joints and bounds, rain spells, light.
#include "weather/hours.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "climates.hpp"

using namespace maybough;

namespace {
const WeatherParameters defaults;
}

TEST_CASE("ramps are flat outside and straight between, rising or falling") {
    CHECK(ramp(11, 12, 20) == 0);
    CHECK(ramp(16, 12, 20) == 0.5);
    CHECK(ramp(21, 12, 20) == 1);
    CHECK(ramp(5, 8, 6) == 1);
    CHECK(ramp(7, 8, 6) == 0.5);
    CHECK(ramp(9, 8, 6) == 0);
}

TEST_CASE("the temperature curve meets both extremes and has no jumps") {
    const DayOfWeather yesterday{18, 7, 0, 2};
    const DayOfWeather today{24, 9, 0, 2};
    const DayOfWeather tomorrow{20, 12, 0, 2};
    for (const double latitude : {0.0, 47.0, 60.0, 75.0, -80.0}) {
        const SunDay sun = sun_day(latitude, make_date(2026, 5, 10));
        const TemperatureCurve curve(yesterday, today, tomorrow, sun, defaults);
        double lowest = 99;
        double highest = -99;
        double jump = 0;
        double last = curve.at(0);
        for (int minute = 1; minute <= 24 * 60; ++minute) {
            const double now = curve.at(minute / 60.0);
            lowest = std::min(lowest, now);
            highest = std::max(highest, now);
            jump = std::max(jump, std::abs(now - last));
            last = now;
        }
        CAPTURE(latitude);
        CHECK(lowest == doctest::Approx(9).epsilon(0.01));
        CHECK(highest == doctest::Approx(24).epsilon(0.001));
        CHECK(jump < 0.15);  // 9 degrees an hour: twice the steepest fall, far below a missed joint
    }
}

TEST_CASE("the night runs on into the next day's minimum") {
    const DayOfWeather first{18, 7, 0, 2};
    const DayOfWeather second{24, 9, 0, 2};
    const SunDay sun = sun_day(47, make_date(2026, 5, 10));
    const TemperatureCurve today(first, first, second, sun, defaults);
    const TemperatureCurve tomorrow(first, second, second, sun, defaults);
    CHECK(today.at(24) == doctest::Approx(tomorrow.at(0)).epsilon(1e-9));
    const double minimum_h = sun.sunrise_h + defaults.curve_minimum_h;
    CHECK(tomorrow.at(minimum_h) == doctest::Approx(9));
    CHECK(tomorrow.at(minimum_h - 1e-6) == doctest::Approx(9).epsilon(1e-4));
}

TEST_CASE("a day's rain falls in one spell that keeps the amount, and its hours spread evenly over dates") {
    std::array<double, 24> when{};
    const int days = 4000;
    for (int i = 0; i < days; ++i) {
        const RainSpell spell = rain_spell(5, make_date(2020, 1, 1) + std::chrono::days{i}, defaults);
        double hours = 0;
        for (int hour = 0; hour < 24; ++hour) {
            const double share = spell.share(hour);
            CHECK(share >= 0);
            CHECK(share <= 1);
            hours += share;
            when[static_cast<std::size_t>(hour)] += share / days;
        }
        CHECK(hours * spell.mm_h == doctest::Approx(5));
    }
    // Full hours inside the day all get the same share, within the evenness of the golden-ratio sequence.
    for (std::size_t hour = 6; hour < 18; ++hour) CHECK(when[hour] == doctest::Approx(when[12]).epsilon(0.01));
    CHECK(rain_spell(0, make_date(2020, 1, 1), defaults).share(12) == 0);
    CHECK(rain_spell(500, make_date(2020, 1, 1), defaults).share(0) == 1);
    const RainSpell light = rain_spell(2, make_date(2020, 1, 1), defaults);
    const RainSpell heavy = rain_spell(20, make_date(2020, 1, 1), defaults);
    CHECK(heavy.to_h - heavy.from_h > light.to_h - light.from_h);
    CHECK(heavy.mm_h > light.mm_h);
}

TEST_CASE("light grows with the range of temperature up to a clear sky") {
    const SunDay sun = sun_day(47, make_date(2026, 6, 1));
    CHECK(radiation_of({15, 15, 0, 0}, sun, defaults) == 0);
    const double dull = radiation_of({18, 14, 0, 0}, sun, defaults);
    CHECK(dull == doctest::Approx(0.17 * 2 * sun.extraterrestrial_mj_m2));
    CHECK(radiation_of({40, 0, 0, 0}, sun, defaults) == doctest::Approx(0.75 * sun.extraterrestrial_mj_m2));
}
