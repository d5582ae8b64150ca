// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/keg_grounds.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/cellar/presets.h"
#include "core/report/keg_inputs.h"
#include "core/units/present.h"

namespace ullage::report {
namespace {

using cellar::MessageKey;

// Older readings are summed up.
constexpr std::size_t readings_told = 3;
constexpr const char* unnamed_dial = "unnamed dial";

std::string range_of(const KegSubject& s) {
  const cellar::Co2State& co2 = s.keg.co2;
  if (!co2.target_low || !co2.target_high) return {};
  return s.speaker.printer.print_range(*co2.target_low, *co2.target_high);
}

// The value with its ±, where it has one.
template <class Q>
std::string with_errors_of(Q value, const std::vector<units::Contribution>& errors,
                           const KegSubject& s) {
  if (errors.empty()) return s.speaker.printer.print(value);
  return s.speaker.printer.print(units::Estimate<Q>(value, errors));
}

void add_co2_readings(Grounds& g, const KegSubject& s) {
  const auto& readings = s.keg.co2.readings;
  const std::size_t skipped = readings.size() > readings_told ? readings.size() - readings_told : 0;
  if (skipped > 0)
    g.inputs.push_back({fmt::format("{} earlier CO₂ readings", skipped), InputOrigin::read, {}});
  for (std::size_t i = skipped; i < readings.size(); ++i) {
    g.inputs.push_back({"CO₂ read, " + s.speaker.printer.print(readings[i].co2), InputOrigin::read,
                        say_age(readings[i].at, s.speaker)});
  }
}

// "Vented 3 times, last": with its age.
void add_acts(Grounds& g, const KegSubject& s, MessageKey act, std::string_view word) {
  std::size_t count = 0;
  cellar::Instant last{};
  for (const cellar::CurveMark& mark : s.keg.co2.marks) {
    if (mark.label.key != act || mark.planned) continue;
    ++count;
    last = std::max(last, mark.at);
  }
  if (count == 0) return;
  g.inputs.push_back(
      {count == 1 ? std::string(word) : fmt::format("{} {} times, last", word, count),
       InputOrigin::typed, say_age(last, s.speaker)});
}

std::string band_words(const cellar::UptakeBand& b, const KegSubject& s) {
  const units::Printer& print = s.speaker.printer;
  return fmt::format("{} ({})", print.print(b.likely), print.print_range(b.low, b.high));
}

void add_uptake(Grounds& g, const KegSubject& s) {
  const auto& rate = s.keg.co2.uptake;
  if (!rate) return;
  const bool learned = rate->readings > 0 && rate->readings_fit;
  g.inputs.push_back(
      {fmt::format("Two thirds of what is missing in {}, {}", band_words(rate->learned, s),
                   learned ? "by its readings" : "as usual for a keg like this"),
       learned ? InputOrigin::worked_out : InputOrigin::assumed,
       {}});
}

// The dial that the gas was read on, or the usual one.
cellar::InstrumentRecord dial_of(const KegSubject& s) {
  if (const cellar::InstrumentRecord* known = gas_dial(s)) return *known;
  cellar::InstrumentRecord usual =
      cellar::instrument_from_preset(cellar::InstrumentKind::regulator_dial);
  usual.name = unnamed_dial;
  return usual;
}

}  // namespace

Grounds co2_grounds(const KegSubject& s) {
  const cellar::Co2State& co2 = s.keg.co2;
  if (!co2.now && !co2.cant_tell) return {};
  Grounds g = grounds_by(laws::carbonation, "CO₂ now",
                         co2.now ? s.speaker.printer.print(*co2.now)
                                 : "can’t tell: " + say(present(co2.cant_tell), s.speaker));
  add_input(g, gas_input(s));
  add_acts(g, s, MessageKey::mark_vented, "Vented");
  add_acts(g, s, MessageKey::mark_rocked, "Rocked");
  add_input(g, place_input(s));
  if (s.keg.beer_temperature) add_input(g, beer_temperature_input(s));
  add_input(g, air_input(s));
  add_input(g, filling_input(s));
  add_co2_readings(g, s);
  add_uptake(g, s);
  if (const std::string range = range_of(s); !range.empty()) {
    g.notes.push_back("Its range is " + range + ".");
  }
  if (co2.now) g.narrow = narrowing(*co2.now);
  return g;
}

Grounds settles_grounds(const KegSubject& s) {
  const cellar::Co2State& co2 = s.keg.co2;
  if (!co2.settles_at) return {};
  Grounds g = grounds_by(laws::equilibrium, "CO₂ it settles at",
                         with_errors_of(*co2.settles_at, co2.settles_errors, s));
  add_input(g, gas_input(s));
  add_input(g, place_input(s));
  add_input(g, air_input(s));
  g.notes.emplace_back("At this gas and temperature, if nothing more is done.");
  g.narrow = narrowing_of(shares_of(co2.settles_errors));
  return g;
}

Grounds temperature_grounds(const KegSubject& s) {
  if (!s.keg.beer_temperature) return {};
  Grounds g =
      grounds_by(laws::cooling, "Beer at", s.speaker.printer.print(*s.keg.beer_temperature));
  add_input(g, place_input(s));
  add_input(g, filling_input(s));
  g.narrow = narrowing(*s.keg.beer_temperature);
  return g;
}

Grounds serving_pressure_grounds(const KegSubject& s) {
  const cellar::GasOnKeg& gas = s.keg.gas;
  if (!gas.should_be) return {};
  Grounds g = grounds_by(laws::equilibrium, "Pressure that holds its CO₂",
                         with_errors_of(*gas.should_be, gas.should_be_errors, s));
  if (const std::string range = range_of(s); !range.empty()) {
    g.inputs.push_back({"Range " + range, InputOrigin::typed, {}});
  }
  add_input(g, place_input(s));
  add_input(g, air_input(s));
  if (gas.co2 != units::mole_fraction(1)) {
    g.inputs.push_back(
        {"CO₂ in the gas " + s.speaker.printer.number(gas.co2.count() * 100, 0) + " %",
         InputOrigin::typed,
         {}});
  }
  g.notes.emplace_back("For the middle of the range, at the temperature of its place.");
  g.narrow = narrowing_of(shares_of(gas.should_be_errors));
  return g;
}

Grounds gas_set_grounds(const KegSubject& s) {
  const cellar::GasOnKeg& gas = s.keg.gas;
  if (!gas.on || !gas.set) return {};
  Grounds g = grounds_by(laws::as_logged, "Gas", s.speaker.printer.print(*gas.set));
  add_input(g, gas_input(s));
  const auto& regulators = s.cellar.regulators;
  const auto regulator =
      std::find_if(regulators.begin(), regulators.end(),
                   [&](const cellar::RegulatorRecord& r) { return r.regulator == gas.regulator; });
  if (regulator != regulators.end())
    g.inputs.push_back({"Regulator " + regulator->name, InputOrigin::typed, {}});
  const cellar::InstrumentRecord dial = dial_of(s);
  if (dial.pressure_bias) {
    const std::string off = s.speaker.printer.print(*dial.pressure_bias);
    const bool known = gas_dial(s) != nullptr;
    g.inputs.push_back({known ? fmt::format("{} may be off by {}", dial.name, off)
                              : fmt::format("The dial, not registered, may be off by {}", off),
                        known ? InputOrigin::typed : InputOrigin::assumed,
                        {}});
  }
  g.notes.emplace_back("What was set then; a regulator may creep.");
  g.narrow = {remedy_for({dial.name == unnamed_dial ? dial.name : dial.name + " dial: bias"})};
  return g;
}

Grounds uptake_grounds(const KegSubject& s) {
  const auto& rate = s.keg.co2.uptake;
  if (!rate) return {};
  Grounds g = grounds_by(laws::carbonation, "Takes up CO₂",
                         "two thirds of what is missing in " + band_words(rate->learned, s));
  add_input(g, size_input(s));
  if (s.keg.level.left) add_input(g, level_input(s));
  add_co2_readings(g, s);
  g.notes.push_back("Usual for a keg like this: " + band_words(rate->usual, s) + ".");
  if (!rate->readings_fit) {
    g.notes.push_back(
        fmt::format("Its readings ({}) don’t fit what was logged: nothing was learned from them.",
                    rate->readings));
  } else if (rate->readings > 0) {
    g.notes.push_back(
        fmt::format("By its readings ({}): {}.", rate->readings, band_words(rate->learned, s)));
  }
  g.narrow = {remedy_for({s.keg.record.tag + ": carbonation rate"})};
  return g;
}

}  // namespace ullage::report
