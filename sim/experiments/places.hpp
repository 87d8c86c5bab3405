// Private to experiments/: skies of places whose seasons were published, generated from their monthly normals.
#pragma once

#include "weather/weather.hpp"

namespace maybough::experiments {

/// A place by its latitude and climate normals.
struct Place {
    double latitude_deg = 45;
    MonthlyNormals normals;
};

/// Ithaca, New York: public climate normals 1981-2010, rounded, from memory.
inline Place ithaca() {
    MonthlyNormals n;
    n.tmax_c = {-0.6, 0.7, 5.5, 13.0, 19.8, 24.4, 27.0, 26.0, 21.8, 15.0, 8.3, 2.0};
    n.tmin_c = {-10.0, -9.6, -5.2, 0.8, 6.2, 11.5, 13.9, 13.0, 9.0, 3.3, -1.0, -6.4};
    n.rain_mm = {53, 50, 67, 82, 81, 100, 95, 92, 94, 90, 80, 63};
    n.wet_days = {10, 9, 10, 11, 11, 11, 10, 9, 9, 11, 11, 11};
    return {42.4, n};
}

/// Central New Jersey: public climate normals, rounded, from memory.
inline Place new_jersey() {
    MonthlyNormals n;
    n.tmax_c = {4.0, 5.6, 10.2, 16.8, 22.3, 27.2, 29.8, 28.8, 25.0, 18.8, 12.7, 6.6};
    n.tmin_c = {-5.8, -4.8, -0.9, 4.5, 9.9, 15.2, 18.0, 17.2, 13.0, 6.5, 1.8, -2.9};
    n.rain_mm = {88, 73, 105, 100, 105, 106, 122, 106, 100, 100, 92, 99};
    n.wet_days = {8, 7, 8, 9, 9, 9, 9, 8, 7, 7, 7, 8};
    return {40.4, n};
}

/// Eastern Kansas: public climate normals, rounded, from memory.
inline Place kansas() {
    MonthlyNormals n;
    n.tmax_c = {3.9, 6.9, 12.8, 18.9, 23.9, 29.0, 31.9, 31.3, 26.7, 20.2, 12.4, 5.3};
    n.tmin_c = {-6.6, -4.3, 1.0, 7.0, 12.8, 18.1, 20.8, 19.7, 14.3, 7.6, 1.0, -4.6};
    n.rain_mm = {27, 34, 63, 98, 128, 140, 105, 105, 95, 85, 55, 42};
    n.wet_days = {4, 5, 7, 9, 10, 9, 8, 7, 7, 6, 5, 5};
    return {39.0, n};
}

/// A generated year at the place, every day warmer by `warmer_c`.
inline SkyYear year_at(const Place& place, const WeatherParameters& parameters, const Chance& chance,
                       double warmer_c = 0) {
    const Climate climate = climate_from_normals(place.normals, parameters);
    WeatherYear year = generate_year(climate, make_date(2021, 1, 1), 365, chance);
    for (DayOfWeather& day : year.days) {
        day.tmax_c += warmer_c;
        day.tmin_c += warmer_c;
    }
    return sky_of(year, place.latitude_deg, parameters);
}

}  // namespace maybough::experiments
