// One replicate's unknown land: wild colonies, unlisted and listed hives, free cavities, drawn square by square.
#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>

#include "landscape/draw_cavity.hpp"
#include "landscape/habitat_map.hpp"

namespace maybough::landscape {

namespace {
using P = LandscapeParameters;
using Densities = std::array<double, habitat_kinds>;  ///< per km2, in the order of Habitat

constexpr double square_km2 = square_m * square_m * 1e-6;

// Numbers within a square, below its 16 bits of column and row: wild nests, unlisted hives, listed hives.
constexpr std::uint32_t unlisted_from = 32;
constexpr std::uint32_t listed_from = 64;
constexpr std::uint32_t numbers = 256;

Densities wild_densities(const P& p) {
    return {p.wild_woodland_per_km2,  p.wild_parkland_per_km2, p.wild_orchard_per_km2, p.wild_farmland_per_km2,
            p.wild_grassland_per_km2, p.wild_suburb_per_km2,   p.wild_town_per_km2,    0};
}
Densities managed_densities(const P& p) {
    return {
        p.managed_woodland_per_km2,  p.managed_parkland_per_km2, p.managed_orchard_per_km2, p.managed_farmland_per_km2,
        p.managed_grassland_per_km2, p.managed_suburb_per_km2,   p.managed_town_per_km2,    0};
}
Densities cavity_densities(const P& p) {
    return {p.cavity_woodland_per_km2,  p.cavity_parkland_per_km2, p.cavity_orchard_per_km2, p.cavity_farmland_per_km2,
            p.cavity_grassland_per_km2, p.cavity_suburb_per_km2,   p.cavity_town_per_km2,    0};
}

struct Square {
    int column, row;  ///< 0 begins at the centre's axes
    std::uint32_t key() const {
        return static_cast<std::uint32_t>(row + squares_half) << 8U | static_cast<std::uint32_t>(column + squares_half);
    }
};

Square square_at(Point p) {
    return {static_cast<int>(std::floor(p.x_m / square_m)), static_cast<int>(std::floor(p.y_m / square_m))};
}

std::uint32_t id_in(Square square, std::uint32_t number, std::uint32_t limit, const char* what, const char* key) {
    if (number >= limit) {
        throw InputError(key, std::string("more ") + what + " fall into one square of 250 m than can be numbered",
                         "lower the density there, or list fewer hives in one place");
    }
    return square.key() << 8U | number;
}

/// Calls visit(square) for every square that touches the disc, by row, then column.
template <class Visit>
void each_square(double disc_m, Visit visit) {
    const int reach = static_cast<int>(std::ceil(disc_m / square_m));
    for (int row = -reach; row < reach; ++row) {
        const double nearest_y_m = row < 0 ? -(row + 1) * square_m : row * square_m;
        for (int column = -reach; column < reach; ++column) {
            const double nearest_x_m = column < 0 ? -(column + 1) * square_m : column * square_m;
            if (std::hypot(nearest_x_m, nearest_y_m) <= disc_m) visit(Square{column, row});
        }
    }
}

/// A Poisson process of the habitats' densities by thinning (Lewis and Shedler 1979): candidates at the highest
/// density, each kept with the ratio of its habitat's. Each candidate has its own stream, so a higher factor only adds.
class Process {
  public:
    Process(const Densities& per_km2, double factor, const HabitatMap& map, double disc_m)
        : keep_(per_km2), map_(map), disc_m_(disc_m) {
        const double highest = *std::max_element(per_km2.begin(), per_km2.end());
        mean_ = highest * factor * square_km2;
        for (double& keep : keep_) keep = highest > 0 ? keep / highest : 0;
    }
    template <class Place>
    void draw(Square square, Purpose counting, Purpose candidate, const Chance& chance, Place place) const {
        if (!(mean_ > 0)) return;
        Stream count = chance.stream(counting, square.key());
        const auto candidates = static_cast<std::uint32_t>(poisson(count, mean_));
        for (std::uint32_t k = 0; k < candidates; ++k) {
            Stream stream = chance.stream(candidate, square.key(), Day{-1}, k + 1);
            const double east = stream.uniform();
            const double north = stream.uniform();
            const double keep = stream.uniform();
            const Point at{(square.column + east) * square_m, (square.row + north) * square_m};
            const bool in_disc = std::hypot(at.x_m, at.y_m) <= disc_m_;
            const Habitat habitat = in_disc ? map_.at(at) : Habitat::water;
            place(k, at, habitat, in_disc && keep < keep_[static_cast<std::size_t>(habitat)], stream);
        }
    }

