// A published agent model rebuilt rule by rule: independence and interdependence of List, Elsholtz and Seeley 2009.
// 200 bees, five sites of quality 3, 5, 7, 9, 10, own discovery 0.05 each, 300 periods, all resting at first, dances
// rounded up. Judged against an independent rebuild and its mean field: the paper's printed tables were not at hand.
#include <array>

#include "experiments/scouts_setup.hpp"

namespace maybough::experiments {

namespace {

using namespace scout_trials;

constexpr std::size_t sites = 5;
constexpr std::array<double, sites> quality{3, 5, 7, 9, 10};
constexpr int bees = 200;
constexpr double own_discovery = 0.05;

struct Rule {
    double interdependence;  ///< lambda of the paper
    double unreliability;    ///< sigma
    double assessment;       ///< mu: 1 own assessment, 0 mimicry
};

struct Outcome {
    double runs = 0;
    std::array<double, sites> mean{};       ///< dancers at the end
    std::array<double, sites> square{};     ///< mean of their square
    std::array<double, sites> plurality{};  ///< share of runs in which the site led alone
    double strong = 0;                      ///< share in which the best had 80 % of the dancers
    double error(std::size_t site) const { return std::sqrt((square[site] - mean[site] * mean[site]) / runs); }
};

using Counts = std::array<int, sites>;

/// One period: who dances on, who draws a site or rests.
Counts one_period(const Rule& rule, std::vector<std::pair<int, int>>& colony, const Counts& dancers, Stream& stream) {
    std::array<double, sites> draw_below{};
    double sum = 0;
    for (std::size_t j = 0; j < sites; ++j) {
        sum += (1 - rule.interdependence) * own_discovery + rule.interdependence * dancers[j] / bees;
        draw_below[j] = sum;
    }
    Counts next{};
    for (auto& [site, left] : colony) {
        if (left > 1) {
            --left;
        } else {
            const double u = stream.uniform();
            site = -1;
            left = 0;
            for (std::size_t j = 0; j < sites && site < 0; ++j) {
                if (u < draw_below[j]) site = static_cast<int>(j);
            }
            if (site < 0) continue;
            const double q = std::pow(quality[static_cast<std::size_t>(site)], rule.assessment) *
                             std::pow(10.0, 1 - rule.assessment);
            left = static_cast<int>(std::ceil(q * std::exp(rule.unreliability * standard_normal(stream))));
        }
        ++next[static_cast<std::size_t>(site)];
    }
    return next;
}

Outcome outcome_of(const Rule& rule, int runs, std::uint32_t seed) {
    Outcome outcome;
    outcome.runs = runs;
    for (int k = 0; k < runs; ++k) {
        Stream stream = Chance{seed, static_cast<std::uint32_t>(k)}.stream(Purpose::scout_event, 0U);
        std::vector<std::pair<int, int>> colony(bees, {-1, 0});  // site danced for, periods left
        Counts dancers{};
        for (int period = 0; period < 300; ++period) dancers = one_period(rule, colony, dancers, stream);
        int total = 0;
        for (std::size_t j = 0; j < sites; ++j) {
            total += dancers[j];
            outcome.mean[j] += static_cast<double>(dancers[j]) / runs;
            outcome.square[j] += static_cast<double>(dancers[j]) * dancers[j] / runs;
            bool leads = true;
            for (std::size_t i = 0; i < sites; ++i) leads = leads && (i == j || dancers[j] > dancers[i]);
            outcome.plurality[j] += leads ? 1.0 / runs : 0;
        }
        outcome.strong += 5 * dancers[4] >= 4 * total ? 1.0 / runs : 0;
    }
    return outcome;
}

const char* const list =
    "List, Elsholtz and Seeley 2009, Independence and interdependence in collective decision making: an agent-based "
    "model of nest-site choice by honeybee swarms; numbers of an independent rebuild";

Finding rebuilt(std::string what, std::string published, double simulated, double se, double low, double high,
                std::string why) {
    return {std::move(what), "",   std::move(published), simulated, se, low, high,
            std::move(why),  list, Footing::independent, ""};
}

std::vector<Finding> interdependence(const Parameters&, std::uint32_t seed) {
    const Outcome both = outcome_of({0.8, 0.2, 1}, 300, seed);
    const Outcome noisy = outcome_of({0.8, 1, 1}, 200, seed);
    const Outcome alone = outcome_of({0, 0.2, 1}, 200, seed);
    const Outcome mimics = outcome_of({0.8, 0.2, 0}, 300, seed);
    const double strong_se = share_error(0.72, both.runs);
    const std::string four = "four standard errors of the runs";
    std::vector<Finding> findings{
        rebuilt("dancers of 200 for the best site, much interdependence and own judgement, mean", "163.1", both.mean[4],
                both.error(4), 158, 168, "five bees either side: 3 standard errors and the rounding"),
        rebuilt("the same: best site strictly ahead, share of runs", "0.999", both.plurality[4],
                share_error(0.99, both.runs), 0.98, 1, "at most two runs in a hundred fewer"),
        rebuilt("the same: four in five dancers for the best, share of runs", "0.72", both.strong, strong_se,
                0.72 - 4 * strong_se, 0.72 + 4 * strong_se, four),
        rebuilt("the same with unreliable judgement: dancers for the best site, mean", "139.6", noisy.mean[4],
                noisy.error(4), 130.6, 148.6, "four standard errors of 29 / sqrt(200) and the rounding"),
        rebuilt("the same with unreliable judgement: best site strictly ahead, share of runs", "0.93",
                noisy.plurality[4], share_error(0.93, noisy.runs), 0.86, 1, four),
        rebuilt("the same with unreliable judgement: four in five for the best, share of runs", "0.30", noisy.strong,
                share_error(0.3, noisy.runs), 0.17, 0.43, four),
        rebuilt("no interdependence: four in five for the best, share of runs", "0", alone.strong, 0, 0, 0.01,
                "less than one run in a hundred")};
    constexpr std::array<double, sites> expected{13.7, 21.3, 29.4, 36.9, 41.0};
    constexpr std::array<const char*, sites> published{"13.7", "21.3", "29.4", "36.9", "41.0"};
    for (std::size_t j = 0; j < sites; ++j) {
        findings.push_back(rebuilt(
            "no interdependence: dancers for the site of quality " + std::to_string(std::lround(quality[j])) + ", mean",
            published[j], alone.mean[j], alone.error(j), expected[j] - 1.6, expected[j] + 1.6,
            "four standard errors of 5.5 / sqrt(200)"));
        findings.push_back(rebuilt("no judgement of one's own: site of quality " +
                                       std::to_string(std::lround(quality[j])) + " strictly ahead, share of runs",
                                   "about 0.2", mimics.plurality[j], share_error(0.2, mimics.runs), 0.11, 0.29,
                                   "four standard errors, ties taken off"));
    }
    return findings;
}

}  // namespace

std::vector<Experiment> dance_rule_models() {
    return {{"interdependence", "scouts", "the published rules of List, Elsholtz and Seeley rebuilt", interdependence}};
}

}  // namespace maybough::experiments
