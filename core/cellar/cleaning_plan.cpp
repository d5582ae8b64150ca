// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/cleaning_plan.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

#include "core/cellar/cleaning_day.h"
#include "core/cellar/cleaning_steps.h"

namespace ullage::cellar {

namespace {

// The washing that a rule asks for after each emptying, of the kegs that are
// still to run empty: due on the day they do.
std::vector<DueWork> with_washing_to_come(const std::vector<DueWork>& all,
                                          const CellarStatus& cellar, const LocalCalendar& calendar,
                                          const PlanWishes& wishes) {
  std::vector<DueWork> known = all;
  const Date today = calendar.date_of(cellar.now);
  for (const AppliedRule& rule : applied_rules(cellar, {})) {
    if (rule.work != WorkKind::keg_clean || rule.interval_days) continue;
    const EmptyForecast* forecast = forecast_of(KegId{rule.about.uuid}, wishes);
    if (forecast == nullptr) continue;
    DueWork row;
    row.work = rule.work;
    row.about = rule.about;
    row.governing = rule;
    row.due = calendar.date_of(forecast->when.likely);
    row.state = state_on(row.due, today);
    const auto same = std::find_if(known.begin(), known.end(),
                                   [&](const DueWork& w) { return w.same_work(row); });
    if (same == known.end()) known.push_back(std::move(row));
  }
  return known;
}

class CostTeller {
 public:
  CostTeller(const CellarStatus& cellar, const LocalCalendar& calendar, const PlanWishes& wishes)
      : cellar_(cellar), calendar_(calendar), wishes_(wishes) {}

  [[nodiscard]] DayCost tell(const PlannedDay& day) const {
    DayCost cost;
    std::set<LineId> flushed;
    for (const DueWork& t : day.tasks) {
      if (t.work == WorkKind::caustic || t.work == WorkKind::acid) {
        flushed.insert(LineId{t.about.uuid});
      }
      count_late(cost, t, day.day);
    }
    for (const LeftOut& l : day.left_out) count_late(cost, l.task, day.day);
    Spill spill;
    for (const LineId line : flushed) lose(cost, spill, line, day.day);
    spill.tell(cost.beer);
    cost.time = time_for(day.tasks, wishes_.kit);
    for (const PlanStep& s : day.steps) {
      if (s.gas) cost.gas += *s.gas;
    }
    return cost;
  }

 private:
  static void count_late(DayCost& cost, const DueWork& t, Date day) {
    const std::int64_t over = (day - t.due).count();
    if (over <= 0) return;
    ++cost.late;
    cost.most_days_late = std::max(cost.most_days_late, over);
  }
  // A sum of beer in lines and of what it is worth, with their spreads.
  struct Sum {
    double litres = 0, litres_squared = 0, price = 0, price_squared = 0;
    void add(const units::Estimate<Volume>& beer, std::int64_t minor_per_litre) {
      const double wide = units::in_litres(beer.error());
      const auto each = static_cast<double>(minor_per_litre);
      litres += units::in_litres(beer.value());
      litres_squared += wide * wide;
      price += each * units::in_litres(beer.value());
      price_squared += each * each * wide * wide;
    }
  };
  // By how sure it is that the keg still has beer on the day.
  struct Spill {
    Sum sure, likely, possible;
    void tell(BeerLost& out) const {
      out.likely = units::litres(likely.litres);
      out.least = units::litres(std::max(0.0, sure.litres - std::sqrt(sure.litres_squared)));
      out.most = units::litres(possible.litres + std::sqrt(possible.litres_squared));
      out.price_minor = std::llround(likely.price);
      out.price_least = std::llround(std::max(0.0, sure.price - std::sqrt(sure.price_squared)));
      out.price_most = std::llround(possible.price + std::sqrt(possible.price_squared));
    }
  };

  void lose(DayCost& cost, Spill& spill, LineId id, Date day) const {
    const LineStatus* line = cellar_.find(id);
    if (line == nullptr || !line->keg) return;
    const KegStatus* keg = cellar_.find(*line->keg);
    if (keg == nullptr || !keg->contents) return;
    const EmptyForecast* f = forecast_of(*line->keg, wishes_);
    const auto by_then = [&](Instant at) { return calendar_.date_of(at) <= day; };
    const bool runs_empty = f != nullptr && by_then(f->when.likely);
    if (runs_empty) ++cost.lines_run_empty;
    if (f != nullptr && f->when.latest && by_then(*f->when.latest)) return;
    const auto beer = beer_in_line(id, cellar_);
    if (!beer) {
      if (!runs_empty) ++cost.lines_unmeasured;
      return;
    }
    const auto& price = keg->contents->beer.price_minor_per_litre;
    if (!price && !runs_empty) ++cost.lines_unpriced;
    spill.possible.add(*beer, price.value_or(0));
    if (runs_empty) return;
    spill.likely.add(*beer, price.value_or(0));
    if (f == nullptr || !by_then(f->when.earliest)) spill.sure.add(*beer, price.value_or(0));
  }

