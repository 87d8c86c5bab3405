// One scout alone: choice and time against the exact law of an absorbing chain.
#include <doctest/doctest.h>

#include "scouts/hunts.hpp"

using namespace maybough;
using namespace maybough::test;

namespace {
/// One scout whose first visit is a quorum: the chain search -> found A | found B | nothing, absorbed at the first
/// find.
ScoutParameters one_scout() {
    ScoutParameters p;
    p.scouts_min = 1;
    p.scouts_max = 1;
    p.quorum_outside = 1;
    p.quorum_least = 1;
    p.outside_share = 1;
    p.longest_hunt_days = 1e4;
    p.honey_mg_per_bee_day = 1e-6;
    p.find_chance = 0.05;
    p.early_flights = 0;
    return p;
}
}  // namespace

TEST_CASE("one scout: the choice and the mean time are those of the absorbing chain") {
    const ScoutParameters p = one_scout();
    std::vector<DayOfSky> sky(60);
    for (DayOfSky& day : sky) day.scouting.fill(1);
    const double chance_a = 0.05 * 0.9;
    const double chance_b = 0.05 * 0.3;
    const int swarms = 4000;
    int first = 0;
    double decision_min = 0;
    for (int n = 0; n < swarms; ++n) {
        const std::vector<SiteOffer> sites{{{1}, 420, 0.9, 0}, {{2}, 420, 0.3, 0}};
        const HuntResult result = hunt(swarm_number(static_cast<unsigned>(n)), sites, sky, p, Chance{5, 0});
        REQUIRE(result.outcome == HuntOutcome::moved);
        first += result.site == SiteId{1} ? 1 : 0;
        decision_min += 60 * result.decision_h / swarms;
    }
    // Absorbed in A with a / (a + b); sd of the share sqrt(.75 * .25 / n), z = 4.
    const double share = chance_a / (chance_a + chance_b);
    CHECK(std::abs(first / static_cast<double>(swarms) - share) < 4 * std::sqrt(share * (1 - share) / swarms));
    // Flights until the find are geometric; each vain one costs a flight and a rest; the last half a flight, one visit
    // and the way home. The sd of the time is about that of the vain flights: cycle / chance.
    const double cycle_min = p.search_min + p.rest_min;
    const double flights = 1 / (chance_a + chance_b);
    const double expected_min = p.rest_min + (flights - 1) * cycle_min + p.search_min / 2 + p.first_visit_min + 1;
    CHECK(std::abs(decision_min - expected_min) < 4 * cycle_min * flights / std::sqrt(swarms) + 1);
    // A search chance wrong by a tenth would be seen:
    CHECK(std::abs(1.1 * decision_min - expected_min) > 4 * cycle_min * flights / std::sqrt(swarms) + 1);
}
