// Honesty of printed numbers on the full model: coverage of 95 % intervals.
#include <doctest/doctest.h>

#include <cmath>

#include "planner/small_scenario.hpp"
#include "planner/trials.hpp"

using namespace maybough;
using namespace maybough::test;

namespace {
/// Traps on every second spot of the small area, and one fewer.
std::vector<Placement> two_placements(const Scenario& scenario) {
    Placement placement;
    for (std::size_t i = 0; i < scenario.spots.size(); i += 2) {
        TrapSetting setting;
        setting.spot = i;
        setting.kind = scenario.kinds.size() - 1;
        setting.height_m = scenario.spots[i].min_height_m;
        setting.hang = {95};
        setting.take_down = {220};
        placement.push_back(setting);
    }
    Placement fewer = placement;
    fewer.pop_back();
    return {placement, fewer};
}
}  // namespace

TEST_CASE("printed 95 % intervals of catch, net and a paired difference cover the truth in 90 to 99 % of 200 runs") {
    const Scenario scenario = small_scenario();
    Effort effort;
    effort.threads = machine_threads();
    constexpr std::uint32_t bank_beliefs = 150;
    const Trials bank =
        run_trials(scenario, two_placements(scenario), 0, 700'000, bank_beliefs * seasons_per_belief, effort, {});
    // Runs draw beliefs from a bank of fully simulated ones, so that the truth is the bank's mean.
    constexpr int runs = 200;
    constexpr std::uint32_t beliefs = 24;
    const std::vector<std::vector<double>> columns{bank.column(0, catches_in), bank.column(0, net_in),
                                                   bank.difference(0, 1, catches_in)};
    for (const std::vector<double>& column : columns) {
        const double truth = estimate(column).mean;
        int covered = 0;
        for (std::uint32_t run = 0; run < runs; ++run) {
            Stream luck = Chance{53, run}.stream(Purpose::planner_bootstrap, 0U);
            std::vector<double> values;
            for (std::uint32_t b = 0; b < beliefs; ++b) {
                const auto belief = static_cast<std::size_t>(luck.uniform() * bank_beliefs);
                for (std::size_t s = 0; s < seasons_per_belief; ++s) {
                    values.push_back(column[belief * seasons_per_belief + s]);
                }
            }
            const Estimate e = estimate(values);
            covered += std::abs(e.mean - truth) <= e.half_width_95 ? 1 : 0;
        }
        CHECK(covered >= 180);
        CHECK(covered <= 198);
    }
}
