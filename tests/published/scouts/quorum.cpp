// Speed against accuracy: Passino and Seeley 2006, "Modeling and analysis of nest-site selection by honeybee swarms:
// the speed and accuracy trade-off". The shape claims, with our scouts: a higher quorum takes longer and chooses better
// up to a point. Sites alike in finding, of six qualities in equal steps.
#include <doctest/doctest.h>

#include <cmath>

#include "scouts/hunts.hpp"

using namespace maybough;
using namespace maybough::test;

namespace {

struct Accuracy {
    double best = 0;   ///< share of hunts in the best site
    double hours = 0;  ///< mean scouting hours
};

Accuracy hunt_with(double quorum, double decay_runs, int hunts) {
    ScoutParameters p;
    p.quorum_outside = quorum;
    p.quorum_least = quorum;
    p.decay_runs = decay_runs;
    p.taste_sd = 0;  // the paper's sites differ in nothing but quality
    const auto sky = fine_sky(15);
    Accuracy accuracy;
    for (int n = 0; n < hunts; ++n) {
        std::vector<SiteOffer> sites;
        for (std::uint32_t i = 0; i < 6; ++i) {
            sites.push_back(offer({i}, 250, 0.5 * ((i + static_cast<std::uint32_t>(n)) % 6) - 1.5, 2, p));
        }
        const HuntResult result = hunt(swarm_number(static_cast<unsigned>(n)), sites, sky, p, Chance{2006, 0});
        accuracy.hours += result.scouting_h / hunts;
        if (result.outcome != HuntOutcome::moved) continue;
        accuracy.best += (result.site.value + static_cast<std::uint32_t>(n)) % 6 == 5 ? 1.0 / hunts : 0;
    }
    return accuracy;
}

}  // namespace

TEST_CASE("Passino and Seeley 2006: quorum against accuracy and time") {
    double hours = 0;
    std::vector<Accuracy> by_quorum;
    for (const double quorum : {1.0, 3.0, 5.0, 10.0, 15.0, 20.0}) {
        by_quorum.push_back(hunt_with(quorum, 15, 150));
        MESSAGE("quorum " << quorum << ": best " << by_quorum.back().best << ", hours " << by_quorum.back().hours);
        CHECK(by_quorum.back().hours > hours);
        hours = by_quorum.back().hours;
    }
    // Chance is 1/6. The share rises from a quorum of 1 to one of 10; s.e. of a difference sqrt(2 * .25 / 150) = 0.058.
    CHECK(by_quorum[3].best - by_quorum[0].best > 2 * 0.058);
    CHECK(std::abs(by_quorum[4].best - by_quorum[3].best) < 4 * 0.058);  // flat near the natural quorum
}

TEST_CASE("Passino and Seeley 2006: dances that fade slowly decide sooner, and worse") {
    const Accuracy slow = hunt_with(15, 3, 300);
    const Accuracy natural = hunt_with(15, 15, 300);
    MESSAGE("decay 3: best " << slow.best << ", hours " << slow.hours << "; 15: " << natural.best << ", "
                             << natural.hours);
    CHECK(slow.hours < natural.hours);
    CHECK(natural.best - slow.best > 0.04);  // one s.e. of the difference: sqrt(2 * .25 / 300)
}
