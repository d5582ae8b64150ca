// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/keg_inputs.h"

#include <algorithm>

#include "core/units/present.h"

namespace ullage::report {

GroundsInput size_input(const KegSubject& s) {
  return {"Holds " + s.speaker.printer.print(s.keg.record.brimful) + " to the brim",
          InputOrigin::typed,
          {}};
}

GroundsInput level_input(const KegSubject& s) {
  const cellar::Level& level = s.keg.level;
  return {"Beer in it: " + s.speaker.printer.print(present(level.left)), InputOrigin::worked_out,
          level.measured_at ? say_age(*level.measured_at, s.speaker) : std::string()};
}

GroundsInput beer_temperature_input(const KegSubject& s) {
  return {"Beer at " + s.speaker.printer.print(present(s.keg.beer_temperature)),
          InputOrigin::worked_out,
          {}};
}

GroundsInput air_input(const KegSubject& s) {
  if (!s.cellar.cellar) return {"Air as at sea level", InputOrigin::assumed, {}};
  return {"Air at an altitude of " + s.speaker.printer.print(s.cellar.cellar->altitude),
          InputOrigin::typed,
          {}};
}

const cellar::InstrumentRecord* gas_dial(const KegSubject& s) {
  const auto& all = s.cellar.instruments;
  const auto dial = std::find_if(all.begin(), all.end(), [&](const cellar::InstrumentRecord& i) {
    return i.instrument == s.keg.gas.dial;
  });
  return dial == all.end() ? nullptr : &*dial;
}

std::optional<GroundsInput> gas_input(const KegSubject& s) {
  const cellar::GasOnKeg& gas = s.keg.gas;
  if (!gas.on || !gas.set) return std::nullopt;
  std::string what = "Gas set to " + s.speaker.printer.print(*gas.set);
  if (const cellar::InstrumentRecord* dial = gas_dial(s)) what += " on " + dial->name;
  if (gas.co2 != units::mole_fraction(1))
    what += ", CO₂ " + s.speaker.printer.number(gas.co2.count() * 100, 0) + " %";
  return GroundsInput{std::move(what), InputOrigin::typed,
                      gas.since ? say_age(*gas.since, s.speaker) : std::string()};
}

std::optional<GroundsInput> place_input(const KegSubject& s) {
  if (!s.keg.place) return std::nullopt;
  const cellar::PlaceStatus* place = s.cellar.find(s.keg.place->place);
  if (place == nullptr || !place->temperature) return std::nullopt;
  return GroundsInput{place->record.name + " at " + s.speaker.printer.print(*place->temperature),
                      place->read_at ? InputOrigin::read : InputOrigin::typed,
                      place->read_at ? say_age(*place->read_at, s.speaker) : std::string()};
}

std::optional<GroundsInput> filling_input(const KegSubject& s) {
  if (!s.keg.contents) return std::nullopt;
  const cellar::Contents& beer = *s.keg.contents;
  return GroundsInput{beer.found          ? "How it was found"
                      : beer.filled_by_us ? "How it was filled"
                                          : "How it was received",
                      InputOrigin::typed, say_age(s.keg.contents->since, s.speaker)};
}

void add_input(Grounds& g, std::optional<GroundsInput> input) {
  if (input) g.inputs.push_back(*std::move(input));
}

}  // namespace ullage::report
