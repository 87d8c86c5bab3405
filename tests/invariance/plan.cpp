// What may not change a whole plan: names and order of spots, and the unit of money.
#include <doctest/doctest.h>

#include <algorithm>

#include "planner/small_scenario.hpp"

using namespace maybough;
using namespace maybough::test;

namespace {
Question three_traps() {
    Question question;
    question.max_traps = 3;
    return question;
}
}  // namespace

TEST_CASE("renaming and reordering spots changes nothing in the plan") {
    const Scenario scenario = small_scenario();
    Scenario turned = scenario;
    std::reverse(turned.spots.begin(), turned.spots.end());
    for (Spot& spot : turned.spots) {
        spot.id = "spot-" + std::to_string(&spot - turned.spots.data());
        spot.name = "";
    }
    const Plan plan = make_plan(scenario, three_traps(), small_effort(7));
    const Plan other = make_plan(turned, three_traps(), small_effort(7));
    CHECK(plan.recommended == other.recommended);
    REQUIRE(plan.curve.size() == other.curve.size());
    for (std::size_t k = 0; k < plan.curve.size(); ++k) {
        CHECK(plan.curve[k].catches.mean == other.curve[k].catches.mean);
        CHECK(plan.curve[k].net.se == other.curve[k].net.se);
        for (std::size_t t = 0; t < k; ++t) {
            CHECK(scenario.spots[plan.curve[k].placement[t].spot].at ==
                  turned.spots[other.curve[k].placement[t].spot].at);
        }
    }
    CHECK(plan.gap_net == other.gap_net);
}

TEST_CASE("doubling all prices leaves the curve's shape and doubles its money") {
    const Scenario scenario = small_scenario();
    Scenario dear = scenario;
    Keeper& keeper = dear.keeper;
    for (double* price : {&keeper.hour_value, &keeper.km_cost, &keeper.lure_cost, &keeper.swarm_value,
                          &keeper.late_swarm_value, &keeper.budget}) {
        *price *= 2;
    }
    for (TrapKind& kind : dear.kinds) kind.cost *= 2;
    const Plan plan = make_plan(scenario, three_traps(), small_effort(8));
    const Plan twice = make_plan(dear, three_traps(), small_effort(8));
    CHECK(plan.recommended == twice.recommended);
    REQUIRE(plan.curve.size() == twice.curve.size());
    for (std::size_t k = 0; k < plan.curve.size(); ++k) {
        CHECK(plan.curve[k].catches.mean == twice.curve[k].catches.mean);
        CHECK(2 * plan.curve[k].net.mean == doctest::Approx(twice.curve[k].net.mean));
        CHECK(2 * plan.curve[k].cost.mean == doctest::Approx(twice.curve[k].cost.mean));
    }
}
