// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/cleaning_list.h"

#include <fmt/format.h>

#include "core/report/cleaning_words.h"
#include "core/report/names.h"

namespace ullage::report {

CleaningList cleaning_list(const cellar::PlannedDay& day, const cellar::CellarStatus& status,
                           const Speaker& s, const std::string& by) {
  CleaningList list;
  list.title = "Cleaning list";
  list.cellar = status.cellar ? status.cellar->name : "";
  list.day = say_date(day.day, s);
  list.printed = "Printed " + say_clock(s.now, s) + (by.empty() ? "" : " by " + by);
  list.costs = say_cost(day, s);
  for (std::size_t i = 0; i < day.steps.size(); ++i) {
    const cellar::PlanStep& step = day.steps[i];
    CleaningListStep row;
    row.what = fmt::format("{}. {}", i + 1, say_step(step, s));
    if (step.place) row.what += " · " + name_of(cellar::subject(*step.place), status);
    row.takes = say_amounts(step, s);
    row.caution = say_caution(step, s);
    for (const cellar::SubjectRef& thing : step.things)
      row.things.push_back(say_thing(thing, day, status));
    list.steps.push_back(std::move(row));
  }
  for (const cellar::LeftOut& l : day.left_out) list.left_out.push_back(say_left_out(l, status, s));
  list.signatures = {"Cleaned by", "Checked by"};
  list.footnote =
      "The label of each cleaner and your local rules come first. Release a line only by a check "
      "with litmus or pH.";
  return list;
}

}  // namespace ullage::report
