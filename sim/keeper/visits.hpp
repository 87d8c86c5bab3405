// When a trap is visited: the keeper's common rounds. Private to keeper/.
#pragma once

#include <vector>

#include "keeper/keeper.hpp"

namespace maybough::keeper {

/// Visits between hanging and taking down. They fall on common rounds, every visit_every_days counted from the first
/// day of the simulated year, so that traps with the same interval are seen on the same drive whenever they were hung.
std::vector<Day> visit_days(const TrapSetting& setting);

/// Days a trap hangs, never below 0.
int days_hung(const TrapSetting& setting);

/// Days among hanging and visits on which a vial is put in: at hanging, and at the first visit at which the last is
/// old.
std::vector<Day> lure_days(const TrapSetting& setting, const std::vector<Day>& visits, const Keeper& keeper);

}  // namespace maybough::keeper
