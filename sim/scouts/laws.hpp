// Tables of the exponential and the normal law, so that a scout's event costs one block of random bits and no
// logarithm.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

namespace maybough::scouts {

/// The law in equally likely steps; each step holds the mean of its slice, so the mean is exact.
struct LawTables {
    static constexpr std::size_t exponential_steps = 1024;
    static constexpr std::size_t normal_steps = 256;
    std::array<float, exponential_steps> exponential;  ///< mean 1
    std::array<float, normal_steps> normal;            ///< mean 0, standard deviation 1
};

/// Made once, at the first call.
const LawTables& law_tables();

/// Whole ticks, at least 1, with the exponential law of `mean_ticks`: table step from the upper bits of `word`,
/// rounding up or down by the lower ones, so that rounding does not shift the mean.
inline std::uint32_t exponential_ticks(const LawTables& tables, float mean_ticks, std::uint32_t word) {
    const float dither = static_cast<float>(word & 0x3fffffU) * 0x1.0p-22F;
    const auto ticks = static_cast<std::uint32_t>(mean_ticks * tables.exponential[word >> 22U] + dither);
    return ticks == 0 ? 1 : ticks;
}

}  // namespace maybough::scouts
