// Places on the land: spots, hives and habitat patches, read from files and put on the local plane.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "keeper/keeper.hpp"
#include "landscape/landscape.hpp"
#include "scenario/records.hpp"

namespace maybough::scenario {

/// Hives and habitat patches count up to this far beyond the area: the margin from which swarms may come.
inline constexpr double farthest_from_centre_m = 40000;

/// Spots from CSV, GPX or GeoJSON, on the plane of `land`. Throws InputError for spots outside the area, ids that stand
/// twice and two spots in one trap square.
std::vector<Spot> read_spots(const std::string& path, const Land& land);

/// Known hives from the same forms; `hives_each` where neither a column nor a note says how many. Throws InputError
/// where it is wanted and nothing.
std::vector<Apiary> read_apiaries(const std::string& path, const Land& land, std::optional<int> hives_each = 1);

/// Where the places of a file lie, for a scenario that has no centre yet.
enum class Wanted : int;
std::vector<LatLon> places_in(const std::string& path, Wanted wanted);

/// Known hives listed in scenario.json.
std::vector<Apiary> apiaries_in(const JsonAt& list, const Land& land, Given& given);

/// Habitat patches from GeoJSON polygons. A polygon's holes become part of its ring by a bridge of no width.
std::vector<HabitatPatch> read_habitats(const std::string& path, const Land& land);

/// Streets, water, buildings and names of a GeoJSON file, as compact JSON text for pages. Throws InputError.
std::string read_map(const std::string& path);
/// The member "attribution" of a GeoJSON file, empty where there is none.
std::string credit_in(const std::string& path);

/// Columns of a spots file, for `new` and messages.
const std::vector<std::string>& spot_columns();

/// Puts a place on the plane; throws InputError at `place` when it lies more than `reach_m` from the centre, telling
/// when latitude and longitude look swapped.
Point point_within(const LatLon& at, const Land& land, double reach_m, const std::string& place);

/// Month and day (MM-DD) from which a swarm usually counts as late there: July, or January in the south.
std::string usual_late_from(const LatLon& place);

}  // namespace maybough::scenario
