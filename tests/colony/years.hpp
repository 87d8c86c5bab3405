// Colonies for tests, lived through days and years.
#pragma once

#include <vector>

#include "colony/nests.hpp"
#include "colony/places.hpp"
#include "swarm/swarm.hpp"

namespace maybough_test {

/// A year of one colony.
struct YearOfColony {
    std::vector<maybough::Swarm> swarms;
    std::int64_t workers_emerged = 0;
    std::int64_t most_eggs = 0;  ///< in a day
    std::int64_t most_adults = 0;
    std::int64_t most_sealed = 0;
    double honey_in_g = 0;
    double least_honey_g = 1e9;
    std::int64_t forager_days = 0;    ///< on days with foraging
    std::int64_t forager_deaths = 0;  ///< on the same days
    int died_on = -1;
};

/// Lives `colony` from day `from` to day `until` (exclusive) of `sky`, casting swarms.
inline YearOfColony live(maybough::Colony& colony, const maybough::SkyYear& sky, const maybough::Chance& chance,
                         int from = 0, int until = 365, const maybough::ColonyParameters& parameters = {},
                         const maybough::SwarmParameters& swarm_parameters = {}) {
    YearOfColony year;
    for (maybough::Day day{from}; day.value < until && colony.alive; day = day + 1) {
        const std::int64_t foragers_before = colony.foragers;
        const maybough::DayOfColony today = maybough::live_one_day(colony, sky[day], day, parameters, chance);
        year.workers_emerged += today.workers_emerged;
        year.most_eggs = std::max(year.most_eggs, today.eggs_laid);
        year.honey_in_g += today.honey_in_g;
        if (sky[day].foraging_h > 4) {
            year.forager_days += foragers_before;
            year.forager_deaths += today.foragers_died;
        }
        const auto swarm = maybough::issue_swarm(colony, sky[day], day, swarm_parameters, chance);
        if (swarm) year.swarms.push_back(*swarm);
        year.most_adults = std::max(year.most_adults, maybough::adults(colony));
        year.most_sealed = std::max(year.most_sealed, maybough::sealed_brood(colony));
        year.least_honey_g = std::min(year.least_honey_g, colony.honey_g);
        if (!colony.alive) year.died_on = day.value;
    }
    return year;
}

}  // namespace maybough_test
