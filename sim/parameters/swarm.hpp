// The constants of swarm/.
#pragma once

#include "parameters/row.hpp"

// clang-format off
#define MAYBOUGH_SWARM_ROWS(ROW) \
    ROW(placeholder, "1", 1, 0, 2, fixed, 1, 1, assumed, "", "to be replaced by the room's first row")
// clang-format on

namespace maybough {
struct SwarmParameters {
    MAYBOUGH_SWARM_ROWS(MAYBOUGH_MEMBER)
};
}  // namespace maybough
