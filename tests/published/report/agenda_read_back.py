"""The forecast's agenda.ics read back by python3-icalendar: all-day events with identifiers of their own.
Source: Desruisseaux, RFC 5545 Internet Calendaring and Scheduling Core Object Specification (iCalendar) (2009)."""
import datetime
import pathlib
import sys

import icalendar

raw = (pathlib.Path(sys.argv[1]) / "agenda.ics").read_bytes()
assert all(len(line) <= 75 for line in raw.split(b"\r\n")) and b"\n" not in raw.replace(b"\r\n", b"")
calendar = icalendar.Calendar.from_ical(raw)
assert calendar["VERSION"] == "2.0" and calendar["PRODID"]
assert not calendar.errors, calendar.errors
events = list(calendar.walk("VEVENT"))
assert len({str(event["UID"]) for event in events}) == len(events)
days = sorted(event.decoded("DTSTART") for event in events)
# The sample's four tasks and the middle of its peak week.
assert days == [datetime.date(2026, 4, 12), datetime.date(2026, 4, 28), datetime.date(2026, 6, 4), datetime.date(2026, 7, 4),
                datetime.date(2026, 7, 20)], days
for event in events:
    assert not event.errors, event.errors
    assert event.decoded("DTEND") - event.decoded("DTSTART") == datetime.timedelta(1)
    assert event.decoded("DTSTAMP").tzinfo is not None
print(f"{len(events)} dates read back")
