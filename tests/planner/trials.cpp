// Replicates kept from one set of trials to the next change no number and save hunts.
#include "planner/trials.hpp"

#include <doctest/doctest.h>

#include "small_scenario.hpp"

using namespace maybough;

namespace {
Placement traps_at(const Scenario& scenario, const std::vector<std::size_t>& spots) {
    Placement placement;
    for (const std::size_t spot : spots) placement.push_back(test::trap_at(scenario, spot));
    return placement;
}

bool alike(const Trials& a, const Trials& b) {
    for (std::size_t p = 0; p < a.outcomes.size(); ++p) {
        for (auto* of : {catches_in, value_in, cost_in, hours_in}) {
            if (a.long_column(p, of) != b.long_column(p, of)) return false;
        }
    }
    return a.swarm_days == b.swarm_days && a.outcomes.size() == b.outcomes.size();
}
}  // namespace

TEST_CASE("trials on kept replicates are the same to the bit, in any order, and run fewer hunts") {
    const Scenario scenario = test::small_scenario();
    const Effort effort = test::small_effort(3);
    const std::vector<Placement> first{traps_at(scenario, {0, 1, 2}), traps_at(scenario, {0})};
    const std::vector<Placement> second{traps_at(scenario, {0, 1}), traps_at(scenario, {1, 2, 5})};
    KeptReplicates kept(first_confirm_season, 6);  // two of the eight seasons are not kept
    const auto lived = [&](const std::vector<Placement>& placements, KeptReplicates* with) {
        return run_trials(scenario, placements, 0, first_confirm_season, 8, effort, {}, nullptr, with);
    };
    const Trials before = lived(first, &kept);
    const Trials after = lived(second, &kept);
    const Trials alone = lived(second, nullptr);
    CHECK(alike(before, lived(first, nullptr)));
    CHECK(alike(after, alone));
    CHECK(after.asked == alone.asked);
    CHECK(2 * after.run < alone.run);
    CHECK(kept.place(first_confirm_season + 5) != nullptr);
    CHECK(kept.place(first_confirm_season + 6) == nullptr);
    CHECK(kept.place(first_confirm_season - 1) == nullptr);
}
