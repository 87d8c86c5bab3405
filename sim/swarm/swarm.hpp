// Swarm: a swarm leaves. Issue of prime swarms and afterswarms, the cluster and its reserves.
#pragma once

#include <cstdint>
#include <optional>

#include "colony/colony.hpp"
#include "parameters/swarm.hpp"

namespace maybough::swarm {

/// A swarm in the air, about to hang as a cluster near its parent.
struct Swarm {
    SwarmId id;
    ColonyId parent;
    Point at;  ///< where it hangs
    ColonyOrigin origin = ColonyOrigin::wild;
    Day day{0};
    double hour = 12;  ///< local solar time at which it hangs
    std::int64_t bees = 0;
    bool prime = true;
    double queen_age_days = 365;
    double honey_g = 0;  ///< carried
    double parent_volume_l = 40;
    bool operator==(const Swarm&) const = default;
};

/// Lets the colony cast a swarm today if it is prepared and an hour of the day is fit; takes its bees and honey out
/// of the colony. Numbers: prime 0, afterswarms 1, 2, ... A colony that casts_no_more never does.
std::optional<Swarm> issue_swarm(Colony& colony, const DayOfSky& sky, Day day, const SwarmParameters& parameters,
                                 const Chance& chance);

/// What happens to a cluster apart from its own choice: someone hives it, or not.
struct ClusterFate {
    bool hived_by_someone = false;
    double hived_after_h = 0;  ///< hours after it hung, daylight and night
    /// The hour after which its own choice no longer counts; never, where nobody hives it.
    double ends_h() const { return hived_by_someone ? hived_after_h : 1e9; }
};
ClusterFate cluster_fate(const Swarm& swarm, const SwarmParameters& parameters, const Chance& chance);

}  // namespace maybough::swarm

namespace maybough {
using namespace swarm;  // so that rooms to the right need no prefix
}
