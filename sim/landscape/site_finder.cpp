// Sites near a point: a uniform grid of squares; answers in increasing id.
#include <algorithm>
#include <cmath>
#include <numeric>

#include "landscape/landscape.hpp"

namespace maybough::landscape {

namespace {
/// Squares on a side at most, so that a tiny reach over a wide land does not ask for much memory.
constexpr double most_squares = 512;
/// Squares are no wider than this, so that near sites are found without looking through all far ones.
constexpr double widest_square_m = 1500;

/// Whether this site stands for others far from it. Ids number squares of the plane, so their bits are mixed first.
bool stands_for_others(SiteId id) {
    return ((id.value * 2654435769U) >> 16U) % SiteFinder::coarse_one_in == 0;
}
}  // namespace

SiteFinder::SiteFinder(std::span<const NaturalSite> sites, double reach_m, double coarse_beyond_m)
    : reach_m_(reach_m), coarse_beyond_m_(coarse_beyond_m) {
    ids_.resize(sites.size());
    std::iota(ids_.begin(), ids_.end(), 0U);
    std::sort(ids_.begin(), ids_.end(), [&](std::uint32_t a, std::uint32_t b) { return sites[a].id < sites[b].id; });
    at_.reserve(sites.size());
    for (const std::uint32_t index : ids_) {
        at_.push_back(sites[index].at);
        for_others_.push_back(stands_for_others(sites[index].id));
    }
    if (at_.empty() || !(reach_m >= 0)) return;

    const auto [west, east] =
        std::minmax_element(at_.begin(), at_.end(), [](Point a, Point b) { return a.x_m < b.x_m; });
    const auto [south, north] =
        std::minmax_element(at_.begin(), at_.end(), [](Point a, Point b) { return a.y_m < b.y_m; });
    origin_x_m_ = west->x_m;
    origin_y_m_ = south->y_m;
    const double widest_m = std::max(east->x_m - origin_x_m_, north->y_m - origin_y_m_);
    square_m_ = std::max({std::min(reach_m, widest_square_m), widest_m / most_squares, 1.0});
    columns_ = static_cast<int>((east->x_m - origin_x_m_) / square_m_) + 1;
    rows_ = static_cast<int>((north->y_m - origin_y_m_) / square_m_) + 1;

    // Counting sort of the ranks by square; within a square they stay in increasing id.
    const auto square_of = [&](Point p) {
        const int column = static_cast<int>((p.x_m - origin_x_m_) / square_m_);
        const int row = static_cast<int>((p.y_m - origin_y_m_) / square_m_);
        return static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) + static_cast<std::size_t>(column);
    };
    cell_start_.assign(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_) + 1, 0);
    for (const Point p : at_) ++cell_start_[square_of(p) + 1];
    std::partial_sum(cell_start_.begin(), cell_start_.end(), cell_start_.begin());
    cell_items_.resize(at_.size());
    std::vector<std::uint32_t> next(cell_start_.begin(), cell_start_.end() - 1);
    for (std::size_t rank = 0; rank < at_.size(); ++rank) {
        cell_items_[next[square_of(at_[rank])]++] = static_cast<std::uint32_t>(rank);
    }
}

std::vector<std::uint32_t> SiteFinder::near(Point p) const {
    std::vector<std::uint32_t> found;
    if (columns_ == 0) return found;
    const auto clamped = [this](double metres, int squares) {
        return static_cast<int>(std::clamp(std::floor(metres / square_m_), -1.0, static_cast<double>(squares)));
    };
    const int first_column = std::max(0, clamped(p.x_m - reach_m_ - origin_x_m_, columns_));
    const int last_column = std::min(columns_ - 1, clamped(p.x_m + reach_m_ - origin_x_m_, columns_));
    const int first_row = std::max(0, clamped(p.y_m - reach_m_ - origin_y_m_, rows_));
    const int last_row = std::min(rows_ - 1, clamped(p.y_m + reach_m_ - origin_y_m_, rows_));
    for (int row = first_row; row <= last_row; ++row) {
        for (int column = first_column; column <= last_column; ++column) {
            const auto square =
                static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) + static_cast<std::size_t>(column);
            for (std::uint32_t i = cell_start_[square]; i < cell_start_[square + 1]; ++i) {
                const std::uint32_t rank = cell_items_[i];
                const double away_m = distance_m(at_[rank], p);
                if (away_m <= coarse_beyond_m_ || for_others_[rank]) {
                    if (away_m <= reach_m_) found.push_back(rank);
                }
            }
        }
    }
    std::sort(found.begin(), found.end());
    for (std::uint32_t& rank : found) rank = ids_[rank];
    return found;
}

}  // namespace maybough::landscape
