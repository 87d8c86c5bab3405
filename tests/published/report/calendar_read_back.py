"""calendar.ics read back by python3-icalendar, dates counted again from the plan.
Source: Desruisseaux, RFC 5545 Internet Calendaring and Scheduling Core Object Specification (iCalendar) (2009)."""
import datetime
import json
import pathlib
import sys

import icalendar

folder = pathlib.Path(sys.argv[1])
plan = json.loads((folder / "plan.json").read_text(encoding="utf-8"))
raw = (folder / "calendar.ics").read_bytes()
assert all(len(line) <= 75 for line in raw.split(b"\r\n")) and b"\n" not in raw.replace(b"\r\n", b"")
calendar = icalendar.Calendar.from_ical(raw)
assert calendar["VERSION"] == "2.0" and calendar["PRODID"]
assert not calendar.errors, calendar.errors
events = [part for part in calendar.walk("VEVENT")]
assert len({str(event["UID"]) for event in events}) == len(events)
assert all(not event.errors for event in events)

# Rounds are common to all traps of one interval: counted from the first day of the simulated year.
first_day = datetime.date.fromisoformat(plan["calendar"]["first_day"])
expected = set()
for trap in plan["traps"]:
    hang, down = (datetime.date.fromisoformat(trap[key]) for key in ("hang", "take_down"))
    every = trap["visit_every_days"]
    days = [first_day + datetime.timedelta(day) for day in range(every, 366, every)]
    expected |= {(trap["spot_name"], day) for day in [hang, down, *(day for day in days if hang < day < down)]}
assert {(str(event["LOCATION"]), event.decoded("DTSTART")) for event in events} == expected
for event in events:
    assert event.decoded("DTEND") - event.decoded("DTSTART") == datetime.timedelta(1)
    assert event.decoded("DTSTAMP").tzinfo is not None
    assert "GEO" in event and int(event["SEQUENCE"]) >= 0
    alarm, = event.walk("VALARM")
    assert alarm.decoded("TRIGGER") == datetime.timedelta(hours=-6), alarm
assert str(calendar["X-WR-CALNAME"]) and "METHOD" not in calendar
print(f"{len(events)} rounds read back")
