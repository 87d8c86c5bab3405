// Landscape: where a swarm could live. The plane, habitats, unknown colonies and cavities, spots, traps as set.
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/base.hpp"
#include "chance/chance.hpp"
#include "parameters/landscape.hpp"
#include "weather/weather.hpp"

namespace maybough::landscape {

/// Metres east and north of a centre, from the ellipsoid's two radii at the centre's latitude (WGS 84).
class LocalPlane {
  public:
    explicit LocalPlane(LatLon centre);
    Point to_plane(LatLon place) const;
    LatLon to_earth(Point point) const;
    LatLon centre() const { return centre_; }

  private:
    LatLon centre_;
    double metres_per_degree_north_;
    double metres_per_degree_east_;
};

enum class Habitat { woodland, parkland, orchard, farmland, grassland, suburb, town, water };
inline constexpr std::array<std::string_view, 8> habitat_names{"woodland",  "parkland", "orchard", "farmland",
                                                               "grassland", "suburb",   "town",    "water"};

/// One habitat patch: a closed ring on the plane (first point not repeated). Later patches lie over earlier ones.
struct HabitatPatch {
    Habitat habitat = Habitat::farmland;
    std::string name;
    std::vector<Point> ring;
};

/// The known land: area of interest (a disc), patches, and what lies between and beyond them.
struct Land {
    LatLon centre;
    double radius_m = 3000;
    Habitat elsewhere = Habitat::farmland;
    std::vector<HabitatPatch> patches;
};

Habitat habitat_at(const Land& land, Point p);

/// How much of each bloom a colony's flight range offers, 1 = ordinary country.
using ForageMix = std::array<double, bloom_kinds>;
ForageMix forage_mix_at(const Land& land, Point p, const LandscapeParameters& parameters);

/// A hollow a swarm may judge: natural cavity, empty hive, or trap.
struct Cavity {
    double volume_l = 40;
    double entrance_area_cm2 = 12.5;
    double height_m = 4;
    double facing_deg = 180;  ///< compass direction of the entrance
    double shade = 0.5;       ///< 0 full sun, 1 full shade
    double comb = 0;          ///< 0 none, 1 a frame or more of old comb, or lived in last year
    double lure = 0;          ///< scent release, 1 = one fresh slow-release vial
    double dryness = 1;       ///< 0 wet, 1 dry
    double visibility = 0.5;  ///< 0 hidden, 1 in plain sight
};

struct NaturalSite {
    SiteId id;
    Point at;
    Cavity cavity;
};

enum class ColonyOrigin { managed, wild };

/// One colony of the replicate's unknown landscape, before the season.
struct DrawnColony {
    ColonyId id;
    Point at;
    ColonyOrigin origin = ColonyOrigin::wild;
    double volume_l = 40;
    int apiary = -1;  ///< index of the known apiary, -1 for hives and nests nobody listed
    ForageMix forage{};
};

/// Hives the keeper knows of.
struct Apiary {
    std::string id;
    Point at;
    int hives = 1;
};

/// What one replicate's land holds. Drawn from fixed squares of the plane, each keyed by its place, so that a wider
/// margin only adds, and the placement of traps changes nothing.
struct DrawnLand {
    std::vector<DrawnColony> colonies;
    std::vector<NaturalSite> cavities;  ///< free of bees at the start
};
DrawnLand draw_land(const Land& land, std::span<const Apiary> apiaries, const LandscapeParameters& parameters,
                    const Chance& chance);

/// A place the keeper may use, with what it allows.
struct Spot {
    std::string id;
    std::string name;
    LatLon place;
    Point at;
    double min_height_m = 1;
    double max_height_m = 3;
    std::vector<double> facings_deg;  ///< allowed compass directions; empty = any
    double shade = 0.5;
    double visibility = 0.5;
    double minutes_to_reach = 5;  ///< on foot from where one parks, one way
    double drive_km = 0;          ///< detour for this spot on the round of visits
    bool must = false;            ///< the plan has to use it
    bool never = false;           ///< the plan may not use it
    std::string notes;            ///< the keeper's own words, which change nothing
};

/// One trap as set.
struct TrapSetting {
    std::size_t spot = 0;  ///< index into the scenario's spots
    std::size_t kind = 0;  ///< index into the scenario's trap kinds
    double height_m = 2.5;
    double facing_deg = 180;
    Day hang{0};
    Day take_down{365};
    int visit_every_days = 7;
    bool lured = true;
    bool operator==(const TrapSetting&) const = default;
};
using Placement = std::vector<TrapSetting>;

/// Sites near a point: a uniform grid over the plane; answers in a fixed order (by site id). Beyond `coarse_beyond_m`
/// one site in coarse_one_in, picked by its id, stands for all.
class SiteFinder {
  public:
    static constexpr std::uint32_t coarse_one_in = 8;
    explicit SiteFinder(std::span<const NaturalSite> sites, double reach_m, double coarse_beyond_m = 1e9);
    /// Indices into `sites` of all within coarse_beyond_m of p, and of those that stand for others within reach_m, in
    /// increasing id.
    std::vector<std::uint32_t> near(Point p) const;

  private:
    std::vector<Point> at_;           ///< by rank, that is in increasing id
    std::vector<std::uint32_t> ids_;  ///< index into the sites, by rank
    std::vector<bool> for_others_;    ///< by rank: stands for others that are far
    std::vector<std::uint32_t> cell_start_;
    std::vector<std::uint32_t> cell_items_;
    double reach_m_ = 0;
    double coarse_beyond_m_ = 1e9;
    double square_m_ = 1;
    double origin_x_m_ = 0;
    double origin_y_m_ = 0;
    int columns_ = 0;
    int rows_ = 0;
};

}  // namespace maybough::landscape

namespace maybough {
using namespace landscape;  // so that rooms to the right need no prefix
}
