// The constants of landscape/.
#pragma once

#include "parameters/row.hpp"

// clang-format off
#define MAYBOUGH_LANDSCAPE_ROWS(ROW) \
    ROW(placeholder, "1", 1, 0, 2, fixed, 1, 1, assumed, "", "to be replaced by the room's first row")
// clang-format on

namespace maybough {
struct LandscapeParameters {
    MAYBOUGH_LANDSCAPE_ROWS(MAYBOUGH_MEMBER)
};
}  // namespace maybough
