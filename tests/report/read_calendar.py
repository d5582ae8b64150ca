# SPDX-License-Identifier: GPL-3.0-or-later
"""Reads an iCalendar file with python3-icalendar and prints what it found as JSON."""
import json
import sys

from icalendar import Calendar

with open(sys.argv[1], "rb") as file:
    calendar = Calendar.from_ical(file.read())
events = [
    {
        "uid": str(event["UID"]),
        "start": event["DTSTART"].dt.isoformat(),
        "stamp": event["DTSTAMP"].dt.isoformat(),
        "summary": str(event["SUMMARY"]),
        "description": str(event.get("DESCRIPTION", "")),
    }
    for event in calendar.walk("VEVENT")
]
print(json.dumps({
    "version": str(calendar["VERSION"]),
    "name": str(calendar.get("X-WR-CALNAME", "")),
    # The reader keeps what it could not make out of an event with the event.
    "errors": [str(e) for part in calendar.walk() for e in part.errors],
    "prodid": str(calendar["PRODID"]),
    "events": events,
}))
