// What to do when, as a calendar: RFC 5545, one all-day event a task.
#include "report/forecast_words.hpp"
#include "report/icalendar.hpp"
#include "report/words.hpp"

namespace maybough::report {
namespace {

/// Stable within a place and year, so that a later forecast moves the event.
std::string uid(const Scenario& scenario, const Forecast& forecast, const AgendaItem& item, int nth) {
    static constexpr std::array<const char*, 5> keys{"hang", "visit-from", "relure", "visit-until", "take-down"};
    return std::string("forecast-") + keys.at(static_cast<std::size_t>(item.task)) +
           (nth > 0 ? std::to_string(nth) : "") + "-" + basic_date(forecast.first_day) + "-" +
           number(scenario.land.centre.latitude_deg, 5) + "-" + number(scenario.land.centre.longitude_deg, 5);
}

}  // namespace

std::string forecast_ics(const Scenario& scenario, const Forecast& forecast, const Provenance& origin) {
    std::vector<CalendarEvent> events;
    int relures = 0;
    for (const AgendaItem& item : forecast.agenda) {
        const int nth = item.task == Task::relure ? relures++ : 0;
        const std::string late = item.overdue ? " (was due before the forecast's day)" : "";
        events.push_back({item.date, uid(scenario, forecast, item, nth),
                          "Swarm traps: " + task_title(item.task) + " " + short_date(item.date) + late,
                          "As seen on " + iso(forecast.weather.today) + ": " + task_reason(item.task) + ".",
                          scenario.name, scenario.land.centre});
    }
    const DateOdds& peak = odds_of(forecast, Milestone::peak);
    events.push_back({forecast.date(peak.day_50),
                      "forecast-peak-" + basic_date(forecast.first_day) + "-" +
                          number(scenario.land.centre.latitude_deg, 5) + "-" +
                          number(scenario.land.centre.longitude_deg, 5),
                      "Swarm season: peak week's middle",
                      "With 8 in 10 odds between " + forecast_day(forecast, peak.day_10) + " and " +
                          forecast_day(forecast, peak.day_90) + ".",
                      scenario.name, scenario.land.centre});
    return icalendar("forecast", "Swarm season " + scenario.name, events, origin);
}

}  // namespace maybough::report
