// Sky: what a bee notices of each day. Hours fit for foraging, scouting and leaving, degree-days, bloom.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "weather/hours.hpp"

namespace maybough::weather {

namespace {
/// What depends on the hour alone, for the middle of each solar hour.
struct HourTables {
    std::array<double, 24> sun_angle_cosine{};
    std::array<double, 24> wind_share{};  ///< wind at 2 m as a share of the daily mean at 10 m
    std::array<double, 24> leaving{};     ///< how many swarms leave at this hour, 1 at the best
};

HourTables hour_tables(const WeatherParameters& p) {
    constexpr double windiest_hour = 14;
    HourTables tables;
    for (std::size_t hour = 0; hour < 24; ++hour) {
        const double middle = static_cast<double>(hour) + 0.5;
        tables.sun_angle_cosine[hour] = std::cos(std::numbers::pi * (middle - 12) / 12);
        tables.wind_share[hour] =
            p.wind_2m_share * (1 + p.wind_day_swing * std::cos(std::numbers::pi * (middle - windiest_hour) / 12));
        const double from_best = (middle - p.depart_hour) / p.depart_sd_h;
        const bool allowed = middle > p.depart_first_h && middle < p.depart_last_h;
        tables.leaving[hour] = allowed ? std::exp(-from_best * from_best / 2) : 0;
    }
    return tables;
}

/// Light of each hour in W m-2: the day's light shared out by the sun's height.
std::array<double, 24> hourly_light(double radiation_mj_m2, double latitude_deg, const SunDay& sun,
                                    const HourTables& tables) {
    constexpr double watts_per_mj_h = 1e6 / 3600;
    const double latitude = latitude_deg * std::numbers::pi / 180;
    const double constant = std::sin(latitude) * std::sin(sun.declination_rad);
    const double swing = std::cos(latitude) * std::cos(sun.declination_rad);
    std::array<double, 24> light{};
    double sum = 0;
    for (std::size_t hour = 0; hour < 24; ++hour) {
        light[hour] = std::max(0.0, constant + swing * tables.sun_angle_cosine[hour]);
        sum += light[hour];
    }
    if (sum <= 0) return {};
    for (double& of_hour : light) of_hour *= radiation_mj_m2 / sum * watts_per_mj_h;
    return light;
}

/// Goes through the day's hours of light.
void fill_hours(DayOfSky& day, const SunDay& sun, const TemperatureCurve& curve, const RainSpell& rain,
                const std::array<double, 24>& light, const HourTables& tables, const WeatherParameters& p) {
    const double clear_mj_m2 = p.clear_sky_share * sun.extraterrestrial_mj_m2;
    const double sunny =
        clear_mj_m2 > 0 ? ramp(day.radiation_mj_m2 / clear_mj_m2, p.depart_dull_share, p.depart_sunny_share) : 0;
    const double rain_hinders = ramp(rain.mm_h, p.rain_harmless_mm_h, p.rain_stops_mm_h);
    for (std::size_t hour = 0; hour < 24; ++hour) {
        const auto begins = static_cast<double>(hour);
        const double daylight = std::min(begins + 1, day.sunset_h) - std::max(begins, day.sunrise_h);
        if (daylight <= 0) continue;
        const double temperature_c = curve.at(begins + 0.5);
        const double wind_ms = day.weather.wind_ms * tables.wind_share[hour];
        const double raining = rain.share(static_cast<int>(hour));

        day.foraging_h += daylight * ramp(temperature_c, p.forage_from_c, p.forage_full_c) *
                          ramp(temperature_c, p.forage_too_hot_c, p.forage_hot_c) *
                          ramp(wind_ms, p.forage_storm_ms, p.forage_calm_ms) *
                          ramp(light[hour], p.forage_dim_w_m2, p.forage_light_w_m2) * (1 - raining * rain_hinders);

        const double flyable = ramp(wind_ms, p.scout_storm_ms, p.scout_calm_ms) * (1 - raining);
        day.scouting[hour] =
            static_cast<float>(daylight * ramp(temperature_c, p.scout_from_c, p.scout_full_c) * flyable);
        day.departure[hour] = static_cast<float>(daylight * tables.leaving[hour] * sunny * flyable *
                                                 ramp(temperature_c, p.depart_from_c, p.depart_full_c));
    }
}
}  // namespace

SkyYear sky_of(const WeatherYear& year, double latitude_deg, const WeatherParameters& parameters) {
    const HourTables tables = hour_tables(parameters);
    SkyYear sky{year.first, latitude_deg, {}};
    sky.days.resize(year.days.size());
    double degree_days_sum = 0;
    for (std::size_t i = 0; i < year.days.size(); ++i) {
        const Date date = year.first + std::chrono::days{static_cast<int>(i)};
        const DayOfWeather& today = year.days[i];
        const SunDay sun = sun_day(latitude_deg, date);
        DayOfSky& day = sky.days[i];
        day.weather = today;
        day.sunrise_h = sun.sunrise_h;
        day.sunset_h = sun.sunset_h;
        day.radiation_mj_m2 = radiation_of(today, sun, parameters);

        const TemperatureCurve curve(year.days[i > 0 ? i - 1 : 0], today,
                                     year.days[std::min(i + 1, year.days.size() - 1)], sun, parameters);
        const auto light = hourly_light(day.radiation_mj_m2, latitude_deg, sun, tables);
        fill_hours(day, sun, curve, rain_spell(today.rain_mm, date, parameters), light, tables, parameters);

        day.degree_days_c = degree_days_sine(today.tmin_c, today.tmax_c, parameters.degree_day_base_c);
        degree_days_sum += day.degree_days_c;
        day.degree_days_sum_c = degree_days_sum;
        const auto season_day = static_cast<int>((date - simulated_year_start(date, latitude_deg)).count());
        day.bloom = bloom_of(degree_days_sum, season_day, today.tmin_c, parameters);
    }
    return sky;
}

}  // namespace maybough::weather
