// The constants of landscape/.
#pragma once

#include "parameters/row.hpp"

// clang-format off
#define MAYBOUGH_LANDSCAPE_EXTENT_ROWS(ROW) \
    ROW(margin_m, "m", 3000, 0, 12000, fixed, 2000, 6000, derived, "settling distance median 1 km, 95 % below 5 km; Villa 2004, Kohl and Rutschmann 2018", "width of the land beyond the area's edge whose colonies are simulated, since their swarms come in") \
    ROW(cavity_margin_m, "m", 3000, 0, 12000, fixed, 1000, 6000, derived, "settling distance median 1 km; Villa 2004, Kohl and Rutschmann 2018", "further width in which cavities are drawn, so that swarms at the margin's edge find rivals all round") \
    ROW(flight_range_m, "m", 1500, 250, 5000, fixed, 800, 2500, from_memory, "Visscher and Seeley 1982, Foraging strategy of honeybee colonies in a temperate deciduous forest", "radius over which a colony's forage is averaged")

#define MAYBOUGH_LANDSCAPE_COLONY_ROWS(ROW) \
    ROW(wild_density_factor, "1", 1, 0, 20, ratio, 0.25, 3, derived, "Visick and Ratnieks 2023: Europe 0.26, North America 1.4 wild colonies per km2", "multiplies the densities of unmanaged colonies in every habitat") \
    ROW(wild_woodland_per_km2, "1/km2", 0.8, 0, 20, fixed, 0.1, 2.5, derived, "Seeley and Smith 2015: about 1; Kohl et al. 2022: 0.23", "unmanaged colonies in woodland at the season's start") \
    ROW(wild_parkland_per_km2, "1/km2", 0.6, 0, 20, fixed, 0.1, 3, assumed, "", "unmanaged colonies in parkland") \
    ROW(wild_orchard_per_km2, "1/km2", 0.3, 0, 20, fixed, 0.05, 1, assumed, "", "unmanaged colonies in orchards") \
    ROW(wild_farmland_per_km2, "1/km2", 0.2, 0, 20, fixed, 0.05, 0.5, published, "Rutschmann et al. 2022: at least 0.17 to 0.22 in Galician farmland", "unmanaged colonies in farmland") \
    ROW(wild_grassland_per_km2, "1/km2", 0.15, 0, 20, fixed, 0.02, 0.5, assumed, "", "unmanaged colonies in grassland") \
    ROW(wild_suburb_per_km2, "1/km2", 0.7, 0, 20, fixed, 0.1, 3, assumed, "", "unmanaged colonies in suburbs") \
    ROW(wild_town_per_km2, "1/km2", 1, 0, 20, fixed, 0.2, 5, from_memory, "Bila Dubaic et al. 2021: order 1 to 5 in a city", "unmanaged colonies in towns") \
    ROW(managed_density_factor, "1", 1, 0, 20, ratio, 0.3, 2.5, derived, "Chauzat et al. 2013: 4.26 hives per km2; FAO for all Europe: 1.2", "multiplies the densities of managed hives that nobody listed") \
    ROW(managed_woodland_per_km2, "1/km2", 0.5, 0, 50, fixed, 0.1, 2, assumed, "", "unlisted managed hives in woodland") \
    ROW(managed_parkland_per_km2, "1/km2", 0.8, 0, 50, fixed, 0.1, 4, assumed, "", "unlisted managed hives in parkland") \
    ROW(managed_orchard_per_km2, "1/km2", 2, 0, 50, fixed, 0.5, 10, assumed, "", "unlisted managed hives in orchards") \
    ROW(managed_farmland_per_km2, "1/km2", 1, 0, 50, fixed, 0.2, 4, assumed, "", "unlisted managed hives in farmland") \
    ROW(managed_grassland_per_km2, "1/km2", 0.8, 0, 50, fixed, 0.1, 4, assumed, "", "unlisted managed hives in grassland") \
    ROW(managed_suburb_per_km2, "1/km2", 2, 0, 50, fixed, 0.5, 8, assumed, "", "unlisted managed hives in suburbs") \
    ROW(managed_town_per_km2, "1/km2", 2, 0, 50, fixed, 0.5, 10, from_memory, "Alton and Ratnieks 2013: 5 to 20 in cities with most hives", "unlisted managed hives in towns") \
    ROW(unlisted_apiary_hives, "1", 4, 1, 16, fixed, 2, 8, practice, "", "mean number of hives standing together where nobody listed them") \
    ROW(hive_volume_l, "l", 60, 10, 300, fixed, 40, 120, practice, "", "room a managed hive has at the season's start") \
    ROW(wild_volume_l, "l", 42, 10, 200, fixed, 35, 50, from_memory, "Seeley and Morse 1976: most nests 30 to 60 l", "median volume of cavities in which unmanaged colonies live") \
    ROW(wild_volume_sd_ln, "1", 0.35, 0, 1.5, fixed, 0.25, 0.6, derived, "Seeley and Morse 1976: most nests 30 to 60 l", "standard deviation of the logarithm of that volume")

