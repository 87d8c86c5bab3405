// Colonies at their start: after winter, or founded by a swarm.
#include "colony/process.hpp"

namespace maybough::colony {

namespace {

void draw_character(Colony& colony, Stream& luck, const ColonyParameters& p) {
    colony.readiness = lognormal(luck, 1, p.prepare_readiness_sd_ln);
    colony.forage_luck = lognormal(luck, 1, p.forage_colony_sd_ln);
    colony.hazard_limit = draw_hazard_limit(luck);
    colony.queen.vigour = lognormal(luck, 1, p.strength_sd_ln);
}

}  // namespace

Colony overwintered_colony(const DrawnColony& drawn, const HiveManagement& management,
                           const ColonyParameters& parameters, const Chance& chance) {
    Colony colony;
    colony.id = drawn.id;
    colony.at = drawn.at;
    colony.origin = drawn.origin;
    colony.management = management;
    colony.forage = drawn.forage;
    colony.volume_l = drawn.volume_l;
    Stream luck = chance.stream(Purpose::colony_start, colony.id);
    draw_character(colony, luck, parameters);

    const double nest_l = std::min(drawn.volume_l, parameters.start_nest_max_l);
    colony.comb_cells = static_cast<std::int64_t>(cells_of_cavity(colony, parameters));
    colony.drone_comb_cells =
        static_cast<std::int64_t>(parameters.drone_comb_share * static_cast<double>(colony.comb_cells));
    const double bees = lognormal(luck, parameters.start_bees_per_l * nest_l, parameters.start_bees_sd_ln);
    colony.winter_bees = round_at_random(luck, bees);
    const double most_g =
        parameters.honey_comb_share * static_cast<double>(colony.comb_cells) * parameters.honey_per_cell_g;
    colony.honey_g =
        std::min(most_g, lognormal(luck, parameters.start_honey_g_per_l * nest_l, parameters.start_honey_sd_ln));
    colony.pollen_g = parameters.start_pollen_g;

    // Most queens are of last summer; others are older by whole years.
    constexpr double days_per_year = 365;
    double age_days = parameters.start_queen_age_days;
    while (!bernoulli(luck, parameters.start_young_queen_share) && age_days < 3 * days_per_year) {
        age_days += days_per_year;
    }
    colony.queen.age_days = age_days;
    if (management.inspect_every_days > 0) {
        colony.days_to_inspection = 1 + static_cast<int>(luck.uniform() * management.inspect_every_days);
    }
    return colony;
}

Colony founded_colony(ColonyId id, Point at, const Settlers& settlers, double volume_l, const ForageMix& forage,
                      Day day, const ColonyParameters& parameters, const Chance& chance) {
    Colony colony;
    colony.id = id;
    colony.at = at;
    colony.forage = forage;
    colony.volume_l = volume_l;
    Stream luck = chance.stream(Purpose::colony_start, id, day);
    draw_character(colony, luck, parameters);
    colony.honey_g = settlers.honey_g;
    // Ages in a swarm: most are young (Winston 1987). A tenth each of the first ages, the rest old or foragers.
    const std::int64_t a_day = settlers.bees / static_cast<std::int64_t>(nest_ages + nest_ages / 2);
    for (std::size_t age = 0; age < nest_ages; ++age) colony.nest[age] = a_day;
    colony.foragers = settlers.bees - a_day * static_cast<std::int64_t>(nest_ages);
    colony.queen.state = settlers.mated_queen ? QueenState::laying : QueenState::virgin;
    colony.queen.age_days = settlers.queen_age_days;
    return colony;
}

}  // namespace maybough::colony
