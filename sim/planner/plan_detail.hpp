// Each recommended trap on its own: what it catches, what would be lost without it, the next-best spot.
#pragma once

#include <vector>

#include "planner/search.hpp"
#include "planner/trials.hpp"

namespace maybough::planner {

/// The recommended plan with two changed placements for each of its traps.
struct PlanDetail {
    Placement plan;
    std::vector<Placement> without;              ///< [trap]
    std::vector<Placement> elsewhere;            ///< [trap]; the plan itself where no spot is left
    std::vector<std::size_t> next_spot;          ///< [trap]
    std::vector<std::vector<Outcome>> outcomes;  ///< without, then elsewhere: [placement][season], fewer seasons
};

/// The changed placements: next-best options by the surrogate.
PlanDetail detail_of(const Scenario& scenario, const Demand& demand, const std::vector<TrapSetting>& options,
                     const Limits& limits, const Chosen& order, std::size_t traps);

/// The report's trials: the curve's placements on the first part of its seasons, placement `traps`, which is followed,
/// on all of them, and the changed placements on fewer; those outcomes go into `detail`. `weights` ask for the curve's
/// seasons' situations.
Trials report_trials(const Scenario& scenario, const std::vector<Placement>& curve, PlanDetail& detail,
                     std::size_t traps, std::uint32_t seasons, const ChoiceWeights& weights, const Effort& effort,
                     const Progress& progress);

std::vector<PlannedTrap> planned_traps(const Scenario& scenario, const PlanDetail& detail, const Trials& report);

/// Groups of spots that the seasons cannot tell apart at 95 %: a trap's own and its next-best, joined where they share
/// one.
std::vector<std::vector<std::size_t>> tied_spots(const std::vector<PlannedTrap>& traps, std::size_t spots);

}  // namespace maybough::planner
