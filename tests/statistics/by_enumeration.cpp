// The plan of two traps against every pair of spots by the full model.
#include <doctest/doctest.h>

#include "planner/small_scenario.hpp"
#include "planner/trials.hpp"

using namespace maybough;
using namespace maybough::test;

namespace {
/// One kind, one height and one facing at each of eight spots, so that a placement is a set of spots.
Scenario spots_alone() {
    Scenario scenario = small_scenario();
    scenario.kinds = {scenario.kinds.back()};
    for (Spot& spot : scenario.spots) {
        spot.min_height_m = spot.max_height_m;
        spot.facings_deg = {spot.facings_deg.empty() ? 180.0 : spot.facings_deg.front()};
    }
    return scenario;
}

std::vector<Placement> pairs_of(const Scenario& scenario, const TrapSetting& regime) {
    const auto at = [&](std::size_t spot) {
        TrapSetting setting = regime;
        setting.spot = spot;
        setting.height_m = scenario.spots[spot].max_height_m;
        setting.facing_deg = scenario.spots[spot].facings_deg.front();
        return setting;
    };
    std::vector<Placement> pairs;
    for (std::size_t a = 0; a < scenario.spots.size(); ++a) {
        for (std::size_t b = a + 1; b < scenario.spots.size(); ++b) pairs.push_back({at(a), at(b)});
    }
    return pairs;
}

bool same_spots(const Placement& a, const Placement& b) {
    return (a[0].spot == b[0].spot && a[1].spot == b[1].spot) || (a[0].spot == b[1].spot && a[1].spot == b[0].spot);
}

/// Mean net worth over some seasons, even or odd blocks.
double net_in_half(const Trials& trials, std::size_t pair, std::size_t half) {
    const std::vector<double> all = trials.column(pair, net_in);
    std::vector<double> some;
    for (std::size_t s = 0; s < all.size(); ++s) {
        if (s / seasons_per_block % 2 == half) some.push_back(all[s]);
    }
    return estimate(some).mean;
}
}  // namespace

TEST_CASE("the plan of two traps is the best of all pairs by the full model, as far as 320 seasons can tell") {
    const Scenario scenario = spots_alone();
    Effort effort = small_effort(1);
    effort.record_seasons = 200;
    effort.confirm_seasons = 400;
    Question question;
    question.exactly = 2;
    const Plan plan = make_plan(scenario, question, effort);
    REQUIRE(plan.traps.size() == 2);
    const Placement planned{plan.traps[0].setting, plan.traps[1].setting};

    const std::vector<Placement> pairs = pairs_of(scenario, planned.front());
    const Trials trials = run_trials(scenario, pairs, 0, 910'000, 320, effort, {});
    std::size_t own = pairs.size();
    std::size_t best = 0;
    std::size_t worst = 0;
    std::vector<double> nets;
    for (std::size_t p = 0; p < pairs.size(); ++p) {
        nets.push_back(estimate(trials.column(p, net_in)).mean);
        if (same_spots(pairs[p], planned)) own = p;
        if (nets[p] > nets[best]) best = p;
        if (nets[p] < nets[worst]) worst = p;
    }
    REQUIRE(own < pairs.size());
    int ahead = 0;
    for (const double net : nets) ahead += net > nets[own] ? 1 : 0;
    // A winner picked on one half of the seasons is judged on the other, so that its luck does not count.
    double behind = 0;
    for (std::size_t half = 0; half < 2; ++half) {
        std::size_t winner = 0;
        for (std::size_t p = 0; p < pairs.size(); ++p) {
            if (net_in_half(trials, p, half) > net_in_half(trials, winner, half)) winner = p;
        }
        behind += 0.5 * (net_in_half(trials, winner, 1 - half) - net_in_half(trials, own, 1 - half));
    }
    const Estimate to_best = estimate(trials.difference(best, own, net_in));
    const Estimate to_worst = estimate(trials.difference(own, worst, net_in));
    MESSAGE(ahead << " of 27 pairs came out ahead; behind the halves' winners by " << behind << ", behind the best by "
                  << to_best.mean << " +- " << to_best.se << ", ahead of the worst by " << to_worst.mean << " +- "
                  << to_worst.se);
    // The best of 28 is picked for its luck too, so two errors of one difference are a strict bar for the plan; the
    // worst pair shows that there is something to find.
    CHECK(to_best.mean <= 2 * to_best.se);
    CHECK(behind <= 2 * to_best.se);
    CHECK(to_worst.mean > 4 * to_worst.se);
}
