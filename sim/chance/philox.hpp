// The counter-based generator Philox4x32-10 (Salmon et al. 2011), taken from the Random123 headers.
#pragma once

#include <Random123/philox.h>

#include <array>
#include <cstdint>

namespace maybough::chance {

using Block = std::array<std::uint32_t, 4>;

/// Philox4x32-10 of a counter and a key. Source: Salmon, Moraes, Dror and Shaw 2011, "Parallel random numbers: as
/// easy as 1, 2, 3".
inline Block philox_block(const Block& counter, const std::array<std::uint32_t, 2>& key) {
    const r123::Philox4x32::ctr_type c{{counter[0], counter[1], counter[2], counter[3]}};
    const r123::Philox4x32::key_type k{{key[0], key[1]}};
    const auto out = r123::Philox4x32{}(c, k);
    return {out[0], out[1], out[2], out[3]};
}

}  // namespace maybough::chance
