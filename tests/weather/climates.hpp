// Climates and records that several tests share.
#pragma once

#include <cmath>

#include "weather/weather.hpp"

namespace maybough::test {

/// A cool continental climate, in round numbers of our own.
inline MonthlyNormals cool_normals() {
    return {{-1, 1, 6, 13, 20, 24, 27, 26, 22, 15, 8, 2},
            {-10, -9, -5, 1, 6, 11, 14, 13, 9, 3, -1, -6},
            {53, 50, 67, 82, 81, 100, 95, 92, 94, 90, 80, 63},
            {10, 9, 10, 11, 11, 11, 10, 9, 9, 11, 11, 11},
            3};
}

/// The same place with its seasons half a year on.
inline MonthlyNormals southern(const MonthlyNormals& north) {
    MonthlyNormals south = north;
    for (std::size_t month = 0; month < 12; ++month) {
        const std::size_t other = (month + 6) % 12;
        south.tmax_c[month] = north.tmax_c[other];
        south.tmin_c[month] = north.tmin_c[other];
        south.rain_mm[month] = north.rain_mm[other];
        south.wet_days[month] = north.wet_days[other];
    }
    return south;
}

inline Climate cool_climate() {
    return climate_from_normals(cool_normals(), WeatherParameters{});
}

/// A record of whole generated years, each with its own luck, from 1 January `first_year`.
inline WeatherRecord made_record(const Climate& climate, int first_year, int years, std::uint32_t seed) {
    WeatherRecord record{"made", make_date(first_year, 1, 1), {}};
    for (int year = 0; year < years; ++year) {
        const Date first = make_date(first_year + year, 1, 1);
        const WeatherYear made =
            generate_year(climate, first, days_in_year_from(first), Chance{seed, static_cast<std::uint32_t>(year)});
        record.days.insert(record.days.end(), made.days.begin(), made.days.end());
    }
    return record;
}

/// `days` days that are all alike.
inline WeatherYear steady_year(Date first, int days, DayOfWeather day) {
    return {first, std::vector<DayOfWeather>(static_cast<std::size_t>(days), day)};
}

inline double sum_of(const std::array<float, 24>& hours) {
    double sum = 0;
    for (const float hour : hours) sum += static_cast<double>(hour);
    return sum;
}

}  // namespace maybough::test
