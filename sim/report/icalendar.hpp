// The frame of an iCalendar file (RFC 5545), shared by the plan's and the forecast's calendars: private to report/.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "report/report.hpp"

namespace maybough::report {

/// One all-day event. `uid` is stable: the same event from another run replaces it in the user's calendar.
struct CalendarEvent {
    Date day;
    std::string uid;  ///< before "@maybough.invalid"
    std::string summary;
    std::string description;
};

/// The whole file; `product` names what wrote it.
std::string icalendar(std::string_view product, const std::vector<CalendarEvent>& events, const Provenance& origin);

/// "20260405".
std::string basic_date(Date date);

}  // namespace maybough::report
