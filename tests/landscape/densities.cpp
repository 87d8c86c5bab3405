// Densities and laws of the drawn land, against the laws they were drawn from. Fixed seeds; each tolerance is z times
// the standard error, z = 4.5: over some 30 checks a family-wise error near 2e-4.
#include <doctest/doctest.h>

#include <cmath>

#include "lands.hpp"
#include "landscape/draw_cavity.hpp"

using namespace maybough;
using namespace maybough::testing;

namespace {
constexpr double z = 4.5;
constexpr std::uint32_t replicates = 200;

struct Counts {
    double wild = 0;
    double unlisted = 0;
    double cavities = 0;
};

Counts mean_counts(const Land& land, const LandscapeParameters& parameters, std::uint32_t seed) {
    Counts counts;
    for (std::uint32_t replicate = 0; replicate < replicates; ++replicate) {
        const DrawnLand drawn = draw_land(land, {}, parameters, Chance{seed, replicate});
        for (const DrawnColony& colony : drawn.colonies) {
            (colony.origin == ColonyOrigin::wild ? counts.wild : counts.unlisted) += 1.0 / replicates;
        }
        counts.cavities += static_cast<double>(drawn.cavities.size()) / replicates;
    }
    return counts;
}
}  // namespace

TEST_CASE("counts in one habitat have the mean of its density") {
    LandscapeParameters parameters;
    parameters.margin_m = 500;
    parameters.cavity_margin_m = 250;
    const double colony_km2 = M_PI * 2.5 * 2.5;
    const double cavity_km2 = M_PI * 2.75 * 2.75;
    const struct {
        Habitat habitat;
        double wild, managed, cavities;
    } rows[] = {
        {Habitat::woodland, parameters.wild_woodland_per_km2, parameters.managed_woodland_per_km2,
         parameters.cavity_woodland_per_km2},
        {Habitat::parkland, parameters.wild_parkland_per_km2, parameters.managed_parkland_per_km2,
         parameters.cavity_parkland_per_km2},
        {Habitat::orchard, parameters.wild_orchard_per_km2, parameters.managed_orchard_per_km2,
         parameters.cavity_orchard_per_km2},
        {Habitat::farmland, parameters.wild_farmland_per_km2, parameters.managed_farmland_per_km2,
         parameters.cavity_farmland_per_km2},
        {Habitat::grassland, parameters.wild_grassland_per_km2, parameters.managed_grassland_per_km2,
         parameters.cavity_grassland_per_km2},
        {Habitat::suburb, parameters.wild_suburb_per_km2, parameters.managed_suburb_per_km2,
         parameters.cavity_suburb_per_km2},
        {Habitat::town, parameters.wild_town_per_km2, parameters.managed_town_per_km2, parameters.cavity_town_per_km2},
    };
    for (const auto& row : rows) {
        CAPTURE(habitat_names[static_cast<std::size_t>(row.habitat)]);
        const Counts counts = mean_counts(plain_land(row.habitat, 2000), parameters, 17);
        const double wild = row.wild * colony_km2;
        CHECK(std::abs(counts.wild - wild) < z * std::sqrt(wild / replicates));
        const double cavities = row.cavities * cavity_km2;
        CHECK(std::abs(counts.cavities - cavities) < z * std::sqrt(cavities / replicates));
        // Hives stand in apiaries of 1 + Poisson(m - 1): variance of the sum = places (m^2 + m - 1).
        const double m = parameters.unlisted_apiary_hives;
        const double hives = row.managed * colony_km2;
        CHECK(std::abs(counts.unlisted - hives) < z * std::sqrt(hives / m * (m * m + m - 1) / replicates));
    }
}

TEST_CASE("the variance of counts is Poisson's") {
    // Var of the sample variance of n Poisson(mu): (mu + 2 mu^2) / n. A lattice of points would give far less.
    LandscapeParameters parameters;
    double sum = 0;
    double squares = 0;
    const Land land = plain_land(Habitat::woodland, 1000);
    constexpr int n = 400;
    for (std::uint32_t replicate = 0; replicate < n; ++replicate) {
        const auto count = static_cast<double>(draw_land(land, {}, parameters, Chance{23, replicate}).cavities.size());
        sum += count;
        squares += count * count;
    }
    const double mean = sum / n;
    const double variance = (squares - n * mean * mean) / (n - 1);
    const double radius_km = 1 + (parameters.margin_m + parameters.cavity_margin_m) / 1000;
    const double expected = parameters.cavity_woodland_per_km2 * M_PI * radius_km * radius_km;
    CHECK(std::abs(variance - expected) < z * std::sqrt((expected + 2 * expected * expected) / n));
}

