// How a site's chance of being found becomes a stretch of random bits; private to scouts/.
#pragma once

#include <algorithm>
#include <cstdint>

#include "scouts/scouts.hpp"

namespace maybough::scouts {

/// A chance as a bound for 32 random bits.
inline std::uint64_t chance_below(double chance) {
    return static_cast<std::uint64_t>(std::clamp(chance, 0.0, 1.0) * 0x1.0p32);
}

/// Where the stretch of `offer` ends that begins at `bound`. Whole numbers, so that a stretch is as long wherever it
/// begins; beyond certainty the last ones are cut short.
inline std::uint64_t find_bound(std::uint64_t bound, const SiteOffer& offer, const ScoutParameters& p) {
    constexpr std::uint64_t certain = 1ULL << 32U;
    return std::min(certain, bound + chance_below(p.find_chance * offer.find_weight));
}

}  // namespace maybough::scouts
