// What is worth knowing: how the catch and the best number of traps move with each unknown. Pure functions on tables.
#pragma once

#include <string>
#include <vector>

#include "planner/trials.hpp"

namespace maybough::planner {

/// One unknown with its value in each season, those that only one placement lived through included.
struct SampledUnknown {
    std::string key;
    double low = 0;   ///< 5 % point of its belief
    double high = 0;  ///< 95 % point
    std::vector<double> values;
};

/// The unknowns of a scenario as drawn for the seasons of `trials`.
std::vector<SampledUnknown> sampled_unknowns(const Scenario& scenario, std::uint32_t seed, std::uint32_t first,
                                             std::size_t count);

/// One at a time, by regression on all unknowns together: catches of placement `chosen`, and the number of traps whose
/// net worth is foretold best, at each unknown's low and high with the others at their means. Largest swing first.
std::vector<Sensitivity> sensitivities_of(const std::vector<SampledUnknown>& unknowns, const Trials& trials,
                                          std::size_t chosen);

/// Least squares with a slight ridge: coefficients of 1 and of each standardised column for `y`, on as many rows as `y`
/// has.
std::vector<double> least_squares(const std::vector<std::vector<double>>& columns, const std::vector<double>& y);

}  // namespace maybough::planner
