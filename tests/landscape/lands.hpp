// Small lands that several tests share.
#pragma once

#include <cmath>

#include "landscape/landscape.hpp"

namespace maybough::testing {

inline HabitatPatch square_patch(Habitat habitat, double west_m, double south_m, double side_m) {
    return {habitat,
            "",
            {{west_m, south_m},
             {west_m + side_m, south_m},
             {west_m + side_m, south_m + side_m},
             {west_m, south_m + side_m}}};
}

/// A round lake is hard to cut into squares: 36 corners.
inline HabitatPatch round_patch(Habitat habitat, Point middle, double radius_m) {
    HabitatPatch patch{habitat, "", {}};
    for (int i = 0; i < 36; ++i) {
        const double angle = 2 * M_PI * i / 36;
        patch.ring.push_back({middle.x_m + radius_m * std::cos(angle), middle.y_m + radius_m * std::sin(angle)});
    }
    return patch;
}

/// Town by a river, wood, orchard and a lake in farmland.
inline Land mixed_land() {
    Land land;
    land.centre = {46.8, -6};
    land.radius_m = 2000;
    land.elsewhere = Habitat::farmland;
    land.patches = {
        square_patch(Habitat::town, -700, -650, 1300),
        square_patch(Habitat::woodland, 900, 300, 2100),
        square_patch(Habitat::orchard, -2600, -2500, 1250),
        {Habitat::water, "river", {{-9000, 760}, {-1000, 690}, {9000, 900}, {9000, 1010}, {-1000, 810}, {-9000, 860}}},
        round_patch(Habitat::water, {1800, 1200}, 410)};
    return land;
}

/// One habitat everywhere.
inline Land plain_land(Habitat habitat, double radius_m) {
    Land land;
    land.centre = {46.8, -6};
    land.radius_m = radius_m;
    land.elsewhere = habitat;
    return land;
}

}  // namespace maybough::testing
