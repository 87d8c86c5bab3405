// Degree-days against the season totals of a real series; published tables are in experiments.
#include <doctest/doctest.h>

#include <array>
#include <cmath>

#include "series.hpp"

using namespace maybough;

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