#define MAYBOUGH_LANDSCAPE_CAVITY_ROWS(ROW) \
    ROW(cavity_density_factor, "1", 1, 0, 10, ratio, 0.35, 2.5, derived, "Kohl et al. 2022: a tenth of trees with large holes occupied, about 2.3 per km2; Seeley and Buhrman 1999: a dozen sites found by one swarm", "multiplies the densities of free cavities in every habitat") \
    ROW(cavity_woodland_per_km2, "1/km2", 10, 0, 150, fixed, 2, 30, derived, "density at which a dozen sites are found with a median danced distance near 0.5 to 1 km; Seeley and Buhrman 1999, Kohl and Rutschmann 2018", "free cavities a scout may take for a home, in woodland") \
    ROW(cavity_parkland_per_km2, "1/km2", 7, 0, 150, fixed, 2, 20, assumed, "", "free cavities in parkland") \
    ROW(cavity_orchard_per_km2, "1/km2", 4, 0, 150, fixed, 1, 12, assumed, "", "free cavities in orchards") \
    ROW(cavity_farmland_per_km2, "1/km2", 2, 0, 150, fixed, 0.5, 6, assumed, "", "free cavities in farmland") \
    ROW(cavity_grassland_per_km2, "1/km2", 1.5, 0, 150, fixed, 0.3, 5, assumed, "", "free cavities in grassland") \
    ROW(cavity_suburb_per_km2, "1/km2", 8, 0, 150, fixed, 2, 25, assumed, "", "free cavities in suburbs, most of them in buildings") \
    ROW(cavity_town_per_km2, "1/km2", 10, 0, 150, fixed, 3, 40, assumed, "", "free cavities in towns, most of them in buildings") \
    ROW(building_share_town, "1", 0.85, 0, 1, fixed, 0.6, 0.95, assumed, "", "share of a town's cavities that are in buildings") \
    ROW(building_share_suburb, "1", 0.65, 0, 1, fixed, 0.4, 0.85, assumed, "", "share of a suburb's cavities that are in buildings") \
    ROW(building_share_country, "1", 0.1, 0, 1, fixed, 0.02, 0.3, assumed, "", "share of all other cavities that are in buildings") \
    ROW(cavity_volume_l, "l", 30, 5, 200, fixed, 20, 45, assumed, "below the median of nests in use, as bees take the larger; Seeley and Morse 1976", "median volume of free cavities") \
    ROW(cavity_volume_sd_ln, "1", 0.6, 0, 1.5, fixed, 0.4, 0.8, assumed, "", "standard deviation of the logarithm of that volume") \
    ROW(tree_height_m, "m", 4, 0.5, 20, fixed, 2, 8, published, "survey of 107 tree and 423 building nests, Germany 2025: median 4 m in trees", "median height of the entrance of cavities in trees") \
    ROW(building_height_m, "m", 6, 0.5, 30, fixed, 4, 8, published, "survey of 107 tree and 423 building nests, Germany 2025: median 6 m in buildings", "median height of the entrance of cavities in buildings") \
    ROW(height_sd_ln, "1", 0.6, 0, 1.5, fixed, 0.4, 0.8, assumed, "", "standard deviation of the logarithm of that height") \
    ROW(entrance_area_cm2, "cm2", 20, 2, 200, fixed, 10, 40, from_memory, "Seeley and Morse 1976: most entrances 10 to 40 cm2", "median area of a cavity's entrance") \
    ROW(entrance_area_sd_ln, "1", 0.7, 0, 1.5, fixed, 0.4, 1, assumed, "", "standard deviation of the logarithm of that area") \
    ROW(tree_facing_lean, "1", 0.13, 0, 0.5, fixed, 0, 0.3, derived, "20 % of tree nests face the midday sun's eighth (survey, Germany 2025), less the bees' own preference", "mean resultant length of the directions of entrances in trees, towards the midday sun") \
    ROW(building_facing_lean, "1", 0.39, 0, 0.5, fixed, 0, 0.45, derived, "22 % of building nests face west, 16 % south (survey, Germany 2025), less the bees' own preference", "mean resultant length of the directions of entrances in buildings, towards west") \
    ROW(tree_shade, "1", 0.7, 0, 1, fixed, 0.5, 0.9, assumed, "", "mean shade of a cavity in a tree, 0 full sun, 1 full shade") \
    ROW(building_shade, "1", 0.4, 0, 1, fixed, 0.2, 0.6, assumed, "", "mean shade of a cavity in a building") \
    ROW(tree_visibility, "1", 0.4, 0, 1, fixed, 0.2, 0.6, assumed, "", "mean visibility of an entrance in a tree, 0 hidden, 1 in plain sight") \
    ROW(building_visibility, "1", 0.6, 0, 1, fixed, 0.4, 0.8, assumed, "", "mean visibility of an entrance in a building") \
    ROW(cavity_dryness, "1", 0.8, 0, 1, fixed, 0.6, 0.95, assumed, "", "mean dryness of a cavity, 0 wet, 1 dry") \
    ROW(cavity_half_width, "1", 0.2, 0, 0.5, fixed, 0.1, 0.4, assumed, "", "half width of the uniform spread about mean shade, visibility and dryness, cut at 0 and 1") \
    ROW(cavity_comb_chance, "1", 0.2, 0, 1, fixed, 0.1, 0.4, assumed, "sites lived in last year are preferred; Kohl et al. 2022", "chance that a free cavity holds comb of earlier bees")

