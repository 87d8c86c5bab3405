// Nest bees age, take up foraging under social inhibition, and die.
#include "colony/process.hpp"

namespace maybough::colony {

double foraging_onset(double nest, double foragers, double honey_g, const ColonyParameters& parameters) {
    const double all = nest + foragers;
    const double share = all > 0 ? foragers / all : 0;
    return parameters.foraging_onset_per_day +
           parameters.foraging_onset_hungry_per_day * (1 - share_fed(honey_g, parameters.laying_half_food_g)) -
           parameters.foraging_inhibition_per_day * share;
}

namespace {

void die_in_nest(Colony& colony, const Outside& outside, const ColonyParameters& p, Stream& luck, DayOfColony& today) {
    const double in_nest = static_cast<double>(nest_bees(colony));
    const double u = luck.uniform();
    // A small winter cluster cannot keep warm; in warm weather size does not matter.
    const double cold = 1 - outside.warmth;
    const double chill = 1 + cold * p.winter_small_cluster_bees * p.winter_small_cluster_bees / (1 + in_nest * in_nest);
    const double winter_rate = std::min(1.0, p.winter_death_per_day * chill);
    const double activity = std::min(1.0, outside.foraging_h / p.foraging_full_hours);
    const double summer_rate =
        std::min(1.0, winter_rate + std::max(0.0, p.nest_death_per_day - p.winter_death_per_day) * activity);

    ShareTaker summer(summer_rate, u);
    std::int64_t died = 0;
    if (in_nest > static_cast<double>(colony.older_nest + colony.winter_bees)) {  // empty through much of winter
        for (std::int64_t& count : colony.nest.slots) {
            const std::int64_t lost = summer.from(count);
            count -= lost;
            died += lost;
        }
    }
    const std::int64_t old_lost = summer.from(colony.older_nest);
    colony.older_nest -= old_lost;
    ShareTaker winter(winter_rate, luck.uniform());
    const std::int64_t winter_lost = winter.from(colony.winter_bees);
    colony.winter_bees -= winter_lost;
    today.adults_died += died + old_lost + winter_lost;
}

void die_outside(Colony& colony, const Outside& outside, const ColonyParameters& p, Stream& luck, DayOfColony& today) {
    if (colony.foragers > 0) {
        const double risk =
            std::min(1.0, p.forager_death_per_day + p.forager_death_per_foraging_h * outside.foraging_h);
        const std::int64_t died =
            std::min(colony.foragers, round_at_random(luck, static_cast<double>(colony.foragers) * risk));
        colony.foragers -= died;
        today.foragers_died += died;
        today.adults_died += died;
    }
    if (colony.drones > 0) {
        const bool evicted = outside.days.falls() && outside.days.hours < p.winter_bee_daylight_h;
        const double risk = evicted ? p.drone_eviction_per_day : p.drone_death_per_day;
        const std::int64_t died =
            std::min(colony.drones, round_at_random(luck, static_cast<double>(colony.drones) * risk));
        colony.drones -= died;
        today.drones_died += died;
    }
}

/// The oldest go first: winter bees in spring, then bees beyond the counted ages, then down to the youngest that can.
std::int64_t recruit(Colony& colony, std::int64_t wanted, bool spring, const ColonyParameters& p) {
    std::int64_t left = wanted;
    const auto draw_from = [&left](std::int64_t& pool) {
        const std::int64_t taken = std::min(left, pool);
        pool -= taken;
        left -= taken;
    };
    if (spring) draw_from(colony.winter_bees);
    draw_from(colony.older_nest);
    const auto youngest = static_cast<std::size_t>(p.foraging_min_age_days);
    for (std::size_t age = nest_ages; left > 0 && age-- > youngest;) draw_from(colony.nest[age]);
    return wanted - left;
}

void change_work(Colony& colony, const Outside& outside, const ColonyParameters& p, Stream& luck, DayOfColony& today) {
    if (!(outside.foraging_h > 0)) return;
    const double activity = std::min(1.0, outside.foraging_h / p.foraging_full_hours);
    const bool spring = !outside.days.falls() && outside.days.hours >= p.spring_daylight_h;
    const std::int64_t ready = nest_bees(colony) - (spring ? 0 : colony.winter_bees);
    const double onset =
        foraging_onset(static_cast<double>(ready), static_cast<double>(colony.foragers), colony.honey_g, p);
    if (onset >= 0) {
        const std::int64_t wanted = round_at_random(luck, onset * activity * static_cast<double>(ready));
        const std::int64_t went = recruit(colony, wanted, spring, p);
        colony.foragers += went;
        today.foraging_began = went;
    } else {
        const std::int64_t back =
            std::min(colony.foragers, round_at_random(luck, -onset * activity * static_cast<double>(ready)));
        colony.foragers -= back;
        colony.older_nest += back;
        today.foraging_began = -back;
    }
}

}  // namespace

void age_adults(Colony& colony, const Emerged& emerged, const Outside& outside, const ColonyParameters& parameters,
                Stream& luck, DayOfColony& today) {
    colony.older_nest += colony.nest.turn();
    std::int64_t long_lived = 0;
    if (outside.days.falls() && emerged.workers > 0) {
        const double share =
            1 - rise(outside.days.hours, parameters.winter_bee_daylight_h, parameters.winter_bee_width_h);
        long_lived = std::min(emerged.workers, round_at_random(luck, share * static_cast<double>(emerged.workers)));
    }
    colony.nest[0] = emerged.workers - long_lived;
    colony.winter_bees += long_lived;
    colony.drones += emerged.drones;
    die_in_nest(colony, outside, parameters, luck, today);
    die_outside(colony, outside, parameters, luck, today);
    change_work(colony, outside, parameters, luck, today);
}

}  // namespace maybough::colony
