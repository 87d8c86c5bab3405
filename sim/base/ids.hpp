// Stable ids of colonies, swarms and sites: they never depend on the placement of traps or on the order in a file.
#pragma once

#include <compare>
#include <cstdint>
#include <functional>

namespace maybough::base {

/// A 32-bit id that does not mix with ids of another kind.
template <class Tag>
struct Id {
    std::uint32_t value = 0;
    auto operator<=>(const Id&) const = default;
};

/// A colony. Bits 0..23 the place it was drawn for or its hive number; see founder_of for colonies founded in a run.
using ColonyId = Id<struct ColonyTag>;
/// A swarm: its colony and its number within the season (0 prime, 1.. afterswarms), see swarm_of.
using SwarmId = Id<struct SwarmTag>;
/// A site a swarm may move into: a natural cavity, an empty box, or a trap (bit 30 set), see trap_site.
using SiteId = Id<struct SiteTag>;

inline constexpr std::uint32_t founder_bit = 1U << 30U;
inline constexpr std::uint32_t last_founder_bit = 1U << 31U;
inline constexpr std::uint32_t trap_bit = 1U << 30U;
inline constexpr std::uint32_t max_colony = (1U << 24U) - 1U;

/// The `number`-th swarm (0..7) cast in this season by `colony`, which is original or founded in this season.
constexpr SwarmId swarm_of(ColonyId colony, unsigned number) {
    const bool founder = (colony.value & founder_bit) != 0;
    const std::uint32_t shift = founder ? 0 : 3;
    return {(founder ? colony.value : colony.value << 6U) | (number << shift)};
}

/// The colony that `swarm` founds where it settles. A founder's own swarms found colonies that cast no more.
constexpr ColonyId founder_of(SwarmId swarm) {
    return {swarm.value | ((swarm.value & founder_bit) != 0 ? last_founder_bit : founder_bit)};
}

/// True for colonies founded within the simulated season.
constexpr bool is_founder(ColonyId colony) {
    return (colony.value & founder_bit) != 0;
}

/// True where the colony was founded by a founder's own swarm: it casts no more in this season.
constexpr bool casts_no_more(ColonyId colony) {
    return (colony.value & last_founder_bit) != 0;
}

/// True where the site is a trap.
constexpr bool is_trap(SiteId site) {
    return (site.value & trap_bit) != 0;
}

}  // namespace maybough::base

template <class Tag>
struct std::hash<maybough::base::Id<Tag>> {
    std::size_t operator()(const maybough::base::Id<Tag>& id) const noexcept {
        return std::hash<std::uint32_t>{}(id.value);
    }
};
