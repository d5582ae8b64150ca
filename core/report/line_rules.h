// SPDX-License-Identifier: GPL-3.0-or-later
//
// By which rule a line was to be cleaned on a day of the past: the rules and the
// line's own interval as the journal had them then, the strictest of them, as the
// Cleaning page chooses today's. What was laid down later judges nothing before it.
// And how long the line went without a cleaning under them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/cellar/due_work.h"
#include "core/report/table_sheet.h"

namespace ullage::report {

class LineRules {
 public:
  LineRules(const cellar::Journal&, const cellar::CellarStatus& now, const cellar::LocalCalendar&,
            cellar::LineId);

  // A change counts from the day on which it was made. Nothing where no rule asked
  // for cleaning then, or the line was out of use.
  [[nodiscard]] std::optional<cellar::AppliedRule> on(cellar::Date) const;
  // "14 days", "14 days, from 2026-11-10 7 days": as it changed within the period;
  // empty when nothing asked for cleaning in it.
  [[nodiscard]] std::string intervals_within(const Period&) const;

 private:
  struct Change {
    cellar::Date from{};
    std::optional<cellar::AppliedRule> rule;
  };
  std::vector<Change> changes_;
};

// A line without a cleaning: the longest stretch within the period, counted from the
// cleaning before it, or from its registration.
struct LongestWithout {
  std::int64_t days = 0;
  bool never_before = false;  // counted from its registration
  bool late = false;          // on some day of the period, longer than the rule of that day
};
// `cleanings` rise. Days after `today` are none of the period.
[[nodiscard]] LongestWithout longest_without(const std::vector<cellar::Date>& cleanings,
                                             std::optional<cellar::Date> registered,
                                             const LineRules&, const Period&, cellar::Date today);

}  // namespace ullage::report
