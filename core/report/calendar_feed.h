// SPDX-License-Identifier: GPL-3.0-or-later
//
// Due work and ready dates as an iCalendar file (RFC 5545), to be read by any
// calendar program: whole-day events on the cellar's calendar. An event keeps
// its UID from one export to the next, so that reading the file again moves
// events instead of doubling them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/cellar/journal.h"
#include "core/report/say.h"

namespace ullage::report {

struct CalendarItem {
  std::string uid;  // stable: what it is about, and the kind of work
  cellar::Date day{};
  std::string summary;                   // "Clean Line 1"
  std::string description;               // why, and how sure the day is
  std::optional<cellar::Date> due = {};  // of work: the day it is or was due
  std::string why = {};                  // of work: the description without since when
};

// Work due by the cellar's rules (core/cellar/due_work.h), bottles to retest, kegs
// due back, use-by dates, hops to look at and to take out, kegs that will be ready;
// in order of day. Work that is
// overdue stands on today, work put off on the day it was put off to.
[[nodiscard]] std::vector<CalendarItem> calendar_items(const cellar::CellarStatus&,
                                                       const cellar::Journal&, const Speaker&);

// The file. `made_at` becomes DTSTAMP, the moment the events were told.
[[nodiscard]] std::string icalendar_of(const std::vector<CalendarItem>&, const std::string& name,
                                       cellar::Instant made_at);
// For programs: the day each stands on, the day it is or was due, what and why.
[[nodiscard]] std::string json_of(const std::vector<CalendarItem>&, const std::string& cellar);

}  // namespace ullage::report
