// How scout experiments measure and judge, and the list of their topics. Private to experiments/.
#pragma once

#include <cmath>
#include <string>
#include <vector>

#include "experiments/experiments.hpp"
#include "experiments/hunts.hpp"

namespace maybough::experiments::scout_trials {

inline double mean(const std::vector<double>& values) {
    double sum = 0;
    for (const double value : values) sum += value;
    return sum / static_cast<double>(values.size());
}

/// Standard error of the mean.
inline double error_of_mean(const std::vector<double>& values) {
    const double centre = mean(values);
    double square_sum = 0;
    for (const double value : values) square_sum += (value - centre) * (value - centre);
    const auto n = static_cast<double>(values.size());
    return std::sqrt(square_sum / (n * (n - 1)));
}

inline double share_error(double share, double n) {
    return std::sqrt(share * (1 - share) / n);
}

/// A share of `hunts` judged by the exact interval of a published count.
inline Finding against_count(std::string what, int taken, int offered, double share, double hunts, std::string source) {
    const Interval interval = binomial_interval_95(taken, offered);
    return {std::move(what),
            "",
            std::to_string(taken) + " of " + std::to_string(offered),
            share,
            share_error(share, hunts),
            interval.low,
            interval.high,
            "95 % binomial of " + std::to_string(taken) + " of " + std::to_string(offered),
            std::move(source),
            Footing::calibrated,
            ""};
}

}  // namespace maybough::experiments::scout_trials

namespace maybough::experiments {
/// The experiments of each topic, in files of their own.
std::vector<Experiment> watched_hunts();
std::vector<Experiment> far_searching_hunts();
std::vector<Experiment> box_trials();
std::vector<Experiment> quorum_trials();
std::vector<Experiment> dance_rule_models();
std::vector<Experiment> trap_programmes();
}  // namespace maybough::experiments
