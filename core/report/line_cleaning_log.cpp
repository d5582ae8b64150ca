// SPDX-License-Identifier: GPL-3.0-or-later
#include <fmt/format.h>

#include <map>

#include "core/cellar/beer_traces.h"
#include "core/cellar/due_work.h"
#include "core/report/entry_words.h"
#include "core/report/line_rules.h"
#include "core/report/log_rows.h"
#include "core/report/period_logs.h"
#include "core/units/present.h"

namespace ullage::report {

namespace {

using namespace cellar;

// What the journal says around one cleaning.
struct CleaningSides {
  std::optional<Instant> locked;  // the lock it was done under
  const LineReleased* release = nullptr;
  std::optional<Instant> released;
};

CleaningSides sides_of(const Journal& journal, LineId line, const Entry& cleaning) {
  CleaningSides sides;
  for (const Entry* e : journal.story(subject(line))) {
    const bool later = e->header.happened_at > cleaning.header.happened_at;
    if (e->header.id == cleaning.header.id) continue;
    if (later &&
        (holds_alternative<LineCleaned>(e->payload) || holds_alternative<LineLocked>(e->payload))) {
      break;
    }
    if (holds_alternative<LineLocked>(e->payload)) sides.locked = e->header.happened_at;
    const auto* release = get_if<LineReleased>(&e->payload);
    if (!release || !release->passed) continue;
    if (e->header.happened_at < cleaning.header.happened_at) {
      sides.locked.reset();
    } else {
      sides.release = release;
      sides.released = e->header.happened_at;
      break;
    }
  }
  return sides;
}

// What the rules count, ticked off as done or told in full (due_work.h).
bool cleans_line(const Payload& payload) {
  if (const auto* c = get_if<LineCleaned>(&payload)) return counts_as_caustic(c->agent);
  const auto* w = get_if<WorkDone>(&payload);
  return w != nullptr && w->line && w->work == WorkKind::caustic && w->complete;
}

std::string check_words(FlushCheck check, std::optional<bool> passed) {
  if (check == FlushCheck::none) return "none";
  return fmt::format("{}: {}", spaced(to_word(check)),
                     !passed   ? "result not stated"
                     : *passed ? "passed"
                               : "NOT passed");
}

std::string parts_words(const LineCleaned& c, const Speaker& speaker) {
  const bool us = speaker.words == RegionalWords::us;
  return listed(
      {c.faucet ? std::string(us ? "faucet" : "tap") : std::string(), c.coupler ? "coupler" : "",
       c.foam_detector ? std::string(us ? "FOB detector" : "fob detector") : std::string()});
}

// Each line's rules, made when they are first asked for.
class RulesByLine {
 public:
  explicit RulesByLine(const LogSource& from) : from_(from) {}
  [[nodiscard]] const LineRules& of(LineId line) {
    const auto at =
        made_.try_emplace(line, from_.journal, from_.names, *from_.speaker.calendar, line);
    return at.first->second;
  }

 private:
  const LogSource& from_;
  std::map<LineId, LineRules> made_;
};

class CleaningRows {
 public:
  CleaningRows(const LogSource& from, RulesByLine& rules) : from_(from), rules_(rules) {}

  TableRow row(const Entry& e, const LineCleaned& c) const {
    TableRow row;
    tell_standing(row, e, from_);
    const auto* record =
        record_at<LineRecord>(from_.journal, subject(c.line), e.header.happened_at);
    const CleaningSides sides = sides_of(from_.journal, c.line, e);
    const BeersAround beers = beers_around(from_.journal, c.line, e.header.happened_at);
    const std::string agent = c.agent_name.empty() ? spaced(to_word(c.agent)) : c.agent_name;
    const EntryTeller teller{from_.names, from_.speaker};
    row.cells = {
        line_words(c.line, record),
        beer_words(beers),
        stacked({from_.clock(e.header.happened_at),
                 sides.locked ? "locked " + from_.clock(*sides.locked) : std::string()}),
        stacked({agent, teller.percent(c.strength_percent)}),
        stacked({spaced(to_word(c.method)), from_.print(c.contact), from_.print(c.temperature)}),
        check_words(c.flush_check, c.flush_passed),
        parts_words(c, from_.speaker),
        from_.print(c.beer_lost),
        e.header.by,
        release_words(sides),
        row.struck ? std::string() : due_words(e, c),
        e.header.note};
    row.data = data_of(e, c, record, sides, beers, row.struck);
    row.marked = !row.struck && !passed(c, sides);
    return row;
  }

