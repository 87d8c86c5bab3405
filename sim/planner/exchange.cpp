// Exchanges: one member of a set for whatever does better in its stead.
#include <algorithm>
#include <cmath>

#include "planner/build.hpp"

namespace maybough::planner {

namespace {
/// Options that may take the place of `member`: any, or those of its own place where that has to be used.
std::vector<std::size_t> in_stead_of(const Demand& demand, std::size_t member) {
    std::vector<std::size_t> allowed;
    for (std::size_t j = 0; j < demand.options.size(); ++j) {
        const bool same_place = demand.options[j].place == demand.options[member].place;
        if (!demand.options[member].must || same_place) allowed.push_back(j);
    }
    return allowed;
}

/// One pass over the set: each member goes if another does better in its stead. True where anything changed.
bool exchange_once(const Demand& demand, Build& build, Judge judge, Count count) {
    bool changed = false;
    // The first member goes out and the better one comes in last, so that all have had their turn after one round.
    for (std::size_t turns = build.chosen().size(); turns > 0; --turns) {
        const std::size_t member = build.chosen().front();
        const double before = build.score(judge);
        const double least = least_relative_gain * (1 + std::abs(before));
        build.remove(0);
        const double without = build.score(judge);
        const auto best = best_addition(demand, build, judge, in_stead_of(demand, member), nullptr);
        const bool may_drop = count == Count::free && !demand.options[member].must;
        if (may_drop && without > before + least && (!best || best->judged <= 0)) {
            changed = true;
        } else if (best && without + best->judged > before + least) {
            build.add(best->option);
            changed = true;
        } else {
            build.add(member);
        }
    }
    return changed;
}
}  // namespace

Chosen exchange(const Demand& demand, const Limits& limits, Chosen chosen, Count count, Judge judge, int sweeps) {
    Build build(demand, limits);
    for (const std::size_t j : chosen) build.add(j);
    for (int sweep = 0; sweep < sweeps; ++sweep) {
        bool changed = exchange_once(demand, build, judge, count);
        while (count == Count::free && !build.full()) {
            const auto best = best_addition(demand, build, judge, all_of(demand), nullptr);
            if (!best || best->judged <= least_relative_gain * (1 + std::abs(build.score(judge)))) break;
            build.add(best->option);
            changed = true;
        }
        if (!changed) break;
    }
    return build.chosen();
}

}  // namespace maybough::planner
