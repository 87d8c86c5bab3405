// Hours of a day from its extremes.
#include "weather/hours.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace maybough::weather {

TemperatureCurve::TemperatureCurve(const DayOfWeather& yesterday, const DayOfWeather& today,
                                   const DayOfWeather& tomorrow, const SunDay& sun, const WeatherParameters& parameters)
    : tmin_c_(today.tmin_c), range_c_(today.tmax_c - today.tmin_c), next_tmin_c_(tomorrow.tmin_c) {
    constexpr double shortest_h = 4;
    constexpr double longest_h = 20;
    const double day_h = std::clamp(sun.sunset_h - sun.sunrise_h, shortest_h, longest_h);
    sunset_h_ = 12 + day_h / 2;
    minimum_h_ = 12 - day_h / 2 + parameters.curve_minimum_h;
    span_h_ = day_h + 2 * parameters.curve_lag_h;
    decay_ = parameters.curve_decay;
    left_ = std::exp(-decay_);
    sunset_c_ = at_sunset(today);
    last_sunset_c_ = at_sunset(yesterday);
}

double TemperatureCurve::at_sunset(const DayOfWeather& day) const {
    return day.tmin_c + (day.tmax_c - day.tmin_c) * std::sin(std::numbers::pi * (sunset_h_ - minimum_h_) / span_h_);
}

double TemperatureCurve::night(double from_c, double to_c, double hours_since_sunset) const {
    const double night_h = 24 - sunset_h_ + minimum_h_;
    const double fall = std::exp(-decay_ * hours_since_sunset / night_h);
    return to_c + (from_c - to_c) * (fall - left_) / (1 - left_);
}

double TemperatureCurve::at(double hour) const {
    if (hour < minimum_h_) return night(last_sunset_c_, tmin_c_, hour + 24 - sunset_h_);
    if (hour > sunset_h_) return night(sunset_c_, next_tmin_c_, hour - sunset_h_);
    return tmin_c_ + range_c_ * std::sin(std::numbers::pi * (hour - minimum_h_) / span_h_);
}

double RainSpell::share(int hour) const {
    return std::max(0.0, std::min<double>(to_h, hour + 1) - std::max<double>(from_h, hour));
}

RainSpell rain_spell(double rain_mm, Date date, const WeatherParameters& parameters) {
    if (!(rain_mm > 0)) return {};
    const double hours = std::min(24.0, parameters.rain_hours_at_1mm * std::pow(rain_mm, parameters.rain_hours_power));
    const double turns = static_cast<double>(date.time_since_epoch().count()) * (std::numbers::phi - 1);
    const double from_h = (turns - std::floor(turns)) * (24 - hours);
    return {from_h, from_h + hours, rain_mm / hours};
}

double radiation_of(const DayOfWeather& day, const SunDay& sun, const WeatherParameters& parameters) {
    const double range_c = std::max(0.0, day.tmax_c - day.tmin_c);
    const double share = std::min(parameters.clear_sky_share, parameters.radiation_coefficient * std::sqrt(range_c));
    return share * sun.extraterrestrial_mj_m2;
}

}  // namespace maybough::weather