  // Work on a line that no cleaning tells: taken apart, seals renewed.
  TableRow row(const Entry& e, const WorkDone& w) const {
    TableRow row;
    tell_standing(row, e, from_);
    const LineId line = present(w.line);
    const auto* record = record_at<LineRecord>(from_.journal, subject(line), e.header.happened_at);
    const EntryTeller teller{from_.names, from_.speaker};
    const std::string work =
        listed({spaced(to_word(w.work)), w.complete ? std::string() : std::string("partly done")});
    const std::string by = w.done_by.empty() ? e.header.by : w.done_by;
    row.cells.assign(columns(from_.speaker).size(), std::string());
    row.cells[0] = line_words(line, record);
    row.cells[2] = from_.clock(e.header.happened_at);
    row.cells[3] = stacked({work, w.agent, teller.percent(w.strength_percent)});
    row.cells[4] = from_.print(w.contact);
    row.cells[8] = by;
    row.cells[9] =
        w.countersigned_by.empty() ? std::string() : "countersigned " + w.countersigned_by;
    const std::optional<Date> next = row.struck ? std::nullopt : due(e, w);
    const std::string rule = next && !w.next_due ? rule_words(e, line) : std::string();
    row.cells[10] = next ? stacked({iso_day(*next), rule}) : std::string();
    row.cells[11] = e.header.note;
    if (cleans_line(e.payload)) {
      row.cells[5] = "not told";
      row.marked = !row.struck;
    }
    row.data.assign(keys().size(), Datum());
    const auto set = [&](std::string_view key, Datum value) {
      const std::vector<std::string> all = keys();
      const auto at = std::find(all.begin(), all.end(), key) - all.begin();
      row.data.at(static_cast<std::size_t>(at)) = std::move(value);
    };
    set("line", datum(record ? record->name : name_of(subject(line), from_.names)));
    set("tap", datum(record ? record->tap : std::string()));
    set("cleaned_at", datum(stamp_of(e.header.happened_at, from_.speaker)));
    set("agent", datum(w.agent));
    set("strength_percent", datum(w.strength_percent, [](double p) { return p; }));
    set("method", datum(std::string(to_word(w.work))));
    set("soak_min", datum(w.contact, [](units::Duration d) { return units::in_minutes(d); }));
    set("by", datum(by));
    set("countersigned_by", datum(w.countersigned_by));
    set("next_due", next ? datum(iso_day(*next)) : Datum());
    set("rule", datum(rule));
    set("remarks", datum(e.header.note));
    return row;
  }

  static std::vector<SheetColumn> columns(const Speaker& speaker) {
    const bool us = speaker.words == RegionalWords::us;
    return {{us ? "Line, faucet" : "Line, tap", 58},
            {"Beer before → after", 88},
            {"Cleaned", 74},
            {"Agent, strength", 76},
            {"Method, soak, water", 70},
            {"Flush check", 68},
            {"Parts", 58},
            {"Lost", 50},
            {"By", 28},
            {"Released, countersigned", 78},
            {"Next due, rule", 78},
            {"Remarks", 74}};
  }
  static std::vector<std::string> keys() {
    return {"line",
            "tap",
            "beer_before",
            "beer_after",
            "cleaned_at",
            "locked_at",
            "agent",
            "strength_percent",
            "method",
            "soak_min",
            "water_c",
            "flush_check",
            "flush_passed",
            "faucet",
            "coupler",
            "fob_detector",
            "beer_lost_l",
            "by",
            "released_at",
            "released_by",
            "countersigned_by",
            "next_due",
            "rule",
            "remarks"};
  }

