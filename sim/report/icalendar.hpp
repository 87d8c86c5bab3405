// The frame of an iCalendar file (RFC 5545), shared by the plan's and the forecast's calendars: private to report/.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "report/report.hpp"

namespace maybough::report {

/// One all-day event, with a reminder on the evening before. `uid` is stable: the same event from another run replaces
/// it in the user's calendar.
struct CalendarEvent {
    Date day;
    std::string uid;  ///< before "@maybough.invalid"
    std::string summary;
    std::string description;
    std::string location;         ///< where it is, in words; may be empty
    std::optional<LatLon> place;  ///< the same on the map
};

/// The whole file; `product` names what wrote it, `name` the calendar.
std::string icalendar(std::string_view product, std::string_view name, const std::vector<CalendarEvent>& events,
                      const Provenance& origin);

/// "20260405".
std::string basic_date(Date date);

}  // namespace maybough::report