  const CellarStatus& cellar_;
  const LocalCalendar& calendar_;
  const PlanWishes& wishes_;
};

bool loses_less(const DayCost& a, const DayCost& b) {
  // A tenth of a litre is nothing to move a day for.
  return units::in_litres(a.beer.likely) < units::in_litres(b.beer.likely) - 0.1;
}

}  // namespace

std::vector<EmptyForecast> kegs_running_empty(const CellarStatus& cellar) {
  std::vector<EmptyForecast> empties;
  for (const KegStatus& keg : cellar.kegs) {
    if (keg.contents && keg.level.runs_out) {
      empties.push_back({keg.record.keg, *keg.level.runs_out});
    }
  }
  return empties;
}

CleaningKit usual_kit() {
  CleaningKit kit;
  kit.caustic.name = "line cleaner";
  // A common strength as sold: 30 % NaOH by weight, 1.33 kg/L (from memory).
  kit.caustic.label = {units::fraction(0.30), units::kilograms_per_cubic_metre(1330)};
  kit.acid.kind = LineAgent::acid;
  kit.acid.name = "acid cleaner";
  kit.acid.strength = units::fraction(0.01);
  // 75 % phosphoric acid, 1.58 kg/L (from memory).
  kit.acid.label = {units::fraction(0.75), units::kilograms_per_cubic_metre(1580)};
  return kit;
}

const LineLock* PlanStep::locked_before(SubjectRef thing) const {
  const auto at = std::find_if(locked.begin(), locked.end(),
                               [&](const LineLock& lock) { return subject(lock.line) == thing; });
  return at == locked.end() ? nullptr : &*at;
}

PlanWishes usual_wishes(const CellarStatus& cellar, const LocalCalendar& calendar) {
  PlanWishes wishes;
  wishes.from = calendar.date_of(cellar.now);
  wishes.kit = usual_kit();
  wishes.empties = kegs_running_empty(cellar);
  return wishes;
}

PlannedDay plan_cleaning_day(Date day, const std::vector<DueWork>& all, const CellarStatus& cellar,
                             const LocalCalendar& calendar, const PlanWishes& wishes) {
  PlannedDay planned;
  planned.day = day;
  fill_day(planned, with_washing_to_come(all, cellar, calendar, wishes), cellar, calendar, wishes);
  for (const DueWork& t : planned.tasks) {
    const KegId keg{t.about.uuid};
    const auto& told = planned.when_empty;
    if (!keg_has_beer(t, cellar) || std::find(told.begin(), told.end(), keg) != told.end())
      continue;
    planned.when_empty.push_back(keg);
  }
  std::vector<LineLock> standing;
  if (day == calendar.date_of(cellar.now)) {
    for (const LineStatus& l : cellar.lines) {
      if (l.lock && l.record.in_use) standing.push_back(*l.lock);
    }
  }
  planned.steps = steps_of(planned.tasks, cellar, wishes.kit, standing);
  planned.cost = CostTeller(cellar, calendar, wishes).tell(planned);
  return planned;
}

std::vector<PlannedDay> propose_cleaning_days(const std::vector<DueWork>& all,
                                              const CellarStatus& cellar,
                                              const LocalCalendar& calendar,
                                              const PlanWishes& wishes) {
  const Date last = wishes.from + wishes.horizon;
  // The day on which the first thing falls due, or the first day that is asked
  // for when it is due by then; moved work counts from the day it was moved to.
  std::optional<Date> first;
  bool overdue = false;
  for (const DueWork& w : with_washing_to_come(all, cellar, calendar, wishes)) {
    const auto from = doable_from(w, cellar, calendar, wishes);
    if (!from) continue;
    const Date due =
        std::max({planned_for(w), *from, follows_caustic_to(w, all).value_or(planned_for(w))});
    if (!first || due < *first) first = due;
    overdue = overdue || (due == w.due && w.due < wishes.from);
  }
  if (!first || *first > last) return {};
  const Date day = std::max(*first, wishes.from);
  std::vector<PlannedDay> proposed;
  proposed.push_back(plan_cleaning_day(day, all, cellar, calendar, wishes));
  proposed.front().why = overdue ? DayReason::overdue_now : DayReason::first_falls_due;
  if (day >= last) return proposed;
  PlannedDay other = plan_cleaning_day(day + std::chrono::days(1), all, cellar, calendar, wishes);
  other.why = DayReason::a_day_later;
  for (Date d = day + std::chrono::days(1); d <= last; d += std::chrono::days(1)) {
    PlannedDay candidate = plan_cleaning_day(d, all, cellar, calendar, wishes);
    const DayCost& best =
        other.why == DayReason::least_beer_lost ? other.cost : proposed.front().cost;
    if (!loses_less(candidate.cost, best)) continue;
    other = std::move(candidate);
    other.why = DayReason::least_beer_lost;
  }
  proposed.push_back(std::move(other));
  return proposed;
}

}  // namespace ullage::cellar
