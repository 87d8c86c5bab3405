// Hunts for tests: skies, swarms, and a land of natural cavities drawn for each swarm.
#pragma once

#include <cmath>
#include <numbers>
#include <vector>

#include "scouts/scouts.hpp"

namespace maybough::test {

/// `days` fine days with ten hours fit for scouting, 8 to 18 h.
inline std::vector<DayOfSky> fine_sky(int days) {
    std::vector<DayOfSky> sky(static_cast<std::size_t>(days));
    for (DayOfSky& day : sky) {
        day.sunrise_h = 5;
        day.sunset_h = 19;
        for (std::size_t hour = 8; hour < 18; ++hour) day.scouting[hour] = 1;
    }
    return sky;
}

/// Swarm number `n`, hung at noon with a full load of honey.
inline Swarm swarm_number(unsigned n, std::int64_t bees = 12000) {
    Swarm swarm;
    swarm.id = swarm_of(ColonyId{n + 1}, 0);
    swarm.day = {130};
    swarm.hour = 12;
    swarm.bees = bees;
    swarm.honey_g = 0.04 * static_cast<double>(bees);
    return swarm;
}

/// An offer at `distance_m` found like an ordinary cavity times `finding`, with the score `log_odds`.
inline SiteOffer offer(SiteId id, double distance_m, double log_odds, double finding, const ScoutParameters& p) {
    return {id, distance_m, finding * std::exp(-distance_m / p.search_length_m), log_odds};
}

/// The offer of a cavity as the season makes it.
inline SiteOffer offer_of(SiteId id, const Cavity& cavity, double distance_m, const ScoutParameters& p) {
    return {id, distance_m, find_weight(cavity, distance_m, p), site_log_odds(cavity, p)};
}

/// Natural cavities about swarm `n`, `per_km2` of them a square kilometre, in the reach of its scouts.
inline std::vector<SiteOffer> natural_sites(unsigned n, double per_km2, const ScoutParameters& p) {
    Stream stream = Chance{99, n}.stream(Purpose::landscape_cavities, 1U);
    const double reach_m = search_reach_m(p);
    const std::int64_t count = poisson(stream, per_km2 * std::numbers::pi * reach_m * reach_m / 1e6);
    std::vector<SiteOffer> sites;
    for (std::int64_t i = 0; i < count; ++i) {
        Cavity cavity;
        cavity.volume_l = lognormal(stream, 35, 0.6);
        cavity.entrance_area_cm2 = lognormal(stream, 20, 0.7);
        cavity.height_m = 0.5 + 9 * stream.uniform();
        cavity.facing_deg = 360 * stream.uniform();
        cavity.shade = stream.uniform();
        cavity.comb = stream.uniform() < 0.3 ? 1 : 0;
        cavity.visibility = stream.uniform();
        const double distance_m = reach_m * std::sqrt(stream.uniform());
        sites.push_back(offer_of(SiteId{static_cast<std::uint32_t>(i) + 1}, cavity, distance_m, p));
    }
    return sites;
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
