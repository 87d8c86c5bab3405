// The search against all sets of at most four of 25 places, over 200 random problems.
#include <doctest/doctest.h>

#include <algorithm>

#include "planner/search.hpp"
#include "planner/toy_demand.hpp"

using namespace maybough;
using namespace maybough::test;

// From 0.5 to 3.2 times the pull at which a trap beside a swarm has even odds. Problems short of money take every
// third.
TEST_CASE("search over 25 places for up to four traps: 200 problems against all 15 276 sets of each") {
    constexpr std::uint32_t problems = 200;
    double mean = 0;
    double worst = 1;
    int exact = 0;
    for (std::uint32_t number = 0; number < problems; ++number) {
        Demand demand = random_demand(9000 + number, 25, 50, 0.5 + 0.3 * (number % 10));
        std::erase_if(demand.options, [](const SearchOption& option) { return option.kind == 1; });
        const Limits limits{4, number % 3 == 0 ? 70.0 : 0.0, 0};
        const double best = net_of(demand, enumerate(demand, limits));
        const Found found = search(demand, limits);
        const Chosen chosen(found.order.begin(), found.order.begin() + static_cast<std::ptrdiff_t>(found.best));
        REQUIRE(within(spending(demand, chosen), limits));
        const double net = net_of(demand, chosen);
        REQUIRE(net <= best + 1e-9);
        const double ratio = best > 1e-9 ? net / best : 1;
        mean += ratio / problems;
        worst = std::min(worst, ratio);
        exact += net >= best - 1e-9 ? 1 : 0;
    }
    MESSAGE("exact in " << exact << " of 200, mean " << mean << ", worst " << worst);
    CHECK(mean >= 0.999);
    CHECK(worst >= 0.98);
    CHECK(exact >= 180);
}
