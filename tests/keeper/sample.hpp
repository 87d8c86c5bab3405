// One spot, kind, keeper and setting that several tests start from.
#pragma once

#include "keeper/keeper.hpp"

namespace maybough::testing {

inline Spot sample_spot() {
    Spot spot;
    spot.id = "oak";
    spot.at = {120, -340};
    spot.min_height_m = 1;
    spot.max_height_m = 5;
    spot.shade = 0.6;
    spot.visibility = 0.7;
    spot.minutes_to_reach = 6;
    spot.drive_km = 1.5;
    return spot;
}

inline TrapKind sample_kind() {
    TrapKind kind;
    kind.id = "nuc";
    kind.volume_l = 30;
    kind.cost = 40;
    kind.build_hours = 2;
    kind.seasons_life = 8;
    kind.transfer_hours = 0.3;
    kind.comb = 1;
    kind.dryness = 0.9;
    kind.mass_kg = 5;
    return kind;
}

inline TrapSetting sample_setting() {
    TrapSetting setting;
    setting.height_m = 2;
    setting.facing_deg = 135;
    setting.hang = {98};
    setting.take_down = {210};
    setting.visit_every_days = 7;
    return setting;
}

/// Mishaps switched off, to look at the rest alone.
inline KeeperParameters no_mishaps() {
    KeeperParameters parameters;
    parameters.tenant_per_100_days = 0;
    parameters.damage_per_100_days = 0;
    parameters.theft_per_100_days = 0;
    parameters.gnaw_per_100_days = 0;
    parameters.moths_per_100_days = 0;
    return parameters;
}

}  // namespace maybough::testing
