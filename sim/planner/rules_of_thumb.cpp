// What keepers do without a simulation: placements by plain rules, as sides to compare with.
#include <algorithm>
#include <functional>
#include <limits>

#include "planner/options.hpp"

namespace maybough::planner {

namespace {
/// Seasons from which the rules' dates are read.
constexpr std::uint32_t calendar_seasons = 8;

Regime usual_regime(const Scenario& scenario, std::uint32_t seed) {
    std::vector<int> days;
    for (std::uint32_t s = first_tuning_season; s < first_tuning_season + calendar_seasons; ++s) {
        const Backdrop backdrop = raise_backdrop(scenario, draw_beliefs(scenario, seed, s), {seed, s});
        for (const Swarm& swarm : backdrop.swarms) {
            if (distance_m(swarm.at, {}) <= scenario.land.radius_m) days.push_back(swarm.day.value);
        }
    }
    return regime_for(scenario, days);
}

/// Distance from p to the segment a-b.
double distance_to_segment_m(Point p, Point a, Point b) {
    const double dx = b.x_m - a.x_m;
    const double dy = b.y_m - a.y_m;
    const double length2 = dx * dx + dy * dy;
    const double along = length2 > 0 ? ((p.x_m - a.x_m) * dx + (p.y_m - a.y_m) * dy) / length2 : 0;
    const double t = std::clamp(along, 0.0, 1.0);
    return distance_m(p, {a.x_m + t * dx, a.y_m + t * dy});
}

double distance_to_woodland_edge_m(const Land& land, Point p) {
    double nearest = std::numeric_limits<double>::infinity();
    for (const HabitatPatch& patch : land.patches) {
        if (patch.habitat != Habitat::woodland) continue;
        for (std::size_t i = 0; i < patch.ring.size(); ++i) {
            const Point& next = patch.ring[(i + 1) % patch.ring.size()];
            nearest = std::min(nearest, distance_to_segment_m(p, patch.ring[i], next));
        }
    }
    return nearest;
}

/// Usable spots, one a trap square, in order of place.
std::vector<std::size_t> usable_spots(const Scenario& scenario) {
    std::vector<std::size_t> usable;
    for (std::size_t i = 0; i < scenario.spots.size(); ++i) {
        if (!scenario.spots[i].never) usable.push_back(i);
    }
    const auto site = [&](std::size_t i) { return trap_site(scenario.spots[i].at); };
    std::stable_sort(usable.begin(), usable.end(), [&](std::size_t a, std::size_t b) { return site(a) < site(b); });
    usable.erase(
        std::unique(usable.begin(), usable.end(), [&](std::size_t a, std::size_t b) { return site(a) == site(b); }),
        usable.end());
    return usable;
}

using Score = std::function<double(const Spot&)>;

/// The spots with the lowest scores; ties by place.
std::vector<std::size_t> lowest(const Scenario& scenario, std::vector<std::size_t> spots, std::size_t n,
                                const Score& score) {
    std::stable_sort(spots.begin(), spots.end(),
                     [&](std::size_t a, std::size_t b) { return score(scenario.spots[a]) < score(scenario.spots[b]); });
    spots.resize(std::min(n, spots.size()));
    return spots;
}

/// From the spot nearest the centre on, always the spot farthest from all taken so far.
std::vector<std::size_t> spread_evenly(const Scenario& scenario, const std::vector<std::size_t>& spots, std::size_t n) {
    std::vector<std::size_t> taken =
        lowest(scenario, spots, std::min<std::size_t>(n, 1), [](const Spot& s) { return distance_m(s.at, {}); });
    while (taken.size() < std::min(n, spots.size())) {
        const auto gap_m = [&](const Spot& spot) {
            double nearest = std::numeric_limits<double>::infinity();
            for (const std::size_t t : taken) nearest = std::min(nearest, distance_m(scenario.spots[t].at, spot.at));
            return -nearest;
        };
        taken.push_back(lowest(scenario, spots, 1, gap_m).front());
    }
    return taken;
}
}  // namespace

std::vector<NamedPlacement> rules_of_thumb(const Scenario& scenario, int traps, std::size_t kind, std::uint32_t seed) {
    const std::vector<std::size_t> spots = usable_spots(scenario);
    const auto n = static_cast<std::size_t>(std::max(0, traps));
    const Regime regime = usual_regime(scenario, seed);
    const auto hang = [&](const std::vector<std::size_t>& at) {
        Placement placement;
        for (const std::size_t i : at) {
            const Spot& spot = scenario.spots[i];
            const double height_m =
                std::clamp(scenario.parameters.keeper.ladder_above_m, spot.min_height_m, spot.max_height_m);
            placement.push_back({i, kind, height_m, best_facing_deg(spot, scenario.kinds[kind], scenario), regime.hang,
                                 regime.take_down, regime.visit_every_days, regime.lured});
        }
        return placement;
    };
    std::vector<NamedPlacement> rules;
    if (!scenario.apiaries.empty()) {
        rules.push_back({"nearest the apiaries", hang(lowest(scenario, spots, n, [&](const Spot& spot) {
                             double nearest = std::numeric_limits<double>::infinity();
                             for (const Apiary& a : scenario.apiaries)
                                 nearest = std::min(nearest, distance_m(a.at, spot.at));
                             return nearest;
                         }))});
    }
    rules.push_back({"spread evenly", hang(spread_evenly(scenario, spots, n))});
    rules.push_back({"at random", hang(lowest(scenario, spots, n, [&](const Spot& spot) {
                         return Chance{seed, 0}.stream(Purpose::planner_design, trap_site(spot.at), {0}).uniform();
                     }))});
    rules.push_back(
        {"in plainest sight", hang(lowest(scenario, spots, n, [](const Spot& s) { return -s.visibility; }))});
    const bool woodland = std::any_of(scenario.land.patches.begin(), scenario.land.patches.end(),
                                      [](const HabitatPatch& p) { return p.habitat == Habitat::woodland; });
    if (woodland) {
        rules.push_back({"along the woodland's edge", hang(lowest(scenario, spots, n, [&](const Spot& spot) {
                             return distance_to_woodland_edge_m(scenario.land, spot.at);
                         }))});
    }
    return rules;
}

}  // namespace maybough::planner
