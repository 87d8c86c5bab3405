// The demo area cut down to its middle, for tests that need whole plans in seconds.
#pragma once

#include <algorithm>

#include "planner/planner.hpp"

namespace maybough::test {

/// The eight spots nearest the centre, and the land about them.
inline Scenario small_scenario() {
    Scenario scenario = read_scenario(MAYBOUGH_SOURCE_DIR "/scenarios/brindle-ferry");
    constexpr double radius_m = 700;
    constexpr std::size_t most_spots = 8;
    scenario.land.radius_m = radius_m;
    std::stable_sort(scenario.spots.begin(), scenario.spots.end(),
                     [](const Spot& a, const Spot& b) { return distance_m(a.at, {}) < distance_m(b.at, {}); });
    scenario.spots.resize(std::min(most_spots, scenario.spots.size()));
    for (Spot& spot : scenario.spots) spot.must = spot.never = false;
    scenario.placement.clear();
    scenario.keeper.budget = 0;
    scenario.keeper.base_km = 1;
    scenario.keeper.swarm_value = 150;  // so that several traps pay
    return scenario;
}

/// A lured trap of the last kind at a spot, as high as the spot allows, through the season of swarms.
inline TrapSetting trap_at(const Scenario& scenario, std::size_t spot) {
    TrapSetting setting;
    setting.spot = spot;
    setting.kind = scenario.kinds.size() - 1;
    setting.height_m = scenario.spots[spot].max_height_m;
    setting.hang = {95};
    setting.take_down = {230};
    return setting;
}

inline Effort small_effort(std::uint32_t seed) {
    Effort effort;
    effort.seed = seed;
    effort.threads = machine_threads();
    effort.record_seasons = 16;
    effort.confirm_seasons = 32;
    return effort;
}

}  // namespace maybough::test
