// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/cleaning_list.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>

#include "core/report/cleaning_words.h"
#include "core/report/log_rows.h"
#include "core/report/names.h"

namespace ullage::report {

namespace {

std::string weekday_name(cellar::Date day) {
  constexpr std::array names = {"Sunday",   "Monday", "Tuesday", "Wednesday",
                                "Thursday", "Friday", "Saturday"};
  return names.at(std::chrono::weekday(day).c_encoding());
}

}  // namespace

CleaningList cleaning_list(const cellar::PlannedDay& day, const cellar::CellarStatus& status,
                           const Speaker& s, const std::string& by,
                           const cellar::CleaningKit* assumed) {
  CleaningList list;
  list.title = "Cleaning list";
  list.cellar = status.cellar ? status.cellar->name : "";
  list.date = iso_day(day.day);
  list.day = weekday_name(day.day) + ", " + list.date;
  list.printed = "Printed " + say_clock(s.now, s) + (by.empty() ? "" : " by " + by);
  list.costs = say_cost(day, s);
  for (std::size_t i = 0; i < day.steps.size(); ++i) {
    const cellar::PlanStep& step = day.steps[i];
    CleaningListStep row;
    row.what = fmt::format("{}. {}", i + 1, say_step(step, s));
    if (step.place) row.what += " · " + name_of(cellar::subject(*step.place), status);
    row.takes = say_amounts(step, s);
    row.caution = say_caution(step, s);
    for (const cellar::SubjectRef& thing : step.things) {
      row.things.push_back(
          {say_thing(step, thing, day, status, s), step.locked_before(thing) != nullptr});
    }
    list.steps.push_back(std::move(row));
  }
  for (const cellar::LeftOut& l : day.left_out) list.left_out.push_back(say_left_out(l, status, s));
  list.signatures = {"Cleaned by", "Checked by"};
  list.footnote =
      "The label of each cleaner and your local rules come first. Release a line only by a check "
      "with litmus or pH.";
  if (assumed == nullptr) return list;
  for (const cellar::Cleaner* cleaner : {&assumed->caustic, &assumed->acid}) {
    const bool used = std::any_of(day.steps.begin(), day.steps.end(), [&](const auto& step) {
      return step.agent_kind == cleaner->kind && step.agent == cleaner->name;
    });
    if (used) list.assumed.push_back(say_cleaner(*cleaner, s));
  }
  return list;
}

std::string json_of(const CleaningList& list) {
  using nlohmann::ordered_json;
  ordered_json steps = ordered_json::array();
  for (const CleaningListStep& step : list.steps) {
    ordered_json things = ordered_json::array();
    for (const CleaningListThing& thing : step.things) {
      things.push_back({{"name", thing.name}, {"done", thing.done}});
    }
    steps.push_back({{"what", step.what},
                     {"takes", step.takes},
                     {"caution", step.caution},
                     {"things", std::move(things)}});
  }
  ordered_json all;
  all["cellar"] = list.cellar;
  all["day"] = list.date;
  all["costs"] = list.costs;
  all["steps"] = std::move(steps);
  all["not_on_the_list"] = list.left_out;
  all["assumed_cleaners"] = list.assumed;
  return all.dump(2, ' ', false, ordered_json::error_handler_t::replace) + "\n";
}

}  // namespace ullage::report
