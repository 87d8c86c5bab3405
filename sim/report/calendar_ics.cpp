// The season as a calendar: RFC 5545, one all-day event for each trap on each of its rounds.
#include <algorithm>

#include "report/icalendar.hpp"
#include "report/words.hpp"

namespace maybough::report {
namespace {

/// What every event of one trap shares.
CalendarEvent event_of(const Scenario& scenario, const TrapSetting& set, Day day, const std::string& key,
                       const std::string& what) {
    CalendarEvent event;
    event.day = date_of(scenario, day);
    // Named by year, place and round, so that a plan made again moves the event instead of adding one.
    event.uid = "trap-" + std::to_string(scenario.year) + "-" +
                std::to_string(trap_site(scenario.spots.at(set.spot).at).value) + "-" + key + "-" +
                number(scenario.land.centre.latitude_deg, 5) + "-" + number(scenario.land.centre.longitude_deg, 5);
    event.summary = what + ": " + spot_name(scenario, set.spot);
    event.location = spot_name(scenario, set.spot);
    event.place = scenario.spots.at(set.spot).place;
    return event;
}

std::string trap_words(const Scenario& scenario, const TrapSetting& set, std::size_t nr) {
    return "Trap " + std::to_string(nr) + ", " + kind_name(scenario, set.kind) + ", " + height_words(set.height_m) +
           " up, entrance " + compass(set.facing_deg) + ".";
}

void add_trap(std::vector<CalendarEvent>& events, const Scenario& scenario, const TrapSetting& set, std::size_t nr) {
    const Rounds rounds = visits_of(set, scenario.keeper);
    const auto lured = [&](Day day) {
        return std::find(rounds.lures.begin(), rounds.lures.end(), day) != rounds.lures.end();
    };
    const auto add = [&](Day day, const std::string& key, const std::string& what, const std::string& words) {
        events.push_back(event_of(scenario, set, day, key, what));
        events.back().description = trap_words(scenario, set, nr) + words;
    };
    add(set.hang, "hang", "Hang swarm trap", lured(set.hang) ? " Put the lure in." : "");
    int nth = 0;
    for (const Day day : rounds.visits) {
        add(day, "visit-" + std::to_string(++nth), lured(day) ? "Visit swarm trap, new lure" : "Visit swarm trap", "");
    }
    add(set.take_down, "down", "Take down swarm trap", "");
}

}  // namespace

std::string calendar_ics(const Scenario& scenario, const Placement& placement, const Provenance& origin) {
    std::vector<CalendarEvent> events;
    for (std::size_t i = 0; i < placement.size(); ++i) add_trap(events, scenario, placement[i], i + 1);
    std::stable_sort(events.begin(), events.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
    return icalendar("plan", "Swarm traps " + scenario.name + " " + std::to_string(scenario.year), events, origin);
}

}  // namespace maybough::report
