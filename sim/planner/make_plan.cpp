// The main job: record, fit, search, tune, confirm, report.
#include <algorithm>
#include <cmath>
#include <limits>

#include "planner/curve.hpp"
#include "planner/gap.hpp"
#include "planner/information.hpp"
#include "planner/plan_detail.hpp"
#include "planner/swarm_squares.hpp"
#include "planner/work.hpp"
#include "planner/worth_knowing.hpp"

namespace maybough::planner {

namespace {
constexpr std::uint32_t tuning_seasons = 24;
/// SeasonShare of the report's seasons that the contest between designs gets at most, on luck of its own.
constexpr double contest_share = 0.2;
constexpr std::uint32_t gap_batches = 4;
const std::vector<int> intervals_to_try{5, 7, 10, 14};

void search_options(Work& work) {
    work.options = make_options(work.scenario, work.regime, work.records, work.weights, work.effort.threads);
    work.demand = make_demand(work.scenario, work.options, work.records, work.weights, work.effort.threads);
    scale_worth(work.demand, work.worth_factor);
    work.found = search(work.demand, work.limits, work.question.exactly);
}

/// Ways to look after the traps: visit intervals with each day of taking down; and without the vial.
std::vector<Regime> regimes_to_try(const Work& work) {
    const std::vector<Day> take_downs =
        take_down_days(work.records.swarm_days, {work.scenario.days() - 1}, work.scenario.parameters.keeper);
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
    const Trials trials =
        run_trials(work.scenario, placements, 0, first_tuning_season, tuning_seasons, work.effort, progress);
    plan.hunts_asked += trials.asked;
    plan.hunts_run += trials.run;
    const auto best = static_cast<std::size_t>(best_number(trials));
    const bool same = regimes[best] == work.regime;
    work.regime = regimes[best];
    if (!same) search_options(work);
}

std::vector<double> outlays_of(const Scenario& scenario, const std::vector<Placement>& placements) {
    std::vector<double> outlays;
    for (const Placement& placement : placements) {
        outlays.push_back(
            bill(placement, scenario.kinds, scenario.spots, scenario.keeper, scenario.parameters.keeper).outlay);
    }
    return outlays;
}

/// The least that any one trap asks for, of money and of hours.
void tell_least(Plan& plan, const Work& work) {
    if (work.demand.options.empty()) return;
    plan.least_outlay = std::numeric_limits<double>::infinity();
    plan.least_hours = std::numeric_limits<double>::infinity();
    for (std::size_t j = 0; j < work.demand.options.size(); ++j) {
        const Spending spent = spending(work.demand, std::vector<std::size_t>{j});
        plan.least_outlay = std::min(plan.least_outlay, spent.outlay);
        plan.least_hours = std::min(plan.least_hours, spent.hours);
    }
}

LastPoint last_point(const Work& work) {
    if (static_cast<int>(work.found.order.size()) >= work.limits.max_traps) return LastPoint::most_traps;
    Limits no_money = work.limits;
    no_money.outlay = 0;
    if (greedy(work.demand, no_money, Judge::net, work.found.order).size() > work.found.order.size()) {
        return LastPoint::money;
    }
    no_money.hours = 0;
    if (greedy(work.demand, no_money, Judge::net, work.found.order).size() > work.found.order.size()) {
        return LastPoint::hours;
    }
    return LastPoint::places;
}

/// Batches are of all the report's seasons, as they go under the plan: the natural cavities that caught swarms leave
/// free are rivals to every other placement too.
void measure_gaps(Plan& plan, const Work& work, const Trials& report, int recommended) {
    std::vector<double> gaps;
    std::vector<double> found;
    const auto seasons = static_cast<std::uint32_t>(report.followed.size());
    const std::uint32_t length = whole_blocks(static_cast<double>(seasons) / gap_batches);
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

void tell_what_is_worth_knowing(Plan& plan, const std::vector<SampledUnknown>& unknowns, const Trials& report) {
    const auto k = static_cast<std::size_t>(plan.recommended);
    plan.sensitivities = sensitivities_of(unknowns, report, k);
    add_information(plan.sensitivities, unknowns, report, k, plan.effort.seed);
    // To know all is worth no less than to know any one, which the rule of all may be too poorly learnt to show.
    plan.worth_knowing_all = worth_of_knowing(standardised(unknowns), report, k);
    for (const Sensitivity& one : plan.sensitivities) {
        plan.worth_knowing_all = std::max(plan.worth_knowing_all, one.worth_knowing);
    }
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
    const std::uint32_t report_seasons = whole_blocks(effort.confirm_seasons);
    const std::uint32_t contest_seasons = whole_blocks(effort.confirm_seasons * contest_share);
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
    plan.curve = curve_of(report, placements, outlays_of(scenario, placements));
    std::tie(plan.recommended_low, plan.recommended_high) = numbers_like(report, plan.recommended);
    tell_least(plan, work);
    plan.why_it_stops =
        why_it_stops(plan.curve, plan.recommended, question, last_point(work), scenario.keeper.currency);
    if (plan.recommended > 0 && plan.curve[k].net.mean < plan.curve[0].net.mean &&
        std::any_of(scenario.spots.begin(), scenario.spots.end(), [](const Spot& spot) { return spot.must; })) {
        plan.why_it_stops += "; to hang none would pay better, but spots marked must have their trap";
    }
    plan.traps = planned_traps(scenario, detail, report);
    plan.tied_spots = tied_spots(plan.traps, scenario.spots.size());
    fill_calendars(plan, report, scenario.days());
    plan.swarm_squares = swarm_squares(report.swarm_places, scenario.land.radius_m);
    const std::vector<SampledUnknown> unknowns =
        sampled_unknowns(scenario, effort.seed, report.first_season, report.long_column(k, catches_in).size());
    tell_what_is_worth_knowing(plan, unknowns, report);
    plan.if_swarm_value = with_swarm_value(plan.curve);
    plan.if_budget = with_budget(plan.curve);

    const Chosen chosen = first_of(work.found.order, k);
    plan.search_catches = plan.catches_calibration * catches_of(work.demand, chosen);
    const Demand plain = catches_only(work.demand);
    const Limits count_only{plan.recommended, 0, 0};
    plan.bound_catches = plan.catches_calibration * upper_bound(plain, count_only, plan.recommended, chosen);
    return plan;
}

}  // namespace maybough::planner
