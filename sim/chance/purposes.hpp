// The register of purposes: one name for each kind of decision that draws. No room draws on another room's purposes.
#pragma once

#include <cstdint>

namespace maybough::chance {

/// What a draw is for. Values are part of the key: append, never renumber.
enum class Purpose : std::uint8_t {
    // weather
    weather_generate = 1,
    weather_year_pick = 2,
    // landscape
    landscape_colonies = 10,
    landscape_cavities = 11,
    landscape_cavity_kind = 12,
    landscape_hives = 13,
    // colony
    colony_start = 20,
    colony_day = 21,
    colony_prepare = 22,
    colony_keeper = 23,
    colony_mating = 24,
    // swarm
    swarm_issue = 30,
    swarm_afterswarm = 31,
    swarm_hived = 32,
    // scouts
    scout_assess = 41,
    scout_event = 42,
    scout_swarm = 43,
    // keeper
    keeper_damage = 50,
    keeper_tenant = 51,
    keeper_visit = 52,
    // ensemble
    belief = 70,
    // planner
    planner_design = 80,
    planner_bootstrap = 81,
    // outlook
    learn_draw = 90,
    learn_predict = 91,
};

}  // namespace maybough::chance
