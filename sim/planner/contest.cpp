// Sequential selection of the best design, on seasons that all designs share.
#include "planner/contest.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace maybough::planner {

namespace {
/// Beliefs between one look at the standings and the next.
constexpr std::uint32_t groups_a_look = 4;

double mean_of(const std::vector<double>& values) {
    return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

/// Variance of the difference of two designs over the first groups.
double spread(const std::vector<double>& a, const std::vector<double>& b, std::size_t n) {
    double mean = 0;
    for (std::size_t g = 0; g < n; ++g) mean += (a[g] - b[g]) / static_cast<double>(n);
    double squares = 0;
    for (std::size_t g = 0; g < n; ++g) squares += std::pow(a[g] - b[g] - mean, 2);
    return squares / static_cast<double>(n - 1);
}

/// True where the 95 % interval of every rival's difference to the winner lies within the indifference.
bool all_alike(const std::vector<std::vector<double>>& groups, const Contest& contest, double indifference) {
    return std::all_of(contest.left.begin(), contest.left.end(), [&](std::size_t i) {
        const std::size_t n = groups[i].size();
        const double difference = mean_of(groups[contest.winner]) - mean_of(groups[i]);
        const double error = std::sqrt(spread(groups[contest.winner], groups[i], n) / static_cast<double>(n));
        return difference + t_quantile_95(static_cast<double>(n) - 1) * error <= indifference;
    });
}

void live_on(Contest& contest, const Scenario& scenario, const std::vector<Placement>& designs, std::uint32_t count,
             const ChoiceWeights& weights, const Effort& effort, const Progress& progress, KeptReplicates* kept) {
    std::vector<Placement> left;
    for (const std::size_t i : contest.left) left.push_back(designs[i]);
    Trials trials =
        run_trials(scenario, left, 0, first_confirm_season + contest.seasons, count, effort, progress, &weights, kept);
    for (std::size_t p = 0; p < contest.left.size(); ++p) {
        std::vector<Outcome>& all = contest.outcomes[contest.left[p]];
        all.insert(all.end(), trials.outcomes[p].begin(), trials.outcomes[p].end());
    }
    for (SwarmCase one : trials.situations) {
        one.season += contest.seasons;
        contest.situations.push_back(one);
    }
    contest.seasons += count;
    contest.asked += trials.asked;
    contest.run += trials.run;
}
}  // namespace

std::vector<double> group_means(const std::vector<Outcome>& outcomes) {
    std::vector<double> means;
    for (std::size_t s = 0; s + seasons_per_belief <= outcomes.size(); s += seasons_per_belief) {
        double sum = 0;
        for (std::size_t i = s; i < s + seasons_per_belief; ++i) sum += outcomes[i].net();
        means.push_back(sum / seasons_per_belief);
    }
    return means;
}

std::vector<std::size_t> who_stays(const std::vector<std::vector<double>>& groups, const std::vector<std::size_t>& left,
                                   const ContestRules& rules) {
    const auto k = static_cast<double>(groups.size());
    const auto n0 = static_cast<double>(rules.first_groups);
    if (groups.size() < 2) return left;
    const double eta = 0.5 * (std::pow(2 * rules.odds_of_error / (k - 1), -2 / (n0 - 1)) - 1);
    const double h2 = 2 * eta * (n0 - 1);
    const double delta = rules.indifference;
    std::vector<std::size_t> stay;
    for (const std::size_t i : left) {
        const auto r = static_cast<double>(groups[i].size());
        const bool beaten = std::any_of(left.begin(), left.end(), [&](std::size_t other) {
            if (other == i) return false;
            const double s2 = spread(groups[i], groups[other], rules.first_groups);
            const double margin = std::max(0.0, delta / (2 * r) * (h2 * s2 / (delta * delta) - r));
            return mean_of(groups[i]) < mean_of(groups[other]) - margin;
        });
        if (!beaten) stay.push_back(i);
    }
    return stay;
}

Contest hold_contest(const Scenario& scenario, const std::vector<Placement>& designs, const ContestRules& rules,
                     Prize prize, const ChoiceWeights& weights, const Effort& effort, const Progress& progress,
                     KeptReplicates* kept) {
    Contest contest;
    contest.outcomes.resize(designs.size());
    contest.left.resize(designs.size());
    std::iota(contest.left.begin(), contest.left.end(), std::size_t{0});
    Stages stages(progress, rules.most_groups * seasons_per_belief);
    std::uint32_t groups = 0;
    while (groups < rules.most_groups) {
        const std::uint32_t more = groups == 0 ? std::min(rules.first_groups, rules.most_groups)
                                               : std::min(groups_a_look, rules.most_groups - groups);
        const std::uint32_t seasons = more * seasons_per_belief;
        live_on(contest, scenario, designs, seasons, weights, effort, stages.stage(seasons), kept);
        groups += more;
        if (prize == Prize::none) continue;
        std::vector<std::vector<double>> means;
        for (const auto& outcomes : contest.outcomes) means.push_back(group_means(outcomes));
        contest.left = who_stays(means, contest.left, rules);
        contest.winner = *std::max_element(contest.left.begin(), contest.left.end(), [&](std::size_t a, std::size_t b) {
            return mean_of(means[a]) < mean_of(means[b]);
        });
        if (contest.left.size() == 1) {
            contest.end = ContestEnd::one_left;
            break;
        }
        if (all_alike(means, contest, rules.indifference)) {
            contest.end = ContestEnd::all_alike;
            break;
        }
    }
    return contest;
}

}  // namespace maybough::planner
