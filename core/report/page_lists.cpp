// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/page_lists.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/cellar/beers_status.h"
#include "core/cellar/pour_state.h"
#include "core/cellar/work_rules.h"
#include "core/report/cleaning_words.h"
#include "core/report/log_rows.h"
#include "core/report/names.h"

namespace ullage::report {

namespace {

using namespace cellar;

std::optional<GaugePressure> pressure_set(const KegStatus* keg) {
  return keg != nullptr && keg->gas.on ? keg->gas.set : std::nullopt;
}

std::optional<GaugePressure> right_pressure_of(const KegStatus* keg) {
  return keg != nullptr ? keg->gas.should_be : std::nullopt;
}

std::string pressures(const KegStatus* keg, const Speaker& speaker) {
  if (keg == nullptr) return {};
  const auto set = pressure_set(keg);
  const std::string should = say_should_be(*keg, speaker);
  return stacked({set ? "set " + speaker.printer.print(*set) : std::string("no gas"),
                  should.empty() ? should : "should be " + should});
}

const physics::PourTime* glass_time(const LineStatus& line) {
  if (!line.pour) return nullptr;
  const auto& time = line.pour->outlook.glass_time;
  return time ? &*time : nullptr;
}

std::string glass_time_words(const LineStatus& line, const Speaker& speaker) {
  const physics::PourTime* t = glass_time(line);
  if (t == nullptr) return {};
  return stacked(
      {"~" + speaker.printer.print(t->likely), speaker.printer.print_range(t->low, t->high)});
}

std::string cleaning_words(const LineStatus& line, const Speaker& speaker) {
  const std::string due = !line.clean_due
                              ? std::string("no rule set")
                              : (line.overdue ? "was due " : "due ") + iso_day(*line.clean_due);
  return stacked({line.last_cleaned ? "cleaned " + say_age(*line.last_cleaned, speaker)
                                    : std::string("no cleaning logged"),
                  due});
}

TableRow line_row(const LineStatus& line, const CellarStatus& status, const Speaker& speaker) {
  const KegStatus* keg = line.keg ? status.find(*line.keg) : nullptr;
  const std::string beer = keg && keg->contents ? keg->contents->beer.name : std::string();
  const std::string tag = keg ? keg->record.tag : std::string();
  const std::string state = say_line_state(line, speaker);
  const physics::PourTime* t = glass_time(line);
  const auto seconds = [&](units::Duration physics::PourTime::* which) {
    return t ? datum(units::in_seconds(t->*which)) : Datum();
  };
  TableRow row;
  row.marked = line.do_not_serve() || line.overdue;
  row.cells = {stacked({line.record.tap, line.record.name}),
               keg ? stacked({beer, tag}) : std::string("nothing on it"),
               pressures(keg, speaker),
               glass_time_words(line, speaker),
               cleaning_words(line, speaker),
               state};
  row.data = {datum(line.record.tap),
              datum(line.record.name),
              datum(tag),
              datum(beer),
              kilopascals(pressure_set(keg)),
              kilopascals(right_pressure_of(keg)),
              t ? datum(units::in_litres(line.pour->setting.glass)) : Datum(),
              seconds(&physics::PourTime::likely),
              seconds(&physics::PourTime::low),
              seconds(&physics::PourTime::high),
              line.last_cleaned ? datum(stamp_of(*line.last_cleaned, speaker)) : Datum(),
              line.clean_due ? datum(iso_day(*line.clean_due)) : Datum(),
              Datum(line.overdue),
              Datum(line.do_not_serve()),
              datum(state)};
  return row;
}

std::string batch_is_in(const BatchStatus& batch) {
  std::string kegs;
  for (const BatchInKeg& in : batch.kegs) kegs += (kegs.empty() ? "" : ", ") + in.tag;
  return kegs;
}

std::string batch_left(const BatchStatus& batch, const Speaker& speaker) {
  if (!batch.left) return batch.gone() ? std::string() : std::string("can’t tell");
  return "~" + speaker.printer.print(*batch.left) + (batch.some_cant_tell ? " and more" : "");
}

TableRow batch_row(const BatchStatus& batch, const Speaker& speaker) {
  const std::string kegs = batch_is_in(batch);
  const std::string best_by = batch.best_by ? iso_day(*batch.best_by) : std::string();
  const std::string recalled = batch.recall ? stamp_of(batch.recall->at, speaker) : std::string();
  const std::string why = batch.recall ? batch.recall->reason : std::string();
  TableRow row;
  row.marked = batch.recall.has_value();
  row.cells = {stacked({batch.beer.name, batch.record.name}),
               kegs.empty() ? std::string("in no keg") : kegs,
               fmt::format("{}", batch.kegs_before),
               batch_left(batch, speaker),
               best_by,
               batch.recall ? stacked({"RECALLED " + say_clock(batch.recall->at, speaker), why})
                            : std::string()};
  row.data = {datum(batch.beer.name),
              datum(batch.record.name),
              datum(std::string(to_word(batch.record.origin))),
              datum(batch.record.supplier),
              datum(kegs),
              datum(static_cast<double>(batch.kegs.size())),
              datum(static_cast<double>(batch.kegs_before)),
              batch.left ? datum(units::in_litres(batch.left->value())) : Datum(),
              batch.left ? datum(batch.left->half_width() * 1000) : Datum(),
              Datum(batch.some_cant_tell),
              datum(best_by),
              datum(recalled),
              datum(why)};
  return row;
}

}  // namespace

std::string say_line_state(const LineStatus& line, const Speaker& speaker) {
  if (!line.do_not_serve() && !line.overdue) {
    const auto first = std::find_if(line.advice.begin(), line.advice.end(),
                                    [](const Advice& a) { return a.severity >= Severity::advice; });
    if (first != line.advice.end()) return say(first->headline, speaker);
  }
  return say(line.state, speaker);
}

std::string say_rule_for(const RuleRecord& rule, const CellarStatus& names,
                         const Speaker& speaker) {
  const auto only = subject_named(rule);
  return only ? name_of(*only, names) : say(rule.scope, speaker);
}

TableSheet line_list(const CellarStatus& status, const Speaker& speaker, const std::string& by) {
  TableSheet sheet = sheet_of_now("Lines", status, speaker, by);
  const bool us = speaker.words == RegionalWords::us;
  sheet.columns = {{us ? "Faucet, line" : "Tap, line", 80},
                   {"Beer, keg", 110},
                   {"Pressure", 100},
                   {"A glass in", 70},
                   {"Cleaning", 100},
                   {"State", 140}};
  sheet.keys = {"tap",           "line",      "keg",     "beer",         "set_kpa",
                "should_be_kpa", "glass_l",   "glass_s", "glass_low_s",  "glass_high_s",
                "last_cleaned",  "clean_due", "overdue", "do_not_serve", "state"};
  sheet.when_empty = "No lines are registered.";
  for (const LineStatus& line : status.lines) {
    if (line.record.in_use) sheet.rows.push_back(line_row(line, status, speaker));
  }
  sheet.footnote =
      "~ marks an estimate. A bar at the left marks what is not to be served from or overdue.";
  return sheet;
}

TableSheet rule_list(const CellarStatus& status, const Speaker& speaker, const std::string& by) {
  TableSheet sheet = sheet_of_now("Rules", status, speaker, by);
  sheet.columns = {{"For", 100},    {"Work", 120},   {"How often", 80},
                   {"Reason", 120}, {"Source", 140}, {"In force", 50}};
  sheet.keys = {"for", "work", "every_days", "reason", "source", "in_force"};
  sheet.when_empty = "No rules are registered.";
  for (const RuleRecord& rule : status.rules) {
    const std::string whom = say_rule_for(rule, status, speaker);
    const std::string work = say(rule.work, speaker);
    TableRow row;
    row.cells = {whom,
                 work,
                 rule.interval_days ? fmt::format("every {} days", *rule.interval_days)
                                    : std::string("when called for"),
                 rule.reason,
                 rule.source,
                 rule.in_force ? "yes" : "no"};
    row.data = {datum(whom),
                datum(work),
                datum(rule.interval_days, [](std::int64_t n) { return static_cast<double>(n); }),
                datum(rule.reason),
                datum(rule.source),
                Datum(rule.in_force)};
    sheet.rows.push_back(std::move(row));
  }
  return sheet;
}

TableSheet batch_list(const Journal& journal, const CellarStatus& status, const Speaker& speaker,
                      const std::string& by) {
  TableSheet sheet = sheet_of_now("Batches", status, speaker, by);
  sheet.columns = {{"Beer, batch", 130}, {"In kegs", 130}, {"Kegs before", 50},
                   {"Left of it", 90},   {"Best by", 66},  {"Recalled", 120}};
  sheet.keys = {"beer",     "batch",       "origin",          "supplier",          "kegs",
                "kegs_now", "kegs_before", "left_l",          "left_half_width_l", "some_cant_tell",
                "best_by",  "recalled",    "recalled_because"};
  sheet.when_empty = "No batches are registered.";
  const BeersStatus beers =
      beers_status(status, journal, *speaker.calendar, status.now, beers_past(status, journal));
  for (const BatchStatus& batch : beers.batches) sheet.rows.push_back(batch_row(batch, speaker));
  sheet.footnote = "~ marks an estimate. A bar at the left marks a batch that is recalled.";
  return sheet;
}

}  // namespace ullage::report
