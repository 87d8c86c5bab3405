// Sobol indices: which inputs the variance of a function comes from. Pure functions.
#pragma once

#include <cstdint>
#include <functional>
#include <span>
#include <vector>

#include "chance/chance.hpp"

namespace maybough::planner {

struct SobolIndices {
    double variance = 0;
    std::vector<double> first;  ///< share of variance that each input explains alone
    std::vector<double> total;  ///< share that would stay if all others were known
};

/// Indices of `f` over the unit cube by `n` base points, n (inputs + 2) evaluations: first order after Saltelli et al.
/// 2010 ("Variance based sensitivity analysis of model output", table 2 b), total after Jansen 1999 (table 2 f).
SobolIndices sobol_indices(const std::function<double(std::span<const double>)>& f, std::size_t inputs, std::uint32_t n,
                           Stream luck);

}  // namespace maybough::planner
