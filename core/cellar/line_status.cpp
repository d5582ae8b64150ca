// SPDX-License-Identifier: GPL-3.0-or-later
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
  if (s.overdue) {
    const std::string& source =
        line.record.clean_source.empty() ? line.record.clean_reason : line.record.clean_source;
    Advice a = about(line, Severity::advice,
                     line.last_cleaned
                         ? message(MessageKey::adv_line_overdue, line.record.name, *s.clean_due)
                         : message(MessageKey::adv_never_cleaned, line.record.name),
                     message(MessageKey::adv_line_rule, *line.record.clean_every_days, source));
    a.action = line_task<LineCleaned>(id);
    s.advice.push_back(std::move(a));
  }
}

}  // namespace

std::optional<Date> line_clean_due(const LineTimeline& line, const LocalCalendar& calendar) {
  if (!line.record.clean_every_days || *line.record.clean_every_days <= 0) return std::nullopt;
  const Instant from = line.last_washed.value_or(line.registered_at);
  return calendar.date_of(from) + std::chrono::days(*line.record.clean_every_days);
}

LineStatus line_status_at(const LineTimeline& line, Instant now, const LocalCalendar& calendar) {
  LineStatus s;
  s.record = line.record;
  s.lock = line.lock;
  s.last_cleaned = line.last_cleaned;
  s.clean_due = line_clean_due(line, calendar);
  s.overdue = s.clean_due && *s.clean_due < calendar.date_of(now);
  if (line.lock) {
    s.state = message(MessageKey::line_locked, agent_of(*line.lock));
  } else if (s.overdue) {
    s.state = message(MessageKey::line_overdue, *s.clean_due);
  } else {
    s.state = message(MessageKey::line_free);
  }
  advise(line, s);
  return s;
}

}  // namespace ullage::cellar
