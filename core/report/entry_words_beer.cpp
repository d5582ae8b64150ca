// SPDX-License-Identifier: GPL-3.0-or-later
//
// One line for every kind of entry about beer, gas, lines and places, and the
// names of all kinds.
#include <algorithm>
#include <array>

#include "core/report/entry_words.h"
#include "core/report/regional.h"

namespace ullage::report {

std::string spaced(std::string_view word) {
  std::string out(word);
  std::replace(out.begin(), out.end(), '_', ' ');
  return out;
}

std::string EntryTeller::line(std::string what, std::initializer_list<std::string> parts) const {
  for (const std::string& part : parts) {
    if (!part.empty()) what += ", " + part;
  }
  return what;
}
std::string EntryTeller::count(std::int64_t n, std::string_view one) const {
  return speaker.printer.number(static_cast<double>(n), 0) + " " + std::string(one) +
         (n == 1 ? "" : "s");
}
std::string EntryTeller::percent(std::optional<double> p) const {
  if (!p) return {};
  const bool whole = std::abs(*p - std::round(*p)) < 0.05;
  return speaker.printer.number(*p, whole ? 0 : 1) + " %";
}
std::string EntryTeller::foam(const std::string& words) const {
  return words == "foam" && !us() ? "fob" : words;
}
std::string EntryTeller::sanitiser(const std::string& words) const {
  return regional(words, speaker.words);
}

namespace {

using namespace cellar;

std::string agent_words(LineAgent kind, const std::string& name) {
  return name.empty() ? std::string(to_word(kind)) : name;
}

std::string words_of(const Filled& f, const EntryTeller& t) {
  std::string gas;
  if (f.co2_at_fill == Co2AtFill::spunded) gas = t.named("spunded at", f.spund_pressure);
  if (f.co2_at_fill == Co2AtFill::measured && f.co2) gas = t.print(units::to_volumes(*f.co2));
  return t.line(
      "Filled from " + t.batch(f.batch),
      {t.print(f.volume), t.named("weighing", f.gross_mass), std::string(to_word(f.transfer)),
       t.print(f.temperature), t.named("at", f.gravity), gas});
}
std::string words_of(const Primed& p, const EntryTeller& t) {
  return t.line("Primed with " + t.print(p.mass), {spaced(to_word(p.sugar))});
}
std::string words_of(const HopsIn& h, const EntryTeller& t) {
  return t.line("Hops in", {h.hops, t.print(h.mass)});
}
std::string words_of(const HopsOut&, const EntryTeller&) { return "Hops out"; }
std::string words_of(const LevelReading& r, const EntryTeller& t) {
  switch (r.method) {
    case LevelMethod::weight:
      return t.line("Weighed", {t.print(r.gross_mass)});
    case LevelMethod::heft:
      return t.line("Hefted", {t.print(r.fraction_left)});
    case LevelMethod::condensation_line:
      return t.line("Level by condensation line", {t.print(r.fraction_left)});
    case LevelMethod::glasses:
      return t.line(r.glasses ? t.speaker.printer.number(*r.glasses, 0) + " glasses poured"
                              : std::string("Glasses poured"),
                    {t.named("of", r.glass_volume)});
    case LevelMethod::metered:
      return t.line("Metered", {t.named("poured", r.metered)});
  }
  return "Level read";
}
std::string words_of(const CarbonationReading& r, const EntryTeller& t) {
  return t.line("Carbonation read", {r.co2 ? t.print(units::to_volumes(*r.co2)) : std::string(),
                                     t.print(r.pressure), t.print(r.temperature)});
}
std::string words_of(const Tapped& p, const EntryTeller& t) {
  return (t.us() ? "Tapped on " : "Put on ") + t.name(p.line);
}
std::string words_of(const Untapped&, const EntryTeller&) { return "Taken off"; }
std::string words_of(const Emptied&, const EntryTeller&) { return "Emptied"; }

std::string words_of(const GasSet& g, const EntryTeller& t) {
  std::string gas;
  if (g.co2) gas = "CO₂ " + t.speaker.printer.number(g.co2->count() * 100, 0) + " %";
  static constexpr std::array purposes = {"burst", "set and wait", "serving", "to seat the lid"};
  return t.line("Pressure set to " + t.print(g.pressure),
                {purposes[static_cast<std::size_t>(g.purpose)], t.name_if(g.regulator), gas});
}
std::string words_of(const GasOff&, const EntryTeller&) { return "Gas off"; }
std::string words_of(const Vented& v, const EntryTeller& t) {
  return v.to_pressure ? "Vented to " + t.print(*v.to_pressure) : std::string("Vented");
}
std::string words_of(const Rocked& r, const EntryTeller& t) {
  return "Rocked for " + t.print(r.duration);
}

std::string words_of(const LineLocked& l, const EntryTeller& t) {
  return t.line("Locked, do not serve", {agent_words(l.agent, l.agent_name), l.reason});
}
std::string words_of(const LineCleaned& c, const EntryTeller& t) {
  std::string check;
  if (c.flush_check != FlushCheck::none) {
    check = spaced(to_word(c.flush_check)) + (c.flush_passed == true ? " passed" : " not passed");
  }
  return t.line("Line cleaned",
                {agent_words(c.agent, c.agent_name), t.percent(c.strength_percent),
                 spaced(to_word(c.method)), t.print(c.contact), t.print(c.temperature), check});
}
std::string words_of(const LineReleased& r, const EntryTeller& t) {
  return t.line(r.passed ? "Line released" : "Release check not passed",
                {spaced(to_word(r.check)),
                 r.checked_by.empty() ? std::string() : "checked by " + r.checked_by,
                 r.countersigned_by.empty() ? std::string() : "signed by " + r.countersigned_by});
}
std::string words_of(const TimedPour& p, const EntryTeller& t) {
  return t.line("Timed pour", {t.print(p.volume) + " in " + t.print(p.duration),
                               t.print(p.pressure), t.print(p.temperature)});
}

std::string words_of(const BottleWeighed& w, const EntryTeller& t) {
  return t.line("Weighed " + t.name(w.bottle),
                {t.print(w.gross_mass),
                 w.with_regulator ? "with " + t.name(*w.with_regulator) : std::string()});
}
std::string words_of(const BottleChanged& c, const EntryTeller& t) {
  return t.line(t.name(c.regulator) + " put on " + t.name(c.bottle),
                {c.washer_renewed ? "washer renewed" : "", c.secured ? "secured" : ""});
}
std::string words_of(const GaugeRead& g, const EntryTeller& t) {
  return t.line("Gauge of " + t.name(g.bottle) + " read",
                {t.print(g.pressure), t.print(g.temperature)});
}
std::string words_of(const LeakTested& l, const EntryTeller& t) {
  return t.line("Leak tested", {spaced(to_word(l.method)),
                                l.leak_found ? "leak found" : "no leak found", l.where});
}

std::string words_of(const TemperatureRead& r, const EntryTeller& t) {
  return t.line(t.name(r.place) + " read at " + t.print(r.temperature),
                {std::string(to_word(r.of))});
}
std::string words_of(const AlarmChecked& a, const EntryTeller& t) {
  return t.line("Gas alarm of " + t.name(a.place) + " tried", {a.passed ? "passed" : "failed"});
}
std::string words_of(const GravityRead& g, const EntryTeller& t) {
  return t.line("Gravity of " + t.batch(g.batch) + " read",
                {t.print(g.gravity), spaced(to_word(g.stage)), t.print(g.temperature)});
}
std::string words_of(const BestByChanged& b, const EntryTeller& t) {
  return t.line(
      "Best-by date of " + t.batch(b.batch) + " changed to " + say_date(b.best_by, t.speaker),
      {b.reason});
}
std::string words_of(const BatchRecalled& b, const EntryTeller& t) {
  return t.line("Batch recalled: " + t.batch(b.batch), {b.reason});
}
std::string words_of(const Noted&, const EntryTeller&) { return "Note"; }
std::string words_of(const Struck& s, const EntryTeller& t) {
  return t.line("Entry struck", {s.reason});
}
std::string words_of(const Restored& r, const EntryTeller& t) {
  return t.line("Entry restored", {r.reason});
}

struct KindName {
  std::string_view kind, name, us;
};
constexpr auto kind_names = std::to_array<KindName>({
    {"cellar_described", "Cellar", {}},
    {"keg_record", "Keg registered", {}},
    {"beer_record", "Beer registered", {}},
    {"batch_record", "Batch registered", {}},
    {"place_record", "Place registered", {}},
    {"line_record", "Line registered", {}},
    {"bottle_record", "Gas bottle registered", {}},
    {"regulator_record", "Regulator registered", {}},
    {"instrument_record", "Instrument registered", {}},
    {"found", "Found", {}},
    {"received", "Received", {}},
    {"moved", "Moved", {}},
    {"quarantined", "Held back", {}},
    {"cleared", "Cleared", {}},
    {"lent", "Lent", {}},
    {"returned", "Returned", {}},
    {"wasted", "Wasted", {}},
    {"inspected", "Inspected", {}},
    {"cleaned", "Cleaned", {}},
    {"sanitised", "Sanitised", "Sanitized"},
    {"hold_reading", "Hold test", {}},
    {"purged", "Purged", {}},
    {"filled", "Filled", {}},
    {"primed", "Primed", {}},
    {"hops_in", "Hops in", {}},
    {"hops_out", "Hops out", {}},
    {"level_reading", "Level read", {}},
    {"carbonation_reading", "Carbonation read", {}},
    {"tapped", "Put on tap", "Tapped"},
    {"untapped", "Taken off", {}},
    {"emptied", "Emptied", {}},
    {"gas_set", "Gas set", {}},
    {"gas_off", "Gas off", {}},
    {"vented", "Vented", {}},
    {"rocked", "Rocked", {}},
    {"line_locked", "Line locked", {}},
    {"line_cleaned", "Line cleaned", {}},
    {"line_released", "Line released", {}},
    {"timed_pour", "Timed pour", {}},
    {"bottle_weighed", "Bottle weighed", {}},
    {"bottle_changed", "Bottle changed", {}},
    {"gauge_read", "Gauge read", {}},
    {"leak_tested", "Leak test", {}},
    {"temperature_read", "Temperature read", {}},
    {"alarm_checked", "Gas alarm tried", {}},
    {"gravity_read", "Gravity read", {}},
    {"best_by_changed", "Best-by date changed", {}},
    {"batch_recalled", "Batch recalled", {}},
    {"noted", "Note", {}},
    {"struck", "Struck", {}},
    {"restored", "Restored", {}},
    {"segment_record", "Piece of hose registered", {}},
    {"rule_record", "Rule", {}},
    {"work_done", "Work done", {}},
    {"work_moved", "Work put off", {}},
    {"transfer", "Transfer", {}},
    {"keg_change", "Keg change", {}},
});

}  // namespace

std::string say_kind(std::string_view kind, const Speaker& s) {
  for (const KindName& k : kind_names) {
    if (k.kind != kind) continue;
    return std::string(s.words == RegionalWords::us && !k.us.empty() ? k.us : k.name);
  }
  return spaced(kind);
}

std::string say_entry(const cellar::Payload& payload, const cellar::CellarStatus& names,
                      const Speaker& speaker) {
  const EntryTeller teller{names, speaker};
  return visit([&](const auto& p) { return words_of(p, teller); }, payload);
}

}  // namespace ullage::report
