// Small random and exact search problems for the planner's tests.
#pragma once

#include <cmath>
#include <cstdint>
#include <limits>
#include <vector>

#include "chance/chance.hpp"
#include "planner/search.hpp"

namespace maybough::test {

using namespace planner;

/// A random problem: hunts and options on a square, pulls falling with distance. `spread_worth` lets worths differ
/// between options of one hunt. Two kinds at each place.
inline Demand random_demand(std::uint32_t number, int places, int hunts, double strength, bool spread_worth = false) {
    Stream luck = Chance{17, number}.stream(Purpose::planner_design, 0U);
    std::vector<std::pair<double, double>> at;
    for (int h = 0; h < hunts; ++h) {
        const double x = luck.uniform();
        const double y = luck.uniform();
        at.emplace_back(x, y);
    }
    Demand demand;
    demand.seasons = 10;
    for (int h = 0; h < hunts; ++h) demand.rivals.push_back(1 + 4 * luck.uniform());
    demand.kinds = {{2, 20, 1, 0}, {1, 10, 0.5, 1}};
    demand.fixed_cost = 1;
    for (int p = 0; p < places; ++p) {
        const double x = luck.uniform();
        const double y = luck.uniform();
        for (std::size_t kind = 0; kind < 2; ++kind) {
            SearchOption option;
            option.place = 1000U + static_cast<std::uint64_t>(p);
            option.kind = kind;
            option.cost = 3 * luck.uniform();
            option.outlay = 5 * luck.uniform();
            option.hours = luck.uniform();
            const double quality = strength * (kind == 0 ? 1.0 : 0.6) * std::exp(luck.uniform());
            for (int h = 0; h < hunts; ++h) {
                const double away =
                    std::hypot(x - at[static_cast<std::size_t>(h)].first, y - at[static_cast<std::size_t>(h)].second);
                const double pull = quality * std::exp(-6 * away);
                const double worth = spread_worth ? 2 + 4 * luck.uniform() : 4;
                if (pull > 0.01 * strength) {
                    option.draws.push_back(
                        {static_cast<std::uint32_t>(h), static_cast<float>(pull), static_cast<float>(worth)});
                }
            }
            demand.options.push_back(option);
        }
    }
    return demand;
}

/// Maximal covering as a search problem: a site within reach takes all of a demand point, since its pull is beyond
/// measure against the rival's. Weights as whole numbers of hunts.
struct CoveringPoint {
    double x;
    double y;
    int weight;
};
inline Demand covering(const std::vector<std::pair<double, double>>& sites, const std::vector<CoveringPoint>& points,
                       double radius) {
    Demand demand;
    demand.seasons = 1;
    demand.kinds = {{0, 0, 0, 0}};
    demand.options.resize(sites.size());
    for (std::size_t s = 0; s < sites.size(); ++s) demand.options[s].place = s + 1;
    for (const CoveringPoint& point : points) {
        const auto hunt = static_cast<std::uint32_t>(demand.rivals.size());
        demand.rivals.push_back(1);
        for (std::size_t s = 0; s < sites.size(); ++s) {
            const double away2 = std::pow(sites[s].first - point.x, 2) + std::pow(sites[s].second - point.y, 2);
            if (away2 <= radius * radius) {
                demand.options[s].draws.push_back({hunt, 1e12F, static_cast<float>(point.weight)});
            }
        }
    }
    return demand;
}

/// Hunts in rounds of `length`.
inline Demand in_rounds(Demand demand, std::uint32_t length) {
    for (std::uint32_t h = 0; h < demand.rivals.size(); ++h) demand.rounds.push_back(h / length);
    return demand;
}

}  // namespace maybough::test
