// One free cavity's properties, drawn from the laws of trees and of buildings. Private to landscape/.
#pragma once

#include <algorithm>
#include <cmath>

#include "landscape/landscape.hpp"

namespace maybough::landscape {

/// A compass direction in degrees whose density is (1 + 2 lean cos(direction - towards)) / 360 (the cardioid law,
/// Mardia and Jupp 2000, "Directional statistics", section 3.5.5), |lean| <= 0.5. Two draws: a uniform direction is
/// turned about where its chance is low.
template <UniformSource G>
double lean_direction_deg(G& g, double lean, double towards_deg) {
    const double any_deg = 360 * g.uniform();
    const double keep = 0.5 + lean * std::cos((any_deg - towards_deg) * 0.017453292519943295);
    return g.uniform() < keep ? any_deg : std::fmod(any_deg + 180, 360.0);
}

/// Uniform within `half_width` of the mean, cut at 0 and 1. One draw.
template <UniformSource G>
double about(G& g, double mean, double half_width) {
    return std::clamp(mean + half_width * (2 * g.uniform() - 1), 0.0, 1.0);
}

inline double building_share(Habitat habitat, const LandscapeParameters& parameters) {
    if (habitat == Habitat::town) return parameters.building_share_town;
    if (habitat == Habitat::suburb) return parameters.building_share_suburb;
    return parameters.building_share_country;
}

/// A free cavity in this habitat. Eleven draws.
template <UniformSource G>
Cavity draw_cavity(Habitat habitat, const LandscapeParameters& p, bool poleward_south, G& g) {
    const bool building = bernoulli(g, building_share(habitat, p));
    Cavity cavity;
    cavity.volume_l = lognormal(g, p.cavity_volume_l, p.cavity_volume_sd_ln);
    cavity.entrance_area_cm2 = lognormal(g, p.entrance_area_cm2, p.entrance_area_sd_ln);
    cavity.height_m = lognormal(g, building ? p.building_height_m : p.tree_height_m, p.height_sd_ln);
    const double midday_sun_deg = poleward_south ? 0 : 180;
    constexpr double west_deg = 270;
    cavity.facing_deg = building ? lean_direction_deg(g, p.building_facing_lean, west_deg)
                                 : lean_direction_deg(g, p.tree_facing_lean, midday_sun_deg);
    cavity.shade = about(g, building ? p.building_shade : p.tree_shade, p.cavity_half_width);
    cavity.visibility = about(g, building ? p.building_visibility : p.tree_visibility, p.cavity_half_width);
    cavity.dryness = about(g, p.cavity_dryness, p.cavity_half_width);
    cavity.comb = bernoulli(g, p.cavity_comb_chance) ? 1 : 0;
    return cavity;
}

}  // namespace maybough::landscape