TEST_CASE("a patch gets its own density within a land of another") {
    const LandscapeParameters parameters;
    Land land = plain_land(Habitat::farmland, 2000);
    land.patches = {square_patch(Habitat::town, -310, -910, 1370)};  // borders off the squares
    double inside = 0;
    for (std::uint32_t replicate = 0; replicate < replicates; ++replicate) {
        for (const NaturalSite& site : draw_land(land, {}, parameters, Chance{29, replicate}).cavities) {
            if (habitat_at(land, site.at) == Habitat::town) inside += 1.0 / replicates;
        }
    }
    const double expected = parameters.cavity_town_per_km2 * 1.37 * 1.37;
    CHECK(std::abs(inside - expected) < z * std::sqrt(expected / replicates));
}

TEST_CASE("cavities follow their laws: volume, height, building, comb") {
    const LandscapeParameters p;
    Stream stream = Chance{31, 0}.stream(Purpose::landscape_cavity_kind, 0U);
    constexpr int n = 20000;
    double below_volume = 0, below_height = 0, comb = 0, shade = 0;
    for (int i = 0; i < n; ++i) {
        const Cavity cavity = draw_cavity(Habitat::woodland, p, false, stream);
        below_volume += cavity.volume_l < p.cavity_volume_l;
        below_height += cavity.height_m < p.tree_height_m;
        comb += cavity.comb;
        shade += cavity.shade;
        CHECK((cavity.shade >= 0 && cavity.shade <= 1 && cavity.dryness <= 1 && cavity.lure == 0));
        CHECK((cavity.facing_deg >= 0 && cavity.facing_deg < 360));
    }
    CHECK(std::abs(below_volume / n - 0.5) < z * 0.5 / std::sqrt(n));
    // Trees have their median here; the tenth that is in buildings has Phi(ln(4/6) / 0.6) below the trees' median.
    const double in_buildings =
        0.5 * std::erfc(std::log(p.building_height_m / p.tree_height_m) / p.height_sd_ln / M_SQRT2);
    const double below = 0.5 * (1 - p.building_share_country) + in_buildings * p.building_share_country;
    CHECK(std::abs(below_height / n - below) < z * 0.5 / std::sqrt(n));
    const double q = p.cavity_comb_chance;
    CHECK(std::abs(comb / n - q) < z * std::sqrt(q * (1 - q) / n));
    const double mean_shade =
        p.tree_shade * (1 - p.building_share_country) + p.building_shade * p.building_share_country;
    CHECK(std::abs(shade / n - mean_shade) < z * 0.15 / std::sqrt(n));
}

TEST_CASE("directions lean as the cardioid law says") {
    Stream stream = Chance{37, 0}.stream(Purpose::landscape_cavity_kind, 1U);
    constexpr int n = 20000;
    for (const double lean : {0.0, 0.13, 0.39, 0.5}) {
        double cosine = 0;
        double sine = 0;
        for (int i = 0; i < n; ++i) {
            const double angle = (lean_direction_deg(stream, lean, 270) - 270) * M_PI / 180;
            cosine += std::cos(angle) / n;
            sine += std::sin(angle) / n;
        }
        // E cos = lean, E sin = 0; the variances are at most one half.
        CHECK(std::abs(cosine - lean) < z * std::sqrt(0.5 / n));
        CHECK(std::abs(sine) < z * std::sqrt(0.5 / n));
    }
}

TEST_CASE("entrances of trees lean north where the midday sun stands north") {
    LandscapeParameters p;
    p.tree_facing_lean = 0.5;
    p.building_share_country = 0;
    Stream stream = Chance{41, 0}.stream(Purpose::landscape_cavity_kind, 2U);
    double north = 0;
    double south = 0;
    for (int i = 0; i < 2000; ++i) {
        north += std::cos(draw_cavity(Habitat::woodland, p, true, stream).facing_deg * M_PI / 180) / 2000;
        south += std::cos(draw_cavity(Habitat::woodland, p, false, stream).facing_deg * M_PI / 180) / 2000;
    }
    CHECK(std::abs(north - 0.5) < z * std::sqrt(0.5 / 2000));
    CHECK(std::abs(south + 0.5) < z * std::sqrt(0.5 / 2000));
}
