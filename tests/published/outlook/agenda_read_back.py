"""agenda.ics of a forecast read back by python3-icalendar, and its dates found again in forecast.txt.
Source: Desruisseaux, RFC 5545 Internet Calendaring and Scheduling Core Object Specification (iCalendar) (2009)."""
import datetime
import pathlib
import re
import sys

import icalendar

folder = pathlib.Path(sys.argv[1])
raw = (folder / "agenda.ics").read_bytes()
assert all(len(line) <= 75 for line in raw.split(b"\r\n")) and b"\n" not in raw.replace(b"\r\n", b"")
calendar = icalendar.Calendar.from_ical(raw)
assert calendar["VERSION"] == "2.0" and calendar["PRODID"]
assert not calendar.errors, calendar.errors
events = list(calendar.walk("VEVENT"))
assert all(not event.errors for event in events)
assert len({str(event["UID"]) for event in events}) == len(events) >= 5
for event in events:
    assert event.decoded("DTEND") - event.decoded("DTSTART") == datetime.timedelta(1)
    assert event.decoded("DTSTAMP").tzinfo is not None
    assert str(event["SUMMARY"]).startswith(("Swarm traps: ", "Swarm season: "))

# The same days stand under "What to do when" of the table, one a line, each with its task.
text = (folder / "forecast.txt").read_text(encoding="utf-8")
told = re.findall(r"^(Hang|Visit|Put|Take|New|Fresh|Stop|Keep|[A-Z][a-z]+)[^\n]*?(\d{4}-\d\d-\d\d)", text.split("What to do when")[1].split("\nDates")[0], re.M)
days = sorted(datetime.date.fromisoformat(date) for _, date in told)
tasks = sorted(event.decoded("DTSTART") for event in events if "Swarm traps" in str(event["SUMMARY"]))
assert days == tasks, (days, tasks)
print(f"{len(events)} events read back")
