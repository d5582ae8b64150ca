// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/line_rules.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "core/report/log_rows.h"
#include "core/units/present.h"

namespace ullage::report {

namespace {

using namespace cellar;

// The rules of the cellar as they stood at a moment.
std::vector<RuleRecord> rules_at(const Journal& journal, const CellarStatus& now, Instant t) {
  std::vector<RuleRecord> rules;
  for (const RuleRecord& known : now.rules) {
    const RuleRecord* then = nullptr;
    for (const Entry* e : journal.records(subject(known.rule))) {
      if (e->header.happened_at <= t) then = get_if<RuleRecord>(&e->payload);
    }
    if (then != nullptr) rules.push_back(*then);
  }
  return rules;
}

std::set<Instant> moments_of_change(const Journal& journal, const CellarStatus& now, LineId line) {
  std::set<Instant> moments;
  const auto take = [&](SubjectRef s) {
    for (const Entry* e : journal.records(s)) moments.insert(e->header.happened_at);
  };
  take(subject(line));
  for (const RuleRecord& rule : now.rules) take(subject(rule.rule));
  return moments;
}

}  // namespace

LineRules::LineRules(const Journal& journal, const CellarStatus& now, const LocalCalendar& calendar,
                     LineId line) {
  for (const Instant t : moments_of_change(journal, now, line)) {
    const auto* record = record_at<LineRecord>(journal, subject(line), t);
    if (record == nullptr) continue;
    CellarStatus then;
    then.lines.emplace_back().record = *record;
    then.rules = rules_at(journal, now, t);
    changes_.push_back({calendar.date_of(t), line_cleaning_rule(line, then)});
  }
}

std::optional<AppliedRule> LineRules::on(Date day) const {
  const auto after =
      std::find_if(changes_.begin(), changes_.end(), [&](const Change& c) { return c.from > day; });
  // Before all of them, what was known first: as record_at tells of the line itself.
  if (after == changes_.begin()) return changes_.empty() ? std::nullopt : changes_.front().rule;
  return std::prev(after)->rule;
}

std::string LineRules::intervals_within(const Period& period) const {
  const auto days = [](const std::optional<AppliedRule>& rule) {
    return rule ? rule->interval_days : std::nullopt;
  };
  std::optional<std::int64_t> said = days(on(period.first));
  std::string words = said ? fmt::format("{} days", *said) : std::string();
  for (const Change& change : changes_) {
    if (change.from <= period.first || change.from > period.last) continue;
    const auto now = days(on(change.from));
    if (now == said) continue;
    words += fmt::format("{}from {} {}", words.empty() ? "" : ", ", iso_day(change.from),
                         now ? fmt::format("{} days", *now) : std::string("none"));
    said = now;
  }
  return words;
}

LongestWithout longest_without(const std::vector<Date>& cleanings, std::optional<Date> registered,
                               const LineRules& rules, const Period& period, Date today) {
  LongestWithout longest;
  std::size_t done = 0;
  std::optional<Date> last;
  for (Date day = period.first; day <= std::min(period.last, today); day += std::chrono::days(1)) {
    // On the day of a cleaning the stretch before it ends: cleanings before the day.
    while (done < cleanings.size() && cleanings[done] < day) last = cleanings[done++];
    const std::optional<Date> from = last ? last : registered;
    if (!from || *from > day) continue;
    const std::int64_t without = (day - *from).count();
    if (without > longest.days) {
      longest.days = without;
      longest.never_before = !last;
    }
    const auto rule = rules.on(day);
    if (rule && without > present(rule->interval_days)) longest.late = true;
  }
  return longest;
}

}  // namespace ullage::report
