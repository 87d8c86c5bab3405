// The constants of outlook/.
#pragma once

#include "parameters/row.hpp"

// clang-format off
#define MAYBOUGH_OUTLOOK_ROWS(ROW) \
    ROW(effect_sd_ln, "1", 0.3, 0.01, 3, fixed, 0.1, 0.6, assumed, "", "learning: how far one spread of an unknown is expected to move the logarithm of the catch, before any season is simulated") \
    ROW(trap_effect_sd_ln, "1", 0.1, 0.001, 3, fixed, 0.03, 0.3, assumed, "", "learning: how far that effect is expected to differ between traps") \
    ROW(least_effective_draws, "1", 200, 20, 10000, fixed, 100, 500, practice, "a 5 % quantile from 200 draws rests on ten of them", "learning: effective draws below which the log's word is weakened until so many are left") \
    ROW(least_power, "1", 0.25, 0.01, 1, fixed, 0.1, 0.5, assumed, "", "learning: power of the log's likelihood below which nothing is learnt, because the model hardly allows such a log") \
    ROW(least_lesson, "1", 0.05, 0, 1, fixed, 0.02, 0.1, practice, "about three times the error of a mean over a thousand draws", "learning: shift in its own spreads, or share of its spread taken away, below which an unknown is told as untaught and left as it was")
// clang-format on

namespace maybough::parameters {
struct OutlookParameters {
    MAYBOUGH_OUTLOOK_ROWS(MAYBOUGH_MEMBER)
};
}  // namespace maybough::parameters
