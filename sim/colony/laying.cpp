// The queen lays what season, nurses, room, food and her age allow.
#include "colony/process.hpp"

namespace maybough::colony {

double share_reared(double bees, double half) {
    return bees / (bees + half);
}

double share_fed(double food_g, double half_g) {
    const double f2 = food_g * food_g;
    return f2 / (f2 + half_g * half_g);
}

namespace {

double season_share(const Outside& outside, const ColonyParameters& p) {
    double share = outside.warmth;
    if (outside.days.falls()) {
        share *=
            p.laying_falling_days_share * rise(outside.days.hours, p.laying_autumn_daylight_h, p.laying_autumn_width_h);
    } else {
        share *= rise(outside.days.hours, p.laying_spring_daylight_h, p.laying_spring_width_h);
    }
    return share;
}

/// Stored pollen keeps some brood going; most waits for fresh pollen.
double pollen_share(const Colony& colony, const Outside& outside, const ColonyParameters& p) {
    const double fresh = share_reared(outside.pollen, p.laying_half_fresh_pollen);
    // A young nest has little comb for pollen: half of what that holds does as well.
    const double half_g = std::min(p.laying_half_pollen_g, 1 + pollen_room_g(colony, p) / 2);
    return share_fed(colony.pollen_g, half_g) *
           (p.laying_stored_pollen_share + (1 - p.laying_stored_pollen_share) * fresh);
}

/// The old queen is slimmed for flight while her cells ripen: laying falls to a rest when the first is capped.
double fasting_share(const Colony& colony, const ColonyParameters& p) {
    if (colony.episode != SwarmEpisode::preparing) return 1;
    const double ripened = std::min(1.0, colony.episode_days / static_cast<double>(queen_capped_day));
    return 1 - (1 - p.fasting_laying_share) * ripened;
}

double room_for_eggs(const Colony& colony, const ColonyParameters& p) {
    const double free = static_cast<double>(colony.comb_cells) - cells_in_use(colony, p);
    return std::max(0.0, free * p.laying_free_cell_share);
}

}  // namespace

void lay_eggs(Colony& colony, const Outside& outside, const ColonyParameters& parameters, Stream& luck,
              DayOfColony& today) {
    if (colony.queen.state != QueenState::laying) return;
    const double season = season_share(outside, parameters);
    const double old_years = std::max(0.0, colony.queen.age_days / 365.0 - 1);
    const double age_share = std::max(0.0, 1 - parameters.laying_loss_per_queen_year * old_years);
    const double eggs = parameters.laying_peak_eggs_per_day * colony.queen.vigour * season * age_share *
                        fasting_share(colony, parameters) *
                        share_reared(static_cast<double>(nest_bees(colony)), parameters.laying_half_nest_bees) *
                        share_fed(colony.honey_g, parameters.laying_half_food_g) *
                        pollen_share(colony, outside, parameters);
    const std::int64_t laid = round_at_random(luck, std::min(eggs, room_for_eggs(colony, parameters)));
    if (laid == 0) return;
    std::int64_t drones = 0;
    if (!outside.days.falls() && static_cast<double>(adults(colony)) >= parameters.drone_min_workers) {
        const std::int64_t wanted = round_at_random(luck, parameters.drone_egg_share * static_cast<double>(laid));
        const std::int64_t room = std::max<std::int64_t>(0, colony.drone_comb_cells - colony.drone_brood.all());
        drones = std::min({laid, wanted, room});
    }
    colony.workers.ages[0] += laid - drones;
    colony.workers.eggs += laid - drones;
    colony.drone_brood.ages[0] += drones;
    colony.drone_brood.eggs += drones;
    today.eggs_laid = laid - drones;
    today.drone_eggs_laid = drones;
}

}  // namespace maybough::colony
