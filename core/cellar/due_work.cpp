// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/due_work.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "core/cellar/register.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

// What a thing's story says about one kind of work on it.
struct WorkRecord {
  std::optional<Instant> done;
  std::optional<Instant> partly;
  std::optional<Instant> registered;
  std::optional<Date> put_off_to;
  std::string put_off_because;
};

class WorkReader {
 public:
  WorkReader(SubjectRef about, WorkKind work) : about_(about), work_(work) {}

  [[nodiscard]] WorkRecord read(const Journal& journal) {
    for (const Entry* entry : journal.story(about_)) {
      at_ = entry->header.happened_at;
      if (registers(entry->payload) == about_ && !out_.registered) out_.registered = at_;
      visit([this](const auto& p) { on(p); }, entry->payload);
    }
    return std::move(out_);
  }

 private:
  void done() {
    out_.done = at_;
    out_.partly.reset();
    out_.put_off_to.reset();
    out_.put_off_because.clear();
  }
  void done_if(WorkKind work, bool really = true) {
    if (work == work_ && really) done();
  }
  template <class Work>
  [[nodiscard]] bool is_about(const Work& w) const {
    return (w.keg && subject(*w.keg) == about_) || (w.line && subject(*w.line) == about_) ||
           (w.bottle && subject(*w.bottle) == about_) || (w.place && subject(*w.place) == about_);
  }

  template <class Other>
  void on(const Other&) {}
  void on(const LineCleaned& c) {
    done_if(WorkKind::caustic, counts_as_caustic(c.agent));
    done_if(WorkKind::acid, c.agent == LineAgent::acid);
    done_if(WorkKind::strip_down, c.faucet);
    done_if(WorkKind::coupler_clean, c.coupler);
  }
  void on(const Cleaned& c) { done_if(WorkKind::keg_clean, c.method != CleaningMethod::rinse); }
  void on(const Inspected& i) { done_if(WorkKind::seals, i.seals_renewed); }
  void on(const AlarmChecked& a) { done_if(WorkKind::alarm_check, a.passed); }
  void on(const LeakTested& l) { done_if(WorkKind::leak_test, !l.leak_found); }
  void on(const WorkDone& w) {
    if (w.work != work_ || !is_about(w)) return;
    if (w.complete) {
      done();
    } else {
      out_.partly = at_;
    }
  }
  void on(const WorkMoved& w) {
    if (w.work != work_ || !is_about(w)) return;
    out_.put_off_to = w.to_day;
    out_.put_off_because = w.reason;
  }

  SubjectRef about_;
  WorkKind work_;
  Instant at_{};
  WorkRecord out_;
};

// The day a rule makes the work due; nullopt when it does not call for it now.
std::optional<Date> due_by(const AppliedRule& rule, const WorkRecord& record,
                           const CellarStatus& cellar, const LocalCalendar& calendar) {
  if (rule.work == WorkKind::bottle_retest) {
    const BottleStatus* bottle = cellar.find(BottleId{rule.about.uuid});
    if (bottle != nullptr && bottle->test_due) return bottle->test_due;
  }
  if (rule.work == WorkKind::keg_clean) {
    // A full keg is not to be cleaned, however long ago it was.
    const KegStatus* keg = cellar.find(KegId{rule.about.uuid});
    if (keg == nullptr || keg->contents) return std::nullopt;
    if (!rule.interval_days) {
      if (keg->phase != Phase::dirty) return std::nullopt;
      return calendar.date_of(keg->phase_since.value_or(cellar.now));
    }
  }
  if (!rule.interval_days || *rule.interval_days <= 0) return std::nullopt;
  const std::optional<Instant> from = record.done ? record.done : record.registered;
  if (!from) return std::nullopt;
  return calendar.date_of(*from) + std::chrono::days(*rule.interval_days);
}

std::vector<PlaceId> places_with_alarm(const Journal& journal, const CellarStatus& cellar) {
  std::vector<PlaceId> found;
  for (const PlaceStatus& p : cellar.places) {
    const auto story = journal.story(subject(p.record.place));
    const bool checked = std::any_of(story.begin(), story.end(), [](const Entry* e) {
      return holds_alternative<AlarmChecked>(e->payload);
    });
    if (checked) found.push_back(p.record.place);
  }
  return found;
}

void settle_state(DueWork& row, Date today) {
  row.state = state_on(row.due, today);
  row.days_over = row.state == DueState::overdue ? (today - row.due).count() : 0;
}

}  // namespace

