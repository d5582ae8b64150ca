// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/work_rules.h"

#include <algorithm>
#include <array>

namespace ullage::cellar {

namespace {

constexpr std::string_view reason_emptied = "a dirty keg dries hard and spoils the next beer";
constexpr std::string_view reason_by_maker = "maker's instructions and your local rules come first";

constexpr ReadyRule wash_when_emptied{RuleScope::keg, WorkKind::keg_clean, std::nullopt,
                                      reason_emptied, "common practice"};

struct WhySaidBy {
  std::string_view reason, source;
};
// Lines, faucets and couplers every so many days, acid each quarter, and kegs.
constexpr std::array<ReadyRule, 5> line_routine(std::int64_t days, WhySaidBy caustic,
                                                WhySaidBy acid, WhySaidBy faucet,
                                                WhySaidBy coupler) {
  const auto of = [](RuleScope scope, WorkKind work, std::int64_t every, WhySaidBy w) {
    return ReadyRule{scope, work, every, w.reason, w.source};
  };
  return {of(RuleScope::line, WorkKind::caustic, days, caustic),
          of(RuleScope::line, WorkKind::acid, 90, acid),
          of(RuleScope::line, WorkKind::strip_down, days, faucet),
          of(RuleScope::coupler, WorkKind::coupler_clean, days, coupler), wash_when_emptied};
}

constexpr auto practice_7 =
    line_routine(7,
                 {"yeast and bacteria grow back within days",
                  "national trade practice (GB; guide value in DE), 7 days"},
                 {"beer stone", "trade handbook, quarterly"},
                 {"parts that meet air", "national trade practice, with each cleaning"},
                 {"beer dries in the coupler", "national trade practice, with each cleaning"});
constexpr auto handbook_14 =
    line_routine(14, {"yeast and bacteria grow back", "trade handbook (US), 14 days"},
                 {"beer stone", "trade handbook (US), quarterly"},
                 {"faucets apart, with each cleaning", "trade handbook (US), 14 days"},
                 {"by hand, with each cleaning", "trade handbook (US), 14 days"});
constexpr auto regulator_28 = std::to_array<ReadyRule>({
    {RuleScope::line, WorkKind::caustic, 28, "the longest that one regulator allows",
     "a regulator's rule (US-RI), 4 weeks, countersigned"},
    wash_when_emptied,
});
constexpr auto ready_gear = std::to_array<ReadyRule>({
    {RuleScope::keg, WorkKind::seals, 365, "rubber hardens and leaks",
     "common practice, yearly or on failure"},
    {RuleScope::alarm, WorkKind::alarm_check, 30, reason_by_maker, "common practice, monthly"},
    {RuleScope::place, WorkKind::place_clean, 7, "floor, drains, cooler grilles",
     "common practice, weekly"},
    {RuleScope::bottle, WorkKind::bottle_retest, std::nullopt,
     "the date stamped on the bottle counts", "its stamp"},
});

constexpr auto all_ready_sets = std::to_array<ReadySet>({
    {"National practice: lines every 7 days", "As advised in GB and as a guide value in DE.",
     practice_7},
    {"Trade handbook: lines every 14 days", "As US brewers advise; acid each quarter.",
     handbook_14},
    {"A regulator’s rule: lines every 4 weeks",
     "The longest interval found in a rule of law. Stricter ones are common.", regulator_28},
    {"Kegs, alarms, bottles and floors", "What is usual apart from the lines.", ready_gear},
});

struct Gatherer {
  const CellarStatus& cellar;
  std::span<const PlaceId> has_alarm;
  std::vector<AppliedRule>& out;

