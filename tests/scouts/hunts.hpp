// Hunts for tests: what experiments share, pairs of boxes, and when two hunts are the same.
#pragma once

#include <algorithm>
#include <cmath>
#include <vector>

#include "experiments/hunts.hpp"

namespace maybough::test {

namespace scout_trials = experiments::scout_trials;
using scout_trials::fine_sky;
using scout_trials::offer;
using scout_trials::offer_of;

/// Swarm number `n` of a size that is common in cold countries.
inline Swarm swarm_number(unsigned n, std::int64_t bees = 12000) {
    return scout_trials::swarm_number(n, bees);
}

/// A land of natural cavities of its own for each swarm.
inline std::vector<SiteOffer> natural_sites(unsigned n, double per_km2, const ScoutParameters& p) {
    return scout_trials::natural_sites(Chance{99, n}, 1U, per_km2, p);
}

/// Two boxes offered to `swarms` swarms, the places of the two taken in turn.
struct PairCount {
    int first = 0;
    int second = 0;
    int neither = 0;
    double share() const { return static_cast<double>(first) / std::max(1, first + second); }
    double log_odds() const { return std::log((first + 0.5) / (second + 0.5)); }
};
inline PairCount pair_trial(const Cavity& first, const Cavity& second, int swarms, double finding,
                            const ScoutParameters& p, double distance_m = 200) {
    PairCount count;
    const auto sky = fine_sky(15);
    for (int n = 0; n < swarms; ++n) {
        const bool turned = n % 2 == 1;
        std::vector<SiteOffer> sites{offer_of({trap_bit | 1U}, turned ? second : first, distance_m, p),
                                     offer_of({trap_bit | 2U}, turned ? first : second, distance_m, p)};
        for (SiteOffer& site : sites) site.find_weight *= finding;
        const HuntResult result = hunt(swarm_number(static_cast<unsigned>(n)), sites, sky, p, Chance{8, 0});
        if (result.outcome != HuntOutcome::moved) {
            ++count.neither;
        } else {
            ++((result.site.value == (trap_bit | 1U)) != turned ? count.first : count.second);
        }
    }
    return count;
}

inline bool same(const HuntResult& a, const HuntResult& b) {
    return a.outcome == b.outcome && a.site == b.site && a.arrival_h == b.arrival_h && a.decision_h == b.decision_h &&
           a.scouting_h == b.scouting_h && a.scouts == b.scouts && a.sites_found == b.sites_found &&
           a.sites_danced_for == b.sites_danced_for && a.visitors_of_chosen == b.visitors_of_chosen;
}

}  // namespace maybough::test
