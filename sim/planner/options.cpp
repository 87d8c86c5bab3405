// Makes options from spots, kinds, heights and facings, and the search problem from options and records.
#include "planner/options.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace maybough::planner {

namespace {
constexpr double compass_step_deg = 45;
/// Hunts on which heights are compared; enough to tell minutes of ladder work from swarms.
constexpr std::size_t height_hunts = 3000;

/// Pull and worth of a trap for one swarm; a pull of 0 where the swarm cannot come.
Draw draw_for(const Scenario& scenario, const TrapSetting& setting, const TrapSeason& trap, const SwarmCase& one,
              std::uint32_t hunt, const Parameters& parameters, int days_to_settle, const Chance& chance,
              const ChoiceWeights& weights) {
    Draw draw{hunt, 0, 0};
    const Day comes = one.swarm.day + days_to_settle;
    const double away_m = distance_m(one.swarm.at, trap.at);
    if (comes < trap.hang || comes >= trap.take_down || away_m >= search_reach_m(parameters.scouts)) return draw;
    const bool out = std::any_of(trap.outages.begin(), trap.outages.end(), [&](const Outage& outage) {
        return outage.from <= one.swarm.day && one.swarm.day < outage.until;
    });
    if (out) return draw;
    const TrapKind& kind = scenario.kinds[setting.kind];
    const Cavity cavity =
        trap_cavity(trap, setting, kind, scenario.spots[setting.spot], one.swarm.day, parameters.keeper);
    const double weight = find_weight(cavity, away_m, parameters.scouts);
    if (!(weight > 0)) return draw;
    const bool south = is_southern(scenario.land.centre);
    const double log_odds = site_log_odds(cavity, parameters.scouts, south);
    const SiteView view{static_cast<float>(std::log(weight)), static_cast<float>(log_odds)};
    draw.pull = static_cast<float>(pull(view, SiteSort::trap, one.swarm.prime, weights));
    const Taking taking =
        take_swarm(one.swarm, comes, trap, kind, scenario.keeper, scenario.first_day(), parameters.keeper, chance);
    draw.worth = static_cast<float>(taking.value - taking.hours * scenario.keeper.hour_value);
    return draw;
}

std::vector<Draw> draws_on(const Scenario& scenario, const TrapSetting& setting, const Records& records,
                           const ChoiceWeights& weights, std::size_t stride) {
    std::vector<Draw> draws;
    TrapSeason trap;
    std::uint32_t raised = static_cast<std::uint32_t>(records.parameters.size());
    for (std::size_t i = 0; i < records.cases.size(); i += stride) {
        const SwarmCase& one = records.cases[i];
        const Parameters& parameters = records.parameters[one.season];
        const Chance chance{records.seed, records.first_season + one.season};
        if (one.season != raised) {
            raised = one.season;
            trap = plan_trap_season(setting, 0, scenario.kinds[setting.kind], scenario.spots[setting.spot],
                                    scenario.keeper, parameters.keeper, chance);
        }
        const Draw draw = draw_for(scenario, setting, trap, one, static_cast<std::uint32_t>(i), parameters,
                                   records.days_to_settle, chance, weights);
        if (draw.pull > 0) draws.push_back(draw);
    }
    return draws;
}

Bill bill_of(const Scenario& scenario, const TrapSetting& setting, bool owned, double base_km) {
    std::vector<TrapKind> kinds = scenario.kinds;
    if (owned) kinds[setting.kind].owned = 1;
    Keeper keeper = scenario.keeper;
    keeper.base_km = base_km;
    return bill({setting}, kinds, scenario.spots, keeper, scenario.parameters.keeper);
}

double single_net(const Scenario& scenario, const TrapSetting& setting, const Records& records,
                  const ChoiceWeights& weights, std::size_t stride) {
    double worth = 0;
    for (const Draw& draw : draws_on(scenario, setting, records, weights, stride)) {
        worth += draw.worth * draw.pull / (records.cases[draw.hunt].rivals + draw.pull);  // full traps are for later
    }
    const double scale =
        static_cast<double>(stride) / static_cast<double>(std::max<std::size_t>(1, records.parameters.size()));
    return worth * scale - bill_of(scenario, setting, true, 0).total(scenario.keeper);
}
}  // namespace

Regime regime_for(const Scenario& scenario, const std::vector<int>& swarm_days) {
    const KeeperParameters& parameters = scenario.parameters.keeper;
    Regime regime;
    regime.hang = hang_day(swarm_days, parameters);
    regime.take_down = take_down_days(swarm_days, {scenario.days() - 1}, parameters).front();
    regime.lured = scenario.keeper.use_lure;
    return regime;
}

double best_facing_deg(const Spot& spot, const TrapKind& kind, const Scenario& scenario) {
    std::vector<double> allowed = spot.facings_deg;
    for (double deg = 0; spot.facings_deg.empty() && deg < 360; deg += compass_step_deg) allowed.push_back(deg);
    std::sort(allowed.begin(), allowed.end());
    Cavity cavity;
    cavity.volume_l = kind.volume_l;
    cavity.entrance_area_cm2 = kind.entrance_area_cm2;
    double best_deg = allowed.front();
    double best = -1e300;
    for (const double deg : allowed) {
        cavity.facing_deg = deg;
        const double score = site_log_odds(cavity, scenario.parameters.scouts, is_southern(scenario.land.centre));
        if (score > best) {
            best = score;
            best_deg = deg;
        }
    }
    return best_deg;
}

std::vector<double> heights_to_try(const Spot& spot, const KeeperParameters& parameters) {
    std::vector<double> heights{spot.min_height_m, spot.max_height_m, 0.5 * (spot.min_height_m + spot.max_height_m),
                                std::clamp(parameters.ladder_above_m, spot.min_height_m, spot.max_height_m)};
    std::sort(heights.begin(), heights.end());
    heights.erase(std::unique(heights.begin(), heights.end()), heights.end());
    return heights;
}

