// Whole plans on a small area: what the keeper asks for is kept, and the parts of a plan fit together.
#include <doctest/doctest.h>

#include "planner/small_scenario.hpp"

using namespace maybough;
using namespace maybough::test;

namespace {
const CurvePoint& chosen(const Plan& plan) {
    return plan.curve.at(static_cast<std::size_t>(plan.recommended));
}

bool uses(const Placement& placement, std::size_t spot) {
    return std::any_of(placement.begin(), placement.end(), [&](const TrapSetting& t) { return t.spot == spot; });
}
}  // namespace

TEST_CASE("a plan of just so many traps, with a must-spot and one that may not be used") {
    Scenario scenario = small_scenario();
    scenario.spots[7].must = true;
    scenario.spots[0].never = true;
    Question question;
    question.exactly = 2;
    question.max_traps = 3;
    const Plan plan = make_plan(scenario, question, small_effort(1));
    REQUIRE(plan.recommended == 2);
    REQUIRE(plan.curve.size() == 4);
    REQUIRE(plan.traps.size() == 2);
    CHECK(uses(chosen(plan).placement, 7));
    for (const CurvePoint& point : plan.curve) CHECK_FALSE(uses(point.placement, 0));
    CHECK(plan.curve.front().catches.mean == 0);
    CHECK(plan.curve.front().net.mean == 0);
    // Own catches of the traps add up to the plan's, season by season, so in the mean.
    CHECK(plan.traps[0].catches.mean + plan.traps[1].catches.mean == doctest::Approx(chosen(plan).catches.mean));
    for (const PlannedTrap& trap : plan.traps) {
        REQUIRE(trap.next_spot < scenario.spots.size());
        CHECK_FALSE(uses(chosen(plan).placement, trap.next_spot));
        CHECK(trap.next_spot != 0);
    }
    CHECK(plan.gap_found_net <= plan.gap_net + 1e-9);
    CHECK(plan.bound_catches >= plan.search_catches - 1e-9);
    REQUIRE_FALSE(plan.tried.empty());
    for (const TriedDesign& tried : plan.tried) CHECK(tried.placement.size() == 2);
    CHECK(plan.tried.front().placement.size() == 2);
    CHECK(plan.hunts_run < plan.hunts_asked);
}

TEST_CASE("a budget and hours are kept at every point of the curve, and owned traps cost only work") {
    Scenario scenario = small_scenario();
    for (TrapKind& kind : scenario.kinds) kind.owned = 0;
    Question question;
    question.max_traps = 4;
    question.budget = 120;
    question.hours = 14;
    const Plan plan = make_plan(scenario, question, small_effort(2));
    for (const CurvePoint& point : plan.curve) {
        CHECK(point.outlay <= question.budget + 1e-9);
        // Hours count the taking of what comes, foretold by the surrogate: within a tenth on fresh seasons.
        CHECK(point.hours <= 1.1 * question.hours);
    }
    REQUIRE(plan.curve.size() > 1);
    CHECK(plan.curve.size() < 5);
    CHECK(plan.curve[1].outlay > scenario.keeper.lure_cost);
    for (TrapKind& kind : scenario.kinds) kind.owned = 4;
    const Plan owned = make_plan(scenario, question, small_effort(2));
    for (const CurvePoint& point : owned.curve) {
        CHECK(point.outlay <= scenario.keeper.lure_cost * point.traps + 1e-9);
    }
}

TEST_CASE("the fewest traps with odds of at least so many swarms") {
    const Scenario scenario = small_scenario();
    Question question;
    question.max_traps = 4;
    question.at_least_swarms = 1;
    question.at_least_odds = 0.5;
    const Plan plan = make_plan(scenario, question, small_effort(3));
    REQUIRE(plan.recommended >= 1);
    const TriedDesign& taken = plan.tried.front();
    CHECK(static_cast<int>(taken.placement.size()) == plan.recommended);
    // No design with fewer traps was taken although it reached the odds: all smaller ones caught less.
    for (const TriedDesign& tried : plan.tried) {
        if (tried.placement.size() < taken.placement.size()) CHECK(tried.catches.mean < taken.catches.mean);
        CHECK(tried.left);  // nobody drops out of a contest for odds
    }
    question.at_least_swarms = 300;
    CHECK(make_plan(scenario, question, small_effort(3)).recommended == 4);  // out of reach: all that are allowed
}

TEST_CASE("rules of thumb and comparison: as many traps, on usable spots, paired with the first") {
    Scenario scenario = small_scenario();
    scenario.spots[2].never = true;
    const std::vector<NamedPlacement> rules = rules_of_thumb(scenario, 3, 1, 5);
    REQUIRE(rules.size() >= 3);
    for (const NamedPlacement& rule : rules) {
        CHECK(rule.placement.size() == 3);
        CHECK_FALSE(uses(rule.placement, 2));
        for (const TrapSetting& trap : rule.placement) CHECK(trap.kind == 1);
    }
    std::vector<NamedPlacement> sides{rules[0], rules[0], {"none", {}}};
    const std::vector<ComparedPlacement> compared = compare_placements(scenario, sides, small_effort(4));
    REQUIRE(compared.size() == 3);
    CHECK(compared[1].net_less_first.mean == 0);
    CHECK(compared[1].odds_better_than_first == 0.5);
    CHECK(compared[2].net.mean == 0);
    CHECK(compared[2].net_less_first.mean == doctest::Approx(-compared[0].net.mean));
    CHECK(compared[2].catches_less_first.mean == doctest::Approx(-compared[0].catches.mean));
}
