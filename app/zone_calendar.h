// SPDX-License-Identifier: GPL-3.0-or-later
//
// The cellar's calendar from the system's time zone data. Changes of the clock
// are looked up once, from 1900 to as far ahead as Qt tells them (2037; beyond
// it, the last offset holds); a question then costs a binary search.
#pragma once

#include <string>
#include <vector>

#include "core/cellar/time.h"

namespace ullage::app {

class ZoneCalendar final : public cellar::LocalCalendar {
 public:
  // A zone this system does not know is taken as UTC; `known` tells.
  explicit ZoneCalendar(const std::string& iana_name = "UTC");
  void set_zone(const std::string& iana_name);
  [[nodiscard]] bool known() const { return known_; }

  [[nodiscard]] std::string zone_name() const override { return name_; }
  [[nodiscard]] cellar::UtcOffset offset_at(cellar::Instant) const override;
  [[nodiscard]] std::optional<cellar::Instant> to_instant(cellar::LocalTime) const override;

 private:
  struct Span {
    cellar::Instant from{};
    cellar::UtcOffset offset{};
  };
  std::string name_;
  bool known_ = true;
  std::vector<Span> spans_;  // in order of time, never empty
};

[[nodiscard]] bool is_known_zone(const std::string& iana_name);
// "Europe/London", as this machine is set; "UTC" when it does not say.
[[nodiscard]] std::string system_zone();

}  // namespace ullage::app
