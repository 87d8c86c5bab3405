// Chooses among designs by the full model: which to try, the contest, the surrogate's level, how many traps are best.
#include <algorithm>
#include <map>
#include <numeric>
#include <set>

#include "planner/build_order.hpp"
#include "planner/contest.hpp"
#include "planner/work.hpp"

namespace maybough::planner {

Placement placement_of(const Work& work, const Chosen& chosen) {
    Placement placement;
    for (const std::size_t j : chosen) placement.push_back(work.options[j]);
    return placement;
}

Chosen first_of(const Chosen& order, std::size_t traps) {
    return {order.begin(), order.begin() + static_cast<std::ptrdiff_t>(traps)};
}

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

namespace {
/// Designs count as alike within this share of an early swarm's worth.
constexpr double indifferent_share = 0.1;
/// Replicates that one contest keeps for the next; some 150 MB.
constexpr std::uint32_t most_kept = 320;
/// The order of traps is settled on the contests' seasons and as many more as make this multiple of them: two traps of
/// nearly the same worth are told apart by pairs of seasons, and most of their hunts are known.
constexpr double order_share = 2.5;
/// Contests after the first, in which each trap of the design taken may go to its next best place.
constexpr int exchange_rounds = 2;

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

/// The design with one of its traps at its next best place, once for each trap.
std::vector<Chosen> one_elsewhere(const Work& work, const Chosen& design) {
    const Limits same{static_cast<int>(design.size()), work.limits.outlay, work.limits.hours};
    std::vector<Chosen> changed;
    for (const std::size_t moved : design) {
        Chosen others = design;
        std::erase(others, moved);
        const auto next = best_elsewhere(work.demand, same, others, work.demand.options[moved].place);
        if (!next) continue;
        others.push_back(*next);
        if (uses_must_places(work, others)) changed.push_back(std::move(others));
    }
    return changed;
}

Chosen sorted(Chosen design) {
    std::sort(design.begin(), design.end());
    return design;
}

/// Designs worth trying in full: the curve's, and the best of about as many traps.
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
    std::vector<Chosen> designs;
    std::set<Chosen> known;
    for (Chosen& design : wanted) {
        const bool fits = uses_must_places(work, design) && (work.question.exactly <= 0 || design.size() == best);
        if (fits && known.insert(sorted(design)).second) designs.push_back(std::move(design));
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
/// What one plan's contests share: their rules, and every design tried so far by its sorted options.
struct Contests {
    ContestRules rules;
    Prize prize = Prize::net;
    std::map<Chosen, TriedDesign> tried;
    std::uint32_t seasons = 0;  ///< of the last one
    KeptReplicates kept{first_confirm_season, most_kept};
};

/// Lives one contest through; the design it takes.
Chosen contest_between(const Work& work, Plan& plan, const std::vector<Chosen>& designs, Contests& contests,
                       const Progress& progress) {
    std::vector<Placement> placements;
    for (const Chosen& design : designs) placements.push_back(placement_of(work, design));
    const Contest contest = hold_contest(work.scenario, placements, contests.rules, contests.prize, work.weights,
                                         work.effort, progress, &contests.kept);
    plan.hunts_asked += contest.asked;
    plan.hunts_run += contest.run;
    plan.contest_end = contest.end;
    contests.seasons = contest.seasons;
    for (std::size_t i = 0; i < designs.size(); ++i) {
        contests.tried.insert_or_assign(sorted(designs[i]), tried_design(work, designs[i], contest, i));
    }
    const std::size_t winner =
        contests.prize == Prize::none ? fewest_for_odds(contest.outcomes, designs, work.question) : contest.winner;
    plan.hunts_exhaustive = exhaustive_hunts(work, designs[winner].size(), contest);
    return designs[winner];
}

/// The design taken in the order in which to build it by the full model, on the contests' seasons; what follows it is
/// the surrogate's.
Chosen as_best_built(const Work& work, Plan& plan, const Chosen& taken, Contests& contests) {
    const std::uint32_t seasons = std::min(most_kept, whole_blocks(contests.seasons * order_share));
    const NetsOf nets_of = [&](const std::vector<Chosen>& sets) {
        std::vector<Placement> placements;
        for (const Chosen& set : sets) placements.push_back(placement_of(work, set));
        const Trials trials = run_trials(work.scenario, placements, 0, first_confirm_season, seasons, work.effort, {},
                                         nullptr, &contests.kept);
        plan.hunts_asked += trials.asked;
        plan.hunts_run += trials.run;
        std::vector<double> nets;
        for (std::size_t p = 0; p < sets.size(); ++p) nets.push_back(estimate(trials.column(p, net_in)).mean);
        return nets;
    };
    const std::vector<SearchOption>& options = work.demand.options;
    const Chosen order = build_order(
        taken, nets_of, [&](std::size_t j) { return options[j].must; },
        [&](std::size_t a, std::size_t b) { return options[a].place < options[b].place; });
    return greedy(work.demand, work.limits, Judge::net, order);
}
}  // namespace

void choose(Work& work, Plan& plan, std::uint32_t seasons, const Progress& progress) {
    Contests contests;
    contests.rules.indifference = indifferent_share * work.scenario.keeper.swarm_value;
    contests.rules.most_groups = seasons / seasons_per_belief;
    contests.rules.first_groups = std::min(contests.rules.first_groups, contests.rules.most_groups);
    const bool for_odds = work.question.at_least_swarms > 0 && work.question.exactly <= 0;
    contests.prize = for_odds ? Prize::none : Prize::net;
    plan.indifference = contests.rules.indifference;
    Chosen taken = contest_between(work, plan, designs_of(work), contests, progress);
    for (int round = 0; round < exchange_rounds && !for_odds; ++round) {
        std::vector<Chosen> designs = one_elsewhere(work, taken);
        if (designs.empty()) break;
        designs.insert(designs.begin(), taken);
        const Chosen better = contest_between(work, plan, designs, contests, progress);
        if (better == taken) break;
        taken = better;
    }
    plan.tried.push_back(contests.tried.at(sorted(taken)));
    for (auto& [design, tried] : contests.tried) {
        if (design != sorted(taken) && !design.empty()) plan.tried.push_back(std::move(tried));
    }
    calibrate(work, plan);
    plan.recommended = static_cast<int>(taken.size());
    work.found.order = as_best_built(work, plan, taken, contests);
    work.found.best = taken.size();
}

}  // namespace maybough::planner
