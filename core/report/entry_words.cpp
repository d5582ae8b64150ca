// SPDX-License-Identifier: GPL-3.0-or-later
//
// One line for every kind of entry about the register, stock and preparation;
// beer, gas and lines are in entry_words_beer.cpp. Each line starts with what
// was done and adds what was stated, nothing more.
#include "core/report/entry_words.h"

#include "core/report/names.h"

namespace ullage::report {

namespace {

using namespace cellar;

std::string owner_words(Owner owner) {
  switch (owner) {
    case Owner::ours:
      return "ours";
    case Owner::rented:
      return "rented";
    case Owner::supplier:
      return "the supplier’s";
  }
  return {};
}

std::string use_words(bool in_use) { return in_use ? std::string() : "out of use"; }

std::string contents_words(FoundContents contents, const EntryTeller& t) {
  switch (contents) {
    case FoundContents::empty_dirty:
      return "empty, dirty";
    case FoundContents::empty_clean:
      return "empty, clean";
    case FoundContents::empty_sanitised:
      return t.us() ? "empty, sanitized" : "empty, sanitised";
    case FoundContents::empty_purged:
      return "empty, purged";
    case FoundContents::beer:
      return "with beer";
    case FoundContents::unknown:
      break;
  }
  return "contents not known";
}

}  // namespace

std::string words_of(const CellarDescribed& c, const EntryTeller& t) {
  return t.line("Cellar set up", {c.name, c.time_zone, t.print(c.altitude) + " above the sea"});
}
std::string words_of(const KegRecord& k, const EntryTeller& t) {
  return t.line("Keg " + k.tag,
                {say(k.keg_kind, t.speaker), owner_words(k.owner), use_words(k.in_use)});
}
std::string words_of(const BeerRecord& b, const EntryTeller& t) {
  std::string range;
  if (b.co2_low && b.co2_high) {
    range = t.speaker.printer.print_range(units::to_volumes(*b.co2_low),
                                          units::to_volumes(*b.co2_high));
  }
  return t.line("Beer " + b.name, {b.style, range});
}
std::string words_of(const BatchRecord& b, const EntryTeller& t) {
  return t.line("Batch " + b.name,
                {t.name(b.beer), t.named("OG", b.original_gravity), t.named("FG", b.final_gravity),
                 b.best_by ? "best by " + say_date(*b.best_by, t.speaker) : std::string()});
}
std::string words_of(const PlaceRecord& p, const EntryTeller& t) {
  return t.line("Place " + p.name, {t.named("set to", p.set_temperature), use_words(p.in_use)});
}
std::string words_of(const LineRecord& l, const EntryTeller& t) {
  std::string rule;
  if (l.clean_every_days) rule = "cleaned every " + t.count(*l.clean_every_days, "day");
  return t.line(
      "Line registered",
      {l.name, l.tap.empty() ? std::string() : (t.us() ? "faucet " : "tap ") + l.tap,
       t.print(l.length), l.bore ? t.speaker.printer.print_bore(*l.bore) + " bore" : std::string(),
       rule, use_words(l.in_use)});
}
std::string words_of(const BottleRecord& b, const EntryTeller& t) {
  const double co2 = b.co2.count() * 100;
  std::string gas = "CO₂ " + t.speaker.printer.number(co2, 0) + " %";
  if (co2 < 99.5) gas += " / N₂ " + t.speaker.printer.number(100 - co2, 0) + " %";
  return t.line("Gas bottle " + b.name, {gas, t.named("holds", b.content), use_words(b.in_use)});
}
std::string words_of(const RegulatorRecord& r, const EntryTeller& t) {
  return t.line("Regulator " + r.name, {r.bottle ? "on " + t.name(*r.bottle) : std::string(),
                                        t.name_if(r.place), use_words(r.in_use)});
}
std::string words_of(const InstrumentRecord& i, const EntryTeller& t) {
  const auto share = [&](std::string_view what, std::optional<double> percent) {
    return percent ? std::string(what) + " " + t.percent(percent) : std::string();
  };
  constexpr std::string_view bias = "off by up to";
  constexpr std::string_view repeats = "repeats within";
  return t.line(
      "Instrument " + i.name,
      {spaced(to_word(i.instrument_kind)), t.named(bias, i.pressure_bias),
       t.named(bias, i.temperature_bias), t.named(bias, i.mass_bias),
       share(bias, i.relative_bias_percent), t.named(repeats, i.pressure_repeatability),
       t.named(repeats, i.temperature_repeatability), t.named(repeats, i.mass_repeatability),
       share(repeats, i.relative_repeatability_percent), i.check_note, use_words(i.in_use)});
}

std::string words_of(const Found& f, const EntryTeller& t) {
  const std::string beer = f.batch ? t.batch(*f.batch) : std::string();
  return t.line("Found " + contents_words(f.contents, t),
                {beer, t.print(f.volume), t.print(f.pressure), t.print(f.temperature)});
}
std::string words_of(const Received& r, const EntryTeller& t) {
  return t.line("Received " + t.batch(r.batch),
                {r.supplier.empty() ? std::string() : "from " + r.supplier, t.print(r.volume),
                 r.best_by ? "best by " + say_date(*r.best_by, t.speaker) : std::string(),
                 t.print(r.temperature),
                 r.seal_intact == false ? std::string("seal broken") : std::string()});
}
std::string words_of(const Moved& m, const EntryTeller& t) { return "Moved to " + t.name(m.place); }
std::string words_of(const Quarantined& q, const EntryTeller& t) {
  return t.line("Held back", {q.reason});
}
std::string words_of(const Cleared& c, const EntryTeller& t) {
  return t.line("Cleared", {c.reason});
}
std::string words_of(const Lent& l, const EntryTeller& t) {
  return t.line("Lent to " + l.to,
                {l.due_back ? "due back " + say_date(*l.due_back, t.speaker) : std::string()});
}
std::string words_of(const Returned&, const EntryTeller&) { return "Returned"; }
std::string words_of(const Wasted& w, const EntryTeller& t) {
  return t.line("Wasted " + t.print(w.volume),
                {t.foam(spaced(to_word(w.reason))), w.batch ? t.batch(*w.batch) : std::string()});
}

std::string words_of(const Inspected& i, const EntryTeller& t) {
  return t.line("Inspected",
                {i.seals_renewed ? "seals renewed" : "", i.seals_lubricated ? "seals greased" : "",
                 i.lid_seated ? "lid seated" : "", i.fit_to_use ? "" : "not fit to use"});
}
std::string words_of(const Cleaned& c, const EntryTeller& t) {
  if (c.method == CleaningMethod::rinse) return t.line("Rinsed", {t.print(c.contact)});
  return t.line("Cleaned",
                {c.agent.empty() ? spaced(to_word(c.method)) : c.agent,
                 t.percent(c.strength_percent), t.print(c.contact), t.print(c.temperature)});
}
std::string words_of(const Sanitised& s, const EntryTeller& t) {
  return t.line(
      t.us() ? "Sanitized" : "Sanitised",
      {s.agent.empty() ? t.sanitiser(spaced(to_word(s.method))) : s.agent, t.print(s.contact)});
}
std::string words_of(const HoldReading& h, const EntryTeller& t) {
  return t.line(h.starts_test ? "Hold test begun" : "Hold reading",
                {t.print(h.pressure), t.print(h.temperature)});
}
std::string words_of(const Purged& p, const EntryTeller& t) {
  switch (p.method) {
    case PurgeMethod::cycles:
      return t.line("Purged", {p.cycles ? t.count(*p.cycles, "cycle") : std::string(),
                               t.named("at", p.pressure)});
    case PurgeMethod::pushed_liquid:
      return t.line("Purged", {"liquid pushed out", t.named("at", p.pressure)});
    case PurgeMethod::swept:
      return t.line("Purged",
                    {"swept", p.vessel_volumes ? t.speaker.printer.number(*p.vessel_volumes, 1) +
                                                     " volumes of gas"
                                               : std::string()});
  }
  return "Purged";
}

}  // namespace ullage::report
