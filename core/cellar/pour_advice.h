// SPDX-License-Identifier: GPL-3.0-or-later
//
// Pour advice in words with numbers. Honest by intent: something is advised only
// where it holds over the whole 95 % range of what is known; what a dial cannot
// tell apart is said as such and not as a warning. A line that is kept well gets
// nothing above `info`.
//
// A pressure whose likely value is in range while its error reaches out of it is
// no news: with an ordinary dial that is every line. Only where the likely value
// itself lies outside is it said that it can't be told, and what makes it so.
//
// Limits (common practice, no source, but for the nominal pour): a US pint in
// 5.3 to 16 s pours well; beer standing up to 2 psi under its equilibrium keeps
// its gas; 30 mL standing warm spoil a first glass; a week without a pour is
// long; a delivered keg wants a day in the cold.
#pragma once

#include <vector>

#include "core/cellar/pour_state.h"

namespace ullage::cellar {

// What a keg's own advice says too (pressure against its range, rating) is in
// `also_of_keg`.
struct PourAdvice {
  std::vector<Advice> of_line;
  std::vector<Advice> also_of_keg;
};

// Without `keg` and `now` what depends on its story is left out.
[[nodiscard]] PourAdvice pour_advice(const PourSetting&, const PourOutlook&,
                                     const KegStatus* keg = nullptr,
                                     std::optional<Instant> now = {});

// How far a keg gets at its line's pressure: its CO2 after a week, or after four
// where a week does not bring it above its range. Empty where it stays in range or
// its CO2 is not known.
struct OverGassed {
  units::Estimate<units::Co2Volumes> then;
  units::Duration in;
};
[[nodiscard]] std::optional<OverGassed> over_gassed(const PourSetting&, const KegStatus&);

// A line whose keg shares a regulator no pressure of which suits all kegs on it, on
// tap or not: what each of them becomes at the pressure of that setting, and how
// soon the line's is over-gassed, unless `told` says that already. Empty where they
// get on.
[[nodiscard]] std::vector<Advice> shared_regulator_advice(const CellarStatus&, const LineStatus&,
                                                          const PourSetting&,
                                                          const std::vector<Advice>& told);
// The same for all lines as they stand.
void advise_shared_regulators(CellarStatus&);

}  // namespace ullage::cellar
