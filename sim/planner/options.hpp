// What the keeper may do: a kind of trap at a spot, facing the best allowed way, at a few heights, between two dates.
#pragma once

#include <vector>

#include "planner/choice.hpp"
#include "planner/demand.hpp"
#include "planner/record.hpp"

namespace maybough::planner {

/// When all traps of a plan hang, how often they are seen, and whether a vial is put in.
struct Regime {
    Day hang{0};
    Day take_down{365};
    int visit_every_days = 7;
    bool lured = true;
    bool operator==(const Regime&) const = default;
};

/// Hanging some weeks before the first swarms and taking down after the last: from the days of simulated swarms.
Regime regime_for(const Scenario& scenario, const std::vector<int>& swarm_days);

/// The allowed facing with the best score; any of eight directions where the spot allows all.
double best_facing_deg(const Spot& spot, const TrapKind& kind, const Scenario& scenario);

/// Heights worth trying: lowest, as high as the hand reaches, middle, highest.
std::vector<double> heights_to_try(const Spot& spot, const KeeperParameters& parameters);

/// One option for each usable spot and kind, in order of place and kind, at the height whose single trap pays best by
/// the surrogate. Two spots within one trap square count as one place.
std::vector<TrapSetting> make_options(const Scenario& scenario, const Regime& regime, const Records& records,
                                      const ChoiceWeights& weights, unsigned threads);

/// The pulls of one setting on every recorded hunt.
std::vector<Draw> draws_of(const Scenario& scenario, const TrapSetting& setting, const Records& records,
                           const ChoiceWeights& weights);

/// The whole problem for the search.
Demand make_demand(const Scenario& scenario, const std::vector<TrapSetting>& options, const Records& records,
                   const ChoiceWeights& weights, unsigned threads);

}  // namespace maybough::planner
