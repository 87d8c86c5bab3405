// Degree-days against published tables and the season totals of a real series.
#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <numbers>

#include "series.hpp"

using namespace maybough;

// Source: R package degday 0.4.0, documentation: daily degree-days above 55 F, single sine method.
TEST_CASE("single sine above 55 F, the documented table of an R package") {
    const std::array<std::array<double, 3>, 6> table{{{38, 55, 0},
                                                      {36, 67, 3.3101298},
                                                      {33, 59, 0.6766645},
                                                      {37, 59, 0.7378844},
                                                      {38, 63, 1.9896042},
                                                      {36, 58, 0.4768866}}};
    for (const auto& [tmin_f, tmax_f, expected] : table) {
        CHECK(std::abs(degree_days_sine(tmin_f, tmax_f, 55) - expected) < 1e-7);
    }
}

// Source: R package TrenchR, documentation: single sine, lower 12 C, upper 33 C. Its fourth example (35 to 40 C gives
// 5) is not a horizontal cutoff, which gives 33 - 12 = 21, and is left out.
TEST_CASE("single sine between 12 and 33 C, documented examples of an R package") {
    CHECK(std::abs(degree_days_sine(7, 14, 12, 33) - 0.47) < 0.005);
    CHECK(std::abs(degree_days_sine(13, 40, 12, 33) - 12.94) < 0.005);
    CHECK(std::abs(degree_days_sine(7, 40, 12, 33) - 10.94) < 0.005);
}

// Source: Baskerville and Emin 1969, "Rapid estimation of heat accumulation from maximum and minimum temperatures",
// whose integral was evaluated with two million steps; a day of 1 degree amplitude about the base gives 1/pi exactly.
TEST_CASE("the closed form equals its integral") {
    CHECK(std::abs(degree_days_sine(9, 11, 10) - 1 / std::numbers::pi) < 1e-12);
    CHECK(std::abs(degree_days_sine(5, 20, 10) - 3.771224) < 1e-6);
    CHECK(std::abs(degree_days_sine(0, 30, 10, 30) - 7.542449) < 1e-6);
    CHECK(std::abs(degree_days_sine(15, 36, 10, 30) - 14.095824) < 1e-6);
    CHECK(std::abs(degree_days_sine(5, 35, 10, 30) - 10) < 1e-6);
}

// Source: NOAA daily series of Seattle (package python3-vega-datasets 0.9); totals computed for this test by an
// independent script in another language.
TEST_CASE("season totals of a real series by three methods, and the day it reaches 200") {
    const WeatherRecord record = test::seattle_record();
    struct Row {
        int year;
        double average;
        double sine;
        double capped;
        const char* day_200;
    };
    const std::array<Row, 4> table{{{2012, 1133.40, 1201.7022, 1198.0050, "2012-06-05"},
                                    {2013, 1369.25, 1436.2557, 1433.5033, "2013-05-19"},
                                    {2014, 1490.20, 1559.7431, 1555.3299, "2014-05-19"},
                                    {2015, 1541.05, 1616.1098, 1606.9363, "2015-05-12"}}};
    for (const Row& row : table) {
        CAPTURE(row.year);
        const WeatherYear year = test::year_of_record(record, row.year);
        const SkyYear sky = sky_of(year, 47.6, WeatherParameters{});
        double average = 0;
        double capped = 0;
        std::string day_200;
        for (std::size_t i = 0; i < year.days.size(); ++i) {
            const DayOfWeather& day = year.days[i];
            average += degree_days_average(day.tmin_c, day.tmax_c, 10);
            capped += degree_days_sine(day.tmin_c, day.tmax_c, 10, 30);
            if (day_200.empty() && sky.days[i].degree_days_sum_c >= 200) {
                day_200 = iso(year.first + std::chrono::days{static_cast<int>(i)});
            }
        }
        CHECK(std::abs(average - row.average) < 1e-6);
        CHECK(std::abs(capped - row.capped) < 1e-4);
        CHECK(std::abs(sky.days.back().degree_days_sum_c - row.sine) < 1e-4);
        CHECK(day_200 == row.day_200);
    }
}
