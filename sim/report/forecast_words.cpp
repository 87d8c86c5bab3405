// What the forecast's outputs say alike: the answer, the weather it rests on, tasks and their reasons, lateness.
#include "report/forecast_words.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "report/words.hpp"

namespace maybough::report {

const DateOdds& odds_of(const Forecast& forecast, Milestone what) {
    return forecast.dates.at(static_cast<std::size_t>(what));
}

std::string forecast_day(const Forecast& forecast, Day day) {
    return short_date(forecast.date(day));
}

std::string task_title(Task task) {
    static constexpr std::array<const char*, 5> titles{"Hang traps by", "Visit from", "New lures on", "Visit until",
                                                       "Take traps down from"};
    return titles.at(static_cast<std::size_t>(task));
}

std::string task_reason(Task task) {
    switch (task) {
        case Task::hang:
            return "two to three weeks before one swarm in twenty has come in this year's seasons";
        case Task::visit_from:
            return "the first round on which a trap may be full";
        case Task::relure:
            return "the lures are spent, and swarms are still to come";
        case Task::visit_until:
            return "the last round before the traps come down";
        case Task::take_down:
            return "all but three swarms of a hundred have come, and the last has had days to move in";
    }
    throw ModelFault("a task has no reason");
}

std::string lateness(const Estimate& days_late) {
    const double days = std::abs(days_late.mean);
    if (days_late.n == 0) return "not to be compared with normal years";
    if (days < 0.5 || days < days_late.half_width_95) {
        return "no earlier or later than in normal years that can be told (" + number(days_late.mean, 1) + " +- " +
               number(days_late.se, 1) + " days)";
    }
    return number(days, 1) + " days " + (days_late.mean > 0 ? "later" : "earlier") + " than in normal years (+- " +
           number(days_late.se, 1) + ")";
}

std::string forecast_answer(const Forecast& forecast) {
    const DateOdds& first = odds_of(forecast, Milestone::first);
    const DateOdds& peak = odds_of(forecast, Milestone::peak);
    const DateOdds& half = odds_of(forecast, Milestone::half);
    std::string text;
    if (forecast.odds_over >= 0.9) {
        text = "The season is over with odds of " + percent(forecast.odds_over) + ".";
    } else if (first.odds_past >= 0.5) {
        text = "Swarming has begun with odds of " + percent(first.odds_past) + " (most likely about " +
               forecast_day(forecast, first.day_50) + "), and is over with odds of " + percent(forecast.odds_over) +
               ".";
    } else {
        text = "The first swarm comes about " + forecast_day(forecast, first.day_50) + ", with 8 in 10 odds between " +
               forecast_day(forecast, first.day_10) + " and " + forecast_day(forecast, first.day_90) + ".";
    }
    text += " The peak week is about " + forecast_day(forecast, peak.day_50) + " (" +
            forecast_day(forecast, peak.day_10) + " to " + forecast_day(forecast, peak.day_90) +
            "). Half of this year's swarms come " + lateness(half.days_late) + ".";
    return text;
}

std::vector<std::string> forecast_weather(const Forecast& forecast) {
    const ThisYear& weather = forecast.weather;
    std::string text = "Weather known to " + iso(weather.known_until) + " (" + counted(weather.recorded_days, "day") +
                       " of the record, " + counted(weather.quality.filled_days, "day") + " of them filled, " +
                       counted(weather.missing_days, "day") + " made up";
    if (weather.typed_days > 0) text += "; the next " + counted(weather.typed_days, "day") + " as typed";
    text += forecast.continuation == Continuation::generated
                ? "), then generated weather that goes on from it."
                : "), then years of the record, likelier the more they were like this one.";
    std::vector<std::string> lines{text};
    for (const std::string& note : weather.notes) lines.push_back(plain_text(note));
    for (const std::string& warning : weather.quality.warnings) lines.push_back(plain_text(warning));
    return lines;
}

std::string hindcast_meaning() {
    return "This is skill against simulated seasons: the truth is the same model under the real weather of each year, "
           "on land and with luck unknown to the forecast. It tells how much of a season's dates the weather to date "
           "settles if the model is right. It does not tell whether the model is right; only observed swarms can.";
}

}  // namespace maybough::report
