// Swarm preparation: the hazard of beginning queen cells and its parts; cells begun, ripening, torn down.
#include "colony/process.hpp"

namespace maybough::colony {

namespace {
constexpr double days_per_year = 365;
}  // namespace

Preparation preparation_of(const Colony& colony, double nectar_on_offer, DayLength days, const ColonyParameters& p) {
    Preparation part;
    const double bees = static_cast<double>(adults(colony));
    const double full = cells_in_use(colony, p) / cells_of_cavity(colony, p);
    const double crowded = rise(full, p.prepare_full, p.prepare_full_width) *
                           rise(bees / colony.volume_l, p.prepare_density_per_l, p.prepare_density_width_per_l);
    part.crowding = p.prepare_roomy_share + (1 - p.prepare_roomy_share) * crowded;
    const double young = bees > 0 ? static_cast<double>(young_bees(colony)) / bees : 0;
    part.young_bees = rise(young, p.prepare_young_share, p.prepare_young_width);
    part.thin_scent = share_fed(bees, p.prepare_scent_bees);
    part.forage = share_reared(nectar_on_offer, p.prepare_forage);
    part.day_length = rise(days.hours, p.prepare_daylight_h, p.prepare_daylight_width_h) *
                      (days.falls() ? p.prepare_falling_days_share : 1);
    part.queen_age = std::pow(colony.queen.age_days / days_per_year, p.prepare_queen_age_power);
    part.readiness = colony.readiness;
    part.per_day = p.prepare_per_day * part.crowding * part.young_bees * part.thin_scent * part.forage *
                   part.day_length * part.queen_age * part.readiness;
    return part;
}

double draw_hazard_limit(Stream& luck) {
    return exponential(luck, 1);
}

void tear_down_cells(Colony& colony) {
    colony.queen_cells = {};
    colony.ripe_queens = 0;
    colony.cells_wanted = 0;
    colony.casting = false;
    colony.episode = SwarmEpisode::none;
    colony.episode_days = 0;
}

namespace {

void begin_cells(Colony& colony, Day day, const ColonyParameters& p, const Chance& chance) {
    Stream luck = chance.stream(Purpose::colony_prepare, colony.id, day);
    colony.cells_wanted = 2 + poisson(luck, p.queen_cells_mean - 2);
    colony.summed_hazard = 0;
    colony.hazard_limit = draw_hazard_limit(luck);
    colony.episode = SwarmEpisode::preparing;
    colony.episode_days = 0;
}

/// Eggs are laid in cups over several days; the first on the day of beginning.
void lay_in_cups(Colony& colony, const ColonyParameters& p, DayOfColony& today) {
    if (colony.cells_wanted <= 0) return;
    const double days_left = std::max(1.0, p.queen_cup_days - colony.episode_days);
    const auto cells = static_cast<std::int64_t>(std::ceil(static_cast<double>(colony.cells_wanted) / days_left));
    colony.queen_cells[0] += cells;
    colony.cells_wanted -= cells;
    today.cells_begun += cells;
}

bool gives_up(const Colony& colony, const Outside& outside, Day day, const ColonyParameters& p, const Chance& chance) {
    Stream luck = chance.stream(Purpose::colony_prepare, colony.id, day, 1);
    const double idle = 1 - std::min(1.0, outside.foraging_h / p.foraging_full_hours);
    const double dearth = 1 - share_reared(outside.nectar, p.prepare_forage);
    return bernoulli(luck, p.give_up_per_day + p.give_up_bad_per_day * idle + p.give_up_dearth_per_day * dearth);
}

}  // namespace

void prepare_to_swarm(Colony& colony, const Outside& outside, Day day, const ColonyParameters& parameters,
                      const Chance& chance, DayOfColony& today) {
    // Cells ripen; a queen that is ready stays in her cell while another is loose or the old one is there.
    if (colony.episode != SwarmEpisode::none) {
        colony.ripe_queens += colony.queen_cells.turn();
        today.cells_capped = colony.queen_cells[queen_capped_day];
        ++colony.episode_days;
    }
    if (colony.no_cells_for_days > 0) --colony.no_cells_for_days;

    if (colony.episode == SwarmEpisode::none) {
        colony.preparation = {};
        const bool may = colony.queen.state == QueenState::laying && colony.no_cells_for_days == 0 &&
                         !casts_no_more(colony.id) && outside.foraging_h > 0;
        if (!may) return;
        colony.preparation = preparation_of(colony, outside.nectar, outside.days, parameters);
        colony.summed_hazard += colony.preparation.per_day;
        if (colony.summed_hazard < colony.hazard_limit) return;
        begin_cells(colony, day, parameters, chance);
        lay_in_cups(colony, parameters, today);
        return;
    }
    if (colony.episode == SwarmEpisode::preparing) {
        lay_in_cups(colony, parameters, today);
        // Confined until a young queen is ready: the old one stays and the cells go.
        if (colony.ripe_queens > 0 || gives_up(colony, outside, day, parameters, chance)) {
            tear_down_cells(colony);
            colony.no_cells_for_days = static_cast<int>(parameters.give_up_rest_days);
        }
    }
}

}  // namespace maybough::colony
