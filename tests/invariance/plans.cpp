// What a plan may not depend on: the names and the order of spots; and the coin in which prices are told.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <utility>

#include "planner/small_scenario.hpp"

using namespace maybough;
using namespace maybough::test;

namespace {

using Site = std::pair<double, double>;

std::set<Site> sites_of(const Scenario& scenario, const Plan& plan) {
    std::set<Site> sites;
    for (const PlannedTrap& trap : plan.traps) {
        const Point at = scenario.spots[trap.setting.spot].at;
        sites.insert({at.x_m, at.y_m});
    }
    return sites;
}

const Scenario& as_given() {
    static const Scenario scenario = small_scenario();
    return scenario;
}

const Plan& plan_as_given() {
    static const Plan plan = make_plan(as_given(), {}, small_effort(1));
    return plan;
}

}  // namespace

TEST_CASE("other names and another order of spots leave the plan as it is") {
    Scenario turned = as_given();
    std::reverse(turned.spots.begin(), turned.spots.end());
    for (std::size_t i = 0; i < turned.spots.size(); ++i) turned.spots[i].id = turned.spots[i].name = std::to_string(i);
    const Plan plan = make_plan(turned, {}, small_effort(1));
    CHECK(plan_as_given().recommended > 0);
    CHECK(plan.recommended == plan_as_given().recommended);
    CHECK(sites_of(turned, plan) == sites_of(as_given(), plan_as_given()));
    REQUIRE(plan.curve.size() == plan_as_given().curve.size());
    for (std::size_t k = 0; k < plan.curve.size(); ++k) {
        CHECK(plan.curve[k].catches.mean == doctest::Approx(plan_as_given().curve[k].catches.mean).epsilon(1e-9));
    }
}

TEST_CASE("prices and worths told in a coin of half the value leave traps and catches as they are") {
    Scenario dearer = as_given();
    Keeper& keeper = dearer.keeper;
    for (double* price : {&keeper.hour_value, &keeper.km_cost, &keeper.lure_cost, &keeper.swarm_value,
                          &keeper.late_swarm_value, &keeper.budget}) {
        *price *= 2;
    }
    for (TrapKind& kind : dearer.kinds) kind.cost *= 2;
    const Plan plan = make_plan(dearer, {}, small_effort(1));
    CHECK(sites_of(dearer, plan) == sites_of(as_given(), plan_as_given()));
    REQUIRE(plan.curve.size() == plan_as_given().curve.size());
    for (std::size_t k = 0; k < plan.curve.size(); ++k) {
        const CurvePoint& before = plan_as_given().curve[k];
        CHECK(plan.curve[k].catches.mean == doctest::Approx(before.catches.mean).epsilon(1e-9));
        CHECK(plan.curve[k].net.mean == doctest::Approx(2 * before.net.mean).epsilon(1e-9));
    }
}
