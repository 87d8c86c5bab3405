// The constants of colony/.
#pragma once

#include "parameters/row.hpp"

// Days of development are the lengths of arrays and stand in colony/colony.hpp; everything else of the room is here.
// clang-format off
#define MAYBOUGH_COLONY_ROWS(ROW) \
    ROW(laying_peak_eggs_per_day, "1/d", 2300, 100, 4000, fixed, 1500, 2500, fitted, "peaks of 1200-2000: Nolan 1925; Winston 1987", "laying of a one-year queen with unlimited nurses, room and food") \
    ROW(laying_half_nest_bees, "bees", 5000, 100, 30000, fixed, 3000, 8000, from_memory, "Khoury, Barron and Myerscough 2013", "nest bees at which half of the laying is reared") \
    ROW(laying_half_food_g, "g", 500, 1, 5000, fixed, 300, 800, from_memory, "Khoury, Barron and Myerscough 2013", "honey at which half of the laying is reared") \
    ROW(laying_half_pollen_g, "g", 500, 1, 3000, fixed, 100, 800, assumed, "", "pollen at which half of the laying is reared; in a young nest half of what its comb holds, where that is less") \
    ROW(laying_half_fresh_pollen, "1", 0.05, 0.001, 1, fixed, 0.02, 0.2, assumed, "", "fresh pollen on offer at which laying is half freed from the store") \
    ROW(laying_stored_pollen_share, "1", 0.3, 0, 1, fixed, 0.2, 0.7, fitted, "dates of swarms of Fell et al. 1977 and Gilley et al. 2018", "laying on stored pollen alone, as a share") \
    ROW(laying_half_tmax_c, "C", 7.5, -5, 25, fixed, 4, 12, fitted, "dates of swarms of Fell et al. 1977 and Gilley et al. 2018; some brood from about 4 degrees", "smoothed daily maximum at which half of the laying goes on") \
    ROW(laying_width_tmax_c, "C", 2, 0.2, 10, fixed, 1.5, 4, assumed, "", "width of that rise") \
    ROW(warmth_memory_days, "d", 10, 1, 60, fixed, 5, 20, assumed, "", "memory of the smoothed daily maximum") \
    ROW(laying_spring_daylight_h, "h", 10, 6, 14, fixed, 9.5, 11, derived, "Nurnberger et al. 2018: day length and elapsed winter modify the effect of warmth", "rising day length at which half of the laying goes on") \
    ROW(laying_spring_width_h, "h", 0.4, 0.02, 3, fixed, 0.2, 1, assumed, "", "width of that rise") \
    ROW(laying_autumn_daylight_h, "h", 12.8, 8, 16, fixed, 11.5, 14, assumed, "", "falling day length at which half of the laying goes on") \
    ROW(laying_autumn_width_h, "h", 0.7, 0.05, 3, fixed, 0.3, 1.2, assumed, "", "width of that fall") \
    ROW(laying_falling_days_share, "1", 0.8, 0.2, 1, fixed, 0.6, 1, assumed, "", "laying after midsummer as a share of that before") \
    ROW(laying_loss_per_queen_year, "1/yr", 0.1, 0, 0.6, fixed, 0.05, 0.3, assumed, "", "laying lost with each year of the queen beyond the first") \
    ROW(laying_free_cell_share, "1/d", 0.3, 0.01, 1, fixed, 0.1, 0.5, assumed, "", "share of the free cells the queen can find in a day") \
    ROW(egg_survival, "1", 0.94, 0, 1, fixed, 0.9, 0.98, from_memory, "Fukuda and Sakagami 1968", "share of eggs that hatch") \
    ROW(larva_survival, "1", 0.93, 0, 1, fixed, 0.86, 0.99, from_memory, "Fukuda and Sakagami 1968", "share of larvae that are capped") \
    ROW(pupa_survival, "1", 0.99, 0, 1, fixed, 0.95, 1, from_memory, "Fukuda and Sakagami 1968", "share of capped brood that emerges") \
    ROW(drone_egg_share, "1", 0.07, 0, 0.5, fixed, 0.03, 0.15, assumed, "", "share of spring and summer eggs that are drones") \
    ROW(drone_min_workers, "bees", 4000, 0, 50000, fixed, 3000, 6000, from_memory, "Smith et al. 2014", "workers from which drones are reared") \
    ROW(drone_comb_share, "1", 0.17, 0, 0.6, fixed, 0.1, 0.25, from_memory, "Seeley and Morse 1976", "share of a natural nest's comb that is drone comb") \
    ROW(drone_comb_building_share, "1", 0.35, 0, 1, fixed, 0.2, 0.8, assumed, "", "share of new comb that is drone comb once a new nest's first own workers have emerged, up to that share") \
    ROW(drone_death_per_day, "1/d", 0.035, 0, 1, fixed, 0.025, 0.05, from_memory, "Winston 1987", "daily loss of drones in season") \
    ROW(drone_eviction_per_day, "1/d", 0.15, 0, 1, fixed, 0.05, 0.3, assumed, "", "daily loss of drones when they are driven out") \
    ROW(foraging_onset_per_day, "1/d", 0.25, 0, 1, fixed, 0.15, 0.35, from_memory, "Khoury, Myerscough and Barron 2011", "rate at which nest bees take up foraging where there are no foragers") \
    ROW(foraging_onset_hungry_per_day, "1/d", 0.25, 0, 1, fixed, 0, 0.3, from_memory, "Khoury, Barron and Myerscough 2013", "what hunger adds to that rate") \
    ROW(foraging_inhibition_per_day, "1/d", 0.75, 0, 3, fixed, 0.5, 1, from_memory, "Khoury, Myerscough and Barron 2011", "social inhibition: what a share of foragers takes from that rate") \
    ROW(foraging_full_hours, "h", 4, 0.5, 16, fixed, 2, 8, assumed, "", "foraging hours a day from which nest bees take up foraging at the full rate") \
    ROW(foraging_half_offer, "1", 0.1, 0.001, 2, fixed, 0.03, 0.3, assumed, "", "nectar and pollen on offer at which half of the fit hours are flown") \
    ROW(foraging_min_age_days, "d", 4, 1, 19, fixed, 3, 5, from_memory, "Khoury, Myerscough and Barron 2011", "youngest age at which a bee forages") \
    ROW(nest_death_per_day, "1/d", 0.02, 0, 1, fixed, 0.005, 0.03, derived, "10-15 % of deaths in the nest: Gary, in Page, The Spirit of the Hive", "daily deaths of nest bees in season") \
    ROW(forager_death_per_foraging_h, "1/h", 0.011, 0, 1, fixed, 0.010, 0.09, derived, "Visscher and Dukas 1997; upper value Prado et al. 2020", "deaths of foragers per hour of foraging") \
    ROW(forager_death_per_day, "1/d", 0.01, 0, 1, fixed, 0.005, 0.04, assumed, "", "deaths of foragers on days without flight") \
    ROW(winter_death_per_day, "1/d", 0.0045, 0, 1, fixed, 0.003, 0.008, derived, "Fukuda and Sekiguchi 1966", "daily deaths of winter bees") \
    ROW(winter_small_cluster_bees, "bees", 3500, 0, 20000, fixed, 2000, 6000, assumed, "", "winter cluster at which deaths double, since a small ball of bees cannot keep warm") \
    ROW(winter_bee_daylight_h, "h", 12.9, 8, 16, fixed, 12, 14, from_memory, "Mattila, Harris and Otis 2001", "falling day length at which half of the emerging bees are winter bees") \
    ROW(winter_bee_width_h, "h", 0.4, 0.02, 3, fixed, 0.2, 1, assumed, "", "width of that change") \
    ROW(spring_daylight_h, "h", 11, 6, 16, fixed, 10, 12.5, assumed, "", "rising day length from which winter bees take up foraging") \
    ROW(nectar_early_pollen, "1", 0.10, 0, 5, fixed, 0, 0.3, assumed, "", "nectar on offer in full early pollen bloom, 1 = a good flow") \
    ROW(nectar_fruit, "1", 0.7, 0, 5, fixed, 0.3, 1, assumed, "", "nectar on offer in full fruit bloom") \
    ROW(nectar_spring_trees, "1", 0.9, 0, 5, fixed, 0.5, 1.5, assumed, "", "nectar on offer in full bloom of late spring trees") \
    ROW(nectar_summer, "1", 0.35, 0, 5, fixed, 0.2, 1, fitted, "founders' winter survival 0.23: Seeley 2017", "nectar on offer in full summer bloom") \
    ROW(nectar_late, "1", 0.48, 0, 5, fixed, 0.2, 1, fitted, "winter survival of founders 0.23 and of the established 0.84: Seeley 2017", "nectar on offer in full late bloom") \
    ROW(pollen_early_pollen, "1", 0.7, 0, 5, fixed, 0.4, 1, assumed, "", "pollen on offer in full early pollen bloom, 1 = plenty") \
    ROW(pollen_fruit, "1", 0.8, 0, 5, fixed, 0.5, 1.2, assumed, "", "pollen on offer in full fruit bloom") \
    ROW(pollen_spring_trees, "1", 0.8, 0, 5, fixed, 0.5, 1.2, assumed, "", "pollen on offer in full bloom of late spring trees") \
    ROW(pollen_summer, "1", 0.6, 0, 5, fixed, 0.3, 1, assumed, "", "pollen on offer in full summer bloom") \
    ROW(pollen_late, "1", 0.6, 0, 5, fixed, 0.3, 1, assumed, "", "pollen on offer in full late bloom") \
    ROW(forage_colony_sd_ln, "1", 0.25, 0, 1.5, fixed, 0.1, 0.5, assumed, "", "spread between colonies of what they bring home, standard deviation of the logarithm") \
    ROW(honey_per_forager_h_g, "g/h", 0.028, 0, 0.5, fixed, 0.01, 0.03, derived, "Winston 1987: loads of 25-40 mg, half of it honey, about 10 a day; Khoury et al. 2013", "honey made from an hour of one nectar forager in a good flow, net of her flight") \
    ROW(pollen_per_forager_h_g, "g/h", 0.05, 0, 0.5, fixed, 0.02, 0.06, derived, "Winston 1987: loads of 15 mg, trips of 10 to 20 minutes", "pollen from an hour of one pollen forager where there is plenty") \
    ROW(pollen_forager_share, "1", 0.4, 0, 1, fixed, 0.2, 0.6, assumed, "", "share of foragers that gather pollen where none is stored") \
    ROW(pollen_wanted_g, "g", 3000, 10, 20000, fixed, 1000, 4000, assumed, "", "stored pollen at which pollen gathering ends") \
    ROW(pollen_comb_share, "1", 0.2, 0, 1, fixed, 0.1, 0.3, assumed, "", "share of the comb that pollen may fill") \
    ROW(honey_comb_share, "1", 0.62, 0, 1, fixed, 0.5, 0.8, assumed, "", "share of the comb that honey may fill; the rest is kept for brood and pollen") \
    ROW(crop_honey_mg, "mg", 40, 0, 80, fixed, 30, 50, from_memory, "Combs 1972", "honey a bee holds in her crop where there is no comb") \
    ROW(upkeep_rest_mg, "mg/d", 2.2, 0, 50, fixed, 1.7, 4, derived, "0.8-1.2 kg a month and 20 000 bees: Seeley and Visscher 1985", "honey a bee eats in a broodless cluster") \
    ROW(upkeep_active_mg, "mg/d", 7, 0, 50, fixed, 5, 10, from_memory, "Khoury, Barron and Myerscough 2013", "honey a bee eats in a brood-rearing colony") \
    ROW(upkeep_full_brood, "1", 0.5, 0.01, 5, fixed, 0.3, 1, assumed, "", "brood cells a bee at which she eats as in a brood-rearing colony") \
    ROW(larva_honey_mg, "mg/d", 18, 0, 100, fixed, 12, 25, from_memory, "Khoury, Barron and Myerscough 2013", "honey an open larva costs") \
    ROW(larva_pollen_mg, "mg/d", 17, 0, 100, fixed, 16, 32, from_memory, "100-190 mg pollen a worker: Hrassnigg and Crailsheim 2005", "pollen an open larva costs") \
    ROW(hunger_death_per_day, "1/d", 0.25, 0, 1, fixed, 0.1, 0.5, assumed, "", "daily deaths where there is no food at all") \
    ROW(comb_cells_per_l, "1/l", 2100, 500, 5000, fixed, 1900, 2400, derived, "45 l, 23 400 square cm of comb: Seeley and Morse 1976", "comb cells of a full cavity") \
    ROW(honey_per_cell_g, "g", 0.35, 0.05, 1, fixed, 0.3, 0.42, derived, "Seeley and Morse 1976", "honey in a cell") \
    ROW(pollen_per_cell_g, "g", 0.18, 0.02, 1, fixed, 0.14, 0.2, from_memory, "Winston 1987", "pollen in a cell") \
    ROW(honey_per_comb_cell_g, "g", 0.12, 0, 0.5, fixed, 0.05, 0.26, derived, "9 of a reported 4-20 kg of honey a kg of wax, 77 000 cells: Whitcomb 1946", "honey spent on the wax of a cell") \
    ROW(comb_cells_per_bee_day, "1/d", 0.15, 0, 5, fixed, 0.1, 1, fitted, "comb of the first weeks: Lee and Winston 1985; Smith et al. 2016", "cells a nest bee builds in a day in a good flow") \
    ROW(comb_reserve_mg, "mg", 28, 0, 100, fixed, 5, 30, assumed, "", "honey for each bee that is not spent on wax") \
    ROW(comb_honey_share, "1/d", 0.25, 0, 1, fixed, 0.1, 0.5, assumed, "", "share of the honey beyond that reserve that wax may take in a day") \
    ROW(comb_falling_daylight_h, "h", 14.6, 8, 18, fixed, 13, 15.2, fitted, "90 % of the first comb within 44 days: Lee and Winston 1985", "falling day length at which half of the building goes on") \
    ROW(comb_falling_width_h, "h", 0.3, 0.02, 3, fixed, 0.1, 0.6, assumed, "", "width of that fall") \
    ROW(comb_need_full, "1", 0.7, 0, 1, fixed, 0.5, 0.9, assumed, "", "share of cells in use at which half of the builders build") \
    ROW(comb_need_width, "1", 0.06, 0.005, 0.5, fixed, 0.03, 0.2, assumed, "", "width of that rise") \
    ROW(start_bees_per_l, "1/l", 275, 10, 1000, fixed, 200, 350, derived, "Jeffree 1956; Seeley and Morse 1976", "winter bees on the first day of the year for each litre, up to 50 l") \
    ROW(start_bees_sd_ln, "1", 0.22, 0, 1, fixed, 0.1, 0.35, assumed, "", "spread of that between colonies") \
    ROW(start_honey_g_per_l, "g/l", 330, 0, 1000, fixed, 200, 400, derived, "15 kg in 45 l: Seeley and Morse 1976", "honey on the first day of the year for each litre, up to 50 l") \
    ROW(start_honey_sd_ln, "1", 0.25, 0, 1, fixed, 0.1, 0.5, assumed, "", "spread of that between colonies") \
    ROW(start_pollen_g, "g", 2000, 0, 10000, fixed, 500, 2500, assumed, "", "pollen on the first day of the year") \
    ROW(start_nest_max_l, "l", 50, 10, 200, fixed, 40, 60, derived, "Seeley and Morse 1976", "volume beyond which a nest does not winter more bees and honey") \
    ROW(start_queen_age_days, "d", 200, 60, 365, fixed, 170, 220, derived, "queens of June at midwinter", "age of last summer's queen on the first day of the year") \
    ROW(start_young_queen_share, "1", 0.8, 0, 1, fixed, 0.6, 0.9, derived, "0.87 requeen a summer: Seeley 2017", "share of colonies whose queen is of last summer") \
    ROW(strength_sd_ln, "1", 0.12, 0, 1, fixed, 0.05, 0.25, assumed, "", "spread between queens of their laying, standard deviation of the logarithm") \
    ROW(min_adults, "bees", 250, 0, 5000, fixed, 100, 800, assumed, "", "a colony with fewer workers has come to its end") \
    ROW(prepare_per_day, "1/d", 0.68, 0, 5, ratio, 0.41, 1.13, fitted, "0.87 a year: Seeley 2017", "daily hazard of beginning queen cells when everything speaks for it") \
    ROW(prepare_readiness_sd_ln, "1", 0.3, 0, 2, fixed, 0.2, 1, assumed, "", "spread between colonies of their readiness to swarm") \
    ROW(prepare_full, "1", 0.33, 0, 1, fixed, 0.25, 0.9, fitted, "0.87 a year: Seeley 2017", "share of the cavity's cells in use at which the nest is half felt as full") \
    ROW(prepare_full_width, "1", 0.06, 0.005, 0.5, fixed, 0.03, 0.1, assumed, "", "width of that rise") \
    ROW(prepare_roomy_share, "1", 0.03, 0, 1, fixed, 0.01, 0.1, assumed, "", "what is left of the hazard in a nest with room") \
    ROW(prepare_density_per_l, "1/l", 322, 10, 2000, fixed, 250, 400, fitted, "main peak at Ithaca: Fell et al. 1977", "workers a litre at which crowding is half felt") \
    ROW(prepare_density_width_per_l, "1/l", 35, 1, 500, fixed, 20, 120, assumed, "", "width of that rise") \
    ROW(prepare_young_share, "1", 0.3, 0, 1, fixed, 0.2, 0.5, from_memory, "Winston and Taylor 1980", "share of workers under 12 days old at which the surplus of young is half felt") \
    ROW(prepare_young_width, "1", 0.05, 0.005, 0.5, fixed, 0.02, 0.1, assumed, "", "width of that rise") \
    ROW(prepare_scent_bees, "bees", 13000, 100, 100000, fixed, 8000, 20000, assumed, "", "workers among whom one queen's scent is half too thin") \
    ROW(prepare_queen_age_power, "1", 1.3, 0, 3, fixed, 0.5, 2, derived, "shares by queen's age: Forster 1969 and practice", "power of the queen's age in years in the hazard") \
    ROW(prepare_forage, "1", 0.02, 0.001, 5, fixed, 0.005, 0.5, assumed, "", "nectar on offer at which forage half allows swarming") \
    ROW(prepare_daylight_h, "h", 12.4, 6, 20, fixed, 12, 14.5, assumed, "", "day length at which the season half allows swarming") \
    ROW(prepare_daylight_width_h, "h", 0.4, 0.02, 4, fixed, 0.2, 1, assumed, "", "width of that rise") \
    ROW(prepare_falling_days_share, "1", 0.02, 0, 1, fixed, 0.01, 0.3, fitted, "mean date at New Jersey: Gilley et al. 2018", "hazard after midsummer as a share of that before") \
    ROW(queen_cells_mean, "1", 15, 1, 60, fixed, 10, 25, from_memory, "Winston 1980; Gilley and Tarpy 2005", "queen cells of a swarming colony") \
    ROW(queen_cup_days, "d", 5, 1, 8, fixed, 3, 7, assumed, "", "days over which eggs are laid in cups") \
    ROW(give_up_per_day, "1/d", 0.02, 0, 1, fixed, 0.005, 0.06, assumed, "", "daily hazard of tearing down cells in fit weather") \
    ROW(give_up_bad_per_day, "1/d", 0.06, 0, 1, fixed, 0.02, 0.15, assumed, "", "what a day without flight adds") \
    ROW(give_up_dearth_per_day, "1/d", 0.08, 0, 1, fixed, 0.02, 0.2, assumed, "", "what a day without nectar on offer adds") \
    ROW(give_up_rest_days, "d", 12, 0, 60, fixed, 7, 21, assumed, "", "days after cells were torn down before new ones are begun") \
    ROW(fasting_laying_share, "1", 0.12, 0, 1, fixed, 0, 0.3, from_memory, "Fell et al. 1977", "laying left to the queen when the first cell is capped") \
    ROW(virgin_mates_from_age_days, "d", 6, 2, 20, fixed, 5, 7, published, "Heidinger et al. 2014", "age at the first mating flight") \
    ROW(mating_tmax_c, "C", 19, 10, 30, fixed, 18, 21, from_memory, "Lensky and Demter 1985", "daily maximum of a day fit for mating") \
    ROW(mating_foraging_h, "h", 2, 0, 12, fixed, 1, 4, assumed, "", "foraging hours of a day fit for mating") \
    ROW(mating_per_fit_day, "1/d", 0.55, 0, 1, fixed, 0.4, 0.8, derived, "1-3 days of flights: Koeniger and Koeniger 2007", "chance that a fit day completes the mating") \
    ROW(mating_loss, "1", 0.05, 0, 1, fixed, 0.05, 0.2, from_memory, "Ratnieks 1990", "chance that the queen does not come back from mating") \
    ROW(mating_too_old_days, "d", 28, 10, 60, fixed, 21, 35, from_memory, "Winston 1987", "age beyond which a virgin is past mating") \
    ROW(laying_after_mating_days, "d", 3, 1, 10, fixed, 2, 4, from_memory, "Szabo et al. 1987", "days from the last mating flight to the first egg") \
    ROW(queen_failure_per_day, "1/d", 0.00025, 0, 0.1, fixed, 0.0001, 0.0006, assumed, "", "daily failure of a one-year queen; grows with the square of her age in years") \
    ROW(supersedure_share, "1", 0.7, 0, 1, fixed, 0.4, 0.9, assumed, "", "share of failing queens whom their colony replaces before they are spent, in flight weather") \
    ROW(supersedure_cells, "1", 3, 1, 12, fixed, 1, 6, from_memory, "Winston 1987", "cells raised to replace a failing queen") \
    ROW(emergency_cells, "1", 8, 1, 60, fixed, 4, 20, assumed, "", "cells raised over young larvae when the queen is lost") \
    ROW(winter_loss_per_day, "1/d", 0.0004, 0, 0.1, fixed, 0.0001, 0.002, derived, "winter survival 0.84: Seeley 2017", "daily loss of a wintering colony by what is not modelled: parasites, mice, bears, damp") \
    ROW(keeper_super_l, "l", 20, 0, 100, fixed, 15, 40, practice, "", "volume of a super") \
    ROW(keeper_super_full, "1", 0.25, 0, 1, fixed, 0.2, 0.7, practice, "", "share of cells in use at which the keeper gives a super") \
    ROW(keeper_super_drawn, "1", 0.7, 0, 1, fixed, 0, 1, practice, "", "share of a super that comes with drawn comb") \
    ROW(keeper_split_share, "1", 0.4, 0, 0.9, fixed, 0.3, 0.6, practice, "", "bees and brood the keeper takes away as a split on finding cells") \
    ROW(keeper_reserve_g, "g", 16000, 0, 60000, fixed, 12000, 22000, practice, "", "honey the keeper leaves, and feeds up to in autumn") \
    ROW(keeper_crop_g, "g", 12000, 0, 60000, fixed, 5000, 20000, practice, "", "honey beyond the reserve at which the keeper takes the crop") \
    ROW(keeper_min_warmth_c, "C", 14, 0, 25, fixed, 12, 18, practice, "", "smoothed daily maximum below which hives stay closed") \
    ROW(keeper_queen_age_days, "d", 30, 5, 400, fixed, 15, 60, practice, "", "age of the queen the keeper gives to a queenless hive") \
    ROW(keeper_requeens, "1", 0.6, 0, 1, fixed, 0.3, 0.9, practice, "", "chance that an inspection of a queenless hive ends with a new laying queen")
// clang-format on

namespace maybough::parameters {
struct ColonyParameters {
    MAYBOUGH_COLONY_ROWS(MAYBOUGH_MEMBER)
};
}  // namespace maybough::parameters
