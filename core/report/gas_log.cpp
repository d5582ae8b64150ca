// SPDX-License-Identifier: GPL-3.0-or-later
#include <fmt/format.h>

#include "core/report/entry_words.h"
#include "core/report/log_rows.h"
#include "core/report/period_logs.h"

namespace ullage::report {

namespace {

using namespace cellar;

// One entry about gas as a row's facts.
struct GasFacts {
  std::string what;     // bottle, regulator or place
  std::string gas;      // "CO2 30 % / N2 70 %"
  std::string done;     // "weighed"
  std::string reading;  // for people
  std::string checks;   // leak test, washer, secured
  std::optional<double> gross_kg, gauge_bar, co2_percent;
  std::optional<bool> leak_found, passed;
  bool marked = false;
};

class GasReader {
 public:
  GasReader(const Entry& e, const LogSource& from) : e_(e), from_(from) {}

  GasFacts operator()(const BottleWeighed& w) const {
    GasFacts f = of_bottle(w.bottle, "weighed");
    f.gross_kg = units::in_kilograms(w.gross_mass);
    f.reading = from_.speaker.printer.print(w.gross_mass);
    if (w.with_regulator) f.reading += "\nwith " + name_of(subject(*w.with_regulator), from_.names);
    return f;
  }
  GasFacts operator()(const BottleChanged& c) const {
    GasFacts f = of_bottle(c.bottle, "put on " + name_of(subject(c.regulator), from_.names));
    if (c.co2_on_tag) {
      f.gas = say_gas(*c.co2_on_tag, from_.speaker) + "\non its tag";
      f.co2_percent = c.co2_on_tag->count() * 100;
    }
    f.checks = listed({c.washer_renewed ? "washer renewed" : "washer not renewed",
                       c.secured ? "secured" : "not secured"});
    f.marked = !c.secured;
    return f;
  }
  GasFacts operator()(const GaugeRead& g) const {
    GasFacts f = of_bottle(g.bottle, "gauge read");
    f.gauge_bar = units::in_bar(g.pressure);
    f.reading = listed({from_.speaker.printer.print(g.pressure), from_.print(g.temperature)});
    return f;
  }
  GasFacts operator()(const LeakTested& l) const {
    GasFacts f = l.bottle ? of_bottle(*l.bottle, "leak test") : GasFacts{};
    f.done = "leak test";
    if (!l.bottle) f.what = tested(l);
    f.leak_found = l.leak_found;
    f.checks =
        listed({spaced(to_word(l.method)), l.leak_found ? "LEAK FOUND" : "no leak found", l.where});
    f.marked = l.leak_found;
    return f;
  }
  GasFacts operator()(const AlarmChecked& a) const {
    GasFacts f;
    f.what = name_of(subject(a.place), from_.names);
    f.done = "gas alarm tried";
    f.passed = a.passed;
    f.checks = a.passed ? "passed" : "FAILED";
    f.marked = !a.passed;
    return f;
  }
  GasFacts operator()(const WorkDone& w) const {
    GasFacts f = w.bottle ? of_bottle(*w.bottle, "") : GasFacts{};
    if (!w.bottle && w.place) f.what = name_of(subject(*w.place), from_.names);
    f.done = spaced(to_word(w.work));
    f.checks =
        listed({w.complete ? std::string() : std::string("partly done"),
                w.done_by.empty() ? std::string() : "by " + w.done_by,
                w.countersigned_by.empty() ? std::string() : "countersigned " + w.countersigned_by,
                w.next_due ? "next due " + iso_day(*w.next_due) : std::string()});
    return f;
  }
  template <class Other>
  GasFacts operator()(const Other&) const {
    return {};
  }

 private:
  GasFacts of_bottle(BottleId bottle, std::string done) const {
    GasFacts f;
    const auto* record =
        record_at<BottleRecord>(from_.journal, subject(bottle), e_.header.happened_at);
    f.what = record ? record->name : name_of(subject(bottle), from_.names);
    if (record) {
      f.gas = say_gas(record->co2, from_.speaker);
      f.co2_percent = record->co2.count() * 100;
    }
    f.done = std::move(done);
    return f;
  }
  std::string tested(const LeakTested& l) const {
    const auto name = [&](const auto& id) {
      return id ? name_of(subject(*id), from_.names) : std::string();
    };
    return listed({name(l.keg), name(l.regulator), name(l.line)});
  }