 private:
  static bool passed(const LineCleaned& c, const CleaningSides& sides) {
    return c.agent == LineAgent::water || c.flush_passed == true || sides.release != nullptr;
  }
  std::string line_words(LineId line, const LineRecord* record) const {
    if (!record) return name_of(subject(line), from_.names);
    const bool us = from_.speaker.words == RegionalWords::us;
    return stacked({record->name,
                    record->tap.empty() ? std::string() : (us ? "faucet " : "tap ") + record->tap});
  }
  std::string beer(const std::optional<BatchId>& batch) const {
    return batch ? batch_with_beer(*batch, from_.names) : std::string("none");
  }
  std::string beer_words(const BeersAround& beers) const {
    if (beers.before == beers.after) return beer(beers.before);
    return beer(beers.before) + "\n→ " + beer(beers.after);
  }
  std::string release_words(const CleaningSides& sides) const {
    if (!sides.release) return {};
    const LineReleased& r = *sides.release;
    return stacked(
        {from_.clock(present(sides.released)), check_words(r.check, r.passed),
         r.checked_by.empty() ? std::string() : "by " + r.checked_by,
         r.countersigned_by.empty() ? std::string() : "countersigned " + r.countersigned_by});
  }
  std::optional<AppliedRule> rule_then(const Entry& e, LineId line) const {
    return rules_.of(line).on(from_.day(e));
  }
  std::optional<Date> by_rule(const Entry& e, LineId line) const {
    const auto rule = rule_then(e, line);
    if (!rule || !cleans_line(e.payload)) return std::nullopt;
    return from_.day(e) + std::chrono::days(present(rule->interval_days));
  }
  std::optional<Date> due(const Entry& e, const WorkDone& w) const {
    return w.next_due ? w.next_due : by_rule(e, present(w.line));
  }
  std::string rule_words(const Entry& e, LineId line) const {
    const auto rule = rule_then(e, line);
    if (!rule) return {};
    return listed(
        {fmt::format("every {} days", present(rule->interval_days)), rule->reason, rule->source});
  }
  std::string due_words(const Entry& e, const LineCleaned& c) const {
    if (c.agent == LineAgent::water) return "water alone: not a cleaning";
    if (c.agent == LineAgent::acid) return "acid: the rule’s day stands";
    const auto day = by_rule(e, c.line);
    return day ? stacked({iso_day(*day), rule_words(e, c.line)}) : std::string("no rule");
  }
  std::vector<Datum> data_of(const Entry& e, const LineCleaned& c, const LineRecord* record,
                             const CleaningSides& sides, const BeersAround& beers,
                             bool struck) const {
    const Speaker& speaker = from_.speaker;
    const auto batch = [&](const std::optional<BatchId>& id) {
      return id ? datum(batch_with_beer(*id, from_.names)) : Datum();
    };
    const auto when = [&](const std::optional<Instant>& t) {
      return t ? datum(stamp_of(*t, speaker)) : Datum();
    };
    const auto next = struck ? std::nullopt : by_rule(e, c.line);
    return {datum(record ? record->name : name_of(subject(c.line), from_.names)),
            datum(record ? record->tap : std::string()),
            batch(beers.before),
            batch(beers.after),
            datum(stamp_of(e.header.happened_at, speaker)),
            when(sides.locked),
            datum(c.agent_name.empty() ? spaced(to_word(c.agent)) : c.agent_name),
            datum(c.strength_percent, [](double p) { return p; }),
            datum(std::string(to_word(c.method))),
            datum(c.contact, [](units::Duration d) { return units::in_minutes(d); }),
            datum(c.temperature, [](Temperature t) { return units::in_celsius(t); }),
            datum(std::string(to_word(c.flush_check))),
            c.flush_passed ? Datum(*c.flush_passed) : Datum(),
            Datum(c.faucet),
            Datum(c.coupler),
            Datum(c.foam_detector),
            datum(c.beer_lost, [](Volume v) { return units::in_litres(v); }),
            datum(e.header.by),
            when(sides.released),
            datum(sides.release ? sides.release->checked_by : std::string()),
            datum(sides.release ? sides.release->countersigned_by : std::string()),
            next ? datum(iso_day(*next)) : Datum(),
            datum(rule_words(e, c.line)),
            datum(e.header.note)};
  }

