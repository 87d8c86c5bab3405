// The local plane: metres from degrees by the ellipsoid's two radii of curvature at the centre.
#include <cmath>
#include <numbers>
#include <string>

#include "landscape/landscape.hpp"

namespace maybough::landscape {

namespace {
// WGS 84: semi-major axis and the square of the first eccentricity, f (2 - f) with f = 1 / 298.257223563.
constexpr double semi_major_m = 6378137.0;
constexpr double flattening = 1 / 298.257223563;
constexpr double eccentricity_squared = flattening * (2 - flattening);
constexpr double radians_per_degree = std::numbers::pi / 180;
}  // namespace

// Radii of curvature in the meridian and in the prime vertical: Snyder 1987, "Map projections: a working manual",
// eqs. 4-18 and 4-20. Good to 1e-3 of a distance within some 50 km of the centre, below 80 degrees of latitude.
LocalPlane::LocalPlane(LatLon centre) : centre_(centre) {
    if (!(std::abs(centre.latitude_deg) <= 85) || !std::isfinite(centre.longitude_deg)) {
        throw ModelFault("a local plane needs a latitude within 85 degrees of the equator, got " +
                         std::to_string(centre.latitude_deg));
    }
    const double latitude_rad = centre.latitude_deg * radians_per_degree;
    const double sine = std::sin(latitude_rad);
    const double w_squared = 1 - eccentricity_squared * sine * sine;
    const double prime_vertical_m = semi_major_m / std::sqrt(w_squared);
    const double meridian_m = prime_vertical_m * (1 - eccentricity_squared) / w_squared;
    metres_per_degree_north_ = meridian_m * radians_per_degree;
    metres_per_degree_east_ = prime_vertical_m * std::cos(latitude_rad) * radians_per_degree;
}

Point LocalPlane::to_plane(LatLon place) const {
    // The short way round, so that an area may lie across the 180th meridian.
    const double east_deg = std::remainder(place.longitude_deg - centre_.longitude_deg, 360.0);
    return {east_deg * metres_per_degree_east_, (place.latitude_deg - centre_.latitude_deg) * metres_per_degree_north_};
}

LatLon LocalPlane::to_earth(Point point) const {
    const double longitude_deg = centre_.longitude_deg + point.x_m / metres_per_degree_east_;
    return {centre_.latitude_deg + point.y_m / metres_per_degree_north_,
            std::abs(longitude_deg) <= 180 ? longitude_deg : std::remainder(longitude_deg, 360.0)};
}

}  // namespace maybough::landscape
