// What the stages of a plan hand on to one another: private to the planner.
#pragma once

#include "planner/options.hpp"
#include "planner/search.hpp"

namespace maybough::planner {

/// What the stages hand on.
struct Work {
    const Scenario& scenario;
    const Question& question;
    const Effort& effort;
    Limits limits;
    Records records;
    ChoiceWeights weights{};
    Regime regime;
    double worth_factor = 1;  ///< full model over surrogate
    std::vector<TrapSetting> options;
    Demand demand;
    Found found;
};

Placement placement_of(const Work& work, const Chosen& chosen);

Chosen first_of(const Chosen& order, std::size_t traps);

/// The search problem of other seasons: the situations of seasons `from` up to `until`, counted from `first`.
Demand demand_on(const Work& work, const std::vector<TrapSetting>& options, const std::vector<SwarmCase>& situations,
                 std::uint32_t first, std::uint32_t from, std::uint32_t until);

/// Tries designs in full on at most `seasons` seasons of their own, and settles the order of traps and how many are
/// best; what was tried, and the surrogate's level, go into `plan`.
void choose(Work& work, Plan& plan, std::uint32_t seasons, const Progress& progress);

}  // namespace maybough::planner
