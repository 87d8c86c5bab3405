// Hours of a day from its extremes: temperature, rain, wind and light, in local solar time.
#pragma once

#include <array>

#include "weather/weather.hpp"

namespace maybough::weather {

/// 0 up to `none`, 1 from `full`, a straight line between. Falls where none > full.
inline double ramp(double x, double none, double full) {
    const double share = (x - none) / (full - none);
    return share <= 0 ? 0 : (share >= 1 ? 1 : share);
}

/// A day's temperature curve: a sine by day, an exponential by night (Parton and Logan 1981), the night's form scaled
/// so that it meets the next minimum. Hours are local solar time.
class TemperatureCurve {
  public:
    /// Extremes of the day, of the day before and the day after; at very high latitudes the curve keeps a day of 4 to
    /// 20 hours.
    TemperatureCurve(const DayOfWeather& yesterday, const DayOfWeather& today, const DayOfWeather& tomorrow,
                     const SunDay& sun, const WeatherParameters& parameters);
    double at(double hour) const;

  private:
    double at_sunset(const DayOfWeather& day) const;
    double night(double from_c, double to_c, double hours_since_sunset) const;
    double tmin_c_;
    double range_c_;
    double next_tmin_c_;
    double sunset_h_;
    double minimum_h_;  ///< hour of the lowest temperature
    double span_h_;     ///< half period of the day's sine
    double decay_;
    double left_;  ///< share of the night's fall still to come at the minimum
    double sunset_c_;
    double last_sunset_c_;
};

/// Rain as one spell in the day. How long it lasts follows from its amount; when it falls, from the date, by steps of
/// the golden ratio that spread evenly over hours: a draw would need a key that a sky does not have.
struct RainSpell {
    double from_h = 0;
    double to_h = 0;
    double mm_h = 0;
    /// Share of solar hour `hour` in which it rains.
    double share(int hour) const;
};
RainSpell rain_spell(double rain_mm, Date date, const WeatherParameters& parameters);

/// Daily light in MJ m-2 from the range of temperature (Hargreaves; Allen et al. 1998, FAO-56 eq. 50), no more than
/// that of a clear sky.
double radiation_of(const DayOfWeather& day, const SunDay& sun, const WeatherParameters& parameters);

/// Flowering of each kind, from degree-days since the start of the simulated year and the day of that year.
std::array<float, bloom_kinds> bloom_of(double degree_days_c, int season_day, double tmin_c,
                                        const WeatherParameters& parameters);

}  // namespace maybough::weather
