// The drawn land against published spacings, occupancy and numbers of sites within a swarm's reach.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "landscape/landscape.hpp"

using namespace maybough;

namespace {
Land wood(double radius_m) {
    Land land;
    land.centre = {46.8, -6};
    land.radius_m = radius_m;
    land.elsewhere = Habitat::woodland;
    return land;
}

struct Spacing {
    double mean_m = 0;
    int nests = 0;
};

/// Mean distance to the nearest other nest, over nests at least `border_m` inside the drawn disc.
Spacing nearest_neighbours(const LandscapeParameters& parameters, double border_m, std::uint32_t seed) {
    Spacing spacing;
    for (std::uint32_t replicate = 0; replicate < 30; ++replicate) {
        const Land land = wood(8000);
        const DrawnLand drawn = draw_land(land, {}, parameters, Chance{seed, replicate});
        for (const DrawnColony& nest : drawn.colonies) {
            if (std::hypot(nest.at.x_m, nest.at.y_m) > land.radius_m + parameters.margin_m - border_m) continue;
            double nearest_m = std::numeric_limits<double>::infinity();
            for (const DrawnColony& other : drawn.colonies) {
                if (other.id != nest.id) nearest_m = std::min(nearest_m, distance_m(nest.at, other.at));
            }
            spacing.mean_m += nearest_m;
            ++spacing.nests;
        }
    }
    spacing.mean_m /= spacing.nests;
    return spacing;
}
}  // namespace

// Clark and Evans 1954, "Distance to nearest neighbor as a measure of spatial relationships in populations", Ecology
// 35, 445-453: mean 1 / (2 sqrt(density)), standard error 0.26136 / sqrt(n density).
TEST_CASE("nests at one per km2 lie half a kilometre apart on average, as at random") {
    LandscapeParameters parameters;
    parameters.managed_density_factor = 0;
    parameters.wild_woodland_per_km2 = 1;
    parameters.margin_m = 2000;
    const Spacing spacing = nearest_neighbours(parameters, 2000, 43);
    // Neighbours are shared and counts vary, which widens the error by no more than a third: z = 4 of 4/3.
    const double standard_error_m = 4.0 / 3.0 * 261.36 / std::sqrt(spacing.nests);
    CAPTURE(spacing.mean_m);
    CHECK(spacing.nests > 4000);
    CHECK(std::abs(spacing.mean_m - 500) < 4 * standard_error_m);
}

// Seeley and Smith 2015, "Crowding honeybee colonies in apiaries can increase their vulnerability to the deadly
// ectoparasite Varroa destructor", Apidologie 46: wild colonies near Ithaca about 1 per km2, mean nearest neighbour
// 0.85 km. At random that spacing means 0.35 per km2: the published pair is more even than chance, or counts only
// the nests that were found; our wood's default has to lie between the two readings.
TEST_CASE("spacing of nests in woodland by default lies between random at 1 per km2 and the 0.85 km found") {
    LandscapeParameters parameters;
    parameters.managed_density_factor = 0;
    parameters.margin_m = 2000;
    const Spacing spacing = nearest_neighbours(parameters, 2000, 47);
    CAPTURE(spacing.mean_m);
    CHECK(spacing.mean_m > 500);
    CHECK(spacing.mean_m < 850);
}

// Kohl, Rutschmann and Steffan-Dewenter 2022, "Population demography of feral honeybee colonies in central European
// forests", Royal Society Open Science 9: about a tenth of trees with large woodpecker holes occupied in summer.
TEST_CASE("about a tenth of woodland's hollows are lived in") {
    const LandscapeParameters parameters;
    double nests = 0;
    double free = 0;
    for (std::uint32_t replicate = 0; replicate < 40; ++replicate) {
        const DrawnLand drawn = draw_land(wood(3000), {}, parameters, Chance{53, replicate});
        for (const DrawnColony& colony : drawn.colonies) nests += colony.origin == ColonyOrigin::wild;
        for (const NaturalSite& site : drawn.cavities) {
            free += std::hypot(site.at.x_m, site.at.y_m) <= 3000 + parameters.margin_m;
        }
    }
    const double occupied = nests / (nests + free);
    CAPTURE(occupied);
    CHECK(occupied > 0.05);
    CHECK(occupied < 0.15);
}

// Visick and Ratnieks 2023, "Density of wild honey bee, Apis mellifera, colonies worldwide", Ecology and Evolution 13,
// e10609: means of 0.26 (Europe) and 1.4 (North America) wild colonies per km2. Chauzat et al. 2013, PLoS ONE: 4.26
// managed hives per km2 in Europe; FAO figures in the same review 1.2. A country of half farmland and grass, a third
// wood, the rest lived in, has to fall among them.
TEST_CASE("an ordinary country's mean densities fall among the published means") {
    const LandscapeParameters p;
    const double wild = 0.5 * (p.wild_farmland_per_km2 + p.wild_grassland_per_km2) / 2 +
                        0.33 * p.wild_woodland_per_km2 + 0.17 * (p.wild_suburb_per_km2 + p.wild_town_per_km2) / 2;
    CHECK(wild > 0.26);
    CHECK(wild < 1.4);
    const double managed = 0.5 * (p.managed_farmland_per_km2 + p.managed_grassland_per_km2) / 2 +
                           0.33 * p.managed_woodland_per_km2 +
                           0.17 * (p.managed_suburb_per_km2 + p.managed_town_per_km2) / 2;
    // Hives nobody listed are a part of all hives: above a tenth and below all of the questionnaire's density.
    CHECK(managed > 0.4);
    CHECK(managed < 4.26);
}

// Seeley and Buhrman 1999, "Group decision making in swarms of honey bees", Behavioral Ecology and Sociobiology 45:
// a dozen or more sites advertised; Seeley 2010 and Seeley and Buhrman 1999: searched area of about 30 km2.
TEST_CASE("a swarm's search area in woodland holds more hollows than the dozen it advertises") {
    const DrawnLand drawn = draw_land(wood(3000), {}, {}, Chance{59, 0});
    const SiteFinder finder(drawn.cavities, std::sqrt(30e6 / M_PI));
    const auto within = finder.near({0, 0}).size();
    CHECK(within > 24);
    // and half a dozen within the median distance danced of 470 m to 1 km (Kohl and Rutschmann 2018, PeerJ 6, e4602).
    const SiteFinder nearer(drawn.cavities, 1000);
    CHECK(nearer.near({0, 0}).size() >= 12);
}

// Seeley and Morse 1976, "The nest of the honey bee (Apis mellifera L.)", Insectes Sociaux 23, 495-512 (from memory):
// most nests lie between 30 and 60 l.
TEST_CASE("most wild colonies live in 30 to 60 litres") {
    double all = 0;
    double middle = 0;
    for (std::uint32_t replicate = 0; replicate < 40; ++replicate) {
        for (const DrawnColony& colony : draw_land(wood(3000), {}, {}, Chance{61, replicate}).colonies) {
            if (colony.origin != ColonyOrigin::wild) continue;
            ++all;
            middle += colony.volume_l >= 30 && colony.volume_l <= 60;
        }
    }
    // Phi(1.019) - Phi(-0.961) = 0.678 for a median of 42 l and sd ln 0.35; z = 4.
    CHECK(middle / all > 0.5);
    CHECK(std::abs(middle / all - 0.678) < 4 * std::sqrt(0.678 * 0.322 / all));
}
