// Where swarms hang, counted in squares for the map. Private to planner/.
#pragma once

#include <vector>

#include "planner/planner.hpp"

namespace maybough::planner {

/// Mean swarms a season in each square of the area that had any; `places[season]` are its swarms within the area.
/// In order of rows from the south, each from the west.
std::vector<SwarmSquare> swarm_squares(const std::vector<std::vector<Point>>& places, double radius_m);

}  // namespace maybough::planner
