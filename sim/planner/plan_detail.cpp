// Changes the recommended plan one trap at a time and measures the difference on the report's seasons.
#include "planner/plan_detail.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace maybough::planner {

namespace {
/// Shares of the report's seasons: all placements of the curve live through the first, those changed by one trap
/// through the second. Differences are paired, so they need fewer seasons than means.
constexpr double curve_share = 0.3;
constexpr double detail_share = 0.15;
/// No part has fewer: an interval over less than eight clusters is wide, and covers less than it says where skew.
constexpr double least_part = 8.0 * seasons_per_block;

/// Puts the outcomes of `more` behind those of `all` for the placements from `first` on.
void join(Trials& all, Trials&& more, std::size_t first) {
    for (std::size_t p = 0; p < more.outcomes.size(); ++p) {
        std::vector<Outcome>& outcomes = all.outcomes[first + p];
        outcomes.insert(outcomes.end(), more.outcomes[p].begin(), more.outcomes[p].end());
    }
    std::move(more.followed.begin(), more.followed.end(), std::back_inserter(all.followed));
    std::move(more.swarm_days.begin(), more.swarm_days.end(), std::back_inserter(all.swarm_days));
    for (SwarmCase one : more.situations) {
        one.season += more.first_season - all.first_season;
        all.situations.push_back(one);
    }
    std::move(more.swarm_places.begin(), more.swarm_places.end(), std::back_inserter(all.swarm_places));
    all.asked += more.asked;
    all.run += more.run;
}
}  // namespace

PlanDetail detail_of(const Scenario& scenario, const Demand& demand, const std::vector<TrapSetting>& options,
                     const Limits& limits, const Chosen& order, std::size_t traps) {
    PlanDetail detail;
    for (std::size_t i = 0; i < traps; ++i) detail.plan.push_back(options[order[i]]);
    const Limits same_number{static_cast<int>(traps), limits.outlay, limits.hours};
    for (std::size_t i = 0; i < traps; ++i) {
        Placement without = detail.plan;
        without.erase(without.begin() + static_cast<std::ptrdiff_t>(i));
        Chosen others;
        for (std::size_t other = 0; other < traps; ++other) {
            if (other != i) others.push_back(order[other]);
        }
        // Places of the plan stay taken, this one counts as refused.
        const std::uint64_t refused = demand.options[order[i]].place;
        const auto next = best_elsewhere(demand, same_number, others, refused);
        Placement elsewhere = detail.plan;
        detail.next_spot.push_back(next ? options[*next].spot : scenario.spots.size());
        if (next) elsewhere[i] = options[*next];
        detail.without.push_back(std::move(without));
        detail.elsewhere.push_back(std::move(elsewhere));
    }
    return detail;
}

Trials report_trials(const Scenario& scenario, const std::vector<Placement>& curve, PlanDetail& detail,
                     std::size_t traps, std::uint32_t seasons, const ChoiceWeights& weights, const Effort& effort,
                     const Progress& progress) {
    std::vector<Placement> all = curve;
    all.insert(all.end(), detail.without.begin(), detail.without.end());
    all.insert(all.end(), detail.elsewhere.begin(), detail.elsewhere.end());
    const std::uint32_t of_curve = std::min(seasons, whole_blocks(std::max(least_part, seasons * curve_share)));
    const std::uint32_t of_all = std::min(of_curve, whole_blocks(std::max(least_part, seasons * detail_share)));
    Stages stages(progress, seasons);
    Trials report =
        run_trials(scenario, all, traps, first_report_season, of_all, effort, stages.stage(of_all), &weights);
    detail.outcomes.assign(report.outcomes.begin() + static_cast<std::ptrdiff_t>(curve.size()), report.outcomes.end());
    report.outcomes.resize(curve.size());
    if (of_all < of_curve) {
        join(report,
             run_trials(scenario, curve, traps, first_report_season + of_all, of_curve - of_all, effort,
                        stages.stage(of_curve - of_all), &weights),
             0);
    }
    if (of_curve < seasons) {
        join(report,
             run_trials(scenario, {curve[traps]}, 0, first_report_season + of_curve, seasons - of_curve, effort,
                        stages.stage(seasons - of_curve), &weights),
             traps);
    }
    return report;
}

std::vector<PlannedTrap> planned_traps(const Scenario& scenario, const PlanDetail& detail, const Trials& report) {
    std::vector<PlannedTrap> traps;
    const std::size_t n = detail.plan.size();
    for (std::size_t i = 0; i < n; ++i) {
        PlannedTrap trap;
        trap.setting = detail.plan[i];
        trap.rank = static_cast<int>(i) + 1;
        std::vector<double> own;
        for (const auto& season : report.followed) {
            own.push_back(static_cast<double>(
                std::count_if(season.begin(), season.end(), [i](const FollowedCatch& c) { return c.trap == i; })));
        }
        trap.catches = estimate_count(own);
        const auto loss = [&](const std::vector<Outcome>& changed, double (*of)(const Outcome&)) {
            std::vector<double> lost;
            for (std::size_t s = 0; s < changed.size(); ++s) {
                lost.push_back(of(report.outcomes[n][s]) - of(changed[s]));
            }
            return lengthened(lost, report.long_column(n, of));
        };
        trap.lost_without = loss(detail.outcomes[i], catches_in);
        trap.next_spot = detail.next_spot[i];
        trap.next_setting = detail.elsewhere[i][i];
        if (trap.next_spot < scenario.spots.size()) {
            trap.next_difference = loss(detail.outcomes[n + i], catches_in);
            trap.next_net_loss = loss(detail.outcomes[n + i], net_in);
        }
        traps.push_back(trap);
    }
    return traps;
}

std::vector<std::vector<std::size_t>> tied_spots(const std::vector<PlannedTrap>& traps, std::size_t spots) {
    std::vector<std::size_t> group(spots);
    std::iota(group.begin(), group.end(), std::size_t{0});
    for (const PlannedTrap& trap : traps) {
        if (trap.next_spot >= spots || std::abs(trap.next_net_loss.mean) > trap.next_net_loss.half_width_95) continue;
        const std::size_t from = group[trap.next_spot];
        const std::size_t to = group[trap.setting.spot];
        std::replace(group.begin(), group.end(), std::max(from, to), std::min(from, to));
    }
    std::vector<std::vector<std::size_t>> tied;
    for (std::size_t g = 0; g < spots; ++g) {
        std::vector<std::size_t> members;
        for (std::size_t s = 0; s < spots; ++s) {
            if (group[s] == g) members.push_back(s);
        }
        if (members.size() > 1) tied.push_back(std::move(members));
    }
    return tied;
}

}  // namespace maybough::planner
