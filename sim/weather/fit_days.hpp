// What the steps of a fit share: the record's days as the fit sees them, and least-squares harmonics.
#pragma once

#include <cmath>
#include <vector>

#include "weather/seasons.hpp"

namespace maybough::weather {

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

    Harmonic solve() const;

  private:
    std::array<std::array<double, 5>, 5> left_{};
    std::array<double, 5> right_{};
    int count_ = 0;
};

/// Correlation of two residuals, `lag` days apart, over the days that have both.
double correlation(const std::vector<FitDay>& days, double FitDay::*today, double FitDay::*before, std::size_t lag);

/// Chances of a wet day and amounts, by month.
void fit_rain(const std::vector<FitDay>& days, const WeatherParameters& parameters, Climate& climate);

/// Means and spreads of both extremes, their memory, and the spread of whole years; leaves the residuals in `days`.
void fit_temperature(std::vector<FitDay>& days, const WeatherParameters& parameters, Climate& climate);

}  // namespace maybough::weather
