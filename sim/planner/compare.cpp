// Placements side by side on the same seasons.
#include <algorithm>

#include "planner/trials.hpp"

namespace maybough::planner {

std::vector<ComparedPlacement> compare_placements(const Scenario& scenario, const std::vector<NamedPlacement>& sides,
                                                  const Effort& effort, const Progress& progress) {
    std::vector<ComparedPlacement> result;
    if (sides.empty()) return result;
    std::vector<Placement> placements;
    for (const NamedPlacement& side : sides) placements.push_back(side.placement);
    const Trials trials = run_trials(scenario, placements, 0, first_compare_season,
                                     std::max<std::uint32_t>(1, effort.confirm_seasons), effort, progress);
    for (std::size_t p = 0; p < sides.size(); ++p) {
        ComparedPlacement side;
        side.name = sides[p].name;
        side.placement = sides[p].placement;
        side.catches = estimate_count(trials.column(p, catches_in));
        side.cost = estimate(trials.column(p, cost_in));
        side.net = estimate(trials.column(p, net_in));
        side.catches_less_first = estimate(trials.difference(p, 0, catches_in));
        const std::vector<double> net_less = trials.difference(p, 0, net_in);
        side.net_less_first = estimate(net_less);
        double better = 0;
        for (const double d : net_less) better += d > 0 ? 1 : d < 0 ? 0 : 0.5;
        side.odds_better_than_first = better / static_cast<double>(net_less.size());
        result.push_back(std::move(side));
    }
    return result;
}

}  // namespace maybough::planner
