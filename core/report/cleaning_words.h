// SPDX-License-Identifier: GPL-3.0-or-later
//
// Due work, cleaning days and their steps in words. Short: they are read in a
// cold cellar with wet gloves on.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/cellar/cleaning_plan.h"
#include "core/report/say.h"

namespace ullage::report {

[[nodiscard]] std::string say(cellar::WorkKind, const Speaker&);   // "Acid against beer stone"
[[nodiscard]] std::string say(cellar::RuleScope, const Speaker&);  // "every line"

// "3 days overdue", "due today", "due Fri 4 Dec"
[[nodiscard]] std::string say_due(const cellar::DueWork&, const Speaker&);
// "put off to", or "brought forward to", before the day the work was moved to.
[[nodiscard]] std::string_view say_moved(const cellar::DueWork&);
// "every 14 days: trade handbook (US), 14 days"
[[nodiscard]] std::string say_rule(const cellar::AppliedRule&, const Speaker&);
// Why it is due, line by line: its rule, what was done last, other rules, put off.
[[nodiscard]] std::vector<std::string> say_why(const cellar::DueWork&, const Speaker&);

// "Line 1 – Clean the line will be 3 days overdue (every 14 days: own rule)"
[[nodiscard]] std::string say_will_be(const cellar::DueWork&, const cellar::CellarStatus& names,
                                      const Speaker&);

// "Every line before the cleaner goes in"
[[nodiscard]] std::string say_step(const cellar::PlanStep&, const Speaker&);
// What it takes: "2.3 L of solution: 114 mL of line cleaner, 2.2 L of water; 20 min contact"
[[nodiscard]] std::string say_amounts(const cellar::PlanStep&, const Speaker&);
// The caution that stands at the step; empty for none.
[[nodiscard]] std::string say_caution(const cellar::PlanStep&, const Speaker&);

[[nodiscard]] std::string say_reason(const cellar::PlannedDay&, const Speaker&);
// What the day costs, line by line. Money is in the cellar's own currency, which
// the program does not know: 1234 is said "12.34".
[[nodiscard]] std::vector<std::string> say_cost(const cellar::PlannedDay&, const Speaker&);
// "about 287 ± 22 mL of beer lost, worth 1.15 ± 0.09"
[[nodiscard]] std::string say_beer_lost(const cellar::BeerLost&, const Speaker&);
// A thing of a step: "K03", "K03, once it has run empty", or "Line 2, locked since
// Mon 19:20 by MK".
[[nodiscard]] std::string say_thing(const cellar::PlanStep&, cellar::SubjectRef,
                                    const cellar::PlannedDay&, const cellar::CellarStatus&,
                                    const Speaker&);
// A keg on the list that still has beer in it.
[[nodiscard]] bool waits_for_empty(cellar::SubjectRef, const cellar::PlannedDay&,
                                   const cellar::CellarStatus& now);
[[nodiscard]] std::string say_left_out(const cellar::LeftOut&, const cellar::CellarStatus& names,
                                       const Speaker&);
// "line cleaner with 30 % of active, used at 2 %"
[[nodiscard]] std::string say_cleaner(const cellar::Cleaner&, const Speaker&);
[[nodiscard]] std::string say_minutes(units::Duration, const Speaker&);  // "25 min", "2 h 10 min"

}  // namespace ullage::report
