// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/cleaning_day.h"

#include <algorithm>
#include <iterator>
#include <tuple>

#include "core/cellar/cleaning_steps.h"

namespace ullage::cellar {

namespace {

using WorkList = std::vector<DueWork>;

// How long before it is due work may be taken on with the rest.
std::chrono::days early_by(const DueWork& w) {
  const std::int64_t interval = w.governing.interval_days.value_or(0);
  return std::chrono::days(std::clamp<std::int64_t>(interval / 4, 1, due_soon.count()));
}

bool takes_acid(const DueWork& w) { return w.work == WorkKind::acid; }
bool takes_cleaner(const DueWork& w) {
  return w.work == WorkKind::caustic || w.work == WorkKind::keg_clean;
}

// What a day has of each before anything is planned on it.
struct Agents {
  bool acid = false, chlorine = false;
};

// In use that day already: logged on it, or standing in a line that has to be rinsed
// and released on it.
class AgentsOfDay {
 public:
  AgentsOfDay(Date day, const CellarStatus& cellar, const LocalCalendar& calendar,
              const CleaningKit& kit)
      : day_(day), calendar_(calendar) {
    for (const LineStatus& line : cellar.lines) {
      take(line.chemicals);
      if (day != calendar.date_of(cellar.now) || !line.lock || !line.record.in_use) continue;
      found_.acid = found_.acid || line.lock->agent_kind == LineAgent::acid;
      found_.chlorine = found_.chlorine || line.lock->agent_kind == LineAgent::chlorinated;
    }
    for (const KegStatus& keg : cellar.kegs) {
      take(keg.chemicals);
      const bool by_kit =
          kit.caustic.kind == LineAgent::chlorinated && on_day(keg.chemicals.washed);
      found_.chlorine =
          found_.chlorine || (by_kit && keg.chemicals.washed_with == kit.caustic.name);
    }
  }
  [[nodiscard]] Agents found() const { return found_; }

 private:
  [[nodiscard]] bool on_day(std::optional<Instant> at) const {
    return at && calendar_.date_of(*at) == day_;
  }
  void take(const LastChemicals& c) {
    found_.acid = found_.acid || on_day(c.acid);
    found_.chlorine = found_.chlorine || on_day(c.chlorine);
  }
  Date day_;
  const LocalCalendar& calendar_;
  Agents found_;
};

class DayFiller {
 public:
  DayFiller(PlannedDay& out, const CellarStatus& cellar, const LocalCalendar& calendar,
            const PlanWishes& wishes)
      : day_(out.day), cellar_(cellar), calendar_(calendar), wishes_(wishes), out_(out) {}

  void fill(const WorkList& all) {
    for (const DueWork& w : all) consider(w, all);
    keep_from_what_is_there();
    by_urgency(late_);
    by_urgency(early_);
    take_one_of_acid_and_chlorine();
    for (const DueWork& w : late_) leave(w, LeftOutWhy::no_time);
    std::stable_sort(out_.tasks.begin(), out_.tasks.end(), [](const auto& a, const auto& b) {
      return std::tie(a.work, a.due, a.about) < std::tie(b.work, b.due, b.about);
    });
  }

 private:
  void leave(const DueWork& w, LeftOutWhy why, std::optional<Date> until = {}) {
    out_.left_out.push_back({w, why, until});
  }

  void consider(const DueWork& w, const WorkList& all) {
    const std::optional<Date> follows = follows_caustic_to(w, all);
    const bool waits_for_caustic = follows && *follows > day_;
    if (waits_for_caustic || (w.put_off_to && *w.put_off_to > day_)) {
      if (w.due > day_) return;
      return leave(w, waits_for_caustic ? LeftOutWhy::follows_caustic : LeftOutWhy::put_off,
                   waits_for_caustic ? follows : w.put_off_to);
    }
    // Brought forward to a day, it is wanted from that day on, like due work.
    const Date wanted = std::min(w.due, planned_for(w));
    if (wanted > day_ + early_by(w)) return;
    const auto from = doable_from(w, cellar_, calendar_, wishes_);
    if (!from || *from > day_) {
      if (wanted <= day_) leave(w, LeftOutWhy::keg_has_beer);
      return;
    }
    (wanted <= day_ ? late_ : early_).push_back(w);
  }

  static void by_urgency(WorkList& list) {
    std::stable_sort(list.begin(), list.end(), [](const DueWork& a, const DueWork& b) {
      return std::tie(a.due, a.work, a.about) < std::tie(b.due, b.work, b.about);
    });
  }

