// What the forecast's outputs say alike: tasks and their reasons, lateness. Private to report/.
#pragma once

#include <string>

#include "report/report.hpp"

namespace maybough {

/// "Hang traps by".
std::string task_title(Task task);
/// Why then: the odds that the date rests on.
std::string task_reason(const Forecast& forecast, Task task);
/// "6.2 days later than in normal years (+- 1.1)".
std::string lateness(const Estimate& days_late);
/// "5 May" of a day of the forecast's year.
std::string forecast_day(const Forecast& forecast, Day day);
const DateOdds& odds_of(const Forecast& forecast, Milestone what);

}  // namespace maybough
