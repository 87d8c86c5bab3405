// Degree-days of one day from its extremes.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "weather/weather.hpp"

namespace maybough::weather {

namespace {
/// Area of a sine day above `base_c`, Baskerville and Emin 1969, "Rapid estimation of heat accumulation".
double above(double tmin_c, double tmax_c, double base_c) {
    const double mean = (tmax_c + tmin_c) / 2;
    const double amplitude = (tmax_c - tmin_c) / 2;
    if (tmax_c <= base_c) return 0;
    if (tmin_c >= base_c) return mean - base_c;
    const double angle = std::asin((base_c - mean) / amplitude);
    return ((mean - base_c) * (std::numbers::pi / 2 - angle) + amplitude * std::cos(angle)) / std::numbers::pi;
}
}  // namespace

double degree_days_sine(double tmin_c, double tmax_c, double base_c, double upper_c) {
    return above(tmin_c, tmax_c, base_c) - above(tmin_c, tmax_c, upper_c);
}

double degree_days_average(double tmin_c, double tmax_c, double base_c) {
    return std::max(0.0, (tmin_c + tmax_c) / 2 - base_c);
}

}  // namespace maybough::weather
