// What the sky offers, what foragers bring home, what is eaten, what is built.
#include "colony/process.hpp"

namespace maybough::colony {

Outside look_outside(Colony& colony, const DayOfSky& sky, const ColonyParameters& p) {
    Outside outside;
    const std::array<double, bloom_kinds> nectar{p.nectar_early_pollen, p.nectar_fruit, p.nectar_spring_trees,
                                                 p.nectar_summer, p.nectar_late};
    const std::array<double, bloom_kinds> pollen{p.pollen_early_pollen, p.pollen_fruit, p.pollen_spring_trees,
                                                 p.pollen_summer, p.pollen_late};
    for (std::size_t kind = 0; kind < bloom_kinds; ++kind) {
        const double bloom = static_cast<double>(sky.bloom[kind]) * colony.forage[kind];
        outside.nectar += bloom * nectar[kind];
        outside.pollen += bloom * pollen[kind];
    }
    // Few fly where there is little to fetch.
    const double offer = outside.nectar + outside.pollen;
    outside.foraging_h = sky.foraging_h * share_reared(offer, p.foraging_half_offer);
    outside.days.hours = sky.daylight_h();
    if (colony.knows_weather) {
        outside.days.change_h = outside.days.hours - colony.daylight_h;
        colony.warmth_c += (sky.weather.tmax_c - colony.warmth_c) / p.warmth_memory_days;
    } else {
        colony.warmth_c = sky.weather.tmax_c;
        colony.knows_weather = true;
    }
    colony.daylight_h = outside.days.hours;
    outside.warmth = rise(colony.warmth_c, p.laying_half_tmax_c, p.laying_width_tmax_c);
    return outside;
}

namespace {

constexpr double grams_per_mg = 1e-3;

void gather(Colony& colony, const Outside& outside, const ColonyParameters& p, DayOfColony& today) {
    const double hours = static_cast<double>(colony.foragers) * outside.foraging_h * colony.forage_luck;
    if (!(hours > 0)) return;
    const double room_for_pollen_g = pollen_room_g(colony, p);
    const double want = std::max(0.0, 1 - colony.pollen_g / std::min(p.pollen_wanted_g, 1 + room_for_pollen_g));
    const double for_pollen = p.pollen_forager_share * want;
    // Bees keep part of the comb for brood; nectar may fill what is free of the rest.
    const double comb = static_cast<double>(colony.comb_cells);
    const double free_cells =
        std::min(comb - cells_in_use(colony, p), comb * p.honey_comb_share - colony.honey_g / p.honey_per_cell_g);
    const double room_g = std::max(0.0, free_cells) * p.honey_per_cell_g;
    // A swarm that has just moved in holds nectar in its crops while there is no comb yet.
    const double crops_g = static_cast<double>(adults(colony)) * grams_per_mg * p.crop_honey_mg;
    const double nectar_g = std::min(std::max(room_g, crops_g - colony.honey_g),
                                     hours * (1 - for_pollen) * outside.nectar * p.honey_per_forager_h_g);
    today.pollen_in_g = std::min(std::max(0.0, room_for_pollen_g - colony.pollen_g),
                                 hours * for_pollen * outside.pollen * p.pollen_per_forager_h_g);
    colony.pollen_g += today.pollen_in_g;
    colony.honey_g += std::max(0.0, nectar_g);
    today.honey_in_g = std::max(0.0, nectar_g);
}

/// The first comb of a new nest is for workers; part of the later is for drones, up to their usual share.
void build_drone_comb(Colony& colony, const ColonyParameters& p, DayOfColony& today) {
    if (today.workers_emerged == 0 || today.comb_built == 0) return;
    const double wanted =
        p.drone_comb_share * cells_of_cavity(colony, p) - static_cast<double>(colony.drone_comb_cells);
    const double part = p.drone_comb_building_share * static_cast<double>(today.comb_built);
    today.drone_comb_built = static_cast<std::int64_t>(std::max(0.0, std::min(wanted, part)));
    colony.drone_comb_cells += today.drone_comb_built;
}

/// Comb is built from nectar coming in while the nest needs room; a colony without comb builds from what it carries.
void build(Colony& colony, const Outside& outside, const ColonyParameters& p, Stream& luck, DayOfColony& today) {
    const double room = cells_of_cavity(colony, p) - static_cast<double>(colony.comb_cells);
    if (!(room >= 1) || !(colony.warmth_c > p.laying_half_tmax_c)) return;
    const double in_use = cells_in_use(colony, p) / std::max(1.0, static_cast<double>(colony.comb_cells));
    const double season =
        outside.days.falls() ? rise(outside.days.hours, p.comb_falling_daylight_h, p.comb_falling_width_h) : 1;
    const double need = season * rise(in_use, p.comb_need_full, p.comb_need_width);
    // Bees of any age build where the young are few.
    const double builders =
        static_cast<double>(colony.nest.sum() + colony.older_nest) * p.comb_cells_per_bee_day * need;
    const double reserve_g = static_cast<double>(adults(colony)) * grams_per_mg * p.comb_reserve_mg;
    const double spare_g = std::max(0.0, colony.honey_g - reserve_g) * p.comb_honey_share;
    const double affordable = std::max(today.honey_in_g, spare_g) / p.honey_per_comb_cell_g;
    const std::int64_t built =
        std::min(static_cast<std::int64_t>(room), round_at_random(luck, std::min({builders, affordable, room})));
    const double wax_g = std::min(colony.honey_g, static_cast<double>(built) * p.honey_per_comb_cell_g);
    colony.comb_cells += built;
    colony.honey_g -= wax_g;
    today.honey_to_wax_g = wax_g;
    today.comb_built = built;
    build_drone_comb(colony, p, today);
}

/// Nurses eat the youngest larvae when food fails.
void eat_larvae(Colony& colony, double share, Stream& luck, DayOfColony& today) {
    ShareTaker taker(share, luck.uniform());
    for (std::size_t age = egg_days; age < worker_capped_day; ++age) {
        const std::int64_t eaten = taker.from(colony.workers.ages[age]);
        colony.workers.ages[age] -= eaten;
        colony.workers.larvae -= eaten;
        today.brood_died += eaten;
    }
}

/// Those whom the food does not reach die: that share of every age.
void starve(Colony& colony, double share, Stream& luck, DayOfColony& today) {
    ShareTaker taker(share, luck.uniform());
    const auto lose = [&](std::int64_t& count) {
        const std::int64_t lost = taker.from(count);
        count -= lost;
        today.adults_died += lost;
    };
    for (std::int64_t& count : colony.nest.slots) lose(count);
    lose(colony.older_nest);
    lose(colony.winter_bees);
    lose(colony.foragers);
}

}  // namespace

void keep_house(Colony& colony, const Outside& outside, const ColonyParameters& parameters, Stream& luck,
                DayOfColony& today) {
    gather(colony, outside, parameters, today);

    const double bees = static_cast<double>(adults(colony));
    const double larvae = static_cast<double>(colony.workers.larvae + colony.drone_brood.larvae);
    const double brood = static_cast<double>(all_brood(colony));
    const double activity = bees > 0 ? std::min(1.0, brood / (bees * parameters.upkeep_full_brood)) : 0;
    const double upkeep_g =
        bees * grams_per_mg *
        (parameters.upkeep_rest_mg + (parameters.upkeep_active_mg - parameters.upkeep_rest_mg) * activity);
    const double wanted_g = upkeep_g + larvae * grams_per_mg * parameters.larva_honey_mg;
    const double eaten_g = std::min(colony.honey_g, wanted_g);
    colony.honey_g -= eaten_g;
    today.honey_eaten_g = eaten_g;
    if (eaten_g < wanted_g) starve(colony, parameters.hunger_death_per_day * (1 - eaten_g / wanted_g), luck, today);

    const double pollen_wanted_g = larvae * grams_per_mg * parameters.larva_pollen_mg;
    const double pollen_eaten_g = std::min(colony.pollen_g, pollen_wanted_g);
    colony.pollen_g -= pollen_eaten_g;
    today.pollen_eaten_g = pollen_eaten_g;
    const double fed =
        std::min(wanted_g > 0 ? eaten_g / wanted_g : 1.0, pollen_wanted_g > 0 ? pollen_eaten_g / pollen_wanted_g : 1.0);
    if (fed < 1 && larvae > 0) eat_larvae(colony, 1 - fed, luck, today);

    build(colony, outside, parameters, luck, today);
}

}  // namespace maybough::colony
