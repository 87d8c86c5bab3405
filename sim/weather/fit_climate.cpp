// The generator fitted to a record.
#include <algorithm>
#include <cmath>
#include <map>

#include "weather/seasons.hpp"

namespace maybough {

namespace {
/// One day as the fit sees it.
struct FitDay {
    DayOfWeather weather;
    std::size_t month = 0;
    const Phase* phase = nullptr;
    int year = 0;
    bool knows_rain = false;
    bool wet = false;
    double chi_max = NAN;
    double chi_min = NAN;
};

std::vector<FitDay> days_of(const WeatherRecord& record, const WeatherParameters& p) {
    std::vector<FitDay> days;
    days.reserve(record.days.size());
    Date date = record.first;
    for (const DayOfWeather& weather : record.days) {
        FitDay day;
        day.weather = weather;
        day.month = static_cast<std::size_t>(month_of(date) - 1);
        day.phase = &phases()[static_cast<std::size_t>(day_of_year(date))];
        day.year = year_of(date);
        day.knows_rain = !std::isnan(weather.rain_mm);
        day.wet = day.knows_rain && weather.rain_mm >= p.wet_day_mm;
        days.push_back(day);
        date += std::chrono::days{1};
    }
    return days;
}

/// Least squares of a constant and two harmonics, by normal equations and elimination. `pull` days' worth of ridge
/// keeps a fit to few days flat.
class HarmonicFit {
  public:
    void add(const Phase& phase, double value) {
        const std::array<double, 5> x{1, phase.cosine[0], phase.sine[0], phase.cosine[1], phase.sine[1]};
        for (std::size_t i = 0; i < 5; ++i) {
            for (std::size_t j = 0; j < 5; ++j) left_[i][j] += x[i] * x[j];
            right_[i] += x[i] * value;
        }
        ++count_;
    }
    int count() const { return count_; }

    Harmonic solve() const {
        auto m = left_;
        auto y = right_;
        if (count_ == 0) return {};
        constexpr double pull = 0.5;
        for (std::size_t i = 1; i < 5; ++i) m[i][i] += pull;
        for (std::size_t i = 0; i < 5; ++i) {
            for (std::size_t row = i + 1; row < 5; ++row) {
                const double factor = m[row][i] / m[i][i];
                for (std::size_t j = i; j < 5; ++j) m[row][j] -= factor * m[i][j];
                y[row] -= factor * y[i];
            }
        }
        std::array<double, 5> x{};
        for (std::size_t i = 5; i-- > 0;) {
            double rest = y[i];
            for (std::size_t j = i + 1; j < 5; ++j) rest -= m[i][j] * x[j];
            x[i] = rest / m[i][i];
        }
        return {x[0], {x[1], x[3]}, {x[2], x[4]}};
    }

  private:
    std::array<std::array<double, 5>, 5> left_{};
    std::array<double, 5> right_{};
    int count_ = 0;
};

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

/// Harmonic spread about a mean: shape of the mean absolute residual, size such that standardised residuals have unit
/// variance.
template <class Residual, class Chosen>
Harmonic fit_spread(const std::vector<FitDay>& days, Residual residual, Chosen chosen) {
    constexpr double least_sd_c = 0.3;
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

void fit_temperatures(std::vector<FitDay>& days, Climate& climate) {
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
        constexpr double least_sd_c = 0.3;
        day.chi_max = of_max(day) / std::max(least_sd_c, at_phase(climate.tmax_sd_c[day.wet ? 1 : 0], *day.phase));
        day.chi_min = of_min(day) / std::max(least_sd_c, at_phase(climate.tmin_sd_c, *day.phase));
    }
}

/// Mean product of two residuals, `lag` days apart, over the days that have both.
double correlation(const std::vector<FitDay>& days, double FitDay::*today, double FitDay::*before, std::size_t lag) {
    double sum = 0;
    double today_squares = 0;
    double before_squares = 0;
    for (std::size_t i = lag; i < days.size(); ++i) {
        const double x = days[i].*today;
        const double y = days[i - lag].*before;
        if (std::isnan(x) || std::isnan(y)) continue;
        sum += x * y;
        today_squares += x * x;
        before_squares += y * y;
    }
    return today_squares > 0 && before_squares > 0 ? sum / std::sqrt(today_squares * before_squares) : 0;
}

/// Spread of whole years' offsets: the variance between years' mean residuals beyond what daily persistence explains.
double year_spread(const std::vector<FitDay>& days, const Climate& climate, double lag1, const WeatherParameters& p) {
    constexpr int enough_years = 8;
    constexpr int nearly_whole = 330;
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

void fit_wind(const std::vector<FitDay>& days, const WeatherParameters& p, Climate& climate) {
    constexpr int enough_days = 60;
    climate.wind_mean_ms.mean = p.wind_ms;
    climate.wind_shape = p.wind_shape;
    climate.wind_lag1 = p.wind_lag1;
    HarmonicFit mean;
    for (const FitDay& day : days) {
        if (!std::isnan(day.weather.wind_ms)) mean.add(*day.phase, day.weather.wind_ms);
    }
    if (mean.count() < enough_days) return;
    climate.wind_mean_ms = mean.solve();
    double sum = 0;
    double sum_ln = 0;
    for (const FitDay& day : days) {
        if (std::isnan(day.weather.wind_ms)) continue;
        const double relative =
            std::max(day.weather.wind_ms, 0.1) / std::max(0.2, at_phase(climate.wind_mean_ms, *day.phase));
        sum += relative;
        sum_ln += std::log(relative);
    }
    climate.wind_shape = gamma_shape(sum / mean.count(), sum_ln / mean.count());
    std::vector<FitDay> scored = days;
    for (FitDay& day : scored) {
        day.chi_max = score_of_wind(day.weather.wind_ms, climate.wind_shape,
                                    std::max(0.2, at_phase(climate.wind_mean_ms, *day.phase)));
    }
    climate.wind_lag1 = std::clamp(correlation(scored, &FitDay::chi_max, &FitDay::chi_max, 1), 0.0, 0.95);
}
}  // namespace

Climate fit_climate(const WeatherRecord& record, const WeatherParameters& parameters) {
    std::vector<FitDay> days = days_of(record, parameters);
    int complete = 0;
    for (const FitDay& day : days)
        complete += !std::isnan(day.weather.tmax_c) && !std::isnan(day.weather.tmin_c) ? 1 : 0;
    constexpr int least_days = 300;
    if (complete < least_days) {
        throw InputError(record.source.empty() ? "weather record" : record.source,
                         "found " + std::to_string(complete) + " days with both temperatures, expected at least " +
                             std::to_string(least_days) + " to fit a climate",
                         "give a longer record or twelve monthly normals");
    }
    Climate climate;
    climate.wet_day_mm = parameters.wet_day_mm;
    climate.least_range_c = parameters.least_range_c;
    climate.years_of_record = complete / 365.25;
    fit_occurrence(days, climate);
    fit_amounts(days, parameters, climate);
    fit_temperatures(days, climate);
    fit_memory(days, parameters, climate);
    fit_wind(days, parameters, climate);
    return climate;
}

}  // namespace maybough
