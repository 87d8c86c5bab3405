// A climate from twelve monthly normals alone, with published constants for what normals do not tell.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "weather/seasons.hpp"

namespace maybough::weather {

namespace {
/// Middle of each month of a mean year, as day of year.
constexpr std::array<double, 12> mid_month{16, 45.5, 75, 105.5, 136, 166.5, 197, 228, 258.5, 289, 319.5, 350};

/// Two harmonics through twelve monthly means, raised by what averaging over a month takes from each.
Harmonic through_months(const std::array<double, 12>& means) {
    Harmonic harmonic;
    for (const double mean : means) harmonic.mean += mean / 12;
    for (std::size_t k = 0; k < 2; ++k) {
        const double order = static_cast<double>(k + 1);
        const double half_month = std::numbers::pi * order / 12;
        const double raise = half_month / std::sin(half_month);
        for (std::size_t month = 0; month < 12; ++month) {
            const double angle = 2 * std::numbers::pi * order * mid_month[month] / 365.25;
            harmonic.cosine[k] += means[month] * std::cos(angle) / 6 * raise;
            harmonic.sine[k] += means[month] * std::sin(angle) / 6 * raise;
        }
    }
    return harmonic;
}

double amplitude(const Harmonic& harmonic) {
    return std::hypot(harmonic.cosine[0], harmonic.sine[0]);
}
}  // namespace

Climate climate_from_normals(const MonthlyNormals& normals, const WeatherParameters& p) {
    constexpr std::array<double, 12> days{31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    Climate climate;
    climate.wet_day_mm = p.wet_day_mm;
    climate.least_range_c = p.least_range_c;
    std::array<double, 12> dry_tmax{};
    std::array<double, 12> wet_tmax{};
    for (std::size_t month = 0; month < 12; ++month) {
        // Geng, Penning de Vries and Supit 1986: both chances from the share of wet days.
        const double share = std::clamp(normals.wet_days[month] / days[month], 0.0, 0.98);
        climate.wet_after_dry[month] = (1 - p.dry_persistence) * share;
        climate.wet_after_wet[month] = share > 0 ? climate.wet_after_dry[month] + p.dry_persistence : 0;
        climate.amount_shape[month] = p.amount_shape;
        climate.amount_mean_mm[month] = std::max(
            p.wet_day_mm, normals.wet_days[month] > 0 ? normals.rain_mm[month] / normals.wet_days[month] : 0.0);
        dry_tmax[month] = normals.tmax_c[month] + share * p.wet_tmax_drop_c;
        wet_tmax[month] = dry_tmax[month] - p.wet_tmax_drop_c;
    }
    climate.tmax_mean_c = {through_months(dry_tmax), through_months(wet_tmax)};
    climate.tmin_mean_c = through_months(normals.tmin_c);

    Harmonic spread;
    spread.mean = p.tmax_sd_base_c + p.tmax_sd_per_amplitude * amplitude(climate.tmax_mean_c[0]);
    climate.tmax_sd_c = {spread, spread};
    climate.tmin_sd_c.mean = p.tmin_sd_share * spread.mean;
    const ResidualLaw law = residual_law({1, p.lag0_max_min, p.lag0_max_min, 1},
                                         {p.lag1_max_max, p.lag1_max_min, p.lag1_min_max, p.lag1_min_min});
    climate.a = law.a;
    climate.b = law.b;
    climate.wind_mean_ms.mean = normals.wind_ms;
    climate.wind_shape = p.wind_shape;
    climate.wind_lag1 = p.wind_lag1;
    climate.year_sd_c = p.year_sd_c;
    return climate;
}

}  // namespace maybough::weather
