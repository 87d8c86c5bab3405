// The main job: record, fit, search, tune, confirm, report.
#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

#include "planner/contest.hpp"
#include "planner/curve.hpp"
#include "planner/gap.hpp"
#include "planner/information.hpp"
#include "planner/options.hpp"
#include "planner/plan_detail.hpp"
#include "planner/record.hpp"
#include "planner/worth_knowing.hpp"

namespace maybough {

namespace {
constexpr std::uint32_t tuning_seasons = 24;
/// Share of the report's seasons that the contest between designs gets at most, on luck of its own.
constexpr double contest_share = 0.2;
/// Designs count as alike within this share of an early swarm's worth.
constexpr double indifferent_share = 0.1;
/// Beside the curve's own designs: those that differ from the best by one of so many of its traps.
constexpr std::size_t changed_traps = 3;
constexpr std::uint32_t gap_batches = 4;
const std::vector<int> intervals_to_try{5, 7, 10, 14};

/// What the stages hand on.
struct Work {
    const Scenario& scenario;
    const Question& question;
    const Effort& effort;
    Limits limits;
    Records records;
    ChoiceWeights weights{};
    Regime regime;
    double worth_factor = 1;  ///< full model over surrogate
    std::vector<TrapSetting> options;
    Demand demand;
    Found found;
};

Placement placement_of(const Work& work, const Chosen& chosen) {
    Placement placement;
    for (const std::size_t j : chosen) placement.push_back(work.options[j]);
    return placement;
}

Chosen first_of(const Chosen& order, std::size_t traps) {
    return {order.begin(), order.begin() + static_cast<std::ptrdiff_t>(traps)};
}

/// The search problem of other seasons: their situations, numbered from the first of them.
Demand demand_on(const Work& work, const std::vector<TrapSetting>& options, const std::vector<SwarmCase>& situations,
                 std::uint32_t first, std::uint32_t from, std::uint32_t until) {
    Records records;
    records.seed = work.effort.seed;
    records.first_season = first + from;
    records.days_to_settle = work.records.days_to_settle;
    for (std::uint32_t s = from; s < until; ++s) {
        records.parameters.push_back(draw_beliefs(work.scenario, work.effort.seed, first + s));
    }
    for (SwarmCase one : situations) {
        if (one.season < from || one.season >= until) continue;
        one.season -= from;
        records.cases.push_back(one);
    }
    Demand demand = make_demand(work.scenario, options, records, work.weights, work.effort.threads);
    scale_worth(demand, work.worth_factor);
    return demand;
}

void search_options(Work& work) {
    work.options = make_options(work.scenario, work.regime, work.records, work.weights, work.effort.threads);
    work.demand = make_demand(work.scenario, work.options, work.records, work.weights, work.effort.threads);
    scale_worth(work.demand, work.worth_factor);
    work.found = search(work.demand, work.limits, work.question.exactly);
}

/// Ways to look after the traps: visit intervals with each day of taking down; and without the vial.
std::vector<Regime> regimes_to_try(const Work& work) {
    const std::vector<Day> take_downs = take_downs_to_try(work.scenario, work.records.swarm_days);
    std::vector<Regime> regimes;
    for (const int every : intervals_to_try) {
        for (const Day take_down : take_downs) {
            regimes.push_back({work.regime.hang, take_down, every, work.scenario.keeper.use_lure});
        }
        if (work.scenario.keeper.use_lure) {
            regimes.push_back({work.regime.hang, take_downs.front(), every, false});
        }
    }
    return regimes;
}

/// Visits, day of taking down and vial by the full model on seasons of their own; searches again where they change.
void tune_regime(Work& work, Plan& plan, const Progress& progress) {
    const std::size_t traps = std::max<std::size_t>(work.found.best, std::min<std::size_t>(1, work.found.order.size()));
    if (traps == 0) return;
    const std::vector<Regime> regimes = regimes_to_try(work);
    std::vector<Placement> placements;
    for (const Regime& regime : regimes) {
        Placement placement = placement_of(work, first_of(work.found.order, traps));
        for (TrapSetting& setting : placement) {
            setting.take_down = regime.take_down;
            setting.visit_every_days = regime.visit_every_days;
            setting.lured = regime.lured;
        }
        placements.push_back(std::move(placement));
    }
    const Trials trials = run_trials(work.scenario, placements, 0, first_tuning_season, tuning_seasons, work.effort, progress);
    plan.hunts_asked += trials.asked;
    plan.hunts_run += trials.run;
    const auto best = static_cast<std::size_t>(best_number(trials));
    const bool same = regimes[best] == work.regime;
    work.regime = regimes[best];
    if (!same) search_options(work);
}

std::vector<PlacementMoney> money_of(const Scenario& scenario, const std::vector<Placement>& placements) {
    std::vector<PlacementMoney> money;
    for (const Placement& placement : placements) {
        const Bill b = bill(placement, scenario.kinds, scenario.spots, scenario.keeper, scenario.parameters.keeper);
        money.push_back({b.outlay, cash_of(b, scenario.keeper)});
    }
    return money;
}

LastPoint last_point(const Work& work) {
    if (static_cast<int>(work.found.order.size()) >= work.limits.max_traps) return LastPoint::most_traps;
    Limits no_money = work.limits;
    no_money.cash = 0;
    if (greedy(work.demand, no_money, Judge::net, work.found.order).size() > work.found.order.size()) {
        return LastPoint::money;
    }
    no_money.hours = 0;
    if (greedy(work.demand, no_money, Judge::net, work.found.order).size() > work.found.order.size()) {
        return LastPoint::hours;
    }
    return LastPoint::places;
}

/// The smallest design whose odds of the swarms asked for are reached; where none is, the largest.
std::size_t fewest_for_odds(const std::vector<std::vector<Outcome>>& outcomes, const std::vector<Chosen>& designs,
                            const Question& question) {
    std::size_t fewest = 0;
    bool reached = false;
    for (std::size_t i = 0; i < designs.size(); ++i) {
        const auto enough = std::count_if(outcomes[i].begin(), outcomes[i].end(), [&](const Outcome& outcome) {
            return outcome.catches >= question.at_least_swarms;
        });
        const bool reaches =
            static_cast<double>(enough) >= question.at_least_odds * static_cast<double>(outcomes[i].size());
        const bool better = reached ? designs[i].size() < designs[fewest].size()
                                    : reaches || designs[i].size() > designs[fewest].size();
        if (reaches >= reached && better) fewest = i;
        reached = reached || reaches;
    }
    return fewest;
}

/// House-hunts were every placement of so many traps lived through on the contest's seasons.
double exhaustive_hunts(const Work& work, std::size_t traps, const Contest& contest) {
    std::set<std::uint64_t> places;
    for (const SearchOption& option : work.demand.options) places.insert(option.place);
    const auto kinds = static_cast<double>(std::max<std::size_t>(1, work.demand.kinds.size()));
    double placements = 1;
    for (std::size_t i = 0; i < traps; ++i) {
        placements *= kinds * static_cast<double>(places.size() - i) / static_cast<double>(i + 1);
    }
    double lived = 0;
    for (const auto& outcomes : contest.outcomes) lived += static_cast<double>(outcomes.size());
    const double a_season = static_cast<double>(contest.asked) / lived;
    return placements * contest.seasons * a_season;
}

/// True where every place that has to be used is.
bool uses_must_places(const Work& work, const Chosen& chosen) {
    return std::all_of(work.demand.options.begin(), work.demand.options.end(), [&](const SearchOption& option) {
        return !option.must || std::any_of(chosen.begin(), chosen.end(),
                                           [&](std::size_t j) { return work.demand.options[j].place == option.place; });
    });
}

/// Designs worth trying in full: the curve's, the best of about as many traps, and those with one trap elsewhere.
std::vector<Chosen> designs_of(const Work& work) {
    const Chosen& order = work.found.order;
    const std::size_t best = work.question.exactly > 0
                                 ? std::min(order.size(), static_cast<std::size_t>(work.question.exactly))
                                 : work.found.best;
    std::vector<Chosen> wanted;
    for (std::size_t k = 0; k <= order.size(); ++k) wanted.push_back(first_of(order, k));
    for (std::size_t k = std::max<std::size_t>(best, 2) - 1; k <= std::min(best + 1, order.size()); ++k) {
        wanted.push_back(first_of(search(work.demand, work.limits, static_cast<int>(k)).order, k));
    }
    const Limits same{static_cast<int>(best), work.limits.cash, work.limits.hours};
    for (std::size_t i = best - std::min(best, changed_traps); i < best; ++i) {
        Chosen changed = first_of(order, best);
        changed.erase(changed.begin() + static_cast<std::ptrdiff_t>(i));
        const auto next = best_elsewhere(work.demand, same, changed, work.demand.options[order[i]].place);
        if (!next) continue;
        changed.push_back(*next);
        wanted.push_back(std::move(changed));
    }
    std::vector<Chosen> designs;
    std::set<Chosen> known;
    for (Chosen& design : wanted) {
        Chosen sorted = design;
        std::sort(sorted.begin(), sorted.end());
        const bool fits = uses_must_places(work, design) && (work.question.exactly <= 0 || design.size() == best);
        if (fits && known.insert(sorted).second) designs.push_back(std::move(design));
    }
    if (designs.empty()) designs.push_back(first_of(order, best));
    return designs;
}

TriedDesign tried_design(const Work& work, const Chosen& design, const Contest& contest, std::size_t which) {
    const std::vector<Outcome>& outcomes = contest.outcomes[which];
    TriedDesign tried;
    tried.placement = placement_of(work, design);
    tried.seasons = static_cast<std::uint32_t>(outcomes.size());
    std::vector<double> catches;
    std::vector<double> net;
    for (const Outcome& outcome : outcomes) {
        catches.push_back(outcome.catches);
        net.push_back(outcome.net());
    }
    tried.catches = estimate(catches);
    tried.net = estimate(net);
    tried.left = std::count(contest.left.begin(), contest.left.end(), which) > 0;
    const Demand demand = demand_on(work, tried.placement, contest.situations, first_confirm_season, 0, tried.seasons);
    Chosen all(design.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    tried.foretold_catches = catches_of(demand, all);
    tried.foretold_net = net_of(demand, all);
    return tried;
}

/// The full model's level over the surrogate's, over all designs on the seasons each lived through; what follows is
/// searched on worths brought to that level.
void calibrate(Work& work, Plan& plan) {
    double seen = 0;
    double foretold = 0;
    double seen_worth = 0;
    double foretold_worth = 0;
    for (const TriedDesign& tried : plan.tried) {
        const double cost = bill(tried.placement, work.scenario.kinds, work.scenario.spots, work.scenario.keeper,
                                 work.scenario.parameters.keeper)
                                .total(work.scenario.keeper);
        seen += tried.catches.mean;
        foretold += tried.foretold_catches;
        seen_worth += tried.net.mean + cost;
        foretold_worth += tried.foretold_net + cost;
    }
    if (foretold > 0) plan.catches_calibration = seen / foretold;
    if (foretold_worth > 0) plan.worth_calibration = std::clamp(seen_worth / foretold_worth, 0.1, 10.0);
    work.worth_factor = plan.worth_calibration;
    scale_worth(work.demand, work.worth_factor);
}

/// Tries the designs in full and settles the order of traps and how many are best.
void choose(Work& work, Plan& plan, std::uint32_t seasons, const Progress& progress) {
    const std::vector<Chosen> designs = designs_of(work);
    std::vector<Placement> placements;
    for (const Chosen& design : designs) placements.push_back(placement_of(work, design));
    ContestRules rules;
    rules.indifference = indifferent_share * work.scenario.keeper.swarm_value;
    rules.most_groups = seasons / seasons_per_belief;
    rules.first_groups = std::min(rules.first_groups, rules.most_groups);
    const bool for_odds = work.question.at_least_swarms > 0 && work.question.exactly <= 0;
    const Contest contest = hold_contest(work.scenario, placements, rules, for_odds ? Prize::none : Prize::net,
                                         work.weights, work.effort, progress);
    plan.hunts_asked += contest.asked;
    plan.hunts_run += contest.run;
    plan.indifference = rules.indifference;
    plan.contest_end = contest.end;
    std::size_t winner = contest.winner;
    if (for_odds) {
        winner = fewest_for_odds(contest.outcomes, designs, work.question);
    }
    plan.tried.push_back(tried_design(work, designs[winner], contest, winner));
    for (std::size_t i = 0; i < designs.size(); ++i) {
        if (i != winner && !designs[i].empty()) plan.tried.push_back(tried_design(work, designs[i], contest, i));
    }
    calibrate(work, plan);
    plan.recommended = static_cast<int>(designs[winner].size());
    work.found.order = order_through(work.demand, work.limits, designs[winner]);
    work.found.best = designs[winner].size();
    plan.hunts_exhaustive = exhaustive_hunts(work, designs[winner].size(), contest);
}

void measure_gaps(Plan& plan, const Work& work, const Trials& report, int recommended) {
    std::vector<double> gaps;
    std::vector<double> found;
    const auto seasons = static_cast<std::uint32_t>(report.seasons());
    const std::uint32_t length =
        std::max(seasons_per_belief, whole_beliefs(static_cast<double>(seasons) / gap_batches));
    const Chosen chosen = first_of(work.found.order, static_cast<std::size_t>(recommended));
    const int count = work.question.exactly > 0 ? recommended : work.limits.max_traps;
    for (std::uint32_t from = 0; from + length <= seasons; from += length) {
        const Demand demand =
            demand_on(work, work.options, report.situations, report.first_season, from, from + length);
        gaps.push_back(batch_gap(demand, work.limits, chosen, count, chosen));
        found.push_back(batch_gap_found(demand, work.limits, chosen, work.question.exactly > 0 ? recommended : 0));
    }
    plan.gap_net = gap_of(gaps).limit_95;
    plan.gap_found_net = gap_of(found).limit_95;
}

void fill_calendars(Plan& plan, const Trials& report, int days) {
    plan.swarm_days.assign(static_cast<std::size_t>(days), 0);
    plan.catch_days.assign(static_cast<std::size_t>(days), 0);
    const double share = 1.0 / static_cast<double>(std::max<std::size_t>(1, report.followed.size()));
    for (const auto& season : report.swarm_days) {
        for (const int day : season) plan.swarm_days[static_cast<std::size_t>(day)] += share;
    }
    for (const auto& season : report.followed) {
        for (const FollowedCatch& caught : season) {
            const auto day = static_cast<std::size_t>(std::clamp(caught.day, 0, days - 1));
            plan.catch_days[day] += share;
        }
    }
}

void tell_what_is_worth_knowing(Plan& plan, const std::vector<Unknown>& unknowns, const Trials& report) {
    const auto k = static_cast<std::size_t>(plan.recommended);
    plan.sensitivities = sensitivities_of(unknowns, report, k);
    add_information(plan.sensitivities, unknowns, report, k, plan.effort.seed);
    plan.worth_knowing_all = worth_of_knowing(standardised(unknowns), report, k);
    const Regret regret = regret_of(unknowns, report, k);
    plan.expected_regret = regret.expected;
    plan.worst_regret = regret.worst;
}

Work prepare(const Scenario& scenario, const Question& question, const Effort& effort, Plan& plan,
             const Progress& record_progress) {
    Work work{scenario, question, effort, {}, {}, {}, {}, 1, {}, {}, {}};
    work.limits = {std::max(question.max_traps, question.exactly), question.budget, question.hours};
    work.records = record_seasons(scenario, effort, first_record_season, effort.record_seasons, record_progress);
    work.weights = fit_records(work.records, plan.surrogate).weights;
    settle_rivals(work.records, work.weights);
    work.regime = regime_for(scenario, work.records.swarm_days);
    plan.hunts_asked += work.records.asked;
    plan.hunts_run += work.records.run;
    return work;
}
}  // namespace

Plan make_plan(const Scenario& scenario, const Question& question, const Effort& effort, const Progress& progress) {
    Plan plan;
    plan.effort = effort;
    plan.question = question;
    const std::uint32_t report_seasons = whole_beliefs(effort.confirm_seasons);
    const std::uint32_t contest_seasons = whole_beliefs(effort.confirm_seasons * contest_share);
    Stages stages(progress, effort.record_seasons + tuning_seasons + contest_seasons + report_seasons);

    // Learn from recorded seasons, search on them, settle the visits, and choose by the full model on fresh seasons.
    Work work = prepare(scenario, question, effort, plan, stages.stage(effort.record_seasons));
    search_options(work);
    tune_regime(work, plan, stages.stage(tuning_seasons));
    choose(work, plan, contest_seasons, stages.stage(contest_seasons));

    // Print from seasons that chose nothing.
    std::vector<Placement> placements;
    for (std::size_t k = 0; k <= work.found.order.size(); ++k) {
        placements.push_back(placement_of(work, first_of(work.found.order, k)));
    }
    const auto k = static_cast<std::size_t>(plan.recommended);
    PlanDetail detail = detail_of(scenario, work.demand, work.options, work.limits, work.found.order, k);
    const Trials report = report_trials(scenario, placements, detail, k, report_seasons, work.weights, effort,
                                        stages.stage(report_seasons));
    plan.hunts_asked += report.asked;
    plan.hunts_run += report.run;
    measure_gaps(plan, work, report, plan.recommended);
    plan.curve = curve_of(report, placements, money_of(scenario, placements));
    std::tie(plan.recommended_low, plan.recommended_high) = numbers_like(report, plan.recommended);
    plan.why_it_stops =
        why_it_stops(plan.curve, plan.recommended, question, last_point(work), scenario.keeper.currency);
    plan.traps = planned_traps(scenario, detail, report);
    plan.tied_spots = tied_spots(plan.traps, scenario.spots.size());
    fill_calendars(plan, report, scenario.days());
    const std::vector<Unknown> unknowns = unknowns_of(scenario, effort.seed, report.first_season, report.seasons());
    tell_what_is_worth_knowing(plan, unknowns, report);
    plan.if_swarm_value = with_swarm_value(report);
    plan.if_budget = with_budget(report, money_of(scenario, placements));

    const Chosen chosen = first_of(work.found.order, k);
    plan.search_catches = plan.catches_calibration * catches_of(work.demand, chosen);
    const Demand plain = catches_only(work.demand);
    const Limits count_only{plan.recommended, 0, 0};
    plan.bound_catches = plan.catches_calibration * upper_bound(plain, count_only, plan.recommended, chosen);
    return plan;
}

}  // namespace maybough
