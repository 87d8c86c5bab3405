// First-order Sobol indices from seasons already simulated: no runs beyond the report's own. Pure functions on tables.
#pragma once

#include <vector>

namespace maybough::planner {

/// SeasonShare of the variance between beliefs that one unknown explains alone.
struct FirstOrder {
    double share = 0;  ///< of 1; noise deducted, so that an idle unknown's is 0 on average and may lie below
    double se = 0;     ///< standard error, beliefs left out in groups
};

/// First-order indices (Sobol 1993) of `y`, one value per season, in each of the unknowns. `columns[u]` holds unknown
/// u's value in every season; seasons_per_belief seasons share one. Each unknown's share is what orthogonal
/// polynomials of its rank explain of the beliefs' means beside the straight lines of all the others, less what noise
/// would, in parts of the variance between beliefs. Polynomials after Sudret 2008 ("Global sensitivity
/// analysis using polynomial chaos expansions"), standard error by the delete-a-group jackknife (Shao and Tu 1995, "The
/// jackknife and bootstrap"). Empty where there are too few beliefs to say or no variance between them.
std::vector<FirstOrder> first_order_shares(const std::vector<std::vector<double>>& columns,
                                           const std::vector<double>& y);

}  // namespace maybough::planner
