// Where swarms hang, counted in squares for the map.
#include "planner/swarm_squares.hpp"

#include <cmath>
#include <map>
#include <utility>

namespace maybough::planner {

namespace {
/// Squares from the centre to the edge: small enough to show a wood or an apiary, wide enough to hold some swarms.
constexpr double squares_to_edge = 9;
}  // namespace

std::vector<SwarmSquare> swarm_squares(const std::vector<std::vector<Point>>& places, double radius_m) {
    const double side_m = radius_m / squares_to_edge;
    const auto square = [side_m](double metres) { return static_cast<int>(std::floor(metres / side_m)); };
    std::map<std::pair<int, int>, std::int64_t> counts;
    for (const auto& season : places) {
        for (const Point at : season) ++counts[{square(at.y_m), square(at.x_m)}];
    }
    std::vector<SwarmSquare> squares;
    for (const auto& [where, count] : counts) {
        const Point centre{(where.second + 0.5) * side_m, (where.first + 0.5) * side_m};
        squares.push_back({centre, side_m, static_cast<double>(count) / static_cast<double>(places.size())});
    }
    return squares;
}

}  // namespace maybough::planner
