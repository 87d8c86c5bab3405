// The time wheel: which scouts are due at which tick, one bit a scout, slots reused round and round.
#pragma once

#include <algorithm>
#include <array>
#include <bit>
#include <cstdint>

namespace maybough::scouts {

inline constexpr std::uint32_t max_scouts = 512;
inline constexpr std::uint32_t ticks_per_minute = 2;

/// Due ticks may lie any distance ahead: a bit whose scout is not yet due stays in its slot for the next round.
class Wheel {
  public:
    /// Empties the wheel for `scouts` scouts at tick 0.
    void clear(std::uint32_t scouts) {
        words_ = (scouts + 63) / 64;
        for (auto& slot : slots_) std::fill(slot.begin(), slot.begin() + words_, 0U);
    }

    void set(std::uint32_t scout, std::uint32_t due) {
        due_[scout] = due;
        slots_[due & mask][scout >> 6U] |= std::uint64_t{1} << (scout & 63U);
    }

    /// Takes the scout out of its slot, to be set anew.
    void unset(std::uint32_t scout) { slots_[due_[scout] & mask][scout >> 6U] &= ~(std::uint64_t{1} << (scout & 63U)); }

    /// Calls event(scout) for all due at `now`, in increasing number. The event has to set the scout anew.
    template <class Event>
    void turn(std::uint32_t now, Event event) {
        auto& slot = slots_[now & mask];
        for (std::uint32_t word = 0; word < words_; ++word) {
            std::uint64_t bits = slot[word];
            if (bits == 0) continue;
            slot[word] = 0;
            for (; bits != 0; bits &= bits - 1) {
                const auto scout = 64 * word + static_cast<std::uint32_t>(std::countr_zero(bits));
                if (due_[scout] == now) {
                    event(scout);
                } else if ((due_[scout] & mask) == (now & mask)) {
                    slot[word] |= bits & (~bits + 1);
                }
            }
        }
    }

  private:
    static constexpr std::uint32_t slots = 512;
    static constexpr std::uint32_t mask = slots - 1;
    std::array<std::array<std::uint64_t, max_scouts / 64>, slots> slots_{};
    std::array<std::uint32_t, max_scouts> due_{};
    std::uint32_t words_ = 0;
};

}  // namespace maybough::scouts
