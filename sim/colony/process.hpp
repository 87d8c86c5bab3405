// Private to colony/: the processes of a colony's day, in their order.
#pragma once

#include <algorithm>
#include <cmath>

#include "colony/colony.hpp"

namespace maybough::colony {

/// A smooth rise from 0 to 1, half at `half`.
inline double rise(double x, double half, double width) {
    return 1 / (1 + std::exp((half - x) / width));
}

/// Pollen that the comb has room for.
inline double pollen_room_g(const Colony& colony, const ColonyParameters& p) {
    return static_cast<double>(colony.comb_cells) * p.pollen_comb_share * p.pollen_per_cell_g;
}

/// What today's sky means to this colony.
struct Outside {
    double nectar = 0;  ///< on offer, 1 = a good flow
    double pollen = 0;  ///< on offer, 1 = plenty
    double foraging_h = 0;
    double warmth = 0;  ///< of the last days, as brood and cluster feel it, 0 winter to 1
    DayLength days;
};
Outside look_outside(Colony& colony, const DayOfSky& sky, const ColonyParameters& parameters);

/// Brood ages by a day; losses at hatching, capping and emergence. Returns what emerged.
struct Emerged {
    std::int64_t workers = 0;
    std::int64_t drones = 0;
};
Emerged age_brood(Colony& colony, const ColonyParameters& parameters, Stream& luck, DayOfColony& today);

/// Nest bees age; some take up foraging or go back; deaths of all.
void age_adults(Colony& colony, const Emerged& emerged, const Outside& outside, const ColonyParameters& parameters,
                Stream& luck, DayOfColony& today);

/// Nectar and pollen in, food eaten, wax built; hunger kills.
void keep_house(Colony& colony, const Outside& outside, const ColonyParameters& parameters, Stream& luck,
                DayOfColony& today);

void lay_eggs(Colony& colony, const Outside& outside, const ColonyParameters& parameters, Stream& luck,
              DayOfColony& today);

/// Queen cells are begun, age, are torn down; young queens emerge, mate, begin to lay or fail.
void prepare_to_swarm(Colony& colony, const Outside& outside, Day day, const ColonyParameters& parameters,
                      const Chance& chance, DayOfColony& today);
void tend_queen(Colony& colony, const DayOfSky& sky, Day day, const ColonyParameters& parameters, const Chance& chance,
                Stream& luck, DayOfColony& today);

void visit_by_keeper(Colony& colony, const Outside& outside, Day day, const ColonyParameters& parameters,
                     const Chance& chance, DayOfColony& today);

/// A new limit for the summed hazard of beginning cells.
double draw_hazard_limit(Stream& luck);
void tear_down_cells(Colony& colony);

/// Takes about `share` of every count in turn from one sequence with a single rounding draw `u`.
class ShareTaker {
  public:
    ShareTaker(double share, double u) : share_(share), exact_(u) {}
    /// How many of `count` are taken; the mean is share * count, the sum over counts is off by less than one.
    std::int64_t from(std::int64_t count) {
        exact_ += share_ * static_cast<double>(count);
        const auto upto = static_cast<std::int64_t>(exact_);
        const std::int64_t taken = std::min(count, upto - done_);
        done_ += taken;
        return taken;
    }
    void take(std::int64_t& count) { count -= from(count); }

  private:
    double share_;
    double exact_;
    std::int64_t done_ = 0;
};

}  // namespace maybough::colony
