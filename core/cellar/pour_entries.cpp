// SPDX-License-Identifier: GPL-3.0-or-later
//
// A what-if that is decided on, as entries.
#include <algorithm>

#include "core/cellar/pour_state.h"

namespace ullage::cellar {

namespace {

Payload gas_entry(GaugePressure pressure, const KegStatus& keg) {
  GasSet g;
  g.keg = keg.record.keg;
  g.pressure = pressure;
  g.purpose = keg.phase == Phase::on_tap ? GasPurpose::serving : GasPurpose::set_and_wait;
  g.regulator = keg.gas.regulator;
  if (keg.gas.co2.count() < 1) g.co2 = keg.gas.co2;
  return Payload(std::move(g));
}

std::optional<Payload> hose_entry(const WhatIf& change, const LineStatus& line,
                                  const CellarStatus& cellar) {
  if (!change.length && !change.bore) return std::nullopt;
  if (line.pour) {
    if (const auto id = line.pour->setting.line.hose_piece().segment) {
      const auto at = std::find_if(cellar.segments.begin(), cellar.segments.end(),
                                   [&](const SegmentRecord& s) { return s.segment == *id; });
      if (at == cellar.segments.end()) return std::nullopt;
      SegmentRecord s = *at;
      s.length = change.length.value_or(s.length);
      s.bore = change.bore.value_or(s.bore);
      return Payload(std::move(s));
    }
  }
  LineRecord r = line.record;
  if (change.length) r.length = change.length;
  if (change.bore) r.bore = change.bore;
  return Payload(std::move(r));
}

std::optional<Payload> beer_entry(units::Co2Volumes target, const KegStatus& keg) {
  if (!keg.contents) return std::nullopt;
  BeerRecord beer = keg.contents->beer;
  double half = 0.1;
  if (keg.co2.target_low && keg.co2.target_high)
    half = (keg.co2.target_high->count() - keg.co2.target_low->count()) / 2;
  beer.co2_low = units::to_concentration(units::volumes_of_co2(target.count() - half));
  beer.co2_high = units::to_concentration(units::volumes_of_co2(target.count() + half));
  return Payload(std::move(beer));
}

}  // namespace

std::vector<const KegStatus*> fed_with(const KegStatus& keg, const CellarStatus& cellar) {
  std::vector<const KegStatus*> out;
  if (!keg.gas.on || !keg.gas.regulator) return out;
  for (const KegStatus& other : cellar.kegs)
    if (other.record.keg != keg.record.keg && other.gas.on &&
        other.gas.regulator == keg.gas.regulator)
      out.push_back(&other);
  return out;
}

std::vector<Payload> entries_for(const WhatIf& change, const LineStatus& line,
                                 const CellarStatus& cellar) {
  std::vector<Payload> out;
  const KegStatus* keg = line.keg ? cellar.find(*line.keg) : nullptr;
  if (change.pressure && keg) {
    out.push_back(gas_entry(*change.pressure, *keg));
    for (const KegStatus* other : fed_with(*keg, cellar))
      out.push_back(gas_entry(*change.pressure, *other));
  }
  if (auto hose = hose_entry(change, line, cellar)) out.push_back(std::move(*hose));
  if (change.temperature && keg && keg->place) {
    PlaceRecord place = *keg->place;
    place.set_temperature = change.temperature;
    out.emplace_back(std::move(place));
  }
  if (change.target && keg)
    if (auto beer = beer_entry(*change.target, *keg)) out.push_back(std::move(*beer));
  return out;
}

}  // namespace ullage::cellar
