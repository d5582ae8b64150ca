// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which gas came onto a keg: as stated, else that of the bottle its regulator
// stood on at the time (what the tag said at the change, else the bottle's
// record), else pure CO2.
#pragma once

#include <optional>

#include "core/cellar/lookup.h"

namespace ullage::cellar {

inline constexpr int longest_chain_of_regulators = 8;  // a ring of them is cut there

[[nodiscard]] MoleFraction gas_given(std::optional<MoleFraction> stated, std::optional<RegulatorId>,
                                     Instant when, Lookup&);

// The bottle a regulator stands on, after all that is known.
struct BottleBehind {
  std::optional<BottleId> bottle;
  std::optional<MoleFraction> tag;
};
[[nodiscard]] BottleBehind bottle_behind(RegulatorId, std::optional<Instant> when, Lookup&);

}  // namespace ullage::cellar
