// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/cellar/due_work.h"
#include "core/cellar/line_timeline.h"
#include "core/cellar/suggest.h"

namespace ullage::cellar {

namespace {

std::string agent_of(const LineLock& lock) {
  return lock.agent.empty() ? plain_word(lock.agent_kind) : lock.agent;
}

Advice about(const LineTimeline& line, Severity severity, Message headline,
             std::optional<Message> detail) {
  Advice a;
  a.severity = severity;
  a.about = subject(line.record.line);
  a.headline = std::move(headline);
  a.detail = std::move(detail);
  return a;
}

std::string why_of(const AppliedRule& rule) {
  if (rule.source.empty() && rule.reason.empty()) return "own rule";
  if (rule.source.empty() || rule.reason.empty()) return rule.source + rule.reason;
  return rule.source + ", because: " + rule.reason;
}

// A note, however long it is: how dirty a line is nobody can tell by the calendar.
Advice overdue_advice(const LineStatus& line, const DueWork& row, Instant now,
                      const LocalCalendar& calendar) {
  Advice a;
  a.severity = Severity::advice;
  a.about = subject(line.record.line);
  const std::int64_t every = row.governing.interval_days.value_or(0);
  if (row.last_done) {
    const std::int64_t since = (calendar.date_of(now) - calendar.date_of(*row.last_done)).count();
    a.headline = message(MessageKey::adv_line_overdue, line.record.name, row.days_over, since);
    a.detail = message(MessageKey::adv_line_rule, every, why_of(row.governing));
    a.inputs.push_back({message(MessageKey::input_last_cleaned), row.last_done});
  } else {
    a.headline = message(
        line.last_cleaned ? MessageKey::adv_only_acid_cleaned : MessageKey::adv_never_cleaned,
        line.record.name, row.days_over);
    a.detail = message(MessageKey::adv_line_rule_registered, every, why_of(row.governing));
  }
  a.action = line_task<LineCleaned>(line.record.line);
  return a;
}

void advise(const LineTimeline& line, LineStatus& s) {
  const LineId id = line.record.line;
  if (line.lock) {
    Advice a = about(line, Severity::danger, message(MessageKey::adv_line_locked, line.record.name),
                     message(MessageKey::adv_line_locked_detail, agent_of(*line.lock),
                             line.lock->since, line.lock->by));
    a.action = line_task<LineReleased>(id);
    a.because_of.push_back(line.lock->entry);
    s.advice.push_back(std::move(a));
  }
  if (line.acid_after_chlorine) {
    LineCleaned flush;
    flush.agent = LineAgent::water;
    flush.method = SoakMethod::flushed;
    Advice a =
        about(line, Severity::danger, message(MessageKey::adv_line_chemicals, line.record.name),
              message(MessageKey::adv_line_rinse_detail));
    a.action = line_task<LineCleaned>(id, flush);
    a.because_of.push_back(*line.acid_after_chlorine);
    s.advice.push_back(std::move(a));
  }
}

}  // namespace

LineStatus line_status_at(const LineTimeline& line) {
  LineStatus s;
  s.record = line.record;
  s.lock = line.lock;
  s.last_cleaned = line.last_cleaned;
  s.chemicals = line.chemicals;
  s.state = line.lock ? message(MessageKey::line_locked, agent_of(*line.lock))
                      : message(MessageKey::line_free);
  advise(line, s);
  return s;
}

void tell_line_cleaning(CellarStatus& cellar, const Journal& journal,
                        const LocalCalendar& calendar) {
  for (const DueWork& row : due_line_cleaning(journal, cellar, calendar)) {
    const auto line =
        std::find_if(cellar.lines.begin(), cellar.lines.end(),
                     [&](const LineStatus& l) { return subject(l.record.line) == row.about; });
    if (line == cellar.lines.end()) continue;
    line->clean_due = row.due;
    line->overdue = row.state == DueState::overdue;
    // Work ticked off as done outside is a cleaning too.
    if (row.last_done) line->last_cleaned = std::max(line->last_cleaned, row.last_done);
    if (!line->overdue) continue;
    if (!line->lock) line->state = message(MessageKey::line_overdue, row.due);
    line->advice.push_back(overdue_advice(*line, row, cellar.now, calendar));
  }
}

}  // namespace ullage::cellar
