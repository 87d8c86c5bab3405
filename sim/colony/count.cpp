// Sums over a colony, and the year's turn.
#include "colony/process.hpp"

namespace maybough::colony {

std::int64_t nest_bees(const Colony& colony) {
    return colony.nest.sum() + colony.older_nest + colony.winter_bees;
}

std::int64_t adults(const Colony& colony) {
    return nest_bees(colony) + colony.foragers;
}

std::int64_t young_bees(const Colony& colony) {
    std::int64_t young = 0;
    for (std::size_t age = 0; age < young_ages; ++age) young += colony.nest[age];
    return young;
}

std::int64_t sealed_brood(const Colony& colony) {
    return colony.workers.sealed;
}

std::int64_t all_brood(const Colony& colony) {
    return colony.workers.all() + colony.drone_brood.all();
}

std::int64_t queens_in_cells(const Colony& colony) {
    return colony.queen_cells.sum() + colony.ripe_queens;
}

double cells_of_cavity(const Colony& colony, const ColonyParameters& parameters) {
    return colony.volume_l * parameters.comb_cells_per_l;
}

double cells_in_use(const Colony& colony, const ColonyParameters& parameters) {
    return static_cast<double>(all_brood(colony)) + colony.honey_g / parameters.honey_per_cell_g +
           colony.pollen_g / parameters.pollen_per_cell_g;
}

void begin_year(Colony& colony) {
    colony.swarms_cast = 0;
}

}  // namespace maybough::colony