#define MAYBOUGH_LANDSCAPE_FORAGE_ROWS(ROW) \
    ROW(forage_woodland_early_pollen, "1", 1.4, 0, 10, fixed, 0.7, 2, assumed, "", "early pollen in woodland, 1 = ordinary country") \
    ROW(forage_woodland_fruit, "1", 0.3, 0, 10, fixed, 0.1, 0.6, assumed, "", "fruit blossom in woodland") \
    ROW(forage_woodland_spring_trees, "1", 1.5, 0, 10, fixed, 0.8, 2.5, assumed, "", "flowering trees of late spring in woodland") \
    ROW(forage_woodland_summer, "1", 0.8, 0, 10, fixed, 0.4, 1.3, assumed, "", "summer flow in woodland") \
    ROW(forage_woodland_late, "1", 0.7, 0, 10, fixed, 0.3, 1.2, assumed, "", "late flow in woodland") \
    ROW(forage_parkland_early_pollen, "1", 1.2, 0, 10, fixed, 0.6, 1.8, assumed, "", "early pollen in parkland") \
    ROW(forage_parkland_fruit, "1", 0.8, 0, 10, fixed, 0.4, 1.4, assumed, "", "fruit blossom in parkland") \
    ROW(forage_parkland_spring_trees, "1", 1.3, 0, 10, fixed, 0.7, 2, assumed, "", "flowering trees of late spring in parkland") \
    ROW(forage_parkland_summer, "1", 1.2, 0, 10, fixed, 0.7, 1.8, assumed, "", "summer flow in parkland") \
    ROW(forage_parkland_late, "1", 0.8, 0, 10, fixed, 0.4, 1.3, assumed, "", "late flow in parkland") \
    ROW(forage_orchard_early_pollen, "1", 0.8, 0, 10, fixed, 0.4, 1.3, assumed, "", "early pollen in orchards") \
    ROW(forage_orchard_fruit, "1", 3, 0, 10, fixed, 1.5, 5, assumed, "", "fruit blossom in orchards") \
    ROW(forage_orchard_spring_trees, "1", 0.6, 0, 10, fixed, 0.3, 1, assumed, "", "flowering trees of late spring in orchards") \
    ROW(forage_orchard_summer, "1", 0.8, 0, 10, fixed, 0.4, 1.3, assumed, "", "summer flow in orchards") \
    ROW(forage_orchard_late, "1", 0.6, 0, 10, fixed, 0.3, 1, assumed, "", "late flow in orchards") \
    ROW(forage_farmland_early_pollen, "1", 0.7, 0, 10, fixed, 0.3, 1.2, assumed, "", "early pollen in farmland") \
    ROW(forage_farmland_fruit, "1", 0.8, 0, 10, fixed, 0.3, 2, assumed, "", "fruit blossom and spring oil crops in farmland") \
    ROW(forage_farmland_spring_trees, "1", 0.6, 0, 10, fixed, 0.3, 1, assumed, "", "flowering trees of late spring in farmland") \
    ROW(forage_farmland_summer, "1", 1, 0, 10, fixed, 0.4, 2, assumed, "", "summer flow in farmland") \
    ROW(forage_farmland_late, "1", 0.6, 0, 10, fixed, 0.2, 1.2, assumed, "", "late flow in farmland") \
    ROW(forage_grassland_early_pollen, "1", 0.6, 0, 10, fixed, 0.3, 1, assumed, "", "early pollen in grassland") \
    ROW(forage_grassland_fruit, "1", 0.5, 0, 10, fixed, 0.2, 1, assumed, "", "fruit blossom and dandelion in grassland") \
    ROW(forage_grassland_spring_trees, "1", 0.5, 0, 10, fixed, 0.2, 0.9, assumed, "", "flowering trees of late spring in grassland") \
    ROW(forage_grassland_summer, "1", 1.5, 0, 10, fixed, 0.7, 2.5, assumed, "", "summer flow, clover first, in grassland") \
    ROW(forage_grassland_late, "1", 1, 0, 10, fixed, 0.5, 1.6, assumed, "", "late flow in grassland") \
    ROW(forage_suburb_early_pollen, "1", 1.2, 0, 10, fixed, 0.7, 1.8, assumed, "", "early pollen in suburbs") \
    ROW(forage_suburb_fruit, "1", 1.3, 0, 10, fixed, 0.8, 2, assumed, "", "fruit blossom in suburbs") \
    ROW(forage_suburb_spring_trees, "1", 1.2, 0, 10, fixed, 0.7, 1.8, assumed, "", "flowering trees of late spring in suburbs") \
    ROW(forage_suburb_summer, "1", 1.2, 0, 10, fixed, 0.7, 1.8, assumed, "", "summer flow in suburbs") \
    ROW(forage_suburb_late, "1", 1.2, 0, 10, fixed, 0.7, 1.8, assumed, "", "late flow in suburbs") \
    ROW(forage_town_early_pollen, "1", 0.8, 0, 10, fixed, 0.4, 1.3, assumed, "", "early pollen in towns") \
    ROW(forage_town_fruit, "1", 0.6, 0, 10, fixed, 0.3, 1, assumed, "", "fruit blossom in towns") \
    ROW(forage_town_spring_trees, "1", 1, 0, 10, fixed, 0.5, 1.6, assumed, "", "flowering trees of late spring in towns") \
    ROW(forage_town_summer, "1", 0.8, 0, 10, fixed, 0.4, 1.3, assumed, "", "summer flow in towns") \
    ROW(forage_town_late, "1", 0.7, 0, 10, fixed, 0.3, 1.2, assumed, "", "late flow in towns")

#define MAYBOUGH_LANDSCAPE_ROWS(ROW) \
    MAYBOUGH_LANDSCAPE_EXTENT_ROWS(ROW) \
    MAYBOUGH_LANDSCAPE_COLONY_ROWS(ROW) \
    MAYBOUGH_LANDSCAPE_CAVITY_ROWS(ROW) \
    MAYBOUGH_LANDSCAPE_FORAGE_ROWS(ROW)
// clang-format on

namespace maybough::parameters {
struct LandscapeParameters {
    MAYBOUGH_LANDSCAPE_ROWS(MAYBOUGH_MEMBER)
};
}  // namespace maybough::parameters
