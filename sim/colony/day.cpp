// A colony's day, in the order things happen, and the check that bees and honey add up.
#include <string>

#include "colony/process.hpp"

namespace maybough::colony {

namespace {

/// A colony with too few bees comes to its end; in winter some do by what is not modelled.
void end_if_spent(Colony& colony, const Outside& outside, const ColonyParameters& p, Stream& luck, DayOfColony& today) {
    const std::int64_t left = adults(colony);
    const bool winter = outside.days.hours < p.spring_daylight_h;
    const bool mishap = winter && bernoulli(luck, p.winter_loss_per_day);
    if (static_cast<double>(left) >= p.min_adults && !mishap) return;
    today.adults_died += left;
    today.drones_died += colony.drones;
    today.brood_died += all_brood(colony);
    today.honey_taken_g += colony.honey_g;
    today.pollen_left_g += colony.pollen_g;
    colony.nest = {};
    colony.older_nest = colony.winter_bees = colony.foragers = colony.drones = 0;
    colony.workers = {};
    colony.drone_brood = {};
    colony.honey_g = colony.pollen_g = 0;
    tear_down_cells(colony);
    colony.queen.state = QueenState::none;
    colony.alive = false;
}

struct Before {
    std::int64_t adults;
    std::int64_t drones;
    std::int64_t brood;
    double honey_g;
    double pollen_g;
    std::int64_t comb;
    std::int64_t queens_in_cells;
};

void must_hold(bool holds, const char* what, const Colony& colony, Day day) {
    if (!holds) {
        throw ModelFault(std::string(what) + " do not balance in colony " + std::to_string(colony.id.value) +
                         " on day " + std::to_string(day.value));
    }
}

void check_balance(const Colony& colony, const Before& before, const DayOfColony& t, Day day) {
    must_hold(adults(colony) == before.adults + t.workers_emerged - t.adults_died - t.adults_taken, "workers", colony,
              day);
    must_hold(colony.drones == before.drones + t.drones_emerged - t.drones_died, "drones", colony, day);
    must_hold(all_brood(colony) == before.brood + t.eggs_laid + t.drone_eggs_laid - t.workers_emerged -
                                       t.drones_emerged - t.brood_died - t.brood_taken,
              "brood", colony, day);
    const double honey_g =
        before.honey_g + t.honey_in_g + t.honey_fed_g - t.honey_eaten_g - t.honey_to_wax_g - t.honey_taken_g;
    must_hold(std::abs(colony.honey_g - honey_g) < 1e-6 && colony.honey_g >= 0, "grams of honey", colony, day);
    const double pollen_g = before.pollen_g + t.pollen_in_g - t.pollen_eaten_g - t.pollen_left_g;
    must_hold(std::abs(colony.pollen_g - pollen_g) < 1e-6 && colony.pollen_g >= 0, "grams of pollen", colony, day);
    must_hold(colony.comb_cells == before.comb + t.comb_built + t.comb_given, "cells of comb", colony, day);
    must_hold(t.cells_torn_down >= 0, "queen cells", colony, day);
}

}  // namespace

DayOfColony live_one_day(Colony& colony, const DayOfSky& sky, Day day, const ColonyParameters& parameters,
                         const Chance& chance) {
    DayOfColony today;
    if (!colony.alive) return today;
    const Before before{adults(colony),  colony.drones,     all_brood(colony),      colony.honey_g,
                        colony.pollen_g, colony.comb_cells, queens_in_cells(colony)};
    Stream luck = chance.stream(Purpose::colony_day, colony.id, day);

    const Outside outside = look_outside(colony, sky, parameters);
    const Emerged emerged = age_brood(colony, parameters, luck, today);
    age_adults(colony, emerged, outside, parameters, luck, today);
    keep_house(colony, outside, parameters, luck, today);
    lay_eggs(colony, outside, parameters, luck, today);
    prepare_to_swarm(colony, outside, day, parameters, chance, today);
    tend_queen(colony, sky, day, parameters, chance, luck, today);
    visit_by_keeper(colony, outside, day, parameters, chance, today);
    end_if_spent(colony, outside, parameters, luck, today);

    today.cells_torn_down = before.queens_in_cells + today.cells_begun - today.queens_emerged - queens_in_cells(colony);
    check_balance(colony, before, today, day);
    return today;
}

}  // namespace maybough::colony
