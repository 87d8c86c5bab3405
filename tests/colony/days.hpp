// Made days for tests of colonies: fair and foul, without a weather station.
#pragma once

#include "weather/weather.hpp"

namespace maybough_test {

/// A day of early summer in full bloom; `fit` is how fit the noon hours are for a swarm to leave.
inline maybough::DayOfSky fair_day(double fit = 1, double daylight_h = 15) {
    maybough::DayOfSky sky;
    sky.weather = {24, 14, 0, 2};
    sky.sunrise_h = 12 - daylight_h / 2;
    sky.sunset_h = 12 + daylight_h / 2;
    sky.foraging_h = 8;
    sky.bloom = {0.F, 1.F, 1.F, 0.F, 0.F};
    for (std::size_t hour = 10; hour < 15; ++hour) sky.departure[hour] = static_cast<float>(fit);
    return sky;
}

/// A day on which no bee flies.
inline maybough::DayOfSky foul_day(double daylight_h = 15) {
    maybough::DayOfSky sky = fair_day(0, daylight_h);
    sky.weather = {13, 9, 15, 6};
    sky.foraging_h = 0;
    return sky;
}

/// A winter day without flowers.
inline maybough::DayOfSky winter_day() {
    maybough::DayOfSky sky = foul_day(9.5);
    sky.weather = {0, -8, 0, 3};
    sky.bloom = {};
    return sky;
}

}  // namespace maybough_test
