// The fit of temperatures: seasons of mean and spread, what one day keeps of the day before, and the spread of years.
#include <algorithm>
#include <cmath>
#include <map>

#include "weather/fit_days.hpp"

namespace maybough::weather {

namespace {
/// Harmonic spread about a mean: shape of the mean absolute residual, size such that standardised residuals have unit
/// variance.
template <class Residual, class Chosen>
Harmonic fit_spread(const std::vector<FitDay>& days, Residual residual, Chosen chosen) {
    HarmonicFit absolute;
    for (const FitDay& day : days) {
        const double value = residual(day);
        if (chosen(day) && !std::isnan(value)) absolute.add(*day.phase, std::abs(value));
    }
    Harmonic spread = absolute.solve();
    double squares = 0;
    for (const FitDay& day : days) {
        const double value = residual(day);
        if (!chosen(day) || std::isnan(value)) continue;
        const double scaled = value / std::max(least_sd_c, at_phase(spread, *day.phase));
        squares += scaled * scaled;
    }
    const double scale = absolute.count() > 1 ? std::sqrt(squares / absolute.count()) : 1;
    spread.mean *= scale;
    for (std::size_t k = 0; k < 2; ++k) {
        spread.cosine[k] *= scale;
        spread.sine[k] *= scale;
    }
    return spread;
}

void fit_seasons(std::vector<FitDay>& days, Climate& climate) {
    constexpr int enough_days = 60;
    std::array<HarmonicFit, 2> tmax;
    HarmonicFit tmax_all;
    HarmonicFit tmin;
    for (const FitDay& day : days) {
        if (!std::isnan(day.weather.tmax_c)) {
            tmax[day.wet ? 1 : 0].add(*day.phase, day.weather.tmax_c);
            tmax_all.add(*day.phase, day.weather.tmax_c);
        }
        if (!std::isnan(day.weather.tmin_c)) tmin.add(*day.phase, day.weather.tmin_c);
    }
    for (std::size_t wet = 0; wet < 2; ++wet) {
        climate.tmax_mean_c[wet] = tmax[wet].count() >= enough_days ? tmax[wet].solve() : tmax_all.solve();
    }
    climate.tmin_mean_c = tmin.solve();
    const auto of_max = [&](const FitDay& day) {
        return day.weather.tmax_c - at_phase(climate.tmax_mean_c[day.wet ? 1 : 0], *day.phase);
    };
    const auto of_min = [&](const FitDay& day) {
        return day.weather.tmin_c - at_phase(climate.tmin_mean_c, *day.phase);
    };
    const auto any = [](const FitDay&) { return true; };
    const Harmonic all_days = fit_spread(days, of_max, any);
    for (std::size_t wet = 0; wet < 2; ++wet) {
        climate.tmax_sd_c[wet] =
            tmax[wet].count() >= enough_days
                ? fit_spread(days, of_max, [&](const FitDay& day) { return (day.wet ? 1U : 0U) == wet; })
                : all_days;
    }
    climate.tmin_sd_c = fit_spread(days, of_min, any);
    for (FitDay& day : days) {
        day.chi_max = of_max(day) / std::max(least_sd_c, at_phase(climate.tmax_sd_c[day.wet ? 1 : 0], *day.phase));
        day.chi_min = of_min(day) / std::max(least_sd_c, at_phase(climate.tmin_sd_c, *day.phase));
    }
}

/// Spread of whole years' offsets: the variance between years' mean residuals beyond what daily persistence explains.
double year_spread(const std::vector<FitDay>& days, const Climate& climate, double lag1, const WeatherParameters& p) {
    constexpr int enough_years = 8;
    constexpr int nearly_whole = 300;
    struct Sum {
        double value = 0;
        double squares = 0;
        int days = 0;
    };
    std::map<int, Sum> years;
    for (const FitDay& day : days) {
        const double mean = (day.chi_max * at_phase(climate.tmax_sd_c[day.wet ? 1 : 0], *day.phase) +
                             day.chi_min * at_phase(climate.tmin_sd_c, *day.phase)) /
                            2;
        if (std::isnan(mean)) continue;
        Sum& year = years[day.year];
        year.value += mean;
        year.squares += mean * mean;
        ++year.days;
    }
    double count = 0;
    double sum = 0;
    double squares = 0;
    double within = 0;
    for (const auto& [number, year] : years) {
        if (year.days < nearly_whole) continue;
        const double mean = year.value / year.days;
        count += 1;
        sum += mean;
        squares += mean * mean;
        within += year.squares / year.days / year.days * (1 + lag1) / (1 - lag1);
    }
    if (count < enough_years) return p.year_sd_c;
    const double between = (squares - sum * sum / count) / (count - 1);
    return std::sqrt(std::max(0.0, between - within / count));
}

void shrink(Harmonic& spread, double factor) {
    spread.mean *= factor;
    for (std::size_t k = 0; k < 2; ++k) {
        spread.cosine[k] *= factor;
        spread.sine[k] *= factor;
    }
}

/// The residuals' memory, after the years' own offsets are taken out of spreads and correlations.
void fit_memory(const std::vector<FitDay>& days, const WeatherParameters& p, Climate& climate) {
    const auto r = [&](double FitDay::*today, double FitDay::*before, std::size_t lag) {
        return correlation(days, today, before, lag);
    };
    const double lag0 = r(&FitDay::chi_max, &FitDay::chi_min, 0);
    const Matrix lag1{r(&FitDay::chi_max, &FitDay::chi_max, 1), r(&FitDay::chi_max, &FitDay::chi_min, 1),
                      r(&FitDay::chi_min, &FitDay::chi_max, 1), r(&FitDay::chi_min, &FitDay::chi_min, 1)};
    const double of_mean = (lag1[0] + lag1[1] + lag1[2] + lag1[3]) / (2 + 2 * lag0);
    climate.year_sd_c = year_spread(days, climate, std::clamp(of_mean, 0.0, 0.95), p);

    const double max_share = std::min(0.5, std::pow(climate.year_sd_c / climate.tmax_sd_c[0].mean, 2));
    const double min_share = std::min(0.5, std::pow(climate.year_sd_c / climate.tmin_sd_c.mean, 2));
    const double both = std::sqrt(max_share * min_share);
    const double max_left = 1 - max_share;
    const double min_left = 1 - min_share;
    const double both_left = std::sqrt(max_left * min_left);
    shrink(climate.tmax_sd_c[0], std::sqrt(max_left));
    shrink(climate.tmax_sd_c[1], std::sqrt(max_left));
    shrink(climate.tmin_sd_c, std::sqrt(min_left));
    const double cross = (lag0 - both) / both_left;
    const ResidualLaw law =
        residual_law({1, cross, cross, 1}, {(lag1[0] - max_share) / max_left, (lag1[1] - both) / both_left,
                                            (lag1[2] - both) / both_left, (lag1[3] - min_share) / min_left});
    climate.a = law.a;
    climate.b = law.b;
}

}  // namespace

void fit_temperature(std::vector<FitDay>& days, const WeatherParameters& parameters, Climate& climate) {
    fit_seasons(days, climate);
    fit_memory(days, parameters, climate);
}

}  // namespace maybough::weather