  void apply(const RuleRecord& r, SubjectRef about) {
    out.push_back({r.rule, r.scope, r.work, about, r.interval_days, r.reason, r.source});
  }
  [[nodiscard]] bool has_sensor(const PlaceStatus& p) const {
    return p.record.sensor_height ||
           std::find(has_alarm.begin(), has_alarm.end(), p.record.place) != has_alarm.end();
  }
  // Every thing in use of the rule's scope.
  void things(const RuleRecord& r, auto&& f) const {
    switch (r.scope) {
      case RuleScope::line:
      case RuleScope::coupler:
        for (const LineStatus& l : cellar.lines) {
          if (l.record.in_use) f(subject(l.record.line));
        }
        break;
      case RuleScope::keg:
        // Not while it is with somebody else; and a supplier's goes back to them as it
        // is, unless the rule is for that very keg.
        for (const KegStatus& k : cellar.kegs) {
          const bool kept = k.record.owner != Owner::supplier || r.keg;
          if (k.record.in_use && k.registered_now && !k.lent_to && kept) f(subject(k.record.keg));
        }
        break;
      case RuleScope::bottle:
        for (const BottleStatus& b : cellar.bottles) {
          if (b.record.in_use) f(subject(b.record.bottle));
        }
        break;
      case RuleScope::place:
      case RuleScope::alarm:
        for (const PlaceStatus& p : cellar.places) {
          const bool meant = r.scope == RuleScope::place || r.place || has_sensor(p);
          if (p.record.in_use && meant) f(subject(p.record.place));
        }
        break;
    }
  }
};

}  // namespace

std::span<const ReadySet> ready_rule_sets() { return all_ready_sets; }

std::vector<RuleRecord> rules_to_add(const ReadySet& set, std::span<const RuleRecord> have,
                                     IdSource& ids) {
  std::vector<RuleRecord> records;
  for (const ReadyRule& ready : set.rules) {
    const bool stated = std::any_of(have.begin(), have.end(), [&](const RuleRecord& r) {
      return r.in_force && r.scope == ready.scope && r.work == ready.work &&
             r.interval_days == ready.interval_days && !subject_named(r);
    });
    if (stated) continue;
    RuleRecord r;
    ids.fill(r.rule);
    r.scope = ready.scope;
    r.work = ready.work;
    r.interval_days = ready.interval_days;
    r.reason = ready.reason;
    r.source = ready.source;
    records.push_back(std::move(r));
  }
  return records;
}

std::vector<WorkKind> works_of(RuleScope scope) {
  switch (scope) {
    case RuleScope::line:
      return {WorkKind::caustic, WorkKind::acid, WorkKind::strip_down, WorkKind::leak_test};
    case RuleScope::keg:
      return {WorkKind::keg_clean, WorkKind::seals, WorkKind::leak_test};
    case RuleScope::coupler:
      return {WorkKind::coupler_clean, WorkKind::seals};
    case RuleScope::bottle:
      return {WorkKind::bottle_retest, WorkKind::leak_test};
    case RuleScope::place:
      return {WorkKind::place_clean};
    case RuleScope::alarm:
      return {WorkKind::alarm_check};
  }
  return {};
}

bool fits(RuleScope scope, WorkKind work) {
  const std::vector<WorkKind> all = works_of(scope);
  return std::find(all.begin(), all.end(), work) != all.end();
}

std::vector<AppliedRule> applied_rules(const CellarStatus& cellar,
                                       std::span<const PlaceId> has_alarm) {
  std::vector<AppliedRule> out;
  for (const LineStatus& l : cellar.lines) {
    if (!l.record.in_use || !l.record.clean_every_days) continue;
    out.push_back({std::nullopt, RuleScope::line, WorkKind::caustic, subject(l.record.line),
                   l.record.clean_every_days, l.record.clean_reason, l.record.clean_source});
  }
  Gatherer gather{cellar, has_alarm, out};
  for (const RuleRecord& r : cellar.rules) {
    if (!r.in_force || !fits(r.scope, r.work)) continue;
    const std::optional<SubjectRef> only = subject_named(r);
    gather.things(r, [&](SubjectRef thing) {
      if (!only || *only == thing) gather.apply(r, thing);
    });
  }
  return out;
}

}  // namespace ullage::cellar
