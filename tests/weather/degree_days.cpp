// Degree-days: limits of both methods.
#include <doctest/doctest.h>

#include "weather/weather.hpp"

using namespace maybough;

TEST_CASE("days wholly above or below the base are plain") {
    CHECK(degree_days_sine(12, 24, 10) == 8);
    CHECK(degree_days_sine(-5, 9.9, 10) == 0);
    CHECK(degree_days_sine(10, 10, 10) == 0);
    CHECK(degree_days_sine(31, 38, 10, 30) == doctest::Approx(20));
    CHECK(degree_days_average(12, 24, 10) == 8);
    CHECK(degree_days_average(-5, 15, 10) == 0);
}

TEST_CASE("degree-days never fall when either extreme rises") {
    for (double tmin = -10; tmin < 20; tmin += 0.5) {
        for (double tmax = tmin; tmax < 35; tmax += 0.5) {
            CHECK(degree_days_sine(tmin, tmax + 0.1, 10) >= degree_days_sine(tmin, tmax, 10));
            CHECK(degree_days_sine(tmin, tmax, 10) >= degree_days_average(tmin, tmax, 10) - 1e-12);
        }
    }
}
