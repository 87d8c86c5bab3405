// First-order Sobol indices from data in hand against a closed form.
// Source: Ishigami and Homma 1990, "An importance quantification technique in uncertainty analysis for computer
// models". Indices in closed form worked out from it: 0.313905, 0.442411, 0.
#include "planner/given_data_sobol.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>

#include "chance/chance.hpp"
#include "ensemble/ensemble.hpp"

using namespace maybough;
using namespace maybough::planner;

TEST_CASE("Ishigami's function, a = 7, b = 0.1, by 4000 draws of four noisy seasons each") {
    std::vector<std::vector<double>> columns(3);
    std::vector<double> y;
    Stream luck = Chance{43, 0}.stream(Purpose::planner_bootstrap, 0U);
    for (int belief = 0; belief < 4000; ++belief) {
        double x[3];
        for (double& one : x) one = std::numbers::pi * (2 * luck.uniform() - 1);
        const double mean = std::sin(x[0]) + 7 * std::pow(std::sin(x[1]), 2) + 0.1 * std::pow(x[2], 4) * std::sin(x[0]);
        for (std::size_t s = 0; s < seasons_per_belief; ++s) {
            for (std::size_t u = 0; u < 3; ++u) columns[u].push_back(x[u]);
            y.push_back(mean + 3 * standard_normal(luck));
        }
    }
    const std::vector<FirstOrder> shares = first_order_shares(columns, y);
    REQUIRE(shares.size() == 3);
    const double truth[] = {0.313905, 0.442411, 0};
    for (std::size_t u = 0; u < 3; ++u) {
        MESSAGE("share " << shares[u].share << " +- " << shares[u].se << ", closed form " << truth[u]);
        CHECK(shares[u].se < 0.02);
        CHECK(std::abs(shares[u].share - truth[u]) < 3 * shares[u].se);
    }
}
