// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is due: every rule in force on every thing, against what the journal
// says was done. A pure function of the journal and the day.
//
// What counts as done: a line's caustic by a cleaning with any cleaner but acid
// and water; its acid by a cleaning with acid; strip-down and coupler by that
// cleaning's ticks; a keg's cleaning by any but a mere rinse; seals by an
// inspection that renewed them; an alarm by a check it passed; a leak test that
// found none; and each of them by a WorkDone that is complete. A partial one
// counts for nothing but is told. Work never done counts from when the thing was
// registered. Keg cleaning without an interval is due from the day a keg was
// emptied; a bottle's test on its stamped date, or the one last certified.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/cellar/journal.h"
#include "core/cellar/work_rules.h"

namespace ullage::cellar {

// How far away counts as soon.
inline constexpr std::chrono::days due_soon{7};

enum class DueState { overdue, soon, later };  // soon: today included

struct DueWork {
  WorkKind work = WorkKind::caustic;
  SubjectRef about;
  AppliedRule governing;               // the one that falls due first
  std::vector<AppliedRule> also;       // other rules for the same, strictest first
  std::optional<Instant> last_done;    // never, when absent
  std::optional<Instant> partly_done;  // begun since then, not finished
  Date due;
  DueState state = DueState::later;
  std::int64_t days_over = 0;      // 0 unless overdue
  std::optional<Date> put_off_to;  // planned for that day
  std::string put_off_because;
  [[nodiscard]] bool same_work(const DueWork& o) const {
    return work == o.work && about == o.about;
  }
};

// Overdue first, then by day; within a day by kind of work and thing. One row
// for each kind of work on each thing.
[[nodiscard]] std::vector<DueWork> due_work(const Journal&, const CellarStatus&,
                                            const LocalCalendar&);

// The lines' cleaning alone, which every status of the cellar tells: the same rows
// that due_work has of it. Asks nothing of `cellar` but its lines, rules and now.
[[nodiscard]] std::vector<DueWork> due_line_cleaning(const Journal&, const CellarStatus&,
                                                     const LocalCalendar&);
// Puts that into the lines' status: when they were cleaned and are due, and the
// advice of those overdue. To be called before kegs are joined to lines.
void tell_line_cleaning(CellarStatus&, const Journal&, const LocalCalendar&);  // line_status.cpp
// The rule that governs when a line is to be cleaned; the one with the shortest
// interval, since all count from the same cleaning.
[[nodiscard]] std::optional<AppliedRule> line_cleaning_rule(LineId, const CellarStatus&);
// The next step of a keg on tap where its line is due. Nothing for a locked line.
void tell_next_by_line(KegStatus&, const LineStatus&, Date today);  // keg_words.cpp

// Seals renewed, by an inspection or as work of its own.
[[nodiscard]] bool renews_seals(const Payload&);

// The day a row is planned for: the one it was moved to, else the one it is due.
[[nodiscard]] inline Date planned_for(const DueWork& row) {
  return row.put_off_to.value_or(row.due);
}
// The day that a line's acid waits for, because its caustic was put off; the acid
// follows it. Nothing for other work.
[[nodiscard]] std::optional<Date> follows_caustic_to(const DueWork& row,
                                                     const std::vector<DueWork>& all);

// Whether a line cleaned with it counts as cleaned by caustic: acid takes off stone,
// water nothing.
[[nodiscard]] constexpr bool counts_as_caustic(LineAgent agent) {
  return agent != LineAgent::water && agent != LineAgent::acid;
}

// How a row stands on another day.
[[nodiscard]] DueState state_on(Date due, Date day);

// What would be overdue, on the day, if this row were moved there: itself, and
// the work on the same line that has to come after it (acid follows caustic).
// Empty when nothing would.
[[nodiscard]] std::vector<DueWork> overdue_if_moved(const std::vector<DueWork>& all,
                                                    const DueWork& row, Date to);

}  // namespace ullage::cellar
