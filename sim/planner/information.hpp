// What it is worth to know an unknown before deciding, and what not knowing it may cost. Pure functions on tables.
#pragma once

#include <vector>

#include "planner/worth_knowing.hpp"

namespace maybough::planner {

/// A sum of curves in each standardised unknown, fitted to a table of seasons.
struct Emulator {
    double constant = 0;
    std::vector<double> slope;
    std::vector<double> bend;  ///< of z^2 - 1
    double at(const std::vector<double>& z) const;
};
Emulator fit_emulator(const std::vector<std::vector<double>>& columns, const std::vector<double>& y);

/// Mean net worth gained by choosing the number of traps after learning the unknowns in `columns`, against always
/// taking placement `chosen`: the rule "which number" is fitted on half of the beliefs and judged on the other half, so
/// that noise does not flatter it (after Strong, Oakley and Brennan 2014). Never below 0.
double worth_of_knowing(const std::vector<std::vector<double>>& columns, const Trials& trials, std::size_t chosen);

/// Net worth forgone by placement `chosen` against the best number for each belief, by emulators.
struct Regret {
    double expected = 0;
    double worst = 0;
};
Regret regret_of(const std::vector<SampledUnknown>& unknowns, const Trials& trials, std::size_t chosen);

/// Adds worth of knowing, first-order share of the catch and Sobol index of the decision to each of `sensitivities`.
void add_information(std::vector<Sensitivity>& sensitivities, const std::vector<SampledUnknown>& unknowns,
                     const Trials& trials, std::size_t chosen, std::uint32_t seed);

/// Each unknown's values brought to mean 0 and standard deviation 1.
std::vector<std::vector<double>> standardised(const std::vector<SampledUnknown>& unknowns);

}  // namespace maybough::planner
