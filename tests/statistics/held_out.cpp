// The recommended places against rules of thumb, on seasons that chose nothing.
#include <doctest/doctest.h>

#include "planner/planner.hpp"

using namespace maybough;

// 160 seasons under another seed. The paired differences have standard errors near 0.2 swarms there; a margin counts as
// resolved from two of them on.
TEST_CASE("planned places catch more than the same number spread evenly, at random or by the apiaries") {
    const Scenario scenario = read_scenario(MAYBOUGH_SOURCE_DIR "/scenarios/brindle-ferry");
    Effort effort;
    effort.threads = machine_threads();
    effort.record_seasons = 40;
    effort.confirm_seasons = 40;
    Question question;
    question.exactly = 4;
    const Plan plan = make_plan(scenario, question, effort);
    REQUIRE(plan.traps.size() == 4);
    Placement planned;
    for (const PlannedTrap& trap : plan.traps) planned.push_back(trap.setting);
    std::vector<NamedPlacement> sides{{"planned", planned}};
    for (NamedPlacement& rule : rules_of_thumb(scenario, 4, planned.front().kind, 1)) {
        // The rule is about the place alone: days, visits and lure are the plan's.
        for (TrapSetting& setting : rule.placement) {
            setting.hang = planned.front().hang;
            setting.take_down = planned.front().take_down;
            setting.visit_every_days = planned.front().visit_every_days;
            setting.lured = planned.front().lured;
        }
        sides.push_back(std::move(rule));
    }
    Effort fresh = effort;
    fresh.seed = 77;
    fresh.confirm_seasons = 160;
    for (const ComparedPlacement& side : compare_placements(scenario, sides, fresh)) {
        if (side.name == "planned") continue;
        INFO(side.name << ": " << side.catches_less_first.mean << " +- " << side.catches_less_first.se);
        if (side.name == "spread evenly" || side.name == "at random" || side.name == "nearest the apiaries") {
            CHECK(side.catches_less_first.mean < -2 * side.catches_less_first.se);
        } else {
            CHECK(side.catches_less_first.mean < 2 * side.catches_less_first.se);
        }
    }
}
