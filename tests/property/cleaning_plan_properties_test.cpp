// SPDX-License-Identifier: GPL-3.0-or-later
//
// Of any cleaning day whatsoever: its steps come in a safe order, and nothing
// overdue is left out that would still fit.
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <map>

#include "tests/property/any_cleaning_cellar.h"

namespace ullage::testing {
namespace {

using namespace cellar;

struct Seen {
  bool locked = false, vented = false, chemical_in = false, caustic = false, acid = false;
  bool released = false;
  std::optional<LineAgent> stands_with;  // since before the day
};

// What a step does to one thing; refuses what is not safe for it.
void see(const PlanStep& s, bool line, bool already, Seen& seen) {
  switch (s.kind) {
    case StepKind::lock:
      // A line that stands locked has its lock, and cleaner in it, perhaps.
      RC_ASSERT(!seen.chemical_in || (seen.locked && already));
      RC_ASSERT(already == seen.locked);
      seen.locked = true;
      break;
    case StepKind::flush:
      seen.chemical_in = false;
      break;
    case StepKind::vent:
      seen.vented = true;
      break;
    case StepKind::caustic:
      RC_ASSERT(seen.vented);
      RC_ASSERT(!line || seen.locked);
      RC_ASSERT(!seen.acid);  // never after acid
      RC_ASSERT(seen.stands_with != LineAgent::acid || s.agent_kind != LineAgent::chlorinated);
      RC_ASSERT(!seen.released);
      seen.caustic = seen.chemical_in = true;
      break;
    case StepKind::acid:
      RC_ASSERT(seen.vented);
      RC_ASSERT(!line || seen.locked);
      RC_ASSERT(!seen.chemical_in);  // the caustic is rinsed out before
      RC_ASSERT(seen.stands_with != LineAgent::chlorinated);
      RC_ASSERT(!seen.released);
      seen.acid = seen.chemical_in = true;
      break;
    case StepKind::rinse:
    case StepKind::rinse_acid:
      seen.chemical_in = false;
      break;
    case StepKind::strip_down:
    case StepKind::coupler:
    case StepKind::seals:
      RC_ASSERT(seen.vented);        // vent before opening
      RC_ASSERT(!seen.chemical_in);  // and no hands in cleaner
      break;
    case StepKind::purge:
      RC_ASSERT(!seen.chemical_in);
      break;
    case StepKind::release:
      RC_ASSERT(seen.locked);
      RC_ASSERT(!seen.chemical_in);
      seen.released = true;
      break;
    default:
      break;
  }
}

// Walks the steps and refuses the first that is not safe. On today's list the lines
// that stand locked have to come out of it released; by another day they may be.
void require_safe(const std::vector<PlanStep>& steps, const AnyCellar& any,
                  const CellarStatus& status, bool today) {
  std::map<SubjectRef, Seen> of;
  bool chlorine_there = today && any.used_today(LineAgent::chlorinated);
  bool acid_there = today && any.used_today(LineAgent::acid);
  for (const LineStatus& line : status.lines) {
    if (!line.lock) continue;
    Seen& seen = of[subject(line.record.line)];
    seen.stands_with = line.lock->agent_kind;
    if (!today) continue;
    seen.locked = seen.chemical_in = true;
    chlorine_there = chlorine_there || seen.stands_with == LineAgent::chlorinated;
    acid_there = acid_there || seen.stands_with == LineAgent::acid;
  }
  bool chlorine = false;
  bool any_acid = false;
  for (const PlanStep& s : steps) {
    RC_ASSERT(!(acid_there && s.agent_kind == LineAgent::chlorinated));
    RC_ASSERT(!(chlorine_there && s.agent_kind == LineAgent::acid));
    chlorine = chlorine || s.agent_kind == LineAgent::chlorinated;
    any_acid = any_acid || s.agent_kind == LineAgent::acid;
    RC_ASSERT(!s.things.empty());
    for (const SubjectRef& thing : s.things) {
      Seen& seen = of[thing];
      see(s, thing.kind == SubjectKind::line, s.locked_before(thing) != nullptr, seen);
    }
  }
  RC_ASSERT(!(chlorine && any_acid));
  for (const auto& [thing, seen] : of) {
    RC_ASSERT(!seen.chemical_in);
    RC_ASSERT(!seen.locked || seen.released);
  }
}

PlanWishes any_wishes(const AnyCellar& any) {
  PlanWishes w;
  w.from = any.calendar.date_of(any.now);
  w.empties = any.empties;
  w.kit = usual_kit();
  w.time_at_hand = units::minutes(drawn(1, 400));
  if (drawn(0, 3) == 0) w.kit.caustic.kind = LineAgent::chlorinated;
  if (drawn(0, 9) == 0) w.kit.acid.kind = LineAgent::chlorinated;
  return w;
}

// No keg is washed or opened with beer in it, but one that is forecast to be empty
// by then; and the list says so.
void require_empty(const PlannedDay& day, const CellarStatus& status, const LocalCalendar& calendar,
                   const PlanWishes& wishes) {
  for (const DueWork& t : day.tasks) {
    if (t.work != WorkKind::keg_clean && t.work != WorkKind::seals) continue;
    const KegId id{t.about.uuid};
    const KegStatus* keg = status.find(id);
    if (keg == nullptr || !keg->contents) continue;
    const auto forecast = std::ranges::find(wishes.empties, id, &EmptyForecast::keg);
    RC_ASSERT(forecast != wishes.empties.end());
    RC_ASSERT(calendar.date_of(forecast->when.likely) <= day.day);
    RC_ASSERT(std::ranges::count(day.when_empty, id) == 1);
  }
}

RC_GTEST_PROP(CleaningPlanProperties, StepsComeInASafeOrder, ()) {
  const AnyCellar any;
  const CellarStatus status = Replay(any.journal, any.calendar).status(any.now);
  const auto due = due_work(any.journal, status, any.calendar);
  const PlanWishes wishes = any_wishes(any);
  for (const PlannedDay& day : propose_cleaning_days(due, status, any.calendar, wishes)) {
    require_safe(day.steps, any, status, day.day == any.calendar.date_of(any.now));
    require_empty(day, status, any.calendar, wishes);
    const BeerLost& beer = day.cost.beer;
    RC_ASSERT(beer.least <= beer.likely);
    RC_ASSERT(beer.likely <= beer.most);
    // Every task of the day is ended by exactly one step.
    std::vector<int> ended(day.tasks.size(), 0);
    for (const PlanStep& s : day.steps) {
      for (const std::size_t t : s.tasks) ++ended.at(t);
    }
    for (const int n : ended) RC_ASSERT(n == 1);
  }
}

// The reason given for a task left out is a true one.
void require_true(const LeftOut& left, const PlannedDay& day, const AnyCellar& any,
                  const std::vector<DueWork>& due, const CellarStatus& status,
                  const PlanWishes& wishes) {
  const auto chlorine = [](const Cleaner& c) { return c.kind == LineAgent::chlorinated; };
  const bool today = day.day == any.calendar.date_of(any.now);
  const auto there = [&](LineAgent agent) {
    return (today && any.used_today(agent)) ||
           std::ranges::any_of(status.lines, [&](const LineStatus& l) {
             return l.lock && l.lock->agent_kind == agent &&
                    (today || subject(l.record.line) == left.task.about);
           });
  };
  // In brackets of their own: RapidCheck’s && and || ask both sides.
  switch (left.why) {
    case LeftOutWhy::no_time: {
      std::vector<DueWork> with = day.tasks;
      with.push_back(left.task);
      RC_ASSERT(time_for(with, wishes.kit) > wishes.time_at_hand);
      break;
    }
    case LeftOutWhy::keg_has_beer: {
      const KegStatus* keg = status.find(KegId{left.task.about.uuid});
      RC_ASSERT((keg != nullptr && keg->contents.has_value()));
      const auto forecast =
          std::ranges::find(wishes.empties, KegId{left.task.about.uuid}, &EmptyForecast::keg);
      RC_ASSERT((forecast == wishes.empties.end() ||
                 any.calendar.date_of(forecast->when.likely) > day.day));
      break;
    }
    case LeftOutWhy::acid_with_chlorine: {
      const bool on_list = std::ranges::any_of(
          day.steps, [](const PlanStep& s) { return s.agent_kind == LineAgent::chlorinated; });
      RC_ASSERT(left.task.work == WorkKind::acid);
      RC_ASSERT((on_list || chlorine(wishes.kit.acid) || there(LineAgent::chlorinated)));
      break;
    }
    case LeftOutWhy::chlorine_with_acid:
      RC_ASSERT((chlorine(wishes.kit.caustic) && there(LineAgent::acid)));
      break;
    case LeftOutWhy::put_off:
      RC_ASSERT((left.task.put_off_to && *left.task.put_off_to > day.day));
      break;
    case LeftOutWhy::follows_caustic: {
      const auto caustic = std::ranges::find_if(due, [&](const DueWork& w) {
        return w.work == WorkKind::caustic && w.about == left.task.about;
      });
      RC_ASSERT((left.task.work == WorkKind::acid && caustic != due.end()));
      RC_ASSERT((caustic->put_off_to && *caustic->put_off_to > day.day));
      break;
    }
  }
}

void require_nothing_left(const PlannedDay& day, const AnyCellar& any,
                          const std::vector<DueWork>& due, const CellarStatus& status,
                          const PlanWishes& wishes) {
  RC_ASSERT((day.tasks.empty() || time_for(day.tasks, wishes.kit) <= wishes.time_at_hand));
  for (const LeftOut& left : day.left_out) require_true(left, day, any, due, status, wishes);
  for (const DueWork& w : due) {
    const bool wanted = w.due <= day.day || (w.put_off_to && *w.put_off_to <= day.day);
    const bool waits_silently =
        w.due > day.day && follows_caustic_to(w, due).value_or(day.day) > day.day;
    const auto is_it = [&](const DueWork& t) { return t.same_work(w); };
    const auto left =
        std::ranges::count_if(day.left_out, [&](const LeftOut& l) { return is_it(l.task); });
    const auto taken = std::ranges::count_if(day.tasks, is_it);
    RC_ASSERT(left + taken <= 1);
    if (wanted && !waits_silently) RC_ASSERT(left + taken == 1);  // never silently
    if (taken == 1 && w.put_off_to) RC_ASSERT(*w.put_off_to <= day.day);
  }
}

RC_GTEST_PROP(CleaningPlanProperties, NothingOverdueIsLeftThatStillFits, ()) {
  const AnyCellar any;
  const CellarStatus status = Replay(any.journal, any.calendar).status(any.now);
  const auto due = due_work(any.journal, status, any.calendar);
  const Date today = any.calendar.date_of(any.now);
  const PlanWishes wishes = any_wishes(any);
  require_nothing_left(plan_cleaning_day(today, due, status, any.calendar, wishes), any, due,
                       status, wishes);
  for (const PlannedDay& day : propose_cleaning_days(due, status, any.calendar, wishes)) {
    require_nothing_left(day, any, due, status, wishes);
  }
}

}  // namespace
}  // namespace ullage::testing
