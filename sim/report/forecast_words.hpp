// What the forecast's outputs say alike: tasks and their reasons, lateness. Private to report/.
#pragma once

#include <string>
#include <vector>

#include "report/report.hpp"

namespace maybough::report {

/// "Hang traps by".
std::string task_title(Task task);
/// Why then.
std::string task_reason(Task task);
/// "6.2 days later than in normal years (+- 1.1)".
std::string lateness(const Estimate& days_late);
/// "5 May" of a day of the forecast's year.
std::string forecast_day(const Forecast& forecast, Day day);
/// When the season starts, peaks, and how late the year is: one paragraph.
std::string forecast_answer(const Forecast& forecast);
/// What is known of this year's weather and how the rest is made, then notes on it.
std::vector<std::string> forecast_weather(const Forecast& forecast);
/// What the hindcast's skill is skill of.
std::string hindcast_meaning();
const DateOdds& odds_of(const Forecast& forecast, Milestone what);

}  // namespace maybough::report