std::vector<TrapSetting> make_options(const Scenario& scenario, const Regime& regime, const Records& records,
                                      const ChoiceWeights& weights, unsigned threads) {
    std::vector<TrapSetting> wanted;
    std::vector<std::size_t> spots;
    for (std::size_t i = 0; i < scenario.spots.size(); ++i) {
        if (!scenario.spots[i].never) spots.push_back(i);
    }
    std::sort(spots.begin(), spots.end(), [&](std::size_t a, std::size_t b) {
        return trap_site(scenario.spots[a].at) < trap_site(scenario.spots[b].at);
    });
    for (const std::size_t spot : spots) {
        for (std::size_t kind = 0; kind < scenario.kinds.size(); ++kind) {
            TrapSetting setting{spot, kind, 0, 0, regime.hang, regime.take_down, regime.visit_every_days, regime.lured};
            setting.facing_deg = best_facing_deg(scenario.spots[spot], scenario.kinds[kind], scenario);
            wanted.push_back(setting);
        }
    }
    const std::size_t stride = std::max<std::size_t>(1, records.cases.size() / height_hunts);
    std::vector<TrapSetting> options;
    run_in_order<TrapSetting>(
        0, static_cast<std::uint32_t>(wanted.size()), threads,
        [&](std::uint32_t i) {
            TrapSetting best = wanted[i];
            double best_net = -1e300;
            TrapSetting trial = wanted[i];
            for (const double height_m : heights_to_try(scenario.spots[trial.spot], scenario.parameters.keeper)) {
                trial.height_m = height_m;
                const double net = single_net(scenario, trial, records, weights, stride);
                if (net > best_net) {
                    best_net = net;
                    best = trial;
                }
            }
            return best;
        },
        [&](std::uint32_t, TrapSetting&& setting) { options.push_back(setting); });
    return options;
}

std::vector<Draw> draws_of(const Scenario& scenario, const TrapSetting& setting, const Records& records,
                           const ChoiceWeights& weights) {
    return draws_on(scenario, setting, records, weights, 1);
}

namespace {
/// Per hunt, the round on which its catch is taken, counted through all seasons: all traps of a plan share theirs.
std::vector<std::uint32_t> rounds_of(const Scenario& scenario, const TrapSetting& setting, const Records& records) {
    const TrapSeason trap =
        plan_trap_season(setting, 0, scenario.kinds[setting.kind], scenario.spots[setting.spot], scenario.keeper,
                         scenario.parameters.keeper, Chance{records.seed, records.first_season});
    std::vector<std::uint32_t> rounds;
    for (const SwarmCase& one : records.cases) {
        const Day comes = one.swarm.day + records.days_to_settle;
        const auto visit = std::upper_bound(trap.visits.begin(), trap.visits.end(), comes) - trap.visits.begin();
        rounds.push_back(one.season * static_cast<std::uint32_t>(trap.visits.size() + 1) +
                         static_cast<std::uint32_t>(visit));
    }
    return rounds;
}

/// Work that catches bring is the keeper's too: as much as the trap would catch on its own, so that a plan within the
/// keeper's hours stays within them.
void add_taking_hours(Demand& demand, const Scenario& scenario, const std::vector<TrapSetting>& options) {
    for (std::size_t j = 0; j < options.size(); ++j) {
        const double catches = catches_of(demand, std::array{j});
        demand.options[j].hours +=
            catches * usual_taking_hours(scenario.kinds[options[j].kind], options[j].visit_every_days,
                                         scenario.parameters.keeper);
    }
}
}  // namespace

Demand make_demand(const Scenario& scenario, const std::vector<TrapSetting>& options, const Records& records,
                   const ChoiceWeights& weights, unsigned threads) {
    Demand demand;
    const Keeper& keeper = scenario.keeper;
    demand.seasons = static_cast<double>(std::max<std::size_t>(1, records.parameters.size()));
    for (const SwarmCase& one : records.cases) demand.rivals.push_back(one.rivals);
    for (const TrapKind& kind : scenario.kinds) {
        const double seasons = std::max(1.0, kind.seasons_life);
        const double hours = kind.build_hours / seasons;
        demand.kinds.push_back({kind.cost / seasons + hours * keeper.hour_value, kind.cost, hours, kind.owned});
    }
    if (options.empty()) return demand;
    demand.rounds = rounds_of(scenario, options.front(), records);
    // All traps of a plan share their rounds, so the drive to the area and back is paid once.
    const Bill alone = bill_of(scenario, options.front(), true, keeper.base_km);
    const Bill without_drive = bill_of(scenario, options.front(), true, 0);
    demand.fixed_cost = alone.total(keeper) - without_drive.total(keeper);
    demand.fixed_hours = alone.hours - without_drive.hours;
    run_in_order<SearchOption>(
        0, static_cast<std::uint32_t>(options.size()), threads,
        [&](std::uint32_t i) {
            const TrapSetting& setting = options[i];
            const Bill own = bill_of(scenario, setting, true, 0);
            SearchOption option;
            option.place = trap_site(scenario.spots[setting.spot].at).value;
            option.kind = setting.kind;
            option.cost = own.total(keeper);
            option.outlay = own.outlay;
            option.hours = own.hours;
            option.must = scenario.spots[setting.spot].must;
            option.draws = draws_of(scenario, setting, records, weights);
            return option;
        },
        [&](std::uint32_t, SearchOption&& option) { demand.options.push_back(std::move(option)); });
    add_taking_hours(demand, scenario, options);
    return demand;
}

}  // namespace maybough::planner
