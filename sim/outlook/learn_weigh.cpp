// Draws of the unknowns weighed by a log: likelihood of its counts, weights kept from degenerating, odds of a catch.
#include <algorithm>
#include <boost/math/distributions/gamma.hpp>
#include <cmath>
#include <numeric>

#include "outlook/learn.hpp"

namespace maybough::outlook {

namespace {
constexpr int likelihood_nodes = 20;
constexpr double furthest_score = 2.5;  // as belief_quantile cuts its tails

/// ln of the negative binomial chance of `count` about `mean` with gamma luck of `variance`; Poisson without any.
double log_count_chance(double count, double mean, double variance) {
    if (!(mean > 0)) return count > 0 ? -1e300 : 0;
    if (!(variance > 1e-9)) return count * std::log(mean) - mean - std::lgamma(count + 1);
    const double size = 1 / variance;
    return std::lgamma(size + count) - std::lgamma(size) - std::lgamma(count + 1) - size * std::log1p(mean * variance) +
           count * std::log(mean / (size + mean));
}

/// ln of the mean of exp over `terms`.
double log_mean_exp(const std::vector<double>& terms) {
    const double most = *std::max_element(terms.begin(), terms.end());
    double sum = 0;
    for (const double term : terms) sum += std::exp(term - most);
    return most + std::log(sum / static_cast<double>(terms.size()));
}

std::vector<double> powered(const std::vector<double>& log_likelihoods, double power) {
    const double most = *std::max_element(log_likelihoods.begin(), log_likelihoods.end());
    std::vector<double> weights;
    double sum = 0;
    for (const double value : log_likelihoods) {
        weights.push_back(std::exp(power * (value - most)));
        sum += weights.back();
    }
    for (double& weight : weights) weight /= sum;
    return weights;
}

double effective_number(const std::vector<double>& weights) {
    double squares = 0;
    for (const double weight : weights) squares += weight * weight;
    return 1 / squares;
}
}  // namespace

std::vector<Unknown> unknowns_of(const Scenario& scenario) {
    std::vector<Unknown> unknowns;
    for (const ParameterEntry& entry : parameter_table()) {
        Belief own;
        const Belief* belief = drawn_belief(scenario, entry, own);
        if (belief != nullptr && belief->low < belief->high) unknowns.push_back({&entry, *belief});
    }
    return unknowns;
}

double score_of(const ParameterRow& row, const Belief& belief, double value) {
    constexpr double z_95 = 1.6448536269514722;
    const bool below = value < belief.median;
    const double end = below ? belief.low : belief.high;
    if (end == belief.median) return 0;
    const double way = row.spread == Spread::ratio ? std::log(value / belief.median) / std::log(end / belief.median)
                                                   : (value - belief.median) / (end - belief.median);
    return std::clamp((below ? -1 : 1) * way * z_95, -furthest_score, furthest_score);
}

std::vector<std::vector<double>> prior_draws(const std::vector<Unknown>& unknowns, std::uint32_t seed,
                                             std::uint32_t draws) {
    std::vector<std::vector<double>> scores(draws);
    for (std::uint32_t draw = 0; draw < draws; ++draw) {
        for (const Unknown& unknown : unknowns) {
            Stream stream =
                Chance{seed, draw}.stream(Purpose::learn_draw, belief_entity(unknown.entry->row.key), Day{-1});
            scores[draw].push_back(std::clamp(standard_normal(stream), -furthest_score, furthest_score));
        }
    }
    return scores;
}

std::vector<double> luck_nodes(double variance, int nodes) {
    if (!(variance > 1e-9)) return {1};
    const boost::math::gamma_distribution<> law(1 / variance, variance);
    std::vector<double> values;
    for (int i = 0; i < nodes; ++i) values.push_back(boost::math::quantile(law, (i + 0.5) / nodes));
    // Middles of classes lose a little of the tail: scaled back to mean 1.
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) / nodes;
    for (double& value : values) value /= mean;
    return values;
}