bool renews_seals(const Payload& p) {
  if (const auto* i = get_if<Inspected>(&p)) return i->seals_renewed;
  const auto* w = get_if<WorkDone>(&p);
  return w != nullptr && w->work == WorkKind::seals && w->complete;
}

DueState state_on(Date due, Date day) {
  if (due < day) return DueState::overdue;
  return due <= day + due_soon ? DueState::soon : DueState::later;
}

namespace {

std::vector<DueWork> due_by_rules(std::vector<AppliedRule> rules, const Journal& journal,
                                  const CellarStatus& cellar, const LocalCalendar& calendar) {
  struct Ruled {
    AppliedRule rule;
    Date due;
  };
  std::map<std::pair<SubjectRef, WorkKind>, std::vector<Ruled>> by_work;
  std::map<std::pair<SubjectRef, WorkKind>, WorkRecord> records;
  for (AppliedRule& rule : rules) {
    const std::pair key(rule.about, rule.work);
    const auto at = records.try_emplace(key);
    if (at.second) at.first->second = WorkReader(rule.about, rule.work).read(journal);
    if (const auto due = due_by(rule, at.first->second, cellar, calendar)) {
      by_work[key].push_back({std::move(rule), *due});
    }
  }
  const Date today = calendar.date_of(cellar.now);
  std::vector<DueWork> rows;
  for (auto& [key, ruled] : by_work) {
    std::stable_sort(ruled.begin(), ruled.end(),
                     [](const Ruled& a, const Ruled& b) { return a.due < b.due; });
    WorkRecord& record = records[key];
    DueWork row;
    row.about = key.first;
    row.work = key.second;
    row.due = ruled.front().due;
    row.last_done = record.done;
    row.partly_done = record.partly;
    row.put_off_to = record.put_off_to;
    row.put_off_because = std::move(record.put_off_because);
    row.governing = std::move(ruled.front().rule);
    for (std::size_t i = 1; i < ruled.size(); ++i) row.also.push_back(std::move(ruled[i].rule));
    settle_state(row, today);
    rows.push_back(std::move(row));
  }
  std::stable_sort(rows.begin(), rows.end(), [](const DueWork& a, const DueWork& b) {
    return std::tie(a.due, a.work, a.about) < std::tie(b.due, b.work, b.about);
  });
  return rows;
}

}  // namespace

std::vector<DueWork> due_work(const Journal& journal, const CellarStatus& cellar,
                              const LocalCalendar& calendar) {
  return due_by_rules(applied_rules(cellar, places_with_alarm(journal, cellar)), journal, cellar,
                      calendar);
}

std::vector<DueWork> due_line_cleaning(const Journal& journal, const CellarStatus& cellar,
                                       const LocalCalendar& calendar) {
  std::vector<AppliedRule> rules = applied_rules(cellar, {});
  std::erase_if(rules, [](const AppliedRule& rule) {
    return rule.work != WorkKind::caustic || rule.about.kind != SubjectKind::line;
  });
  return due_by_rules(std::move(rules), journal, cellar, calendar);
}

std::optional<AppliedRule> line_cleaning_rule(LineId line, const CellarStatus& cellar) {
  std::optional<AppliedRule> strictest;
  for (AppliedRule& rule : applied_rules(cellar, {})) {
    if (rule.work != WorkKind::caustic || rule.about != subject(line)) continue;
    if (!rule.interval_days || *rule.interval_days <= 0) continue;
    if (!strictest || *rule.interval_days < present(strictest->interval_days))
      strictest = std::move(rule);
  }
  return strictest;
}

std::optional<Date> follows_caustic_to(const DueWork& row, const std::vector<DueWork>& all) {
  if (row.work != WorkKind::acid) return std::nullopt;
  for (const DueWork& other : all) {
    if (other.work != WorkKind::caustic || other.about != row.about) continue;
    if (other.put_off_to && *other.put_off_to > other.due) return other.put_off_to;
  }
  return std::nullopt;
}

std::vector<DueWork> overdue_if_moved(const std::vector<DueWork>& all, const DueWork& row,
                                      Date to) {
  std::vector<DueWork> over;
  const auto take = [&](DueWork d) {
    if (state_on(d.due, to) != DueState::overdue) return;
    settle_state(d, to);
    over.push_back(std::move(d));
  };
  take(row);
  if (row.work != WorkKind::caustic || to <= row.due) return over;
  for (const DueWork& other : all) {
    if (other.about == row.about && other.work == WorkKind::acid) take(other);
  }
  return over;
}

}  // namespace ullage::cellar
