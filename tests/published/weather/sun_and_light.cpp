// The sun's course against an ephemeris; worked examples of the handbook are in experiments.
#include <doctest/doctest.h>

#include <cmath>

#include "weather/weather.hpp"

using namespace maybough;

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
