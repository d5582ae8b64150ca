// SPDX-License-Identifier: GPL-3.0-or-later
//
// The log books of a cellar over a period, as an inspector, an owner or an
// insurer asks for them. Told from the journal as it stands: what was struck or
// corrected is shown, crossed through, with who did so, and counts in no total.
// Days are those of the cellar's calendar, and the speaker's now is when the log
// is told.
#pragma once

#include <string>

#include "core/report/table_sheet.h"

namespace ullage::report {

// Each cleaning of a line: beer before and after, start, agent and strength,
// method, soak, water temperature, flush check, parts, beer lost, who cleaned,
// who released and countersigned, next due and by which rule, remarks; and other
// work done on a line (taken apart, seals renewed), told as what it was. A box
// counts the cleanings of every line and the longest time without one, late or not by the rule
// of then (line_rules.h).
[[nodiscard]] TableSheet line_cleaning_log(const cellar::Journal&, const cellar::CellarStatus& now,
                                           const Period&, const Speaker&, const std::string& by);

// Temperatures as read, with the thermometer and what the place was set to then; those too far
// from it are marked, and a box says how far that is and whose figure.
[[nodiscard]] TableSheet temperature_log(const cellar::Journal&, const cellar::CellarStatus& now,
                                         const Period&, const Speaker&, const std::string& by);

// Bottles weighed, changed and gauged, joints tested for leaks, alarms tried.
[[nodiscard]] TableSheet gas_log(const cellar::Journal&, const cellar::CellarStatus& now,
                                 const Period&, const Speaker&, const std::string& by);

// Beer lost: what, where from, how much, why, what it cost at the beer's price.
// Beer lost when lines were cleaned is taken from the cleanings.
[[nodiscard]] TableSheet wastage_book(const cellar::Journal&, const cellar::CellarStatus& now,
                                      const Period&, const Speaker&, const std::string& by);

// Everything that was logged, a line each, as the Log page tells it.
[[nodiscard]] TableSheet entry_log(const cellar::Journal&, const cellar::CellarStatus& now,
                                   const Period&, const Speaker&, const std::string& by);

}  // namespace ullage::report
