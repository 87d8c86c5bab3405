// Colony: one colony lives one day. Brood, adults, stores, comb, queen, keeper's management, swarm preparation.
#pragma once

#include <cstdint>

#include "base/base.hpp"
#include "chance/chance.hpp"
#include "landscape/landscape.hpp"
#include "parameters/colony.hpp"
#include "weather/weather.hpp"

namespace maybough {

/// How a keeper runs the colony; nobody does for a wild one.
struct HiveManagement {
    bool managed = false;
    int inspect_every_days = 0;   ///< 0 = never opened
    double cell_finding = 0.8;    ///< chance that one inspection finds the queen cells there are
    double max_volume_l = 40;     ///< with supers on
};

/// A colony: plain data, owned by this room. Bees and cells are whole numbers; stores are grams.
struct Colony {
    ColonyId id;
    Point at;
    ColonyOrigin origin = ColonyOrigin::wild;
    HiveManagement management;
    ForageMix forage{};
    double volume_l = 40;
    bool alive = true;
    // (colony/ adds: brood by age, nest bees, foragers, honey, pollen, comb, queen, queen cells, readiness)
};

std::int64_t adults(const Colony& colony);
std::int64_t sealed_brood(const Colony& colony);
std::int64_t all_brood(const Colony& colony);

/// The colony as it stands on the first day of the simulated year, after (or in) winter.
Colony overwintered_colony(const DrawnColony& drawn, const HiveManagement& management,
                           const ColonyParameters& parameters, const Chance& chance);

/// A swarm that has moved in somewhere.
struct Settlers {
    std::int64_t bees = 0;
    bool mated_queen = true;     ///< prime swarm with the old queen; false: a virgin
    double honey_g = 0;          ///< carried in crops
    double queen_age_days = 365;
};
Colony founded_colony(ColonyId id, Point at, const Settlers& settlers, double volume_l, const ForageMix& forage,
                      Day day, const ColonyParameters& parameters, const Chance& chance);

/// Gains and losses of one day, for the ledger. Throws ModelFault if they do not add up.
struct DayOfColony {
    std::int64_t eggs_laid = 0;
    std::int64_t workers_emerged = 0;
    std::int64_t adults_died = 0;
};

/// One day: weather, forage, laying, ageing, deaths, stores, comb, crowding, queen cells, the keeper's visit.
DayOfColony live_one_day(Colony& colony, const DayOfSky& sky, Day day, const ColonyParameters& parameters,
                         const Chance& chance);

}  // namespace maybough
