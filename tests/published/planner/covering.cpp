// Maximal covering: the search against optima that general solvers and enumeration agree on.
// Source: Church and ReVelle 1974, "The maximal covering location problem" (the model). The instance is our own; its
// optima were found by two branch-and-bound solvers and by enumeration, all agreeing.
#include <doctest/doctest.h>

#include <algorithm>

#include "planner/toy_demand.hpp"

using namespace maybough;
using namespace maybough::planner;
using namespace maybough::test;

namespace {
const std::vector<std::pair<double, double>> sites{{0, 0}, {3, 0}, {6, 0}, {0, 4}, {3, 4}, {6, 4}};
const std::vector<CoveringPoint> points{{0, 1, 5}, {1, 3, 8},  {2, 1, 6}, {4, 1, 7}, {5, 0, 4},
                                        {6, 2, 9}, {3, 3, 10}, {1, 5, 3}, {5, 5, 6}, {7, 5, 2}};
}  // namespace

TEST_CASE("maximal covering of ten points: optima 27, 47, 60, 60 for one to four sites") {
    const Demand demand = covering(sites, points, 3);
    const double optimum[] = {27, 47, 60, 60};
    for (int p = 1; p <= 4; ++p) {
        const Limits limits{p, 0, 0};
        CHECK(net_of(demand, enumerate(demand, limits, p)) == doctest::Approx(optimum[p - 1]).epsilon(1e-6));
        const Found found = search(demand, limits, p);
        CHECK(net_of(demand, found.order) == doctest::Approx(optimum[p - 1]).epsilon(1e-6));
        CHECK(upper_bound(demand, limits, p, found.order) >= optimum[p - 1] - 1e-6);
    }
}

TEST_CASE("greedy alone is beaten: from the second site 44, where exchanges reach 47 with the third and fifth") {
    const Demand demand = covering(sites, points, 3);
    const Limits two{2, 0, 0};
    const Chosen by_steps = greedy(demand, two, Judge::net, {1});  // sites 2 and 5 tie for the first step
    CHECK(net_of(demand, by_steps) == doctest::Approx(44).epsilon(1e-6));
    Chosen mended = exchange(demand, two, by_steps, Count::kept);
    std::sort(mended.begin(), mended.end());
    CHECK(mended == Chosen{2, 4});
    CHECK(net_of(demand, mended) == doctest::Approx(47).epsilon(1e-6));
}
