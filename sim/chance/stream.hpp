// Named streams: (seed, replicate) is the key; (block, entity, sub, purpose and day) is the counter, packed, not
// hashed.
#pragma once

#include <cstdint>

#include "base/base.hpp"
#include "chance/philox.hpp"
#include "chance/purposes.hpp"

namespace maybough::chance {

/// One named sequence of draws. Cheap to make and to copy; makes a block of four words at a time.
class Stream {
  public:
    Stream(std::array<std::uint32_t, 2> key, std::uint32_t entity, std::uint32_t sub, std::uint32_t purpose_and_day)
        : key_(key), entity_(entity), sub_(sub), purpose_and_day_(purpose_and_day) {}

    /// The next 32 random bits.
    std::uint32_t word() {
        if (used_ == 4) {
            block_ = philox_block({next_, entity_, sub_, purpose_and_day_}, key_);
            ++next_;
            used_ = 0;
        }
        return block_[used_++];
    }

    /// Uniform on the open interval (0, 1) with 32 bits: never 0, never 1.
    double uniform() { return (static_cast<double>(word()) + 0.5) * 0x1.0p-32; }

  private:
    std::array<std::uint32_t, 2> key_;
    std::uint32_t entity_;
    std::uint32_t sub_;
    std::uint32_t purpose_and_day_;
    std::uint32_t next_ = 0;
    Block block_{};
    unsigned used_ = 4;
};

/// The luck of one replicate: replicate k means the same weather and luck for every placement of traps.
struct Chance {
    std::uint32_t seed = 1;
    std::uint32_t replicate = 0;

    /// The stream of one decision. `entity` decides, for `purpose`, on `day` (-1 or 0.. 65534), about `sub`.
    Stream stream(Purpose purpose, std::uint32_t entity, Day day = {-1}, std::uint32_t sub = 0) const {
        const auto day_bits = static_cast<std::uint32_t>(day.value + 1) & 0xffffU;
        return {{seed, replicate}, entity, sub, (static_cast<std::uint32_t>(purpose) << 16U) | day_bits};
    }
    template <class Tag>
    Stream stream(Purpose purpose, Id<Tag> entity, Day day = {-1}, std::uint32_t sub = 0) const {
        return stream(purpose, entity.value, day, sub);
    }
};

}  // namespace maybough::chance
