// The search on published p-median instances: within 1 % of the published optimum.
// Source: J. E. Beasley 1985, "A note on solving large p-median problems", European Journal of Operational Research 21;
// instances and optima as in Beasley 1990, "OR-Library: distributing test problems by electronic mail".
#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>
#include <set>
#include <sstream>
#include <string>

#include "planner/toy_demand.hpp"

using namespace maybough;
using namespace maybough::planner;
using namespace maybough::test;

namespace {
struct Network {
    std::size_t medians = 0;
    std::vector<std::vector<int>> distance;  ///< shortest paths
};

Network network(const std::string& name) {
    std::ifstream file(std::string(MAYBOUGH_SOURCE_DIR) + "/tests/published/planner/" + name + ".txt");
    std::stringstream numbers;
    for (std::string line; std::getline(file, line);) {
        if (line.front() != '#') numbers << line << '\n';
    }
    std::size_t vertices = 0;
    std::size_t edges = 0;
    Network net;
    numbers >> vertices >> edges >> net.medians;
    constexpr int far = 1000000;
    net.distance.assign(vertices, std::vector<int>(vertices, far));
    for (std::size_t e = 0; e < edges; ++e) {
        std::size_t from = 0;
        std::size_t to = 0;
        int length = 0;
        numbers >> from >> to >> length;
        REQUIRE(static_cast<bool>(numbers));
        net.distance[from - 1][to - 1] = net.distance[to - 1][from - 1] = length;
    }
    auto& d = net.distance;
    for (std::size_t i = 0; i < vertices; ++i) d[i][i] = 0;
    for (std::size_t k = 0; k < vertices; ++k) {
        for (std::size_t i = 0; i < vertices; ++i) {
            for (std::size_t j = 0; j < vertices; ++j) d[i][j] = std::min(d[i][j], d[i][k] + d[k][j]);
        }
    }
    return net;
}

/// The p-median problem as weighted covering: for every customer and every distance at which a site lies, a hunt that
/// sites within that distance cover, worth the gap to the next distance. What is not covered is the cost.
Demand covering_by_levels(const Network& net) {
    const std::size_t vertices = net.distance.size();
    Demand demand;
    demand.kinds = {{0, 0, 0, 0}};
    demand.options.resize(vertices);
    for (std::size_t s = 0; s < vertices; ++s) demand.options[s].place = s + 1;
    for (const std::vector<int>& away : net.distance) {
        const std::set<int> levels(away.begin(), away.end());
        for (auto level = levels.begin(); std::next(level) != levels.end(); ++level) {
            const auto hunt = static_cast<std::uint32_t>(demand.rivals.size());
            const auto gap = static_cast<float>(*std::next(level) - *level);
            demand.rivals.push_back(1);
            for (std::size_t s = 0; s < vertices; ++s) {
                if (away[s] <= *level) demand.options[s].draws.push_back({hunt, 1e12F, gap});
            }
        }
    }
    return demand;
}

/// Every customer's way to the nearest of the chosen sites, summed.
int cost(const Network& net, const Chosen& chosen) {
    int sum = 0;
    for (const std::vector<int>& away : net.distance) {
        int nearest = away[chosen.front()];
        for (const std::size_t s : chosen) nearest = std::min(nearest, away[s]);
        sum += nearest;
    }
    return sum;
}

void check_within_one_percent(const std::string& name, int published) {
    const Network net = network(name);
    const Demand demand = covering_by_levels(net);
    const auto medians = static_cast<int>(net.medians);
    const Found found = search(demand, {medians, 0, 0}, medians);
    REQUIRE(found.order.size() == net.medians);
    const int reached = cost(net, found.order);
    MESSAGE(name << ": " << reached << ", published optimum " << published);
    CHECK(reached >= published);
    CHECK(reached <= 1.01 * published);
    // The covering problem is the same problem: what the sites leave uncovered is the cost.
    double all = 0;
    for (const std::vector<int>& away : net.distance) all += *std::max_element(away.begin(), away.end());
    CHECK(all - net_of(demand, found.order) == doctest::Approx(reached).epsilon(1e-6));
}
}  // namespace

TEST_CASE("p-median of 100 vertices, 5 medians: within 1 % of the published 5819") {
    check_within_one_percent("pmed1", 5819);
}

TEST_CASE("p-median of 100 vertices, 33 medians: within 1 % of the published 1355") {
    check_within_one_percent("pmed5", 1355);
}
