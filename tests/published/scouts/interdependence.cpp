// Independence and interdependence: List, Elsholtz and Seeley 2009, "Independence and interdependence in collective
// decision making: an agent-based model of nest-site choice by honeybee swarms". The published rules rebuilt: 200 bees,
// five sites of quality 3, 5, 7, 9, 10, own discovery 0.05 each, 300 periods, all resting at first, dances rounded up.
// The numbers are those of an independent rebuild and its mean field; the printed tables of the paper were not at hand.
#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <vector>

#include "chance/chance.hpp"

namespace {

using namespace maybough;

constexpr std::size_t sites = 5;
constexpr std::array<double, sites> quality{3, 5, 7, 9, 10};
constexpr int bees = 200;

struct Rule {
    double interdependence;  // lambda
    double unreliability;    // sigma
    double assessment;       // mu: 1 own assessment, 0 mimicry
};

struct Outcome {
    std::array<double, sites> mean{};       // dancers at the end
    std::array<double, sites> plurality{};  // share of runs in which the site led alone
    double strong = 0;                      // share in which the best had 80 % of the dancers
};

std::array<int, sites> run(const Rule& rule, Stream stream) {
    std::vector<std::pair<int, int>> colony(bees, {-1, 0});  // site danced for, periods left
    std::array<int, sites> dancers{};
    for (int period = 0; period < 300; ++period) {
        std::array<double, sites> draw_below{};
        double sum = 0;
        for (std::size_t j = 0; j < sites; ++j) {
            sum += (1 - rule.interdependence) * 0.05 + rule.interdependence * dancers[j] / bees;
            draw_below[j] = sum;
        }
        for (auto& [site, left] : colony) {
            if (left > 1) {
                --left;
                continue;
            }
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
        dancers = {};
        for (const auto& [site, left] : colony) {
            if (site >= 0) ++dancers[static_cast<std::size_t>(site)];
        }
    }
    return dancers;
}

Outcome outcome_of(const Rule& rule, int runs) {
    Outcome outcome;
    for (int k = 0; k < runs; ++k) {
        const auto dancers = run(rule, Chance{2009, static_cast<std::uint32_t>(k)}.stream(Purpose::scout_event, 0U));
        int total = 0;
        for (std::size_t j = 0; j < sites; ++j) {
            total += dancers[j];
            outcome.mean[j] += static_cast<double>(dancers[j]) / runs;
            bool leads = true;
            for (std::size_t i = 0; i < sites; ++i) leads = leads && (i == j || dancers[j] > dancers[i]);
            outcome.plurality[j] += leads ? 1.0 / runs : 0;
        }
        outcome.strong += 5 * dancers[4] >= 4 * total ? 1.0 / runs : 0;
    }
    return outcome;
}

}  // namespace

TEST_CASE("List 2009: much interdependence and own assessment bring consensus on the best site") {
    const Outcome outcome = outcome_of({0.8, 0.2, 1}, 400);
    CHECK(std::abs(outcome.mean[4] - 163.1) < 5);
    CHECK(std::abs(outcome.mean[3] - 23.0) < 5);
    CHECK(outcome.plurality[4] > 0.98);
    CHECK(outcome.strong > 0.64);
    CHECK(outcome.strong < 0.80);
}

TEST_CASE("List 2009: noise in assessment costs more strength than direction") {
    const Outcome outcome = outcome_of({0.8, 1, 1}, 250);
    CHECK(std::abs(outcome.mean[4] - 139.6) < 9);  // sd 29 / sqrt(250), z = 4, and the rounding of the table
    CHECK(outcome.plurality[4] > 0.86);
    CHECK(outcome.strong < 0.45);
}

TEST_CASE("List 2009: without interdependence there is no consensus") {
    const Outcome outcome = outcome_of({0, 0.2, 1}, 250);
    const std::array<double, sites> expected{13.7, 21.3, 29.4, 36.9, 41.0};
    for (std::size_t j = 0; j < sites; ++j) CHECK(std::abs(outcome.mean[j] - expected[j]) < 1.5);  // z = 4 of sd 5.5
    CHECK(outcome.strong < 0.01);
}

TEST_CASE("List 2009: without own assessment the swarm settles on a chance site") {
    const Outcome outcome = outcome_of({0.8, 0.2, 0}, 400);
    for (const double share : outcome.plurality) {
        CHECK(share > 0.12);
        CHECK(share < 0.28);  // 20 %, z = 4 of sqrt(.2 * .8 / 400), ties taken off
    }
    CHECK(outcome.strong < 0.01);
}
