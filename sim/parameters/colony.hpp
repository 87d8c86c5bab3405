// The constants of colony/.
#pragma once

#include "parameters/row.hpp"

// clang-format off
#define MAYBOUGH_COLONY_ROWS(ROW) \
    ROW(placeholder, "1", 1, 0, 2, fixed, 1, 1, assumed, "", "to be replaced by the room's first row")
// clang-format on

namespace maybough {
struct ColonyParameters {
    MAYBOUGH_COLONY_ROWS(MAYBOUGH_MEMBER)
};
}  // namespace maybough
