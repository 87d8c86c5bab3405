// Places on the land: spots, hives and habitat patches, read from files and put on the local plane.
#pragma once

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

/// Known hives from CSV, GPX or GeoJSON.
std::vector<Apiary> read_apiaries(const std::string& path, const Land& land);

/// Known hives listed in scenario.json.
std::vector<Apiary> apiaries_in(const JsonAt& list, const Land& land, Given& given);

/// Habitat patches from GeoJSON polygons. A polygon's holes become part of its ring by a bridge of no width.
std::vector<HabitatPatch> read_habitats(const std::string& path, const Land& land);

/// Columns of a spots file, for `new` and messages.
const std::vector<std::string>& spot_columns();

/// Puts a place on the plane; throws InputError at `place` when it lies more than `reach_m` from the centre, telling
/// when latitude and longitude look swapped.
Point point_within(const LatLon& at, const Land& land, double reach_m, const std::string& place);

}  // namespace maybough::scenario