  private:
    Densities keep_;
    const HabitatMap& map_;
    double disc_m_;
    double mean_ = 0;
};

void draw_wild(const P& p, const HabitatMap& map, double disc_m, const Chance& chance, std::vector<DrawnColony>& out) {
    const Process nests(wild_densities(p), p.wild_density_factor, map, disc_m);
    each_square(disc_m, [&](Square square) {
        nests.draw(square, Purpose::landscape_colonies, Purpose::landscape_colonies, chance,
                   [&](std::uint32_t k, Point at, Habitat, bool kept, Stream& stream) {
                       if (!kept) return;
                       const std::uint32_t id =
                           id_in(square, k, unlisted_from, "wild colonies", "landscape.wild_density_factor");
                       const double volume_l = lognormal(stream, p.wild_volume_l, p.wild_volume_sd_ln);
                       out.push_back({{id}, at, ColonyOrigin::wild, volume_l, -1, {}});
                   });
    });
}

void draw_unlisted(const P& p, const HabitatMap& map, double disc_m, const Chance& chance,
                   std::vector<DrawnColony>& out) {
    const Process places(managed_densities(p), p.managed_density_factor / p.unlisted_apiary_hives, map, disc_m);
    each_square(disc_m, [&](Square square) {
        std::uint32_t number = unlisted_from;
        places.draw(square, Purpose::landscape_hives, Purpose::landscape_hives, chance,
                    [&](std::uint32_t, Point at, Habitat, bool kept, Stream& stream) {
                        const std::int64_t hives = 1 + poisson(stream, p.unlisted_apiary_hives - 1);
                        for (std::int64_t hive = 0; hive < hives; ++hive, ++number) {
                            // A place that is not kept uses up its numbers, so that ids do not depend on the margin.
                            if (!kept) continue;
                            const std::uint32_t id = id_in(square, number, listed_from, "unlisted hives",
                                                           "landscape.managed_density_factor");
                            out.push_back({{id}, at, ColonyOrigin::managed, p.hive_volume_l, -1, {}});
                        }
                    });
    });
}

/// Listed hives are numbered within their square by where they stand, not by the order of the file.
void add_listed(std::span<const Apiary> apiaries, const P& p, double disc_m, std::vector<DrawnColony>& out) {
    std::vector<std::size_t> order(apiaries.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto place = [&](std::size_t i) {
        const Point at = apiaries[i].at;
        return std::tuple(square_at(at).key(), at.x_m, at.y_m, std::string_view(apiaries[i].id));
    };
    std::erase_if(order,
                  [&](std::size_t i) { return !(std::hypot(apiaries[i].at.x_m, apiaries[i].at.y_m) <= disc_m); });
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return place(a) < place(b); });
    std::uint32_t number = listed_from;
    for (std::size_t rank = 0; rank < order.size(); ++rank) {
        const Apiary& apiary = apiaries[order[rank]];
        const Square square = square_at(apiary.at);
        if (rank == 0 || square.key() != square_at(apiaries[order[rank - 1]].at).key()) number = listed_from;
        for (int hive = 0; hive < apiary.hives; ++hive, ++number) {
            const std::uint32_t id = id_in(square, number, numbers, "listed hives", "apiaries");
            out.push_back({{id}, apiary.at, ColonyOrigin::managed, p.hive_volume_l, static_cast<int>(order[rank]), {}});
        }
    }
}

void draw_cavities(const Land& land, const P& p, const HabitatMap& map, double disc_m, const Chance& chance,
                   std::vector<NaturalSite>& out) {
    const Process hollows(cavity_densities(p), p.cavity_density_factor, map, disc_m);
    const bool poleward_south = is_southern(land.centre);
    each_square(disc_m, [&](Square square) {
        hollows.draw(square, Purpose::landscape_cavities, Purpose::landscape_cavity_kind, chance,
                     [&](std::uint32_t k, Point at, Habitat habitat, bool kept, Stream& stream) {
                         if (!kept) return;
                         const std::uint32_t id =
                             id_in(square, k, numbers, "cavities", "landscape.cavity_density_factor");
                         out.push_back({{id}, at, draw_cavity(habitat, p, poleward_south, stream)});
                     });
    });
}
}  // namespace

DrawnLand draw_land(const Land& land, std::span<const Apiary> apiaries, const LandscapeParameters& parameters,
                    const Chance& chance) {
    const double colony_disc_m = land.radius_m + parameters.margin_m;
    const double cavity_disc_m = colony_disc_m + parameters.cavity_margin_m;
    if (!(cavity_disc_m <= squares_half * square_m)) {
        throw InputError("place.radius_m and landscape.margin_m",
                         "the simulated land reaches " + std::to_string(std::lround(cavity_disc_m)) +
                             " m from the centre, at most 32000 m can be",
                         "plan a smaller area at a time");
    }
    const HabitatMap map(land);
    DrawnLand drawn;
    draw_wild(parameters, map, colony_disc_m, chance, drawn.colonies);
    draw_unlisted(parameters, map, colony_disc_m, chance, drawn.colonies);
    add_listed(apiaries, parameters, colony_disc_m, drawn.colonies);
    std::sort(drawn.colonies.begin(), drawn.colonies.end(),
              [](const DrawnColony& a, const DrawnColony& b) { return a.id < b.id; });

    const int reach = static_cast<int>(std::ceil((colony_disc_m + parameters.flight_range_m) / square_m)) + 1;
    const HabitatRaster raster(land, -reach, -reach, 2 * reach, 2 * reach);
    for (DrawnColony& colony : drawn.colonies) colony.forage = mean_forage(raster, colony.at, parameters);

    draw_cavities(land, parameters, map, cavity_disc_m, chance, drawn.cavities);
    return drawn;
}

}  // namespace maybough::landscape
