// The frame of an iCalendar file (RFC 5545): escaping, folding, stamps, all-day events.
#include "report/icalendar.hpp"

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

}  // namespace

std::string basic_date(Date date) {
    std::string text = iso(date);
    std::erase(text, '-');
    return text;
}

std::string icalendar(std::string_view product, const std::vector<CalendarEvent>& events, const Provenance& origin) {
    std::string text =
        content_line("BEGIN:VCALENDAR") + content_line("VERSION:2.0") +
        content_line("PRODID:-//maybough//" + text_value(product) + " " + text_value(origin.version) + "//EN") +
        content_line("CALSCALE:GREGORIAN") + content_line("METHOD:PUBLISH");
    for (const CalendarEvent& event : events) {
        text += content_line("BEGIN:VEVENT");
        text += content_line("UID:" + event.uid + "@maybough.invalid");
        text += content_line("DTSTAMP:" + stamp_of(origin.written_at));
        text += content_line("DTSTART;VALUE=DATE:" + basic_date(event.day));
        text += content_line("DTEND;VALUE=DATE:" + basic_date(event.day + std::chrono::days{1}));
        text += content_line("SUMMARY:" + text_value(event.summary));
        text += content_line("DESCRIPTION:" + text_value(event.description));
        text += content_line("TRANSP:TRANSPARENT");
        text += content_line("END:VEVENT");
    }
    return text + content_line("END:VCALENDAR");
}

}  // namespace maybough::report
