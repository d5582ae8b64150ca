// SPDX-License-Identifier: GPL-3.0-or-later
//
// Instants (UTC, whole seconds) and dates, and the cellar's local calendar.
// Core never asks the system what time it is or where it stands: the clock and
// the calendar are handed in.
#pragma once

#include <chrono>
#include <cmath>
#include <optional>
#include <string>

#include "core/units/quantities.h"

namespace ullage::cellar {

using Instant = std::chrono::sys_seconds;
using Date = std::chrono::local_days;  // a day on the cellar's calendar
using LocalTime = std::chrono::local_seconds;
using UtcOffset = std::chrono::minutes;

class Clock {
 public:
  virtual ~Clock() = default;
  [[nodiscard]] virtual Instant now() const = 0;
};

// The calendar of one IANA zone.
class LocalCalendar {
 public:
  virtual ~LocalCalendar() = default;
  [[nodiscard]] virtual std::string zone_name() const = 0;  // "Europe/London"
  [[nodiscard]] virtual UtcOffset offset_at(Instant) const = 0;
  // The instant of a wall-clock time. In the hour that a spring change skips,
  // nullopt; in the hour that autumn repeats, the first of the two.
  [[nodiscard]] virtual std::optional<Instant> to_instant(LocalTime) const = 0;

  [[nodiscard]] LocalTime to_local(Instant t) const {
    return LocalTime(t.time_since_epoch() + offset_at(t));
  }
  [[nodiscard]] Date date_of(Instant t) const {
    return std::chrono::floor<std::chrono::days>(to_local(t));
  }
};

[[nodiscard]] inline units::Duration between(Instant from, Instant to) {
  return units::seconds(static_cast<double>((to - from).count()));
}
[[nodiscard]] inline Instant after(Instant t, units::Duration d) {
  return t + std::chrono::seconds(std::llround(units::in_seconds(d)));
}

}  // namespace ullage::cellar