  const Entry& e_;
  const LogSource& from_;
};

bool about_gas(const Payload& p) {
  if (const auto* work = get_if<WorkDone>(&p)) {
    return work->bottle || work->work == WorkKind::alarm_check || work->work == WorkKind::leak_test;
  }
  return holds_alternative<BottleWeighed>(p) || holds_alternative<BottleChanged>(p) ||
         holds_alternative<GaugeRead>(p) || holds_alternative<LeakTested>(p) ||
         holds_alternative<AlarmChecked>(p);
}

TableRow gas_row(const Entry& e, const LogSource& from) {
  const GasFacts f =
      visit([&](const auto& payload) { return GasReader(e, from)(payload); }, e.payload);
  TableRow row;
  tell_standing(row, e, from);
  row.marked = f.marked && !row.struck;
  row.cells = {from.clock(e.header.happened_at),
               f.what,
               f.gas,
               f.done,
               f.reading,
               f.checks,
               e.header.by,
               e.header.note,
               std::string()};
  const auto number = [](const std::optional<double>& n) { return n ? datum(*n) : Datum(); };
  const auto yes = [](const std::optional<bool>& b) { return b ? Datum(*b) : Datum(); };
  row.data = {datum(stamp_of(e.header.happened_at, from.speaker)),
              datum(f.what),
              number(f.co2_percent),
              datum(f.done),
              number(f.gross_kg),
              number(f.gauge_bar),
              yes(f.leak_found),
              yes(f.passed),
              datum(f.checks),
              datum(e.header.by),
              datum(e.header.note)};
  return row;
}

SheetBox bottles_box(const LogSource& from) {
  SheetBox box{"Bottles", {}};
  for (const BottleStatus& bottle : from.names.bottles) {
    const BottleRecord& r = bottle.record;
    if (!r.in_use) continue;
    std::string feeds;
    for (const RegulatorId id : bottle.feeds) {
      feeds += (feeds.empty() ? "feeds " : ", ") + name_of(subject(id), from.names);
    }
    std::string left = "not weighed";
    if (bottle.gas_left && bottle.weighed_at) {
      left = fmt::format("~{} left, weighed {}", from.speaker.printer.print(*bottle.gas_left),
                         from.clock(*bottle.weighed_at));
    }
    box.lines.push_back(
        listed({r.name + ": " + say_gas(r.co2, from.speaker),
                r.tare ? "tare " + from.print(r.tare) : std::string("tare not known"),
                r.content ? "holds " + from.print(r.content) : std::string(), left,
                bottle.test_due ? "retest due " + iso_day(*bottle.test_due)
                                : std::string("retest not stated"),
                feeds}));
  }
  if (box.lines.empty()) box.lines.emplace_back("none registered");
  return box;
}

SheetBox pressures_box(const LogSource& from) {
  SheetBox box{"Pressures set as this was printed", {}};
  for (const KegStatus& keg : from.names.kegs) {
    if (!keg.record.in_use || !keg.gas.on || !keg.gas.set) continue;
    std::string words =
        fmt::format("{}: {}", keg.record.tag, from.speaker.printer.print(*keg.gas.set));
    if (keg.gas.regulator) words += " by " + name_of(subject(*keg.gas.regulator), from.names);
    box.lines.push_back(std::move(words));
  }
  if (box.lines.empty()) box.lines.emplace_back("no keg is on gas");
  return box;
}

}  // namespace

TableSheet gas_log(const Journal& journal, const CellarStatus& now, const Period& period,
                   const Speaker& speaker, const std::string& by) {
  const LogSource from{journal, now, speaker};
  TableSheet sheet = sheet_titled("Gas log", now, speaker, by);
  sheet.period = say_period(period);
  sheet.columns = {{"When", 82}, {"Bottle or part", 88},  {"Gas", 78},
                   {"Done", 92}, {"Weight or gauge", 78}, {"Checks", 116},
                   {"By", 28},   {"Remarks", 96},         {"Witness", 50, true}};
  sheet.keys = {"at",         "what",   "co2_percent", "done", "gross_kg", "gauge_bar",
                "leak_found", "passed", "checks",      "by",   "remarks"};
  sheet.when_empty = "Nothing about gas was logged in this period.";
  for (const Entry* e : entries_within(period, from, about_gas)) {
    sheet.rows.push_back(gas_row(*e, from));
  }
  sheet.boxes = {bottles_box(from), pressures_box(from)};
  sheet.signatures = {"Checked by", "Countersigned by"};
  sheet.footnote =
      "Crossed-through entries were struck or corrected. A bar at the left marks a leak, a bottle "
      "not secured or an alarm that failed.";
  return sheet;
}

}  // namespace ullage::report
