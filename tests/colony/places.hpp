// Skies for tests of colonies: generated years from monthly normals of two climates.
#pragma once

#include "weather/weather.hpp"

namespace maybough_test {

inline constexpr double ithaca_latitude_deg = 42.4;
inline constexpr double new_jersey_latitude_deg = 40.4;

/// Ithaca, New York: public climate normals 1981-2010, rounded, from memory.
inline maybough::MonthlyNormals ithaca_normals() {
    maybough::MonthlyNormals n;
    n.tmax_c = {-0.6, 0.7, 5.5, 13.0, 19.8, 24.4, 27.0, 26.0, 21.8, 15.0, 8.3, 2.0};
    n.tmin_c = {-10.0, -9.6, -5.2, 0.8, 6.2, 11.5, 13.9, 13.0, 9.0, 3.3, -1.0, -6.4};
    n.rain_mm = {53, 50, 67, 82, 81, 100, 95, 92, 94, 90, 80, 63};
    n.wet_days = {10, 9, 10, 11, 11, 11, 10, 9, 9, 11, 11, 11};
    return n;
}

/// Central New Jersey: public climate normals, rounded, from memory.
inline maybough::MonthlyNormals new_jersey_normals() {
    maybough::MonthlyNormals n;
    n.tmax_c = {4.0, 5.6, 10.2, 16.8, 22.3, 27.2, 29.8, 28.8, 25.0, 18.8, 12.7, 6.6};
    n.tmin_c = {-5.8, -4.8, -0.9, 4.5, 9.9, 15.2, 18.0, 17.2, 13.0, 6.5, 1.8, -2.9};
    n.rain_mm = {88, 73, 105, 100, 105, 106, 122, 106, 100, 100, 92, 99};
    n.wet_days = {8, 7, 8, 9, 9, 9, 9, 8, 7, 7, 7, 8};
    return n;
}

inline maybough::SkyYear sky_from(const maybough::MonthlyNormals& normals, double latitude_deg,
                                  const maybough::Chance& chance, double warmer_c = 0) {
    const maybough::WeatherParameters parameters;
    const maybough::Climate climate = maybough::climate_from_normals(normals, parameters);
    maybough::WeatherYear year = maybough::generate_year(climate, maybough::make_date(2021, 1, 1), 365, chance);
    for (maybough::DayOfWeather& day : year.days) {
        day.tmax_c += warmer_c;
        day.tmin_c += warmer_c;
    }
    return maybough::sky_of(year, latitude_deg, parameters);
}

inline maybough::SkyYear ithaca_sky(const maybough::Chance& chance, double warmer_c = 0) {
    return sky_from(ithaca_normals(), ithaca_latitude_deg, chance, warmer_c);
}

inline maybough::SkyYear new_jersey_sky(const maybough::Chance& chance) {
    return sky_from(new_jersey_normals(), new_jersey_latitude_deg, chance);
}

}  // namespace maybough_test
