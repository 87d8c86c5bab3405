// A swarm leaves: the prime swarm when a queen cell is capped and an hour is fit, then afterswarms by what is left.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "swarm/swarm.hpp"

namespace maybough::swarm {

namespace {

double fittest(const DayOfSky& sky) {
    return static_cast<double>(*std::max_element(sky.departure.begin(), sky.departure.end()));
}

/// The hour of exit, drawn in proportion to how fit each hour is.
double draw_hour(const DayOfSky& sky, Stream& luck) {
    double sum = 0;
    for (const float fit : sky.departure) sum += static_cast<double>(fit);
    double left = luck.uniform() * sum;
    for (std::size_t hour = 0; hour < sky.departure.size(); ++hour) {
        const auto fit = static_cast<double>(sky.departure[hour]);
        if (left < fit) return static_cast<double>(hour) + left / fit;
        left -= fit;
    }
    return 12;
}

Point draw_cluster_place(Point nest, Stream& luck, const SwarmParameters& p) {
    const double away_m = lognormal(luck, p.hang_distance_m, p.hang_distance_sd_ln);
    const double bearing = 2 * std::numbers::pi * luck.uniform();
    return {nest.x_m + away_m * std::sin(bearing), nest.y_m + away_m * std::cos(bearing)};
}

/// Workers and sealed brood left decide: Winston 1980, Insectes Soc. 27:391.
double chance_of_afterswarm(const Colony& colony, const SwarmParameters& p) {
    const auto left = static_cast<double>(adults(colony) + sealed_brood(colony));
    const double half = p.after_half_bees + p.after_number_half_bees * std::max(0, colony.swarms_cast - 1);
    return 1 / (1 + std::exp((half - left) / p.after_width_bees));
}

Swarm cast(Colony& colony, const DayOfSky& sky, Day day, const SwarmParameters& p, Stream& luck, bool prime) {
    Swarm swarm;
    swarm.id = swarm_of(colony.id, static_cast<unsigned>(colony.swarms_cast));
    swarm.parent = colony.id;
    swarm.origin = colony.origin;
    swarm.day = day;
    swarm.prime = prime;
    swarm.parent_volume_l = colony.volume_l;
    swarm.hour = draw_hour(sky, luck);
    swarm.at = draw_cluster_place(colony.at, luck, p);
    const double mean = prime ? p.prime_share : p.after_share;
    const double sd = prime ? p.prime_share_sd : p.after_share_sd;
    const double share = std::clamp(mean + sd * standard_normal(luck), mean - 3 * sd, std::min(0.95, mean + 3 * sd));
    constexpr double grams_per_mg = 1e-3;
    const Departing leaving = let_swarm_go(colony, share, p.honey_per_bee_mg * grams_per_mg, luck.uniform());
    swarm.bees = leaving.bees;
    swarm.honey_g = leaving.honey_g;
    swarm.queen_age_days = leaving.queen.age_days;
    return swarm;
}

/// Once for each virgin: does the colony cast an afterswarm with her, or let her kill her rivals?
bool decides_to_cast(Colony& colony, Day day, const SwarmParameters& p, const Chance& chance) {
    if (colony.casting) return true;
    Stream luck = chance.stream(Purpose::swarm_afterswarm, colony.id, day);
    const bool rivals = colony.ripe_queens + colony.queen_cells.sum() > 0;
    const bool enough = static_cast<double>(adults(colony)) * p.after_share >= p.min_bees;
    if (rivals && enough && colony.swarms_cast < static_cast<int>(p.max_swarms) &&
        bernoulli(luck, chance_of_afterswarm(colony, p))) {
        colony.casting = true;
        return true;
    }
    end_episode(colony);
    return false;
}

}  // namespace

std::optional<Swarm> issue_swarm(Colony& colony, const DayOfSky& sky, Day day, const SwarmParameters& parameters,
                                 const Chance& chance) {
    if (!colony.alive || colony.episode == SwarmEpisode::none || casts_no_more(colony.id)) return std::nullopt;
    if (prime_is_due(colony)) {
        const bool enough = static_cast<double>(adults(colony)) * parameters.prime_share >= parameters.min_bees;
        if (!enough || colony.swarms_cast >= static_cast<int>(parameters.max_swarms)) return std::nullopt;
        Stream luck = chance.stream(Purpose::swarm_issue, colony.id, day);
        if (!bernoulli(luck, parameters.leave_per_fit_day * fittest(sky))) return std::nullopt;
        if (colony.management.clipped_queen) {
            lose_clipped_queen(colony);
            return std::nullopt;
        }
        return cast(colony, sky, day, parameters, luck, true);
    }
    if (afterswarm_is_due(colony)) {
        if (!decides_to_cast(colony, day, parameters, chance)) return std::nullopt;
        Stream luck = chance.stream(Purpose::swarm_issue, colony.id, day);
        if (!bernoulli(luck, parameters.after_leave_per_fit_day * fittest(sky))) return std::nullopt;
        return cast(colony, sky, day, parameters, luck, false);
    }
    return std::nullopt;
}

}  // namespace maybough::swarm