  const LogSource& from_;
  RulesByLine& rules_;
};

// In order, as the line's story is.
std::vector<Date> cleaning_days(const LogSource& from, LineId line) {
  std::vector<Date> days;
  for (const Entry* e : from.journal.story(subject(line))) {
    if (cleans_line(e->payload)) days.push_back(from.day(*e));
  }
  return days;
}

std::string line_summed_up(const LogSource& from, const LineRules& rules, const Period& period,
                           const LineStatus& line, const std::vector<Date>& days,
                           std::int64_t within) {
  const LineId id = line.record.line;
  const Date today = from.speaker.calendar->date_of(from.speaker.now);
  const auto records = from.journal.records(subject(id));
  const auto registered =
      records.empty() ? std::nullopt : std::optional(from.day(*records.front()));
  const LongestWithout longest = longest_without(days, registered, rules, period, today);
  std::string words =
      fmt::format("{}: {} cleaning{}", line.record.name, within, within == 1 ? "" : "s");
  if (longest.days > 0) {
    words +=
        fmt::format(", longest without one {} day{}{}", longest.days, longest.days == 1 ? "" : "s",
                    longest.never_before ? " from its registration" : "");
  }
  const std::string rule = rules.intervals_within({period.first, std::min(period.last, today)});
  words += rule.empty() ? ", no rule" : ", rule " + rule;
  return longest.late ? words + ": LATE" : words;
}

SheetBox lines_summed_up(const LogSource& from, RulesByLine& rules, const Period& period) {
  SheetBox box{"Each line in this period", {}};
  for (const LineStatus& line : from.names.lines) {
    const std::vector<Date> days = cleaning_days(from, line.record.line);
    const auto within =
        std::count_if(days.begin(), days.end(), [&](Date day) { return period.holds(day); });
    if (!line.record.in_use && within == 0) continue;
    box.lines.push_back(
        line_summed_up(from, rules.of(line.record.line), period, line, days, within));
  }
  if (box.lines.empty()) box.lines.emplace_back("no lines registered");
  return box;
}

SheetBox locked_lines(const LogSource& from) {
  SheetBox box{"Locked as this was printed: do not serve", {}};
  for (const LineStatus& line : from.names.lines) {
    if (line.lock) {
      box.lines.push_back(fmt::format("{}: {} since {}, {}", line.record.name, line.lock->agent,
                                      from.clock(line.lock->since), line.lock->by));
    }
    if (line.keg_lock) {
      box.lines.push_back(fmt::format("{}: {}: {}", line.record.name, line.keg_lock->tag,
                                      say(line.keg_lock->why, from.speaker)));
    }
  }
  if (box.lines.empty()) box.lines.emplace_back("none");
  return box;
}

}  // namespace

TableSheet line_cleaning_log(const Journal& journal, const CellarStatus& now, const Period& period,
                             const Speaker& speaker, const std::string& by) {
  const LogSource from{journal, now, speaker};
  RulesByLine rules(from);
  const CleaningRows rows(from, rules);
  TableSheet sheet = sheet_titled("Line cleaning log", now, speaker, by);
  sheet.period = say_period(period);
  sheet.columns = CleaningRows::columns(speaker);
  sheet.keys = CleaningRows::keys();
  sheet.when_empty = "No line was cleaned in this period.";
  const auto told = [](const Payload& p) {
    const auto* work = get_if<WorkDone>(&p);
    return holds_alternative<LineCleaned>(p) || (work != nullptr && work->line.has_value());
  };
  for (const Entry* e : entries_within(period, from, told)) {
    const auto* cleaned = get_if<LineCleaned>(&e->payload);
    sheet.rows.push_back(cleaned ? rows.row(*e, *cleaned)
                                 : rows.row(*e, get<WorkDone>(e->payload)));
  }
  sheet.boxes = {lines_summed_up(from, rules, period), locked_lines(from)};
  sheet.signatures = {"Cleaned by", "Countersigned by the licensee"};
  sheet.footnote =
      "Crossed-through entries were struck or corrected and don’t count. "
      "A bar at the left marks a cleaning without a passed check.";
  return sheet;
}

}  // namespace ullage::report
