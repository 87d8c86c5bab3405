// Habitats: point in patch, what lies on top, the raster against the point, forage of a flight range.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "chance/chance.hpp"
#include "lands.hpp"
#include "landscape/habitat_map.hpp"

using namespace maybough;
using namespace maybough::testing;

TEST_CASE("without patches everything is what lies elsewhere") {
    const Land land = plain_land(Habitat::grassland, 1000);
    CHECK(habitat_at(land, {0, 0}) == Habitat::grassland);
    CHECK(habitat_at(land, {1e7, -1e7}) == Habitat::grassland);
}

TEST_CASE("a point lies in the topmost patch, and in exactly one of two that share a border") {
    const Land land = mixed_land();
    CHECK(habitat_at(land, {0, 0}) == Habitat::town);
    CHECK(habitat_at(land, {0, 760}) == Habitat::water);
    CHECK(habitat_at(land, {1800, 1200}) == Habitat::water);
    CHECK(habitat_at(land, {2500, 2000}) == Habitat::woodland);
    CHECK(habitat_at(land, {-1000, -1000}) == Habitat::farmland);

    Land pair = plain_land(Habitat::water, 1000);
    pair.patches = {square_patch(Habitat::town, 0, 0, 100), square_patch(Habitat::suburb, 100, 0, 100)};
    CHECK(habitat_at(pair, {100, 50}) != Habitat::water);
    const bool in_first = inside_ring(pair.patches[0].ring, {100, 50});
    CHECK(in_first != inside_ring(pair.patches[1].ring, {100, 50}));
}

TEST_CASE("a ring with too few corners holds nothing") {
    CHECK_FALSE(inside_ring({}, {0, 0}));
    CHECK_FALSE(inside_ring({{0, 0}}, {0, 0}));
    CHECK_FALSE(inside_ring({{-1, -1}, {1, 1}}, {0.5, 0}));
}

TEST_CASE("direction and starting corner of a ring do not matter") {
    HabitatPatch patch = round_patch(Habitat::town, {40, -30}, 333);
    HabitatPatch turned = patch;
    std::reverse(turned.ring.begin(), turned.ring.end());
    std::rotate(turned.ring.begin(), turned.ring.begin() + 7, turned.ring.end());
    Stream stream = Chance{11, 0}.stream(Purpose::landscape_cavities, 0U);
    for (int i = 0; i < 2000; ++i) {
        const double x_m = 1000 * stream.uniform() - 500;
        const double y_m = 1000 * stream.uniform() - 500;
        CHECK(inside_ring(patch.ring, {x_m, y_m}) == inside_ring(turned.ring, {x_m, y_m}));
    }
}

TEST_CASE("map and raster agree with the single point") {
    const Land land = mixed_land();
    const HabitatMap map(land);
    const HabitatRaster raster(land, -20, -14, 37, 30);
    for (int row = -14; row < 16; ++row) {
        for (int column = -20; column < 17; ++column) {
            const Point p{square_middle_m(column), square_middle_m(row)};
            const Habitat habitat = habitat_at(land, p);
            CHECK(raster.at(column, row) == static_cast<std::uint8_t>(habitat));
            CHECK(map.at(p) == habitat);
        }
    }
}

TEST_CASE("forage is the habitat's own where there is but one, and nothing over water") {
    const LandscapeParameters parameters;
    const ForageMix orchard = forage_mix_at(plain_land(Habitat::orchard, 1000), {17, -23}, parameters);
    CHECK(orchard[static_cast<std::size_t>(Bloom::fruit)] == doctest::Approx(parameters.forage_orchard_fruit));
    CHECK(orchard[static_cast<std::size_t>(Bloom::late)] == doctest::Approx(parameters.forage_orchard_late));
    for (const double share : forage_mix_at(plain_land(Habitat::water, 1000), {0, 0}, parameters)) CHECK(share == 0);
}

TEST_CASE("forage weighs habitats by their area within the flight range") {
    // Half wood, half grass, cut along the y axis: a colony on the border has half of each, up to one square in a row.
    LandscapeParameters parameters;
    Land land = plain_land(Habitat::grassland, 1000);
    land.patches = {square_patch(Habitat::woodland, -20000, -20000, 20000)};
    land.patches.push_back(square_patch(Habitat::woodland, -20000, 0, 20000));
    const ForageMix mix = forage_mix_at(land, {0, 0}, parameters);
    const double half = (parameters.forage_woodland_summer + parameters.forage_grassland_summer) / 2;
    CHECK(mix[static_cast<std::size_t>(Bloom::summer)] == doctest::Approx(half).epsilon(1e-12));
    // Beyond the flight range of the border there is one habitat only.
    const ForageMix east = forage_mix_at(land, {1700, 40}, parameters);
    CHECK(east[static_cast<std::size_t>(Bloom::summer)] == doctest::Approx(parameters.forage_grassland_summer));
}

TEST_CASE("a flight range shorter than a square still gives a mean of what there is") {
    LandscapeParameters parameters;
    parameters.flight_range_m = 250;
    const ForageMix mix = forage_mix_at(plain_land(Habitat::town, 1000), {125, 125}, parameters);
    CHECK(mix[static_cast<std::size_t>(Bloom::summer)] == doctest::Approx(parameters.forage_town_summer));
}
