// SPDX-License-Identifier: GPL-3.0-or-later
//
// Moments and days as people type them, read on the cellar's calendar:
//   now · -2h · 2 h ago · 45 min ago · 3 days ago · 22:00 · 9am · today 7:30 ·
//   yesterday · yesterday 22:00 · last night · Tue 19:20 · 24 Nov 18:00 ·
//   24 Nov 2025 18:00 · 2026-11-24 19:20 · 2026-11-24T19:20:00Z
// A time without a day is the latest such moment that is not in the future; so
// is a weekday or a date without a year. A day without a time is noon for a
// past day, and now for today. Numbers like 3/4 are refused: day or month first
// differs by country.
#pragma once

#include <expected>
#include <string>
#include <string_view>

#include "core/cellar/time.h"

namespace ullage::ui {

enum class WhenFault {
  empty,
  not_understood,
  no_such_day,    // 31 Nov
  ambiguous_day,  // 3/4
  skipped_hour,   // the hour the spring change leaves out
  in_future
};

struct WhenError {
  WhenFault fault = WhenFault::empty;
  std::string typed;
  std::string hint;  // for skipped_hour: the hour after the gap, "03:00"
};

[[nodiscard]] std::expected<cellar::Instant, WhenError> read_when(std::string_view,
                                                                  const cellar::LocalCalendar&,
                                                                  cellar::Instant now);

// today · yesterday · tomorrow · Fri · 24 Nov · 24 Nov 2026 · 2026-11-24 · in 10 days.
// Nearest to today when no year is given; the future is allowed (a best-by date).
[[nodiscard]] std::expected<cellar::Date, WhenError> read_date(std::string_view,
                                                               cellar::Date today);

// Writes what read_when reads back to the minute: "24 Nov 2026 19:20".
[[nodiscard]] std::string write_when(cellar::Instant, const cellar::LocalCalendar&);
[[nodiscard]] std::string write_date(cellar::Date);
// For the line beneath: "Tue 24 Nov 2026, 19:20" and "Tue 24 Nov 2026".
[[nodiscard]] std::string say_when(cellar::Instant, const cellar::LocalCalendar&);
[[nodiscard]] std::string say_day_of(cellar::Date);

// "That hour was skipped when the clocks went forward; type 03:00 or later."
[[nodiscard]] std::string sentence(const WhenError&);

}  // namespace ullage::ui
