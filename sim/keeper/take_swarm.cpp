// Taking a caught swarm: when, with how much work, and what it is then worth.
#include <algorithm>
#include <cmath>

#include "keeper/keeper.hpp"

namespace maybough::keeper {

namespace {
/// The first late day in the simulated year that begins on `first_day`.
Date late_date(const Keeper& keeper, Date first_day) {
    const auto in_year = [&](int year) {
        // 29 February counts as 1 March where there is none.
        const std::chrono::year_month_day day{std::chrono::year{year},
                                              std::chrono::month{static_cast<unsigned>(keeper.late_month)},
                                              std::chrono::day{static_cast<unsigned>(keeper.late_day)}};
        return Date{day};
    };
    const Date date = in_year(year_of(first_day));
    return date < first_day ? in_year(year_of(first_day) + 1) : date;
}

/// Early value until `late_ramp_days` before the late date, falling in a straight line to the late value on it.
double value_by_date(const Keeper& keeper, Date first_day, Day caught, const KeeperParameters& parameters) {
    const Date date = first_day + std::chrono::days{caught.value};
    const auto days_left = static_cast<double>((late_date(keeper, first_day) - date).count());
    if (days_left <= 0) return keeper.late_swarm_value;
    if (days_left >= parameters.late_ramp_days) return keeper.swarm_value;
    const double early = days_left / parameters.late_ramp_days;
    return early * keeper.swarm_value + (1 - early) * keeper.late_swarm_value;
}
/// Whether the trap was stolen after the swarm moved in and before the keeper came for it.
bool stolen_with(const TrapSeason& trap, Day caught, Day taken) {
    return std::any_of(trap.outages.begin(), trap.outages.end(), [&](const Outage& outage) {
        return outage.cause == Outage::Cause::stolen && outage.from >= caught && outage.from < taken;
    });
}
/// Share of a full set of comb that a swarm has built.
double comb_after(double waited_days, double size, const KeeperParameters& parameters) {
    return -std::expm1(-waited_days / parameters.comb_days) * std::min(size, 1.0);
}

double hours_to_take(const TrapKind& kind, double comb_built, const KeeperParameters& parameters) {
    const double comb_hours = kind.frames ? parameters.cross_comb_hours : parameters.cutout_hours;
    return kind.transfer_hours + parameters.evening_hours + comb_hours * comb_built;
}
}  // namespace

double usual_taking_hours(const TrapKind& kind, int visit_every_days, const KeeperParameters& parameters) {
    return hours_to_take(kind, comb_after(0.5 * visit_every_days, 1, parameters), parameters);
}

Taking take_swarm(const Swarm& swarm, Day caught, const TrapSeason& trap, const TrapKind& kind, const Keeper& keeper,
                  Date first_day, const KeeperParameters& parameters, const Chance& chance) {
    Taking taking;
    // A catch is noticed at the first round after the day it came.
    taking.taken = std::max(next_visit(trap, caught + 1), caught + 1);
    taking.waited_days = taking.taken - caught;

    const double size = static_cast<double>(swarm.bees) / parameters.standard_bees;
    const double comb_built = comb_after(taking.waited_days, size, parameters);
    taking.hours = hours_to_take(kind, comb_built, parameters);

    const double cut_out = kind.frames ? 0 : comb_built;
    Stream luck = chance.stream(Purpose::keeper_visit, swarm.id);
    taking.queen_lost = bernoulli(luck, parameters.queen_loss_moving + parameters.queen_loss_cutout * cut_out);

    taking.value = value_by_date(keeper, first_day, caught, parameters) *
                   std::min(parameters.size_limit, std::pow(size, parameters.size_exponent)) *
                   (1 - parameters.cutout_loss * cut_out);
    if (taking.queen_lost) taking.value *= parameters.queenless_share;
    if (stolen_with(trap, caught, taking.taken)) {
        taking.gone = true;
        taking.value = 0;
        taking.hours = 0;
    }
    return taking;
}

}  // namespace maybough::keeper
