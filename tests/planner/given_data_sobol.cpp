// First-order shares from seasons in hand, on made-up seasons whose shares are known.
#include "planner/given_data_sobol.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "chance/chance.hpp"
#include "ensemble/ensemble.hpp"

using namespace maybough;
using namespace maybough::planner;

namespace {
constexpr std::size_t unknowns = 12;
constexpr int runs = 60;

/// Seasons with mean 2 a + 1.5 (b^2 - 1) + 5 and luck of sd 2, with a and b the first of twelve unknowns, each uniform
/// with variance 1. Variances: 4 and 2.25 * 0.8 = 1.8, so shares 0.6897 and 0.3103.
struct MadeUp {
    std::vector<std::vector<double>> columns{unknowns};
    std::vector<double> y;
};
MadeUp made_up(std::uint32_t run, std::size_t beliefs) {
    MadeUp made;
    Stream luck = Chance{41, run}.stream(Purpose::planner_bootstrap, 0U);
    for (std::size_t belief = 0; belief < beliefs; ++belief) {
        std::vector<double> drawn;
        for (std::size_t u = 0; u < unknowns; ++u) drawn.push_back(std::sqrt(3.0) * (2 * luck.uniform() - 1));
        const double mean = 5 + 2 * drawn[0] + 1.5 * (drawn[1] * drawn[1] - 1);
        for (std::size_t s = 0; s < seasons_per_belief; ++s) {
            for (std::size_t u = 0; u < unknowns; ++u) made.columns[u].push_back(drawn[u]);
            made.y.push_back(mean + 2 * standard_normal(luck));
        }
    }
    return made;
}
}  // namespace

TEST_CASE("shares of a line, a bow and idle unknowns, with errors that tell how far they stray") {
    const double truth[] = {0.6897, 0.3103, 0};
    double sum[3] = {};
    double squares[3] = {};
    double told[3] = {};
    for (std::uint32_t run = 0; run < runs; ++run) {
        const MadeUp made = made_up(run, 150);
        const std::vector<FirstOrder> shares = first_order_shares(made.columns, made.y);
        REQUIRE(shares.size() == unknowns);
        for (std::size_t u = 0; u < 3; ++u) {
            sum[u] += shares[u].share / runs;
            squares[u] += std::pow(shares[u].share - truth[u], 2) / runs;
            told[u] += std::pow(shares[u].se, 2) / runs;
        }
    }
    for (std::size_t u = 0; u < 3; ++u) {
        const double strays = std::sqrt(squares[u]);
        MESSAGE("share " << sum[u] << ", strays by " << strays << ", tells " << std::sqrt(told[u]));
        CHECK(std::abs(sum[u] - truth[u]) < 4 * strays / std::sqrt(runs));  // four standard errors of a mean of runs
        // A spread over 60 runs is known to 9 %; the jackknife errs on the wide side.
        CHECK(std::sqrt(told[u]) > 0.75 * strays);
        CHECK(std::sqrt(told[u]) < 2 * strays);
    }
}

TEST_CASE("too few beliefs, or none that differ, say nothing") {
    const MadeUp made = made_up(1, 12);
    CHECK(first_order_shares(made.columns, made.y).empty());
    const MadeUp more = made_up(2, 60);
    CHECK(first_order_shares(more.columns, std::vector<double>(more.y.size(), 3.0)).empty());
    CHECK(first_order_shares({}, {}).empty());
}
