// Habitats looked up fast: patches with their bounding boxes, and a raster of the fixed squares. Private to landscape/.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "landscape/landscape.hpp"

namespace maybough::landscape {

/// Side of the fixed squares: the unit in which colonies and cavities are drawn and forage is averaged.
inline constexpr double square_m = 250;

/// Squares from the centre to the edge of the numbered plane, on each side: 32 km.
inline constexpr int squares_half = 128;

inline constexpr std::size_t habitat_kinds = habitat_names.size();

/// Middle of a column or row of squares, in metres; square 0 begins at the centre's axis.
inline double square_middle_m(int index) {
    return (index + 0.5) * square_m;
}

/// True where p lies within the closed ring, by the even-odd rule; a point on a border shared by two rings lies in one.
bool inside_ring(const std::vector<Point>& ring, Point p);

/// West, east, south and north ends of a ring.
struct Box {
    double west_m, east_m, south_m, north_m;
};
Box box_of(const std::vector<Point>& ring);

/// Patches with their bounding boxes, for many look-ups on one land. Keeps a reference to the land.
class HabitatMap {
  public:
    explicit HabitatMap(const Land& land);
    Habitat at(Point p) const;

  private:
    const Land& land_;
    std::vector<Box> boxes_;
};

/// The habitat at the middle of each square in a block of squares: equal to habitat_at there.
class HabitatRaster {
  public:
    /// Squares from `first_column`, `first_row` on.
    HabitatRaster(const Land& land, int first_column, int first_row, int columns, int rows);
    std::uint8_t at(int column, int row) const {
        return cells_[static_cast<std::size_t>((row - first_row_) * columns_ + (column - first_column_))];
    }

  private:
    void fill(const HabitatPatch& patch);
    void flip_west_of(Point a, Point b);
    void settle_rows(std::uint8_t habitat);
    int first_column_, first_row_, columns_, rows_;
    std::vector<std::uint8_t> cells_;
    std::vector<std::uint8_t> toggles_;
    int lowest_row_ = 0;  ///< of the rows with toggles
    int highest_row_ = -1;
};

/// Mean of the habitats' forage over the squares whose middles lie within the flight range of p. The raster has to
/// hold them all.
ForageMix mean_forage(const HabitatRaster& raster, Point p, const LandscapeParameters& parameters);

}  // namespace maybough::landscape
