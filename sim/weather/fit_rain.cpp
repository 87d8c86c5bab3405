// The fit of rain: chances of a wet day after a dry and a wet one, and gamma laws of amounts, by month.
#include <cmath>

#include "weather/fit_days.hpp"

namespace maybough::weather {

namespace {
/// Wet and dry days: monthly counts of what followed what, each with two days' worth of the whole year's chance.
void fit_occurrence(const std::vector<FitDay>& days, Climate& climate) {
    std::array<std::array<double, 12>, 2> followed{};
    std::array<std::array<double, 12>, 2> wet{};
    std::array<double, 2> all_followed{};
    std::array<double, 2> all_wet{};
    for (std::size_t i = 1; i < days.size(); ++i) {
        if (!days[i].knows_rain || !days[i - 1].knows_rain) continue;
        const std::size_t before = days[i - 1].wet ? 1 : 0;
        followed[before][days[i].month] += 1;
        all_followed[before] += 1;
        if (days[i].wet) {
            wet[before][days[i].month] += 1;
            all_wet[before] += 1;
        }
    }
    constexpr double prior_days = 2;
    for (std::size_t month = 0; month < 12; ++month) {
        const auto chance_of = [&](std::size_t before) {
            const double whole = all_followed[before] > 0 ? all_wet[before] / all_followed[before] : 0;
            return (wet[before][month] + prior_days * whole) / (followed[before][month] + prior_days);
        };
        climate.wet_after_dry[month] = chance_of(0);
        climate.wet_after_wet[month] = chance_of(1);
    }
}

/// Mean and gamma shape of a set of amounts above the threshold. Readings within one rounding step of it stand for
/// their expected logarithm under the law itself.
struct AmountLaw {
    double mean_mm = 0;
    double shape = 1;
};
AmountLaw amount_law(const std::vector<double>& excess_mm, double rounding_mm) {
    AmountLaw law;
    double sum_ln = 0;
    double small = 0;
    for (const double x : excess_mm) {
        law.mean_mm += x;
        if (x > rounding_mm) {
            sum_ln += std::log(x);
        } else {
            small += 1;
        }
    }
    const auto n = static_cast<double>(excess_mm.size());
    law.mean_mm /= n;
    for (int round = 0; round < 20; ++round) {
        law.shape = gamma_shape(law.mean_mm, (sum_ln + small * (std::log(rounding_mm) - 1 / law.shape)) / n);
    }
    return law;
}

void fit_amounts(const std::vector<FitDay>& days, const WeatherParameters& p, Climate& climate) {
    constexpr std::size_t enough_days = 25;
    std::array<std::vector<double>, 12> by_month;
    std::vector<double> all;
    for (const FitDay& day : days) {
        if (!day.wet) continue;
        by_month[day.month].push_back(day.weather.rain_mm - p.wet_day_mm);
        all.push_back(day.weather.rain_mm - p.wet_day_mm);
    }
    const AmountLaw whole = all.empty() ? AmountLaw{0, p.amount_shape} : amount_law(all, p.rounding_mm);
    for (std::size_t month = 0; month < 12; ++month) {
        const std::vector<double>& amounts = by_month[month];
        const auto n = static_cast<double>(amounts.size());
        AmountLaw law = amounts.empty() ? whole : amount_law(amounts, p.rounding_mm);
        // A month of few wet days borrows from the year.
        if (amounts.size() < enough_days) {
            law.shape = whole.shape;
            constexpr double borrowed = 5;
            law.mean_mm = (n * (amounts.empty() ? 0 : law.mean_mm) + borrowed * whole.mean_mm) / (n + borrowed);
        }
        climate.amount_shape[month] = law.shape;
        climate.amount_mean_mm[month] = p.wet_day_mm + law.mean_mm;
    }
}

}  // namespace

void fit_rain(const std::vector<FitDay>& days, const WeatherParameters& parameters, Climate& climate) {
    fit_occurrence(days, climate);
    fit_amounts(days, parameters, climate);
}

}  // namespace maybough::weather
