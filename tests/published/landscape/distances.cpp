// Distances and directions on the plane against geodesics on the WGS 84 ellipsoid.
// Source: Karney 2013, "Algorithms for geodesics", Journal of Geodesy 87, 43-55; figures printed by its author's
// GeodSolve and CartConvert, version 2.1.2 (GeodSolve -i -p 6).
#include <doctest/doctest.h>

#include <cmath>

#include "landscape/landscape.hpp"

using namespace maybough;

namespace {
struct Pair {
    LatLon from, to;
    double distance_m, azimuth_from_deg, azimuth_to_deg;
};
constexpr Pair pairs[] = {
    {{51.5, -0.12}, {51.5, -0.05}, 4860.835980, 89.97260871, 90.02739129},
    {{38.88, -6.97}, {38.90, -6.95}, 2817.895196, 38.00244252, 38.01499907},
    {{-34.9, -56.16}, {-34.91, -56.15}, 1437.365871, 140.52050635, 140.51478417},
    {{70, 20}, {70.01, 20.03}, 1598.865794, 45.73852814, 45.76671982},
    {{45, 0}, {45.01, 0}, 1111.318751, 0, 0},
    {{0, 0}, {0, 1}, 111319.490793, 90, 90},
};

/// Direction of b from a, degrees from the plane's north towards east.
double bearing_deg(Point a, Point b) {
    const double degrees = std::atan2(b.x_m - a.x_m, b.y_m - a.y_m) * 180 / M_PI;
    return degrees < 0 ? degrees + 360 : degrees;
}
}  // namespace

TEST_CASE("distances on the plane are the ellipsoid's to 4 in 10 000") {
    // Centre at one end: the plane keeps its scale there and is worst at the other end. The largest error is that of
    // the east scale, tan(latitude) times half the step north: 2.4e-4 at 70 degrees over 0.01 degrees.
    for (const Pair& pair : pairs) {
        CAPTURE(pair.from.latitude_deg);
        const LocalPlane plane(pair.from);
        const double metres = distance_m(plane.to_plane(pair.from), plane.to_plane(pair.to));
        CHECK(std::abs(metres / pair.distance_m - 1) < 4e-4);
        // A plane on a sphere of radius 6371.0088 km would be out by 1e-3 or more on most of these.
    }
}

TEST_CASE("distances are ten times better with the centre between the two places") {
    for (const Pair& pair : pairs) {
        const LocalPlane plane({(pair.from.latitude_deg + pair.to.latitude_deg) / 2, pair.from.longitude_deg});
        const double metres = distance_m(plane.to_plane(pair.from), plane.to_plane(pair.to));
        CHECK(std::abs(metres / pair.distance_m - 1) < 1e-6);
    }
}

TEST_CASE("directions on the plane are the mean of the geodesic's two azimuths to 0.02 degrees") {
    // Meridians meet: true north at the two ends differs by up to 0.055 degrees; the plane has one north.
    for (const Pair& pair : pairs) {
        CAPTURE(pair.from.latitude_deg);
        const LocalPlane plane(pair.from);
        const double mean_deg = (pair.azimuth_from_deg + pair.azimuth_to_deg) / 2;
        CHECK(std::abs(bearing_deg(plane.to_plane(pair.from), plane.to_plane(pair.to)) - mean_deg) < 0.02);
    }
}

TEST_CASE("local metres east and north agree with a tangent plane to 4 in 10 000") {
    // CartConvert, origin 51.5 -0.12: 51.51 -0.10 lies 1388.5063 m east and 1112.7689 m north.
    const LocalPlane plane({51.5, -0.12});
    const Point p = plane.to_plane({51.51, -0.10});
    CHECK(std::abs(p.x_m / 1388.5063 - 1) < 4e-4);
    CHECK(std::abs(p.y_m / 1112.7689 - 1) < 4e-4);
}

TEST_CASE("a place 1500 m to the north-east is the one that geodesics give") {
    // Direct problem: 40 -3, azimuth 45, 1500 m gives 40.009551843, -2.987576467. The plane's scale and north turn by
    // up to 2e-4 over that way: 0.3 m, or 4e-6 degrees.
    const LocalPlane plane({40, -3});
    const double leg_m = 1500 / std::sqrt(2.0);
    const LatLon place = plane.to_earth({leg_m, leg_m});
    CHECK(std::abs(place.latitude_deg - 40.009551843) < 4e-6);
    CHECK(std::abs(place.longitude_deg - -2.987576467) < 4e-6);
}
