// Skies, swarms and sites that scout experiments and tests share.
#pragma once

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include "scouts/scouts.hpp"

namespace maybough::experiments::scout_trials {

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

/// Swarm number `n`, hung at noon with a full load of honey. 11 500 bees are 1.42 kg (Villa 2004).
inline Swarm swarm_number(unsigned n, std::int64_t bees = 11500) {
    Swarm swarm;
    swarm.id = swarm_of(ColonyId{n + 1}, 0);
    swarm.day = {130};
    swarm.hour = 12;
    swarm.bees = bees;
    swarm.honey_g = 0.04 * static_cast<double>(bees);
    return swarm;
}

/// A site of score `log_odds` at `distance_m`, come upon `finding` times as often as an ordinary cavity.
inline SiteOffer offer(SiteId id, double distance_m, double log_odds, double finding, const ScoutParameters& p) {
    Cavity ordinary;
    return {id, distance_m, finding * find_weight(ordinary, distance_m, p), log_odds};
}

/// A cavity as the season offers it.
inline SiteOffer offer_of(SiteId id, const Cavity& cavity, double distance_m, const ScoutParameters& p) {
    return {id, distance_m, find_weight(cavity, distance_m, p), site_log_odds(cavity, p)};
}

/// Natural cavities about swarm `n`, `per_km2` of them a square kilometre, in the reach of its scouts.
inline std::vector<SiteOffer> natural_sites(const Chance& chance, unsigned n, double per_km2,
                                            const ScoutParameters& p) {
    Stream stream = chance.stream(Purpose::landscape_cavities, n);
    const double reach_m = search_reach_m(p);
    const auto count_in = [&](double radius_m) { return per_km2 * std::numbers::pi * radius_m * radius_m / 1e6; };
    const double near_m = std::min(reach_m, p.coarse_beyond_m);
    const std::int64_t near = poisson(stream, count_in(near_m));
    const std::int64_t count =
        near + poisson(stream, (count_in(reach_m) - count_in(near_m)) / SiteFinder::coarse_one_in);
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
        const double inner_m = i < near ? 0 : near_m;
        const double outer_m = i < near ? near_m : reach_m;
        const double u = stream.uniform();
        const double distance_m = std::sqrt(inner_m * inner_m + u * (outer_m * outer_m - inner_m * inner_m));
        sites.push_back(offer_of(SiteId{static_cast<std::uint32_t>(i) + 1}, cavity, distance_m, p));
        sites.back().find_weight *= stands_for(distance_m, p);
    }
    return sites;
}

}  // namespace maybough::experiments::scout_trials
