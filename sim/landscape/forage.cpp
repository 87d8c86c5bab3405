// Forage: the mean of the habitats' bloom over a colony's flight range.
#include <algorithm>
#include <cmath>

#include "landscape/habitat_map.hpp"

namespace maybough::landscape {

namespace {
using P = LandscapeParameters;
using Member = double P::*;

// One row a habitat, in the order of Habitat; one column a Bloom. Water offers nothing.
constexpr std::array<std::array<Member, bloom_kinds>, habitat_kinds - 1> forage_members{{
    {&P::forage_woodland_early_pollen, &P::forage_woodland_fruit, &P::forage_woodland_spring_trees,
     &P::forage_woodland_summer, &P::forage_woodland_late},
    {&P::forage_parkland_early_pollen, &P::forage_parkland_fruit, &P::forage_parkland_spring_trees,
     &P::forage_parkland_summer, &P::forage_parkland_late},
    {&P::forage_orchard_early_pollen, &P::forage_orchard_fruit, &P::forage_orchard_spring_trees,
     &P::forage_orchard_summer, &P::forage_orchard_late},
    {&P::forage_farmland_early_pollen, &P::forage_farmland_fruit, &P::forage_farmland_spring_trees,
     &P::forage_farmland_summer, &P::forage_farmland_late},
    {&P::forage_grassland_early_pollen, &P::forage_grassland_fruit, &P::forage_grassland_spring_trees,
     &P::forage_grassland_summer, &P::forage_grassland_late},
    {&P::forage_suburb_early_pollen, &P::forage_suburb_fruit, &P::forage_suburb_spring_trees, &P::forage_suburb_summer,
     &P::forage_suburb_late},
    {&P::forage_town_early_pollen, &P::forage_town_fruit, &P::forage_town_spring_trees, &P::forage_town_summer,
     &P::forage_town_late},
}};
static_assert(static_cast<std::size_t>(Habitat::water) == forage_members.size());

int square_of(double metres) {
    return static_cast<int>(std::floor(metres / square_m));
}
}  // namespace

ForageMix mean_forage(const HabitatRaster& raster, Point p, const LandscapeParameters& parameters) {
    std::array<int, habitat_kinds> squares{};
    int all = 0;
    const double range_m = parameters.flight_range_m;
    for (int row = square_of(p.y_m - range_m); row <= square_of(p.y_m + range_m); ++row) {
        const double north_m = square_middle_m(row) - p.y_m;
        if (std::abs(north_m) > range_m) continue;
        const double half_m = std::sqrt(range_m * range_m - north_m * north_m);
        const int first = static_cast<int>(std::ceil((p.x_m - half_m) / square_m - 0.5));
        const int last = static_cast<int>(std::floor((p.x_m + half_m) / square_m - 0.5));
        for (int column = first; column <= last; ++column) ++squares[raster.at(column, row)];
        all += std::max(0, last - first + 1);
    }
    ForageMix mix{};
    for (std::size_t h = 0; h < forage_members.size(); ++h) {
        const double share = static_cast<double>(squares[h]) / std::max(1, all);
        for (std::size_t b = 0; b < bloom_kinds; ++b) mix[b] += share * parameters.*forage_members[h][b];
    }
    return mix;
}

ForageMix forage_mix_at(const Land& land, Point p, const LandscapeParameters& parameters) {
    // One square more on each side than the range needs, against rounding.
    const int half = square_of(parameters.flight_range_m) + 2;
    const HabitatRaster raster(land, square_of(p.x_m) - half, square_of(p.y_m) - half, 2 * half + 1, 2 * half + 1);
    return mean_forage(raster, p, parameters);
}

}  // namespace maybough::landscape
