// Flight by temperature, and the temperature curve against real hours.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "series.hpp"
#include "weather/hours.hpp"

using namespace maybough;

namespace {
DayOfSky fair_day(double tmax_c) {
    const WeatherYear year{make_date(2026, 5, 20), std::vector<DayOfWeather>(3, {tmax_c, tmax_c - 9, 0, 2})};
    return sky_of(year, 45, WeatherParameters{}).days[1];
}
}  // namespace

// Source: Burrill and Dietz 1981, "The response of honey bees to variations in solar radiation and temperature": hardly
// any foraging below 12 C, a straight rise to 20 C. Activity at 20 C is at least four times that at 13 C.
TEST_CASE("no foraging below 12 C, and at 20 C at least four times that at 13 C") {
    CHECK(fair_day(10).foraging_h == 0);
    CHECK(fair_day(11.9).foraging_h == 0);
    const double at_13 = fair_day(13).foraging_h;
    const double at_20 = fair_day(20).foraging_h;
    CHECK(at_13 > 0);
    CHECK(at_20 > 4 * at_13);
    CHECK(fair_day(26).foraging_h > at_20);
}

// Source: Burgett and Morse 1974, "The time of natural swarming in honey bees" (from memory): most swarms leave between
// 10 and 14 h, the middle near noon within 1.5 h; extension texts: not below 15 C.
TEST_CASE("the hours fit for leaving centre on noon and most lie before 14 h") {
    const DayOfSky day = fair_day(26);
    double sum = 0;
    double mean = 0;
    double before_14 = 0;
    for (std::size_t hour = 0; hour < 24; ++hour) {
        const double fit = day.departure[hour];
        sum += fit;
        mean += fit * (static_cast<double>(hour) + 0.5);
        before_14 += hour < 14 ? fit : 0;
    }
    CHECK(std::abs(mean / sum - 12) < 1.5);
    CHECK(before_14 / sum > 0.7);
    for (const float fit : fair_day(14.5).departure) CHECK(fit == 0);
}

// Source: Parton and Logan 1981, "A model for diurnal variation in soil and air temperature", who report a mean
// absolute error of about 1.2 C at 1.5 m (from memory): the limit here, for the whole day and for the bias of the hours
// of flight. Truth: NOAA hourly normals of Seattle for a mean year (package python3-vega-datasets, degrees F, Pacific
// standard time: solar time is about nine minutes less). Seattle's sea air warms later than the curve: by day it is 0.7
// C too warm.
TEST_CASE("the temperature curve follows a year of real hours to within its published error") {
    // Rows are "2010/01/01 00:00,39.4"; one hour of March is not in the file and gets its neighbours' mean.
    const auto rows = test::csv_rows("seattle-temps.csv");
    REQUIRE(rows.size() == 8759);
    std::vector<std::array<double, 24>> hours(365);
    for (const test::CsvRow& row : rows) {
        std::string text = row.first.substr(0, 10);
        text[4] = text[7] = '-';
        const auto day =
            static_cast<std::size_t>((parse_date(text, "seattle-temps.csv") - make_date(2010, 1, 1)).count());
        hours.at(day).at(static_cast<std::size_t>(std::atoi(row.first.c_str() + 11))) = (row.rest[0] - 32) / 1.8;
    }
    hours[72][3] = (hours[72][2] + hours[72][4]) / 2;
    std::vector<DayOfWeather> days;
    for (const auto& day : hours) {
        const auto [lowest, highest] = std::minmax_element(day.begin(), day.end());
        days.push_back({*highest, *lowest, 0, 0});
    }
    double absolute = 0;
    double by_day = 0;
    double count = 0;
    const WeatherParameters defaults;
    for (std::size_t i = 1; i + 1 < days.size(); ++i) {
        const Date date = make_date(2010, 1, 1) + std::chrono::days{static_cast<int>(i)};
        const TemperatureCurve curve(days[i - 1], days[i], days[i + 1], sun_day(47.6, date), defaults);
        for (std::size_t hour = 0; hour < 24; ++hour) {
            const double error = curve.at(static_cast<double>(hour) - 0.15) - hours[i][hour];
            absolute += std::abs(error);
            by_day += hour >= 8 && hour < 18 ? error : 0;
            count += 1;
        }
    }
    CHECK(absolute / count < 1.2);
    CHECK(std::abs(by_day / (count * 10 / 24)) < 1.2);
}
