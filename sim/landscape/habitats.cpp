// Habitats: which one a point lies in, by the topmost patch; one point or a whole raster at a time.
#include <algorithm>
#include <cmath>
#include <limits>

#include "landscape/habitat_map.hpp"

namespace maybough::landscape {

namespace {
bool crosses_row(Point a, Point b, double y_m) {
    return (a.y_m > y_m) != (b.y_m > y_m);
}

double crossing_x_m(Point a, Point b, double y_m) {
    return a.x_m + (y_m - a.y_m) / (b.y_m - a.y_m) * (b.x_m - a.x_m);
}
}  // namespace

bool inside_ring(const std::vector<Point>& ring, Point p) {
    bool inside = false;
    for (std::size_t i = 0, before = ring.size() - 1; i < ring.size(); before = i++) {
        const Point a = ring[before];
        const Point b = ring[i];
        if (crosses_row(a, b, p.y_m) && p.x_m < crossing_x_m(a, b, p.y_m)) inside = !inside;
    }
    return inside;
}

Habitat habitat_at(const Land& land, Point p) {
    for (std::size_t i = land.patches.size(); i-- > 0;) {
        if (inside_ring(land.patches[i].ring, p)) return land.patches[i].habitat;
    }
    return land.elsewhere;
}

Box box_of(const std::vector<Point>& ring) {
    const double far = std::numeric_limits<double>::infinity();
    Box box{far, -far, far, -far};
    for (const Point p : ring) {
        box.west_m = std::min(box.west_m, p.x_m);
        box.east_m = std::max(box.east_m, p.x_m);
        box.south_m = std::min(box.south_m, p.y_m);
        box.north_m = std::max(box.north_m, p.y_m);
    }
    return box;
}

HabitatMap::HabitatMap(const Land& land) : land_(land) {
    boxes_.reserve(land.patches.size());
    for (const HabitatPatch& patch : land.patches) boxes_.push_back(box_of(patch.ring));
}

Habitat HabitatMap::at(Point p) const {
    for (std::size_t i = boxes_.size(); i-- > 0;) {
        const Box& box = boxes_[i];
        if (p.x_m < box.west_m || p.x_m > box.east_m || p.y_m < box.south_m || p.y_m > box.north_m) continue;
        if (inside_ring(land_.patches[i].ring, p)) return land_.patches[i].habitat;
    }
    return land_.elsewhere;
}

HabitatRaster::HabitatRaster(const Land& land, int first_column, int first_row, int columns, int rows)
    : first_column_(first_column),
      first_row_(first_row),
      columns_(columns),
      rows_(rows),
      cells_(static_cast<std::size_t>(columns) * static_cast<std::size_t>(rows),
             static_cast<std::uint8_t>(land.elsewhere)),
      toggles_(cells_.size()) {
    for (const HabitatPatch& patch : land.patches) fill(patch);
}

// Row by row: an edge that crosses the row's middle line flips every square whose middle lies west of the crossing,
// which is the even-odd rule of inside_ring for a whole row at once. toggles_ marks the last square flipped.
void HabitatRaster::fill(const HabitatPatch& patch) {
    const Box box = box_of(patch.ring);
    if (box.east_m < square_middle_m(first_column_) || box.west_m > square_middle_m(first_column_ + columns_)) return;
    if (box.north_m < square_middle_m(first_row_) || box.south_m > square_middle_m(first_row_ + rows_)) return;
    lowest_row_ = rows_;
    highest_row_ = -1;
    for (std::size_t i = 0, before = patch.ring.size() - 1; i < patch.ring.size(); before = i++) {
        flip_west_of(patch.ring[before], patch.ring[i]);
    }
    settle_rows(static_cast<std::uint8_t>(patch.habitat));
}

void HabitatRaster::flip_west_of(Point a, Point b) {
    const auto [south_m, north_m] = std::minmax(a.y_m, b.y_m);
    if (north_m < square_middle_m(first_row_) || south_m > square_middle_m(first_row_ + rows_)) return;
    const double first = std::max(0.0, south_m / square_m - 1.5 - first_row_);
    for (int row = static_cast<int>(first); row < rows_ && square_middle_m(first_row_ + row) <= north_m; ++row) {
        const double y_m = square_middle_m(first_row_ + row);
        if (!crosses_row(a, b, y_m)) continue;
        const double x_m = crossing_x_m(a, b, y_m);
        const double near_crossing = x_m / square_m - 0.5 - first_column_;
        int flipped = static_cast<int>(std::clamp(near_crossing, 0.0, static_cast<double>(columns_)));
        while (flipped < columns_ && square_middle_m(first_column_ + flipped) < x_m) ++flipped;
        while (flipped > 0 && !(square_middle_m(first_column_ + flipped - 1) < x_m)) --flipped;
        if (flipped > 0) toggles_[static_cast<std::size_t>(row * columns_ + flipped - 1)] ^= 1U;
        lowest_row_ = std::min(lowest_row_, row);
        highest_row_ = std::max(highest_row_, row);
    }
}

void HabitatRaster::settle_rows(std::uint8_t habitat) {
    for (int row = lowest_row_; row <= highest_row_; ++row) {
        std::uint8_t inside = 0;
        for (int column = columns_; column-- > 0;) {
            const auto cell = static_cast<std::size_t>(row * columns_ + column);
            inside ^= toggles_[cell];
            toggles_[cell] = 0;
            if (inside != 0) cells_[cell] = habitat;
        }
    }
}

}  // namespace maybough::landscape
