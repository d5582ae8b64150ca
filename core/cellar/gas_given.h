// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which gas came onto a keg: as stated, else that of the bottle its regulator
// stood on at the time (what the tag said at the change, else the bottle's
// record), else pure CO2.
//
// And by which regulator: as stated, else, while the keg is on a line, the one the
// register says drives that line. Kegs' stories, their CO2 and the gas account all
// ask here, so that they never tell of different regulators.
#pragma once

#include <optional>
#include <set>

#include "core/cellar/lookup.h"

namespace ullage::cellar {

inline constexpr int longest_chain_of_regulators = 8;  // a ring of them is cut there

[[nodiscard]] MoleFraction gas_given(std::optional<MoleFraction> stated, std::optional<RegulatorId>,
                                     Instant when, Lookup&);

// A line's record as it stood then; where that names none, the first later one that
// does: a register completed later tells of before.
[[nodiscard]] std::optional<RegulatorId> regulator_of(std::optional<LineId>, Instant when, Lookup&);

struct StatedGas {
  std::optional<RegulatorId> regulator;
  std::optional<InstrumentId> dial;
  std::optional<MoleFraction> co2;
};
// What an entry that puts gas on a keg (gas_set, found) itself says of it.
[[nodiscard]] StatedGas stated_gas(const Entry&);

struct GasComing {
  std::optional<RegulatorId> regulator;
  std::optional<InstrumentId> dial;  // stated, else the regulator's
  MoleFraction co2 = units::mole_fraction(1);
};
[[nodiscard]] std::optional<InstrumentId> dial_of(std::optional<InstrumentId> stated,
                                                  std::optional<RegulatorId>, Lookup&);
[[nodiscard]] GasComing gas_coming(const StatedGas&, std::optional<RegulatorId> unless_stated,
                                   Instant when, Lookup&);
// What comes to a keg put on a line with its gas on, as `set` put it on: of the line's
// regulator from now on, where nobody said which. Nothing where somebody did, or where
// it hangs on that one already.
[[nodiscard]] std::optional<GasComing> gas_once_tapped(const Entry& set,
                                                       std::optional<RegulatorId> hangs_on, LineId,
                                                       Instant when, Lookup&);

// Kegs that were ever put on a line that this regulator drives, or drove.
void add_kegs_on_its_lines(RegulatorId, Lookup&, std::set<KegId>&);

// The bottle a regulator stands on, after all that is known.
struct BottleBehind {
  std::optional<BottleId> bottle;
  std::optional<MoleFraction> tag;
};
[[nodiscard]] BottleBehind bottle_behind(RegulatorId, std::optional<Instant> when, Lookup&);

}  // namespace ullage::cellar
