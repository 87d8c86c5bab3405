// Chance: every random draw is named by who decides what and when, and its value depends on that name alone.
#pragma once

#include "chance/distributions.hpp"
#include "chance/philox.hpp"
#include "chance/purposes.hpp"
#include "chance/stream.hpp"

namespace maybough {
using namespace chance;  // so that rooms to the right need no prefix
}
