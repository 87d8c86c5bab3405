// How far from the best: a statistical upper limit on what the search missed, from fresh seasons. Pure function on
// data.
#pragma once

#include <vector>

#include "planner/search.hpp"

namespace maybough::planner {

/// Upper 95 % limit of the net worth that the best set has beyond `chosen`, by the surrogate, from independent batches
/// (Mak, Morton and Wood 1999), with the bound of a concave relaxation in the place of each batch's exact maximum:
/// wider, never narrower. The mean gap and its limit.
struct Gap {
    double mean = 0;
    double limit_95 = 0;
    int batches = 0;
};
Gap gap_of(const std::vector<double>& batch_gaps);

/// The gap of one batch against what the search finds on its own seasons: no bound, but what a keeper who knew those
/// seasons would have hung.
double batch_gap_found(const Demand& batch, const Limits& limits, const Chosen& chosen, int exactly);

/// The gap of one batch: the bound on its own seasons less the net worth of `chosen` on them. The climb to the bound
/// begins at `start`.
double batch_gap(const Demand& batch, const Limits& limits, const Chosen& chosen, int count, const Chosen& start);

}  // namespace maybough::planner
