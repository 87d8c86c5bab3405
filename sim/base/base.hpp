// The words every room shares: errors, calendar, ids, points on the local plane.
#pragma once

#include "base/calendar.hpp"
#include "base/errors.hpp"
#include "base/ids.hpp"
#include "base/plane.hpp"

namespace maybough {
using namespace base;  // so that rooms to the right need no prefix
}
