// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is due, for the command line and as a list: the calendar's items that are
// work to do (calendar_feed.h), the overdue first.
#pragma once

#include <string>
#include <vector>

#include "core/report/calendar_feed.h"
#include "core/report/table_sheet.h"

namespace ullage::report {

inline constexpr int usually_due_within = 14;  // days to look ahead

struct DueLine {
  CalendarItem item;
  cellar::Date due{};  // may lie in the past, where item.day is today
  bool overdue = false;
};

// In order of the day they were due, up to so many days from today.
[[nodiscard]] std::vector<DueLine> due_lines(const cellar::CellarStatus&, const cellar::Journal&,
                                             const Speaker&, int within_days);
[[nodiscard]] std::string text_of(const std::vector<DueLine>&);
[[nodiscard]] std::string json_of(const std::vector<DueLine>&, const std::string& cellar,
                                  cellar::Date today);

// The same lines as a list for paper and CSV, with room to write who did it.
[[nodiscard]] TableSheet due_list(const std::vector<DueLine>&, const cellar::CellarStatus&,
                                  const Speaker&, int within_days, const std::string& by);

}  // namespace ullage::report
