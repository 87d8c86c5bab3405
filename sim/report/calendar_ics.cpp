// The season as a calendar: RFC 5545, one all-day event a day of work.
#include <map>

#include "report/sections.hpp"

namespace maybough {
namespace {

/// TEXT value (RFC 5545, 3.3.11).
std::string escaped(std::string_view text) {
    std::string out;
    for (const char c : plain_text(text, true)) {
        if (c == '\n') {
            out += "\\n";
        } else {
            if (c == ',' || c == ';' || c == '\\') out += '\\';
            out += c;
        }
    }
    return out;
}

/// Content line folded at 75 octets, never inside a character (RFC 5545, 3.1).
std::string folded(const std::string& line) {
    std::string out;
    std::size_t used = 0;
    for (std::size_t at = 0; at < line.size();) {
        std::size_t end = at + 1;
        while (end < line.size() && (static_cast<unsigned char>(line[end]) & 0xC0U) == 0x80U) ++end;
        if (used + end - at > 75) {
            out += "\r\n ";
            used = 1;
        }
        out.append(line, at, end - at);
        used += end - at;
        at = end;
    }
    return out + "\r\n";
}

std::string basic(Date date) {
    std::string text = iso(date);
    std::erase(text, '-');
    return text;
}

/// "2026-01-31T09:30:00Z" to "20260131T093000Z"; a fixed stamp where the clock is not told.
std::string stamp(const std::string& written_at) {
    std::string text;
    for (const char c : written_at) {
        if ((c >= '0' && c <= '9') || c == 'T') text += c;
    }
    return text.size() == 15 ? text + "Z" : "19700101T000000Z";
}

struct Work {
    std::vector<std::string> hang;
    std::vector<std::string> visit;
    std::vector<std::string> relure;
    std::vector<std::string> take_down;
};

std::map<Day, Work> days_of_work(const Scenario& scenario, const Placement& placement) {
    std::map<Day, Work> days;
    for (std::size_t i = 0; i < placement.size(); ++i) {
        const TrapSetting& set = placement[i];
        const std::string trap = std::to_string(i + 1) + " " + spot_name(scenario, set.spot);
        days[set.hang].hang.push_back(trap + ": " + kind_name(scenario, set.kind) + ", " + height_words(set.height_m) +
                                      " up, entrance " + compass(set.facing_deg) + (set.lured ? ", lure in" : ""));
        Day lured = set.hang;
        for (const Day day : visit_days(set)) {
            days[day].visit.push_back(trap);
            if (set.lured && day - lured >= scenario.keeper.relure_after_days) {
                days[day].relure.push_back(trap);
                lured = day;
            }
        }
        days[set.take_down].take_down.push_back(trap);
    }
    return days;
}

std::string lines_of(const std::string& title, const std::vector<std::string>& traps) {
    std::string text;
    if (!traps.empty()) text += title + ":\n";
    for (const std::string& trap : traps) text += "- " + trap + "\n";
    return text;
}

std::string summary_of(const Work& work) {
    std::vector<std::string> parts;
    const auto part = [&](const char* verb, std::size_t count) {
        if (count > 0) parts.push_back(verb + counted(static_cast<double>(count), "trap"));
    };
    part("hang ", work.hang.size());
    part("visit ", work.visit.size());
    part("new lure in ", work.relure.size());
    part("take down ", work.take_down.size());
    return "Swarm traps: " + listed(parts);
}

}  // namespace

std::string calendar_ics(const Scenario& scenario, const Placement& placement, const Provenance& origin) {
    std::string text = folded("BEGIN:VCALENDAR") + folded("VERSION:2.0") +
                       folded("PRODID:-//maybough//plan " + escaped(origin.version) + "//EN") +
                       folded("CALSCALE:GREGORIAN") + folded("METHOD:PUBLISH");
    for (const auto& [day, work] : days_of_work(scenario, placement)) {
        const Date date = date_of(scenario, day);
        text += folded("BEGIN:VEVENT");
        text += folded("UID:" + basic(date) + "-" + std::to_string(origin.seed) + "-" +
                       number(scenario.land.centre.latitude_deg, 5) + "-" +
                       number(scenario.land.centre.longitude_deg, 5) + "@maybough.invalid");
        text += folded("DTSTAMP:" + stamp(origin.written_at));
        text += folded("DTSTART;VALUE=DATE:" + basic(date));
        text += folded("DTEND;VALUE=DATE:" + basic(date + std::chrono::days{1}));
        text += folded("SUMMARY:" + escaped(summary_of(work)));
        text +=
            folded("DESCRIPTION:" + escaped(lines_of("Hang", work.hang) + lines_of("Visit", work.visit) +
                                            lines_of("New lure", work.relure) + lines_of("Take down", work.take_down)));
        text += folded("TRANSP:TRANSPARENT");
        text += folded("END:VEVENT");
    }
    return text + folded("END:VCALENDAR");
}

}  // namespace maybough
