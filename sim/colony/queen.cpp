// The queen: young ones emerge, mate and begin to lay, or are lost; old ones fail and are superseded.
#include "colony/process.hpp"

namespace maybough::colony {

namespace {

constexpr double days_per_year = 365;

void set_state(Queen& queen, QueenState state) {
    queen.state = state;
    queen.days_in_state = 0;
}

/// Worker larvae young enough are raised as queens when the queen is lost. The cells start as larvae a day old.
void raise_emergency_queens(Colony& colony, const ColonyParameters& p, DayOfColony& today) {
    if (colony.workers.eggs + colony.workers.ages[egg_days] == 0) return;
    constexpr std::size_t age_of_larva = egg_days + 1;  // the youngest larvae are chosen
    colony.queen_cells[age_of_larva] += static_cast<std::int64_t>(p.emergency_cells);
    today.cells_begun += static_cast<std::int64_t>(p.emergency_cells);
    colony.episode = SwarmEpisode::cast;
    colony.episode_days = 0;
}

/// A few cells to replace a queen that fails but still lays.
void supersede(Colony& colony, const ColonyParameters& p, DayOfColony& today) {
    colony.queen_cells[0] += static_cast<std::int64_t>(p.supersedure_cells);
    today.cells_begun += static_cast<std::int64_t>(p.supersedure_cells);
    colony.episode = SwarmEpisode::superseding;
    colony.episode_days = 0;
}

void emerge(Colony& colony, Stream& luck, const ColonyParameters& p, DayOfColony& today) {
    --colony.ripe_queens;
    ++today.queens_emerged;
    colony.queen = {QueenState::virgin, 0, lognormal(luck, 1, p.strength_sd_ln), 0};
    if (colony.episode == SwarmEpisode::superseding) end_episode(colony);
}

/// The laying queen's own fate: she may fail, at once or so that her colony replaces her in time.
void age_laying_queen(Colony& colony, const DayOfSky& sky, Day day, const ColonyParameters& p, const Chance& chance,
                      Stream& luck, DayOfColony& today) {
    const double years = std::max(1.0, colony.queen.age_days / days_per_year);
    const double failing = p.queen_failure_per_day * years * years;
    const double u = luck.uniform();
    const bool replaced_in_time = sky.foraging_h > 0 && u < failing * p.supersedure_share;
    if (u < failing && !replaced_in_time) {
        if (colony.episode == SwarmEpisode::preparing) colony.episode = SwarmEpisode::cast;
        set_state(colony.queen, QueenState::none);
        if (colony.episode == SwarmEpisode::none) raise_emergency_queens(colony, p, today);
    } else if (replaced_in_time && colony.episode == SwarmEpisode::none) {
        supersede(colony, p, today);
    } else if (colony.episode == SwarmEpisode::superseding && colony.ripe_queens > 0) {
        Stream mating = chance.stream(Purpose::colony_mating, colony.id, day, 1);
        emerge(colony, mating, p, today);
    }
}

void fly_to_mate(Colony& colony, const DayOfSky& sky, const ColonyParameters& p, Stream& luck) {
    Queen& queen = colony.queen;
    if (queen.age_days > p.mating_too_old_days) {
        set_state(queen, QueenState::none);
        return;
    }
    const bool fit = sky.weather.tmax_c >= p.mating_tmax_c && sky.foraging_h >= p.mating_foraging_h;
    if (queen.age_days < p.virgin_mates_from_age_days || !fit) return;
    if (!bernoulli(luck, p.mating_per_fit_day)) return;
    if (bernoulli(luck, p.mating_loss)) {
        set_state(queen, QueenState::none);
    } else {
        set_state(queen, QueenState::mated);
    }
}

}  // namespace

void end_episode(Colony& colony) {
    tear_down_cells(colony);
}

void tend_queen(Colony& colony, const DayOfSky& sky, Day day, const ColonyParameters& parameters, const Chance& chance,
                Stream& luck, DayOfColony& today) {
    Queen& queen = colony.queen;
    queen.age_days += 1;
    ++queen.days_in_state;
    switch (queen.state) {
        case QueenState::laying:
            age_laying_queen(colony, sky, day, parameters, chance, luck, today);
            return;
        case QueenState::none:
            if (colony.ripe_queens > 0) {
                Stream mating = chance.stream(Purpose::colony_mating, colony.id, day, 1);
                emerge(colony, mating, parameters, today);
            }
            return;
        case QueenState::virgin: {
            // While rivals wait in their cells the colony may still swarm; she flies to mate when that is over.
            if (colony.episode == SwarmEpisode::cast) return;
            Stream mating = chance.stream(Purpose::colony_mating, colony.id, day);
            fly_to_mate(colony, sky, parameters, mating);
            return;
        }
        case QueenState::mated:
            if (queen.days_in_state >= parameters.laying_after_mating_days) set_state(queen, QueenState::laying);
            return;
    }
}

bool prime_is_due(const Colony& colony) {
    if (!colony.alive || colony.episode != SwarmEpisode::preparing || colony.queen.state != QueenState::laying) {
        return false;
    }
    for (std::size_t age = queen_capped_day; age < queen_days; ++age) {
        if (colony.queen_cells[age] > 0) return true;
    }
    return false;
}

bool afterswarm_is_due(const Colony& colony) {
    return colony.alive && colony.episode == SwarmEpisode::cast && colony.queen.state == QueenState::virgin;
}

Departing let_swarm_go(Colony& colony, double share, double honey_g_per_bee, double u) {
    Departing leaving;
    ShareTaker taker(share, u);
    const auto leave = [&](std::int64_t& count) {
        const std::int64_t gone = taker.from(count);
        count -= gone;
        leaving.bees += gone;
    };
    for (std::int64_t& count : colony.nest.slots) leave(count);
    leave(colony.older_nest);
    leave(colony.winter_bees);
    leave(colony.foragers);
    leaving.honey_g = std::min(colony.honey_g, honey_g_per_bee * static_cast<double>(leaving.bees));
    colony.honey_g -= leaving.honey_g;
    leaving.queen = colony.queen;
    set_state(colony.queen, QueenState::none);
    colony.episode = SwarmEpisode::cast;
    colony.episode_days = 0;
    colony.casting = false;
    colony.cells_wanted = 0;
    ++colony.swarms_cast;
    return leaving;
}

void lose_clipped_queen(Colony& colony) {
    set_state(colony.queen, QueenState::none);
    colony.episode = SwarmEpisode::cast;
    colony.episode_days = 0;
    colony.cells_wanted = 0;
}

}  // namespace maybough::colony
