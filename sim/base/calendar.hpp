// Dates and days: a Date is a civil day; a Day counts from the first day of the simulated year.
#pragma once

#include <chrono>
#include <compare>
#include <string>
#include <string_view>

namespace maybough::base {

/// A civil (proleptic Gregorian) day.
using Date = std::chrono::sys_days;

/// Day of the simulated year, 0-based. The simulated year begins 1 January north of the equator, 1 July south of it.
struct Day {
    int value = 0;
    auto operator<=>(const Day&) const = default;
    Day operator+(int days) const { return {value + days}; }
    int operator-(Day other) const { return value - other.value; }
};

/// The date of year, month (1..12), day (1..31). Throws InputError when there is no such day.
Date make_date(int year, int month, int day);

/// "2026-04-05" to a date; throws InputError naming `place` on anything else.
Date parse_date(std::string_view text, const std::string& place);

/// ISO 8601, "2026-04-05".
std::string iso(Date date);

/// "5 Apr": for people.
std::string short_date(Date date);

int year_of(Date date);
int month_of(Date date);      ///< 1..12
int day_of_month(Date date);  ///< 1..31
int day_of_year(Date date);   ///< 1..366

/// First day of the simulated year that holds `date`: 1 January (north) or 1 July (south, latitude below 0).
Date simulated_year_start(Date date, double latitude_deg);

/// Days in the simulated year that starts at `start` (365 or 366).
int days_in_year_from(Date start);

}  // namespace maybough::base
