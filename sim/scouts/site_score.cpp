// How good a cavity is to a swarm, and how easily scouts come upon it.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "scouts/scouts.hpp"

namespace maybough::scouts {

namespace {

/// Flat above the full height; linear in height below it, through the published pair of 5 m and 1 m.
double height_term(double height_m, const ScoutParameters& p) {
    const double span_m = std::max(p.height_full_m - p.height_low_m, 0.1);
    return p.height_log_odds * std::min(0.0, (height_m - p.height_full_m) / span_m);
}

/// 0 facing the midday sun, the whole log-odds less facing away from it, by the cosine between.
double facing_term(double facing_deg, bool poleward_south, const ScoutParameters& p) {
    const double sun_deg = poleward_south ? 0 : 180;
    const double turn_rad = (facing_deg - sun_deg) * std::numbers::pi / 180;
    return p.facing_log_odds * 0.5 * (std::cos(turn_rad) - 1);
}

}  // namespace

double site_log_odds(const Cavity& cavity, const ScoutParameters& p, bool poleward_south) {
    const double volume_ratio_ln = std::log(std::max(cavity.volume_l, 0.1) / p.volume_best_l);
    const double entrance_ratio_ln = std::log(std::max(cavity.entrance_area_cm2, 0.1) / p.entrance_best_cm2);
    const double lure = std::clamp(cavity.lure, 0.0, 1.0);
    return -p.volume_coefficient * volume_ratio_ln * volume_ratio_ln  //
           - p.entrance_coefficient * std::abs(entrance_ratio_ln)     //
           + height_term(cavity.height_m, p)                          //
           + facing_term(cavity.facing_deg, poleward_south, p)        //
           + p.comb_log_odds * cavity.comb * (1 - lure)               //
           + p.lure_log_odds * (1 - p.lure_finding_share) * lure      //
           + p.shade_log_odds * (cavity.shade - 0.5)                  //
           + p.dryness_log_odds * (cavity.dryness - 1);
}

double search_reach_m(const ScoutParameters& p) {
    return p.farthest_find_m;
}

double stands_for(double distance_m, const ScoutParameters& p) {
    return distance_m > p.coarse_beyond_m ? SiteFinder::coarse_one_in : 1;
}

double find_weight(const Cavity& cavity, double distance_m, const ScoutParameters& p) {
    if (!(distance_m < search_reach_m(p))) return 0;
    const double lure = std::clamp(cavity.lure, 0.0, 1.0);
    const double conspicuous_ln =
        std::log(p.visibility_find_ratio) * (cavity.visibility - 0.5) + p.lure_log_odds * p.lure_finding_share * lure;
    // The same search effort over a wider circle is spread thinner: exp(-d / L) integrates to 2 pi L^2 over the plane.
    const auto flights = [&](double length_m) {
        const double thinning = (p.find_length_m / length_m) * (p.find_length_m / length_m);
        return thinning * std::exp(-distance_m / length_m);
    };
    const double near = (1 - p.far_search_share) * flights(p.search_length_m);
    const double far = p.far_search_share > 0 ? p.far_search_share * flights(p.far_search_length_m) : 0;
    return std::exp(conspicuous_ln) * (near + far);
}

std::uint32_t shared_taste(Point at, double log_odds) {
    constexpr double square_m = 100;
    const auto step = [](double value) { return static_cast<std::uint32_t>(static_cast<std::int64_t>(value)); };
    const std::uint32_t column = step(std::floor(at.x_m / square_m)) & 0x3ffU;
    const std::uint32_t row = step(std::floor(at.y_m / square_m)) & 0x3ffU;
    const std::uint32_t score = step(std::floor(16 * log_odds)) & 0x3ffU;
    return trap_bit | (column << 20U) | (row << 10U) | score;
}

}  // namespace maybough::scouts
