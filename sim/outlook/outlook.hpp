// Outlook: this year's forecast, what a catch log teaches, scores.
#pragma once

#include "planner/planner.hpp"

namespace maybough {}
