// Points on the local plane: metres east and north of the area's centre.
#pragma once

#include <cmath>
#include <cstdint>

#include "base/errors.hpp"
#include "base/ids.hpp"

namespace maybough::base {

/// A point in metres east (x) and north (y) of the area's centre.
struct Point {
    double x_m = 0;
    double y_m = 0;
    bool operator==(const Point&) const = default;
};

inline double distance_m(Point a, Point b) {
    return std::hypot(a.x_m - b.x_m, a.y_m - b.y_m);
}

/// Degrees of latitude and longitude, WGS 84.
struct LatLon {
    double latitude_deg = 0;
    double longitude_deg = 0;
    bool operator==(const LatLon&) const = default;
};

/// Whether the seasons are those of the south: the simulated year begins in July, and the midday sun stands north.
inline bool is_southern(const LatLon& place) {
    return place.latitude_deg < 0;
}

/// Side of the square in which two traps may not both stand, since a trap's id is its square.
inline constexpr double trap_square_m = 4.0;

/// The id of a trap site standing at `p`: its 4 m square, so that names and order of spots do not matter.
/// Throws ModelFault beyond 32 km from the centre.
inline SiteId trap_site(Point p) {
    const double column = std::floor(p.x_m / trap_square_m) + 8192;
    const double row = std::floor(p.y_m / trap_square_m) + 8192;
    if (!(column >= 0 && column < 16384 && row >= 0 && row < 16384)) {
        throw ModelFault("a trap stands more than 32 km from the centre");
    }
    return {trap_bit | (static_cast<std::uint32_t>(row) << 14U) | static_cast<std::uint32_t>(column)};
}

}  // namespace maybough::base