  [[nodiscard]] bool stands_with(const DueWork& w, LineAgent agent) const {
    const LineStatus* line =
        w.about.kind == SubjectKind::line ? cellar_.find(LineId{w.about.uuid}) : nullptr;
    return line != nullptr && line->lock && line->lock->agent_kind == agent;
  }
  // Acid waits where chlorine was used that day or stands in a line, and so does a
  // chlorinated cleaner where acid does. A line that stands with the one never gets
  // the other before it is released, on whatever day.
  void keep_from_what_is_there() {
    const CleaningKit& kit = wishes_.kit;
    const Agents there = AgentsOfDay(day_, cellar_, calendar_, kit).found();
    const bool no_acid = there.chlorine || kit.acid.kind == LineAgent::chlorinated;
    leave_all(LeftOutWhy::acid_with_chlorine, [&](const DueWork& w) {
      return takes_acid(w) && (no_acid || stands_with(w, LineAgent::chlorinated));
    });
    if (kit.caustic.kind != LineAgent::chlorinated) return;
    leave_all(LeftOutWhy::chlorine_with_acid, [&](const DueWork& w) {
      return takes_cleaner(w) && (there.acid || stands_with(w, LineAgent::acid));
    });
  }
  template <class Which>
  void leave_all(LeftOutWhy why, Which which) {
    std::erase_if(late_, [&](const DueWork& w) {
      if (!which(w)) return false;
      leave(w, why);
      return true;
    });
    std::erase_if(early_, which);
  }

  // Of acid and a chlorinated cleaner the day has one. Acid waits, unless no cleaning
  // is due by then or none fits.
  void take_one_of_acid_and_chlorine() {
    const auto some = [](const WorkList& list, auto which) {
      return std::any_of(list.begin(), list.end(), which);
    };
    if (wishes_.kit.caustic.kind != LineAgent::chlorinated) return take_all_that_fit();
    const bool acid_first = some(late_, takes_acid) && !some(late_, takes_cleaner);
    const auto first = acid_first ? takes_acid : takes_cleaner;
    const auto second = acid_first ? takes_cleaner : takes_acid;
    WorkList held_late = hold_back(late_, second);
    WorkList held_early = hold_back(early_, second);
    take_all_that_fit();
    if (some(out_.tasks, first)) {
      for (const DueWork& w : held_late) leave(w, LeftOutWhy::acid_with_chlorine);
      return;
    }
    // What did not fit by itself fits no better with more on the list.
    std::erase_if(early_, first);
    late_.insert(late_.end(), held_late.begin(), held_late.end());
    early_.insert(early_.end(), held_early.begin(), held_early.end());
    by_urgency(late_);
    take_all_that_fit();
  }
  template <class Which>
  static WorkList hold_back(WorkList& from, Which which) {
    WorkList held;
    std::copy_if(from.begin(), from.end(), std::back_inserter(held), which);
    std::erase_if(from, which);
    return held;
  }

  // What is on the list makes more of its kind cheaper (one contact time for
  // all), so it is gone through until nothing more fits; the overdue first.
  void take_all_that_fit() {
    while (take_what_fits(late_) || take_what_fits(early_)) {
    }
  }
  // Takes the first that still fits; whether there was one.
  bool take_what_fits(WorkList& list) {
    for (auto at = list.begin(); at != list.end(); ++at) {
      out_.tasks.push_back(*at);
      if (time_for(out_.tasks, wishes_.kit) <= wishes_.time_at_hand) {
        list.erase(at);
        return true;
      }
      out_.tasks.pop_back();
    }
    return false;
  }

  Date day_;
  const CellarStatus& cellar_;
  const LocalCalendar& calendar_;
  const PlanWishes& wishes_;
  PlannedDay& out_;
  WorkList late_;   // overdue on the day, due on it, or brought forward to it
  WorkList early_;  // with the rest, if there is time
};

}  // namespace

bool keg_has_beer(const DueWork& w, const CellarStatus& cellar) {
  if (!is_keg(w) || (w.work != WorkKind::seals && w.work != WorkKind::keg_clean)) return false;
  const KegStatus* keg = cellar.find(KegId{w.about.uuid});
  return keg != nullptr && keg->contents.has_value();
}

const EmptyForecast* forecast_of(KegId keg, const PlanWishes& wishes) {
  const auto at = std::find_if(wishes.empties.begin(), wishes.empties.end(),
                               [&](const EmptyForecast& f) { return f.keg == keg; });
  return at == wishes.empties.end() ? nullptr : &*at;
}

std::optional<Date> doable_from(const DueWork& w, const CellarStatus& cellar,
                                const LocalCalendar& calendar, const PlanWishes& wishes) {
  if (!keg_has_beer(w, cellar)) return Date::min();
  const EmptyForecast* forecast = forecast_of(KegId{w.about.uuid}, wishes);
  if (forecast == nullptr) return std::nullopt;
  return calendar.date_of(forecast->when.likely);
}

void fill_day(PlannedDay& planned, const std::vector<DueWork>& all, const CellarStatus& cellar,
              const LocalCalendar& calendar, const PlanWishes& wishes) {
  DayFiller(planned, cellar, calendar, wishes).fill(all);
}

}  // namespace ullage::cellar
