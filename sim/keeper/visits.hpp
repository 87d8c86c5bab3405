// How long a trap hangs. Private to keeper/.
#pragma once

#include <vector>

#include "keeper/keeper.hpp"

namespace maybough::keeper {

/// Days a trap hangs, never below 0.
int days_hung(const TrapSetting& setting);

}  // namespace maybough::keeper
