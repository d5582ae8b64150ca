// SPDX-License-Identifier: GPL-3.0-or-later
//
// The rules a cellar works by. A rule is the cellar's own entry (RuleRecord):
// how often a kind of work is to be done, why, and who says so. The program
// knows no law. It offers a few ready sets, each named by where its figures come
// from, to start one's own rules from; once taken they are edited like any other.
//
// Where several rules in force are for the same work on the same thing, the
// one that falls due first governs (the safest), and the others are shown after
// it. A line's own interval (LineRecord::clean_every_days) is a rule like the
// others, for caustic.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/cellar/status.h"

namespace ullage::cellar {

// A rule as a ready set offers it; without an interval it is for work that is
// called for by what happens (a keg emptied).
struct ReadyRule {
  RuleScope scope = RuleScope::line;
  WorkKind work = WorkKind::caustic;
  std::optional<std::int64_t> interval_days;
  std::string_view reason;
  std::string_view source;
};
struct ReadySet {
  std::string_view name;  // "Trade handbook: lines every 14 days"
  std::string_view about;
  std::span<const ReadyRule> rules;
};
// Strictest first.
[[nodiscard]] std::span<const ReadySet> ready_rule_sets();
// The set's rules as records with fresh ids, leaving out those that a rule in
// force already states (same scope, work, interval, for everything of the scope).
[[nodiscard]] std::vector<RuleRecord> rules_to_add(const ReadySet&,
                                                   std::span<const RuleRecord> have, IdSource&);

// A kind of work that makes sense for a scope: a bottle has no faucet.
[[nodiscard]] bool fits(RuleScope, WorkKind);
[[nodiscard]] std::vector<WorkKind> works_of(RuleScope);

// A rule as it applies to one thing.
struct AppliedRule {
  std::optional<RuleId> rule;  // absent: the line's own interval
  RuleScope scope = RuleScope::line;
  WorkKind work = WorkKind::caustic;
  SubjectRef about;
  std::optional<std::int64_t> interval_days;
  std::string reason;
  std::string source;
};
// Every rule in force with every thing in use that it is for. A rule for alarms
// without a place is for the places that have one: a sensor height on record, or
// an alarm checked before (`has_alarm`).
[[nodiscard]] std::vector<AppliedRule> applied_rules(const CellarStatus&,
                                                     std::span<const PlaceId> has_alarm);

}  // namespace ullage::cellar