double log_likelihood(const CatchLaw& law, const std::vector<double>& scores, const std::vector<int>& counts,
                      std::size_t seasons) {
    const std::vector<double> mean = law.expected(scores);
    std::vector<double> place_mean(law.places, 0);
    std::vector<double> place_count(law.places, 0);
    double split = 0;  // how a place's swarms fall on its years
    for (std::size_t c = 0; c < mean.size(); ++c) {
        if (law.cells[c].season >= seasons) continue;
        place_mean[law.cells[c].place] += mean[c];
        place_count[law.cells[c].place] += counts[c];
        split += counts[c] * std::log(mean[c]);
    }
    for (std::size_t place = 0; place < law.places; ++place) {
        if (place_count[place] > 0) split -= place_count[place] * std::log(place_mean[place]);
    }
    thread_local double nodes_of = -1;
    thread_local std::vector<double> nodes;
    if (nodes_of != law.area_variance) {
        nodes_of = law.area_variance;
        nodes = luck_nodes(law.area_variance, likelihood_nodes);
    }
    std::vector<double> terms;
    for (const double luck : nodes) {
        double sum = 0;
        for (std::size_t place = 0; place < law.places; ++place) {
            sum += log_count_chance(place_count[place], luck * place_mean[place], law.place_variance);
        }
        terms.push_back(sum);
    }
    return split + log_mean_exp(terms);
}

Weights weigh(const std::vector<double>& log_likelihoods, const OutlookParameters& parameters) {
    Weights weights;
    weights.of_draw = powered(log_likelihoods, 1);
    weights.effective = effective_number(weights.of_draw);
    const double least = std::min(parameters.least_effective_draws, 0.5 * static_cast<double>(log_likelihoods.size()));
    if (weights.effective >= least) return weights;
    // Fewer draws carry a likelihood the sharper it is: halve the stretch until just enough do.
    double low = 0;
    double high = 1;
    constexpr int halvings = 40;
    for (int i = 0; i < halvings; ++i) {
        const double middle = (low + high) / 2;
        (effective_number(powered(log_likelihoods, middle)) >= least ? low : high) = middle;
    }
    weights.power = low;
    weights.outcome = LearnOutcome::weakened;
    if (low < parameters.least_power) {
        weights.outcome = LearnOutcome::refused;
        weights.power = 0;
    }
    const double untempered = weights.effective;
    weights.of_draw = powered(log_likelihoods, weights.power);
    weights.effective = untempered;
    return weights;
}

double weighted_quantile(const std::vector<double>& values, const std::vector<double>& weights, double p) {
    std::vector<std::size_t> order(values.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(),
              [&](std::size_t a, std::size_t b) { return std::pair(values[a], a) < std::pair(values[b], b); });
    double sum = 0;
    for (const std::size_t i : order) {
        sum += weights[i];
        if (sum >= p) return values[i];
    }
    return values[order.back()];
}

CatchOdds catch_odds(const CatchLaw& law, const std::vector<std::vector<double>>& draws,
                     const std::vector<double>& weights, std::size_t season) {
    const std::vector<double> nodes = luck_nodes(law.area_variance, likelihood_nodes);
    CatchOdds odds;
    std::vector<double> totals;
    double one = 0;
    for (std::size_t draw = 0; draw < draws.size(); ++draw) {
        const std::vector<double> mean = law.expected(draws[draw]);
        double total = 0;
        for (std::size_t c = 0; c < mean.size(); ++c) total += law.cells[c].season == season ? mean[c] : 0;
        totals.push_back(total);
        odds.mean += weights[draw] * total;
        for (const double luck : nodes) {
            double log_none = 0;
            double ways_to_one = 0;
            for (std::size_t c = 0; c < mean.size(); ++c) {
                if (law.cells[c].season != season) continue;
                log_none += log_count_chance(0, luck * mean[c], law.place_variance);
                ways_to_one += luck * mean[c] / (1 + law.place_variance * luck * mean[c]);
            }
            const double share = weights[draw] / static_cast<double>(nodes.size());
            odds.odds_none += share * std::exp(log_none);
            one += share * std::exp(log_none) * ways_to_one;
        }
    }
    odds.mean_low = weighted_quantile(totals, weights, 0.1);
    odds.mean_high = weighted_quantile(totals, weights, 0.9);
    odds.odds_at_least_2 = std::max(0.0, 1 - odds.odds_none - one);
    return odds;
}

}  // namespace maybough::outlook
