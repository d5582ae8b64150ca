// SPDX-License-Identifier: GPL-3.0-or-later
//
// A stretch of time by the cellar's weekdays.
#pragma once

#include <algorithm>
#include <array>
#include <chrono>

#include "core/cellar/time.h"

namespace ullage::cellar {

// Days of each weekday in it, Sunday first, by the clock on the wall (the hour
// that a clock change adds or skips is not counted).
[[nodiscard]] inline std::array<double, 7> weekday_shares(Instant from, Instant to,
                                                          const LocalCalendar& calendar) {
  using std::chrono::days;
  std::array<double, 7> out{};
  LocalTime at = calendar.to_local(from);
  const LocalTime end = calendar.to_local(to);
  while (at < end) {
    const Date day = std::chrono::floor<days>(at);
    const LocalTime until = std::min<LocalTime>(end, day + days(1));
    out[std::chrono::weekday(day).c_encoding()] +=
        static_cast<double>((until - at).count()) / 86400.0;
    at = until;
  }
  return out;
}

}  // namespace ullage::cellar
