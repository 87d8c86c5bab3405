// The frame of an iCalendar file (RFC 5545): escaping, folding, stamps, all-day events.
#include "report/icalendar.hpp"

#include <algorithm>

#include "report/words.hpp"

namespace maybough::report {
namespace {

/// TEXT value (RFC 5545, 3.3.11).
std::string text_value(std::string_view text) {
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
std::string content_line(const std::string& line) {
    constexpr std::size_t widest = 75;
    std::string out;
    std::size_t used = 0;
    for (std::size_t at = 0; at < line.size();) {
        std::size_t end = at + 1;
        while (end < line.size() && (static_cast<unsigned char>(line[end]) & 0xC0U) == 0x80U) ++end;
        if (used + end - at > widest) {
            out += "\r\n ";
            used = 1;
        }
        out.append(line, at, end - at);
        used += end - at;
        at = end;
    }
    return out + "\r\n";
}

/// "2026-01-31T09:30:00Z" to "20260131T093000Z"; a fixed stamp where the clock is not told.
std::string stamp_of(const std::string& written_at) {
    std::string text;
    for (const char c : written_at) {
        if ((c >= '0' && c <= '9') || c == 'T') text += c;
    }
    return text.size() == 15 ? text + "Z" : "19700101T000000Z";
}

/// Minutes since 2020 began of a stamp: a number that only grows, so that a calendar takes the later of two plans (RFC
/// 5545, 3.8.7.4).
int revision_of(const std::string& stamp) {
    const auto part = [&](std::size_t at, std::size_t length) { return std::stoi(stamp.substr(at, length)); };
    const Date day = make_date(part(0, 4), part(4, 2), part(6, 2));
    const auto days = static_cast<int>((day - make_date(2020, 1, 1)).count());
    return std::max(0, (days * 24 + part(9, 2)) * 60 + part(11, 2));
}

}  // namespace

std::string basic_date(Date date) {
    std::string text = iso(date);
    std::erase(text, '-');
    return text;
}

std::string icalendar(std::string_view product, std::string_view name, const std::vector<CalendarEvent>& events,
                      const Provenance& origin) {
    const std::string stamp = stamp_of(origin.written_at);
    std::string text =
        content_line("BEGIN:VCALENDAR") + content_line("VERSION:2.0") +
        content_line("PRODID:-//maybough//" + text_value(product) + " " + text_value(origin.version) + "//EN") +
        content_line("CALSCALE:GREGORIAN") + content_line("NAME:" + text_value(name)) +
        content_line("X-WR-CALNAME:" + text_value(name));  // RFC 7986, and the older name for it
    for (const CalendarEvent& event : events) {
        text += content_line("BEGIN:VEVENT");
        text += content_line("UID:" + event.uid + "@maybough.invalid");
        text += content_line("DTSTAMP:" + stamp);
        text += content_line("SEQUENCE:" + std::to_string(revision_of(stamp)));
        text += content_line("DTSTART;VALUE=DATE:" + basic_date(event.day));
        text += content_line("DTEND;VALUE=DATE:" + basic_date(event.day + std::chrono::days{1}));
        text += content_line("SUMMARY:" + text_value(event.summary));
        text += content_line("DESCRIPTION:" + text_value(event.description));
        if (!event.location.empty()) text += content_line("LOCATION:" + text_value(event.location));
        if (event.place) {
            text += content_line("GEO:" + number(event.place->latitude_deg, 6) + ";" +
                                 number(event.place->longitude_deg, 6));
        }
        text += content_line("TRANSP:TRANSPARENT");
        text += content_line("BEGIN:VALARM") + content_line("ACTION:DISPLAY") +
                content_line("DESCRIPTION:" + text_value(event.summary)) +
                content_line("TRIGGER:-PT6H") +  // six in the evening before
                content_line("END:VALARM");
        text += content_line("END:VEVENT");
    }
    return text + content_line("END:VCALENDAR");
}

}  // namespace maybough::report
