// The search against exact optima by a general solver (GLPK), on our own written-out model and on a public instance.
#include "published/planner/solver.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace maybough;
using namespace maybough::planner;
using namespace maybough::test;

namespace {
/// Airports of the United States as sites and demand points: airports.csv of Debian's python3-vega-datasets (public
/// domain, Bureau of Transportation Statistics). Columns iata,name,city,state,country,latitude,longitude.
std::vector<std::pair<double, double>> airports(const std::string& state) {
    std::vector<std::pair<double, double>> at_km;
    std::ifstream file("/usr/lib/python3/dist-packages/vega_datasets/_data/airports.csv");
    for (std::string line; std::getline(file, line);) {
        // Names may hold commas; the last two fields never do.
        if (line.find("," + state + ",USA,") == std::string::npos) continue;
        const std::size_t last = line.rfind(',');
        const std::size_t before = line.rfind(',', last - 1);
        const double latitude_deg = std::stod(line.substr(before + 1, last - before - 1));
        const double longitude_deg = std::stod(line.substr(last + 1));
        constexpr double degree_km = 111.2;
        at_km.emplace_back(longitude_deg * degree_km * std::cos(latitude_deg * 3.14159265358979 / 180),
                           latitude_deg * degree_km);
    }
    return at_km;
}
}  // namespace

TEST_CASE("the written-out model solved by a general solver: the search finds every optimum") {
    double worst = 0;
    int found_it = 0;
    for (std::uint32_t number = 0; number < 8; ++number) {
        const Demand demand = random_demand(40 + number, 7, 30, 1.5 + 0.4 * number);
        const Limits limits{4, number % 2 == 0 ? 0.0 : 60.0, 0};
        const double optimum = solved("written-out", written_out(demand, limits)) - demand.fixed_cost;
        REQUIRE(std::isfinite(optimum));
        const Chosen exact = enumerate(demand, limits);
        CHECK(net_of(demand, exact) == doctest::Approx(std::max(0.0, optimum)).epsilon(1e-5));
        const Found found = search(demand, limits);
        const Chosen chosen(found.order.begin(), found.order.begin() + static_cast<std::ptrdiff_t>(found.best));
        // Net worth is a small difference of worth and cost, so what is missed is told in parts of the worth.
        const double missed = std::max(0.0, optimum) - net_of(demand, chosen);
        const double share = missed / (std::max(0.0, optimum) + spending(demand, exact).cost + demand.fixed_cost);
        MESSAGE("problem " << number << " misses " << share << ", optimum " << optimum);
        worst = std::max(worst, share);
        found_it += share < 1e-6 ? 1 : 0;
    }
    MESSAGE("most missed of the solver's optimum, in parts of its worth: " << worst);
    CHECK(found_it == 8);
    CHECK(worst < 1e-6);  // as closely as the solver's own figures go
}

TEST_CASE("maximal covering of ten points, solved by a general solver: 27, 47, 60, 60") {
    const std::vector<std::pair<double, double>> sites{{0, 0}, {3, 0}, {6, 0}, {0, 4}, {3, 4}, {6, 4}};
    const std::vector<CoveringPoint> points{{0, 1, 5}, {1, 3, 8},  {2, 1, 6}, {4, 1, 7}, {5, 0, 4},
                                            {6, 2, 9}, {3, 3, 10}, {1, 5, 3}, {5, 5, 6}, {7, 5, 2}};
    const Demand demand = covering(sites, points, 3);
    const double optimum[] = {27, 47, 60, 60};
    for (int p = 1; p <= 4; ++p) CHECK(solved("covering", covering_written_out(demand, p)) == optimum[p - 1]);
}

TEST_CASE("covering the airports of Pennsylvania: the search is within 1 % of the solver's optimum") {
    const auto at = airports("PA");
    REQUIRE(at.size() > 60);
    std::vector<CoveringPoint> points;
    for (const auto& [x, y] : at) points.push_back({x, y, 1});
    const Demand demand = covering(at, points, 40);
    for (const int sites : {3, 5, 8}) {
        const double optimum = solved("airports", covering_written_out(demand, sites));
        REQUIRE(optimum > 0);
        const Found found = search(demand, {sites, 0, 0}, sites);
        const double covered = net_of(demand, found.order);
        MESSAGE(sites << " sites cover " << covered << " of " << optimum);
        CHECK(covered <= optimum + 1e-3);
        CHECK(covered >= 0.99 * optimum);
    }
}
