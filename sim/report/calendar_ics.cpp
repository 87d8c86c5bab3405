// The season as a calendar: RFC 5545, one all-day event a day of work.
#include "report/icalendar.hpp"
#include "report/words.hpp"
#include "report/work_days.hpp"

namespace maybough::report {
namespace {

std::string trap_line(const Scenario& scenario, const TrapSetting& set, std::size_t nr, bool hanging) {
    const std::string name = "- " + std::to_string(nr) + " " + spot_name(scenario, set.spot);
    if (!hanging) return name + "\n";
    return name + ": " + kind_name(scenario, set.kind) + ", " + height_words(set.height_m) + " up, entrance " +
           compass(set.facing_deg) + (set.lured ? ", lure in\n" : "\n");
}

std::string description(const Scenario& scenario, const Placement& placement, const WorkOfDay& work) {
    std::string text;
    const auto part = [&](const char* title, const std::vector<std::size_t>& traps, bool hanging) {
        if (!traps.empty()) text.append(title).append(":\n");
        for (const std::size_t nr : traps) text += trap_line(scenario, placement.at(nr - 1), nr, hanging);
    };
    part("Hang", work.hang, true);
    part("Visit", work.visit, false);
    part("New lure", work.relure, false);
    part("Take down", work.take_down, false);
    return text;
}

}  // namespace

std::string calendar_ics(const Scenario& scenario, const Placement& placement, const Provenance& origin) {
    std::vector<CalendarEvent> events;
    for (const auto& [day, work] : work_days(scenario, placement)) {
        const Date date = date_of(scenario, day);
        events.push_back({date,
                          basic_date(date) + "-" + std::to_string(origin.seed) + "-" +
                              number(scenario.land.centre.latitude_deg, 5) + "-" +
                              number(scenario.land.centre.longitude_deg, 5),
                          "Swarm traps: " + work_summary(work), description(scenario, placement, work)});
    }
    return icalendar("plan", events, origin);
}

}  // namespace maybough::report
