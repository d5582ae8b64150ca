// SPDX-License-Identifier: GPL-3.0-or-later
//
// What comes round again: the rules a cellar works by, work done for them, and
// work put off to another day.
#pragma once

#include "core/cellar/entries/line.h"
#include "core/cellar/records_dispense.h"

namespace ullage::cellar {

// What a rule is about, and so what its one subject may be.
enum class RuleScope { line, keg, coupler, bottle, place, alarm };
ULLAGE_ENUM_WORDS(RuleScope, "line", "keg", "coupler", "bottle", "place", "alarm");

enum class WorkKind {
  caustic,     // a line, alkaline cleaner
  acid,        // a line, against beer stone
  strip_down,  // faucet and its parts taken apart
  seals,       // a keg's or coupler's rubber renewed
  keg_clean,   // an emptied keg
  coupler_clean,
  place_clean,
  alarm_check,
  bottle_retest,
  leak_test
};
ULLAGE_ENUM_WORDS(WorkKind, "caustic", "acid", "strip_down", "seals", "keg_clean", "coupler_clean",
                  "place_clean", "alarm_check", "bottle_retest", "leak_test");

// Rules and work are about one thing, which may be of four kinds: the fields, how
// one is pointed at a thing, and the thing that it points at.
template <class Self, class Visit>
void visit_subjects(Self& self, Visit& visit) {
  visit("keg", self.keg);
  visit("line", self.line);
  visit("bottle", self.bottle);
  visit("place", self.place);
}
template <class P>
void set_subject(P& p, SubjectRef about) {
  if (about.kind == SubjectKind::keg) p.keg = KegId{about.uuid};
  if (about.kind == SubjectKind::line) p.line = LineId{about.uuid};
  if (about.kind == SubjectKind::bottle) p.bottle = BottleId{about.uuid};
  if constexpr (requires { p.place; }) {
    if (about.kind == SubjectKind::place) p.place = PlaceId{about.uuid};
  }
}
template <class P>
[[nodiscard]] std::optional<SubjectRef> subject_named(const P& p) {
  if (p.keg) return subject(*p.keg);
  if (p.line) return subject(*p.line);
  if (p.bottle) return subject(*p.bottle);
  if (p.place) return subject(*p.place);
  return std::nullopt;
}

// How often a kind of work is to be done here, why, and who says so. No figure in
// it is the program's: rules differ by country and by house. Without a subject
// it counts for every thing of its scope; without an interval, each time the work
// is called for (a keg after each emptying). A later record changes it.
struct RuleRecord {
  static constexpr std::string_view kind = "rule_record";
  RuleId rule;
  RuleScope scope = RuleScope::line;
  WorkKind work = WorkKind::caustic;
  std::optional<KegId> keg;
  std::optional<LineId> line;
  std::optional<BottleId> bottle;
  std::optional<PlaceId> place;
  std::optional<std::int64_t> interval_days;
  std::string reason;  // "beer stone", "own experience"
  std::string source;  // where the figure comes from: "trade handbook, 14 days"
  bool in_force = true;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("rule", self.rule);
    visit("scope", self.scope);
    visit("work", self.work);
    visit_subjects(self, visit);
    visit("interval_days", self.interval_days);
    visit("reason", self.reason);
    visit("source", self.source);
    visit("in_force", self.in_force);
  }
};

// Work done on one thing that no entry of its own tells. (A line's cleaning is a
// LineCleaned, a keg's a Cleaned, an alarm's trial an AlarmChecked; they count
// for the rules as they stand.)
struct WorkDone {
  static constexpr std::string_view kind = "work_done";
  WorkKind work = WorkKind::strip_down;
  std::optional<RuleId> rule;  // the one it was done for
  std::optional<KegId> keg;
  std::optional<LineId> line;
  std::optional<BottleId> bottle;
  std::optional<PlaceId> place;
  LineAgent agent_kind = LineAgent::water;
  std::string agent;
  std::optional<double> strength_percent;
  std::optional<Volume> concentrate;     // of cleaner used, as sold, where it is a liquid
  std::optional<Mass> concentrate_mass;  // where it is a powder
  std::optional<Volume> water;
  std::optional<units::Duration> contact;
  bool complete = true;          // false: partly done, still due
  std::optional<Date> next_due;  // as stamped or certified: a bottle's next test
  std::string done_by;
  std::string countersigned_by;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("work", self.work);
    visit("rule", self.rule);
    visit_subjects(self, visit);
    visit("agent_kind", self.agent_kind);
    visit("agent", self.agent);
    visit("strength_percent", self.strength_percent);
    visit("concentrate_m3", self.concentrate);
    visit("concentrate_kg", self.concentrate_mass);
    visit("water_m3", self.water);
    visit("contact_s", self.contact);
    visit("complete", self.complete);
    visit("next_due_day", self.next_due);
    visit("done_by", self.done_by);
    visit("countersigned_by", self.countersigned_by);
  }
};

// Due work planned for another day. It does not make the work less due.
struct WorkMoved {
  static constexpr std::string_view kind = "work_moved";
  WorkKind work = WorkKind::caustic;
  std::optional<RuleId> rule;
  std::optional<KegId> keg;
  std::optional<LineId> line;
  std::optional<BottleId> bottle;
  std::optional<PlaceId> place;
  Date to_day;
  std::string reason;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("work", self.work);
    visit("rule", self.rule);
    visit_subjects(self, visit);
    visit("to_day", self.to_day);
    visit("reason", self.reason);
  }
};

}  // namespace ullage::cellar
