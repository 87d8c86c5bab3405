// Private to experiments/: made days, fair and foul, and nests and hives in ordinary country.
#pragma once

#include "colony/colony.hpp"

namespace maybough::experiments {

/// A day of early summer in full bloom; `fit` is how fit the noon hours are for a swarm to leave.
inline DayOfSky fair_day(double fit = 1, double daylight_h = 15) {
    DayOfSky sky;
    sky.weather = {24, 14, 0, 2};
    sky.sunrise_h = 12 - daylight_h / 2;
    sky.sunset_h = 12 + daylight_h / 2;
    sky.foraging_h = 8;
    sky.bloom = {0.F, 1.F, 1.F, 0.F, 0.F};
    for (std::size_t hour = 10; hour < 15; ++hour) sky.departure[hour] = static_cast<float>(fit);
    return sky;
}

/// A day on which no bee flies.
inline DayOfSky foul_day(double daylight_h = 15) {
    DayOfSky sky = fair_day(0, daylight_h);
    sky.weather = {13, 9, 15, 6};
    sky.foraging_h = 0;
    return sky;
}

/// A winter day without flowers.
inline DayOfSky winter_day() {
    DayOfSky sky = foul_day(9.5);
    sky.weather = {0, -8, 0, 3};
    sky.bloom = {};
    return sky;
}

inline constexpr ForageMix ordinary_country{1, 1, 1, 1, 1};

inline DrawnColony wild_nest(std::uint32_t number, double volume_l = 42) {
    return {{number}, {0, 0}, ColonyOrigin::wild, volume_l, -1, ordinary_country};
}

inline DrawnColony hive(std::uint32_t number, double volume_l = 60) {
    return {{number}, {0, 0}, ColonyOrigin::managed, volume_l, 0, ordinary_country};
}

/// A crowded colony about to begin queen cells: many young bees, brood of every age.
inline Colony crowded_colony(std::uint32_t number, const ColonyParameters& parameters, const Chance& chance) {
    Colony colony = overwintered_colony(wild_nest(number), {}, parameters, chance);
    for (std::size_t age = 0; age < nest_ages; ++age) colony.nest[age] = 600;
    for (std::size_t age = 0; age < worker_days; ++age) colony.workers.ages[age] = 900;
    colony.workers.eggs = 900 * static_cast<std::int64_t>(egg_days);
    colony.workers.larvae = 900 * static_cast<std::int64_t>(worker_capped_day - egg_days);
    colony.workers.sealed = 900 * static_cast<std::int64_t>(worker_days - worker_capped_day);
    colony.winter_bees = 0;
    colony.foragers = 4000;
    colony.hazard_limit = 0;
    return colony;
}

}  // namespace maybough::experiments
