// Adding a trap never lowers the expected catch of all beyond noise, by the full model.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>

#include "planner/small_scenario.hpp"
#include "planner/trials.hpp"

using namespace maybough;
using namespace maybough::test;

namespace {
/// The first k of `spots`, for k = 0, 1, ...: each placement has a trap more than the one before.
void add_chain(std::vector<Placement>& chains, const Scenario& scenario, const std::array<std::size_t, 8>& spots,
               std::size_t kind) {
    Placement placement;
    chains.push_back(placement);
    for (const std::size_t spot : spots) {
        TrapSetting setting = trap_at(scenario, spot);
        setting.kind = kind;
        placement.push_back(setting);
        chains.push_back(placement);
    }
}
}  // namespace

// 24 steps, each against three standard errors: a step without any effect fails one in 740 times, all of them 3 %.
TEST_CASE("one trap more catches no less in all, in three orders of spots and of kinds") {
    const Scenario scenario = small_scenario();
    REQUIRE(scenario.spots.size() == 8);
    Effort effort = small_effort(1);
    std::vector<Placement> chains;
    add_chain(chains, scenario, {0, 1, 2, 3, 4, 5, 6, 7}, 0);
    add_chain(chains, scenario, {7, 6, 5, 4, 3, 2, 1, 0}, scenario.kinds.size() - 1);
    add_chain(chains, scenario, {3, 0, 6, 5, 1, 7, 2, 4}, 1);
    const Trials trials = run_trials(scenario, chains, 0, 900'000, 100, effort, {});
    int clear_gains = 0;
    double least = 1e300;
    for (std::size_t p = 1; p < chains.size(); ++p) {
        if (chains[p].empty()) continue;  // the next chain's start
        const Estimate more = estimate(trials.difference(p, p - 1, catches_in));
        INFO("chain " << p / 9 << ", trap " << p % 9 << ": " << more.mean << " +- " << more.se);
        CHECK(more.mean >= -3 * more.se);
        clear_gains += more.mean > 2 * more.se ? 1 : 0;
        least = std::min(least, more.mean);
    }
    MESSAGE("clear gains in " << clear_gains << " of 24 steps; the least adds " << least << " swarms");
    CHECK(clear_gains >= 12);  // so that the check above has something to find
}
