// The local plane: there and back, both hemispheres, across the 180th meridian.
#include <doctest/doctest.h>

#include <cmath>

#include "landscape/landscape.hpp"

using namespace maybough;

TEST_CASE("the plane takes a place to metres and back") {
    for (const LatLon centre : {LatLon{46.8, -6.0}, LatLon{-38.5, 172.0}, LatLon{0, 0}, LatLon{70, 20}}) {
        const LocalPlane plane(centre);
        CHECK(plane.to_plane(centre) == Point{0, 0});
        const Point p{-1234.5, 2345.25};
        const Point back = plane.to_plane(plane.to_earth(p));
        CHECK(back.x_m == doctest::Approx(p.x_m).epsilon(1e-9));
        CHECK(back.y_m == doctest::Approx(p.y_m).epsilon(1e-9));
        CHECK(plane.to_earth({1000, 0}).longitude_deg > centre.longitude_deg);
        CHECK(plane.to_earth({0, 1000}).latitude_deg > centre.latitude_deg);
    }
}

TEST_CASE("an area may lie across the 180th meridian") {
    const LocalPlane plane({-17, 179.99});
    const Point east = plane.to_plane({-17, -179.99});
    CHECK(east.x_m == doctest::Approx(0.02 / 360 * 2 * M_PI * 6378137 * std::cos(17 * M_PI / 180)).epsilon(2e-3));
    CHECK(plane.to_earth(east).longitude_deg == doctest::Approx(-179.99));
}

TEST_CASE("a plane near a pole is refused") {
    CHECK_THROWS_AS(LocalPlane({89, 0}), ModelFault);
    CHECK_THROWS_AS(LocalPlane({NAN, 0}), ModelFault);
}
