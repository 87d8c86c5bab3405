// A hung trap as the scouts meet it.
#include <algorithm>
#include <cmath>

#include "keeper/keeper.hpp"

namespace maybough::keeper {

namespace {
/// Release of the last vial put in, 1 when fresh, halving every half-life; a trap in the sun is warmer and empties it
/// sooner.
double lure_release(const TrapSeason& trap, double shade, Day day, const KeeperParameters& parameters) {
    const auto after = std::upper_bound(trap.lured_on.begin(), trap.lured_on.end(), day);
    if (after == trap.lured_on.begin()) return 0;
    const int age_days = day - *std::prev(after);
    const double speed = 1 + parameters.lure_sun_speed * (1 - shade);
    return std::exp2(-age_days * speed / parameters.lure_half_life_days);
}
bool worn(const TrapSeason& trap, Wear::Cause cause, Day day) {
    return std::any_of(trap.wear.begin(), trap.wear.end(),
                       [&](const Wear& wear) { return wear.cause == cause && wear.from < day && day <= wear.until; });
}
}  // namespace

Cavity trap_cavity(const TrapSeason& trap, const TrapSetting& setting, const TrapKind& kind, const Spot& spot, Day day,
                   const KeeperParameters& parameters) {
    Cavity cavity;
    cavity.volume_l = kind.volume_l;
    cavity.entrance_area_cm2 = kind.entrance_area_cm2;
    if (worn(trap, Wear::Cause::gnawed, day)) cavity.entrance_area_cm2 *= parameters.gnawed_entrance_ratio;
    cavity.height_m = setting.height_m;
    cavity.facing_deg = setting.facing_deg;
    cavity.shade = std::clamp(spot.shade, 0.0, 1.0);
    cavity.visibility = std::clamp(spot.visibility, 0.0, 1.0);
    cavity.comb = worn(trap, Wear::Cause::spoiled, day) ? 0 : kind.comb;
    cavity.dryness = kind.dryness;
    cavity.lure = lure_release(trap, cavity.shade, day, parameters);
    return cavity;
}

}  // namespace maybough::keeper
