// SPDX-License-Identifier: GPL-3.0-or-later
//
// What feeds what: bottles, the regulators on them, and the kegs on those.
//
// A regulator draws from the bottle it stands on, and from whatever the
// regulator before it (fed_by) draws from. A regulator with both is a manifold:
// its bottles are drawn down together and make one supply, with one account.
#pragma once

#include <string>
#include <vector>

#include "core/cellar/lookup.h"

namespace ullage::cellar {

// The bottles behind a regulator, itself included, at a time (now when absent);
// in order of id, each once.
[[nodiscard]] std::vector<BottleId> bottles_behind(RegulatorId, std::optional<Instant> when,
                                                   Lookup&);

// Bottles that belong together now, and the regulators they feed.
struct GasSupply {
  std::vector<BottleId> bottles;        // one, or those of a manifold
  std::vector<RegulatorId> regulators;  // by name
  // The only supply in use of a cellar: gas without a named regulator is its own.
  bool only_one = false;
};
// Of every bottle in use, each in one supply.
[[nodiscard]] std::vector<GasSupply> gas_supplies(const std::vector<BottleId>&,
                                                  const std::vector<RegulatorId>&, Lookup&);

}  // namespace ullage::cellar
