// One trap of a table: what the tables of traps as set and of past catches share.
#pragma once

#include "scenario/scenario.hpp"
#include "scenario/sheet.hpp"

namespace maybough::scenario {

/// Names of the columns that give a trap's two dates.
struct DateColumns {
    std::string hang;
    std::string take_down;
};

/// Height, facing, dates and lure of the trap in `row`, whose spot and kind are known already; visits are left at their
/// default. Dates are days of the simulated year that begins on `first`. Throws InputError at the row.
void read_trap(const Sheet& sheet, const SheetRow& row, const Scenario& scenario, Date first,
               const DateColumns& columns, TrapSetting& trap);

/// A date as a day of the simulated year that begins on `first`; `fallback` where the cell is empty.
Day day_in(const SheetRow& row, const std::string& column, Date first, Day fallback);

/// A whole number of days, 1 to 365, or `fallback` where the cell is empty.
int days_between_visits(const SheetRow& row, const std::string& column, int fallback);

/// Throws InputError for columns that are not known or missing.
void expect_trap_columns(const Sheet& sheet, const std::vector<std::string>& known,
                         const std::vector<std::string>& needed);

}  // namespace maybough::scenario
