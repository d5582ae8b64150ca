// SPDX-License-Identifier: GPL-3.0-or-later
//
// Of any cleaning day whatsoever: its steps come in a safe order, and nothing
// overdue is left out that would still fit.
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <map>

#include "core/cellar/cleaning_plan.h"
#include "core/cellar/presets.h"
#include "core/cellar/replay.h"
#include "tests/support/entry_maker.h"

namespace ullage::testing {
namespace {

using namespace cellar;

class UtcCalendar final : public LocalCalendar {
 public:
  [[nodiscard]] std::string zone_name() const override { return "Etc/UTC"; }
  [[nodiscard]] UtcOffset offset_at(Instant) const override { return UtcOffset(0); }
  [[nodiscard]] std::optional<Instant> to_instant(LocalTime local) const override {
    return Instant(local.time_since_epoch());
  }
};

int drawn(int low, int high) { return *rc::gen::inRange(low, high + 1); }

// A cellar with up to five lines, four kegs and two places, any rules, and work
// done at any time before.
struct AnyCellar {
  Journal journal;
  UtcCalendar calendar;
  EntryMaker maker;
  std::vector<LineId> lines;
  std::vector<KegId> kegs;
  std::vector<PlaceId> places;
  std::vector<EmptyForecast> empties;
  Instant now = minute(60 * 24 * 200);

  AnyCellar() {
    for (int i = 0; i < 2; ++i) {
      PlaceRecord p;
      p.place = maker.ids.make<PlaceId>();
      p.name = "P" + std::to_string(i);
      p.sensor_height = units::metres(0.3);
      places.push_back(p.place);
      log(0, p);
    }
    add_lines(drawn(0, 5));
    add_kegs(drawn(0, 4));
    add_rules(drawn(1, 6));
    for (int i = drawn(0, 15); i > 0; --i) do_work();
    for (const LineId line : lines) {
      if (drawn(0, 3) > 0) continue;
      log(drawn(151, 199), LineLocked{line, static_cast<LineAgent>(drawn(0, 3)), "", "drawn"});
    }
  }

 private:
  void log(int day, Payload p) { journal.append(maker.make(minute(60 * 24 * day), std::move(p))); }
  void add_lines(int many) {
    for (int i = 0; i < many; ++i) {
      LineRecord l;
      l.line = maker.ids.make<LineId>();
      l.name = "L" + std::to_string(i);
      l.place = places[static_cast<std::size_t>(drawn(0, 1))];
      if (drawn(0, 3) > 0) {
        l.length = units::metres(drawn(1, 30));
        l.bore = units::metres(0.001 * drawn(4, 12));
      }
      lines.push_back(l.line);
      log(drawn(0, 150), l);
    }
  }
  void add_kegs(int many) {
    for (int i = 0; i < many; ++i) {
      KegRecord k = keg_from_preset(KegKind::ball_lock_19);
      k.keg = maker.ids.make<KegId>();
      k.tag = "K" + std::to_string(i);
      k.place = places[static_cast<std::size_t>(drawn(0, 1))];
      kegs.push_back(k.keg);
      const int day = drawn(0, 150);
      log(day, k);
      const int story = drawn(0, 2);
      if (story == 0) log(day + 1, Emptied{k.keg});
      if (story == 1) fill(k.keg, day + 1);
    }
  }
  // With beer in it, perhaps on a line; perhaps running empty soon.
  void fill(KegId keg, int day) {
    BeerRecord beer;
    beer.beer = maker.ids.make<BeerId>();
    beer.name = "B" + std::to_string(day);
    log(day, beer);
    BatchRecord batch;
    batch.batch = maker.ids.make<BatchId>();
    batch.beer = beer.beer;
    batch.name = "1";
    log(day, batch);
    Filled f;
    f.keg = keg;
    f.batch = batch.batch;
    f.volume = units::litres(18);
    log(day, f);
    if (next_line_ < lines.size() && drawn(0, 1) == 0) {
      log(day + 1, Tapped{keg, lines[next_line_++]});
    }
    if (drawn(0, 2) == 0) return;
    const auto hours = std::chrono::hours(drawn(1, 24 * 20));
    empties.push_back({keg, {now + hours / 2, now + hours, now + 2 * hours}});
  }
  void add_rules(int many) {
    for (int i = 0; i < many; ++i) {
      RuleRecord r;
      r.rule = maker.ids.make<RuleId>();
      r.scope = static_cast<RuleScope>(drawn(0, 5));
      const auto works = works_of(r.scope);
      r.work = works[static_cast<std::size_t>(drawn(0, static_cast<int>(works.size()) - 1))];
      if (drawn(0, 5) > 0) r.interval_days = drawn(1, 120);
      r.source = "drawn";
      log(0, r);
    }
  }
  void do_work() {
    WorkDone w;
    w.work = static_cast<WorkKind>(drawn(0, 9));
    w.complete = drawn(0, 3) > 0;
    if (!lines.empty() && drawn(0, 1) == 0) {
      w.line = lines[static_cast<std::size_t>(drawn(0, static_cast<int>(lines.size()) - 1))];
    } else {
      w.place = places[static_cast<std::size_t>(drawn(0, 1))];
    }
    log(drawn(1, 199), w);
  }
  std::size_t next_line_ = 0;
};

struct Seen {
  bool locked = false, vented = false, chemical_in = false, caustic = false, acid = false;
  bool released = false, rinsed_between = true;
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
      RC_ASSERT(!seen.released);
      seen.caustic = seen.chemical_in = true;
      break;
    case StepKind::acid:
      RC_ASSERT(seen.vented);
      RC_ASSERT(!line || seen.locked);
      RC_ASSERT(!seen.chemical_in);  // the caustic is rinsed out before
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
void require_safe(const std::vector<PlanStep>& steps, const CellarStatus& status, bool today) {
  std::map<SubjectRef, Seen> of;
  for (const LineStatus& line : status.lines) {
    if (!today || !line.lock) continue;
    Seen& seen = of[subject(line.record.line)];
    seen.locked = seen.chemical_in = true;
  }
  bool chlorine = false;
  bool any_acid = false;
  for (const PlanStep& s : steps) {
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
    require_safe(day.steps, status, day.day == any.calendar.date_of(any.now));
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

RC_GTEST_PROP(CleaningPlanProperties, NothingOverdueIsLeftThatStillFits, ()) {
  const AnyCellar any;
  const CellarStatus status = Replay(any.journal, any.calendar).status(any.now);
  const auto due = due_work(any.journal, status, any.calendar);
  const Date today = any.calendar.date_of(any.now);
  const PlanWishes wishes = any_wishes(any);
  const PlannedDay day = plan_cleaning_day(today, due, status, any.calendar, wishes);
  RC_ASSERT(day.tasks.empty() || time_for(day.tasks, wishes.kit) <= wishes.time_at_hand);
  for (const DueWork& w : due) {
    if (w.state != DueState::overdue) continue;
    const auto is_it = [&](const DueWork& t) { return t.same_work(w); };
    if (std::ranges::any_of(day.tasks, is_it)) continue;
    const auto left =
        std::ranges::find_if(day.left_out, [&](const LeftOut& l) { return l.task.same_work(w); });
    RC_ASSERT(left != day.left_out.end());  // never silently
    if (left->why != LeftOutWhy::no_time) continue;
    std::vector<DueWork> with = day.tasks;
    with.push_back(w);
    RC_ASSERT(time_for(with, wishes.kit) > wishes.time_at_hand);
  }
}

}  // namespace
}  // namespace ullage::testing
