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

}  // namespace ullage::cellar
