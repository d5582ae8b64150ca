// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/gas_given.h"

namespace ullage::cellar {

BottleBehind bottle_behind(RegulatorId id, std::optional<Instant> when, Lookup& lookup) {
  BottleBehind out;
  for (const Entry* entry : lookup.records(subject(id))) {
    if (when && entry->header.happened_at > *when) break;
    if (const auto* r = get_if<RegulatorRecord>(&entry->payload)) {
      // A secondary's record names it, too.
      if (r->regulator == id && r->bottle) out = {r->bottle, std::nullopt};
    } else if (const auto* c = get_if<BottleChanged>(&entry->payload)) {
      out = {c->bottle, c->co2_on_tag};
    }
  }
  return out;
}

MoleFraction gas_given(std::optional<MoleFraction> stated, std::optional<RegulatorId> regulator,
                       Instant when, Lookup& lookup) {
  if (stated) return *stated;
  if (!regulator) return units::mole_fraction(1);
  // A secondary without a bottle of its own gives what the one before it has.
  std::optional<RegulatorId> at = regulator;
  for (int depth = 0; at && depth < longest_chain_of_regulators; ++depth) {
    const BottleBehind behind = bottle_behind(*at, when, lookup);
    if (behind.tag) return *behind.tag;
    if (behind.bottle) {
      if (const auto record = lookup.find(*behind.bottle)) return record->co2;
    }
    const auto record = lookup.find(*at);
    at = record ? record->fed_by : std::nullopt;
  }
  return units::mole_fraction(1);
}

std::optional<RegulatorId> regulator_of(std::optional<LineId> id, Instant when, Lookup& lookup) {
  std::optional<RegulatorId> out;
  if (!id) return out;
  for (const Entry* entry : lookup.records(subject(*id))) {
    const auto* line = get_if<LineRecord>(&entry->payload);
    if (!line || line->line != *id) continue;
    if (entry->header.happened_at > when && out) break;
    out = line->regulator;
  }
  return out;
}

StatedGas stated_gas(const Entry& entry) {
  if (const auto* g = get_if<GasSet>(&entry.payload)) return {g->regulator, g->instrument, g->co2};
  if (const auto* f = get_if<Found>(&entry.payload)) return {f->regulator, f->instrument, {}};
  return {};
}

std::optional<InstrumentId> dial_of(std::optional<InstrumentId> stated,
                                    std::optional<RegulatorId> regulator, Lookup& lookup) {
  if (stated || !regulator) return stated;
  const auto r = lookup.find(*regulator);
  return r ? r->dial : std::nullopt;
}

GasComing gas_coming(const StatedGas& stated, std::optional<RegulatorId> unless_stated,
                     Instant when, Lookup& lookup) {
  GasComing out;
  out.regulator = stated.regulator ? stated.regulator : unless_stated;
  out.dial = dial_of(stated.dial, out.regulator, lookup);
  out.co2 = gas_given(stated.co2, out.regulator, when, lookup);
  return out;
}

std::optional<GasComing> gas_once_tapped(const Entry& set, std::optional<RegulatorId> hangs_on,
                                         LineId line, Instant when, Lookup& lookup) {
  const StatedGas stated = stated_gas(set);
  if (stated.regulator) return std::nullopt;
  const auto of_line = regulator_of(line, when, lookup);
  if (of_line == hangs_on) return std::nullopt;
  return gas_coming(stated, of_line, when, lookup);
}

void add_kegs_on_its_lines(RegulatorId id, Lookup& lookup, std::set<KegId>& to) {
  std::set<LineId> lines;
  for (const Entry* entry : lookup.story(subject(id))) {
    const auto* line = get_if<LineRecord>(&entry->payload);
    if (line && line->regulator == id) lines.insert(line->line);
  }
  for (const LineId line : lines) {
    for (const Entry* entry : lookup.story(subject(line))) {
      if (const auto* t = get_if<Tapped>(&entry->payload)) to.insert(t->keg);
      if (const auto* f = get_if<Found>(&entry->payload)) to.insert(f->keg);
    }
  }
}

}  // namespace ullage::cellar
