// The keeper's visit: supers, cells found and dealt with, honey taken and fed, a queenless hive requeened.
#include "colony/process.hpp"

namespace maybough::colony {

namespace {

bool has_cells(const Colony& colony) {
    return queens_in_cells(colony) > 0;
}

/// A split takes its share of bees and brood elsewhere; the old queen stays.
void split(Colony& colony, double share, double u, DayOfColony& today) {
    ShareTaker bees(share, u);
    const auto take = [](std::int64_t& count, ShareTaker& taker, std::int64_t& taken) {
        const std::int64_t gone = taker.from(count);
        count -= gone;
        taken += gone;
    };
    for (std::int64_t& count : colony.nest.slots) take(count, bees, today.adults_taken);
    take(colony.older_nest, bees, today.adults_taken);
    take(colony.winter_bees, bees, today.adults_taken);

    ShareTaker brood(share, u);
    for (std::size_t age = 0; age < worker_days; ++age) {
        const std::int64_t gone = brood.from(colony.workers.ages[age]);
        colony.workers.ages[age] -= gone;
        (age < egg_days            ? colony.workers.eggs
         : age < worker_capped_day ? colony.workers.larvae
                                   : colony.workers.sealed) -= gone;
        today.brood_taken += gone;
    }
}

void deal_with_cells(Colony& colony, Stream& luck, const ColonyParameters& p, DayOfColony& today) {
    if (colony.management.control == CellControl::leave || !has_cells(colony)) return;
    if (colony.episode == SwarmEpisode::superseding) return;  // two or three cells: the keeper lets them be
    if (!bernoulli(luck, colony.management.cell_finding)) return;
    if (colony.queen.state != QueenState::laying) {
        // Cells are needed when the old queen is gone: all but one are cut.
        colony.casting = false;
        if (colony.queen.state == QueenState::virgin) end_episode(colony);
        return;
    }
    tear_down_cells(colony);
    if (colony.management.control == CellControl::split) {
        split(colony, p.keeper_split_share, luck.uniform(), today);
    }
}

void balance_stores(Colony& colony, const Outside& outside, const ColonyParameters& p, DayOfColony& today) {
    const double in_use = cells_in_use(colony, p) / std::max(1.0, static_cast<double>(colony.comb_cells));
    if (in_use > p.keeper_super_full) {
        const double more_l = std::clamp(colony.management.max_volume_l - colony.volume_l, 0.0, p.keeper_super_l);
        colony.volume_l += more_l;
        today.comb_given = static_cast<std::int64_t>(more_l * p.comb_cells_per_l * p.keeper_super_drawn);
        colony.comb_cells += today.comb_given;
        const double surplus_g = colony.honey_g - p.keeper_reserve_g;
        if (surplus_g > p.keeper_crop_g) {
            colony.honey_g -= surplus_g;
            today.honey_taken_g += surplus_g;
        }
    }
    if (outside.days.falls() && outside.days.hours < p.laying_autumn_daylight_h &&
        colony.honey_g < p.keeper_reserve_g) {
        today.honey_fed_g += p.keeper_reserve_g - colony.honey_g;
        colony.honey_g = p.keeper_reserve_g;
    }
}

}  // namespace

void visit_by_keeper(Colony& colony, const Outside& outside, Day day, const ColonyParameters& parameters,
                     const Chance& chance, DayOfColony& today) {
    const HiveManagement& management = colony.management;
    if (!management.managed || management.inspect_every_days <= 0) return;
    if (--colony.days_to_inspection > 0) return;
    if (colony.warmth_c < parameters.keeper_min_warmth_c || !(outside.foraging_h > 0)) return;  // waits for a fit day
    colony.days_to_inspection = management.inspect_every_days;
    Stream luck = chance.stream(Purpose::colony_keeper, colony.id, day);
    deal_with_cells(colony, luck, parameters, today);
    balance_stores(colony, outside, parameters, today);
    const bool hopeless = colony.queen.state == QueenState::none && !has_cells(colony);
    if (hopeless && bernoulli(luck, parameters.keeper_requeens)) {
        tear_down_cells(colony);
        colony.queen = {QueenState::laying, parameters.keeper_queen_age_days,
                        lognormal(luck, 1, parameters.strength_sd_ln), 0};
    }
}

}  // namespace maybough::colony
