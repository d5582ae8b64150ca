// SPDX-License-Identifier: GPL-3.0-or-later
//
// Sugar to carbonate a keg by a second fermentation.
//
//   sugar = (beer (Ct - Cr) + n_head(pt) - n_head(0)) / yield
//
// Ct is the target at the temperature where it shall hold, Cr what fermentation
// left (set by the warmest the beer was since), pt the pressure that keeps Ct. The
// headspace is not small change: a litre over 18 adds about 9 % at 18 C, four
// litres over 15 about 43 %. docs/physics-sugar.md.
#pragma once

#include <optional>

#include "core/physics/closed_keg.h"
#include "core/units/estimate.h"
#include "core/units/gauge_pressure.h"

namespace ullage::physics {

enum class Sugar { sucrose, glucose, glucose_monohydrate, dry_malt_extract };
[[nodiscard]] const char* sugar_name(Sugar);  // lower_snake_case

// Grams of CO2 a gram gives, 95 %. Sugars: stoichiometry less what feeds the yeast,
// 95 +- 5 % of it (the trade's 4 g of sugar per litre and volume is 95.3 %). Malt
// extract: 0.463 of the real extract that ferments, 58 +- 9 % of the powder
// (common practice, no source).
using SugarYield = units::OnScale<struct GramsOfCo2PerGramTag>;
[[nodiscard]] units::Estimate<SugarYield> sugar_yield(Sugar);
[[nodiscard]] std::optional<SugarYield> stoichiometric_yield(Sugar);

// CO2 in beer that fermented out in the open, at the warmest it was since: between
// the default equilibrium and pure water at ambient pressure, which the printed
// tables follow; the half-width spans both.
[[nodiscard]] Result<units::Estimate<units::Co2Volumes>> residual_co2(
    const units::Estimate<units::Temperature>& warmest, units::AbsolutePressure ambient);

// CO2 that fermenting from `now` down to `final` gives: Balling, 0.9565 g for 2.0665
// g of real extract. Nothing when `now` is not above `final`.
[[nodiscard]] Result<units::Co2Volumes> co2_still_to_come(units::SpecificGravity now,
                                                          units::SpecificGravity final);

struct PrimingQuestion {
  units::Volume brimful;
  units::Volume beer;
  units::Estimate<units::Temperature> warmest;  // since fermentation
  units::AbsolutePressure ambient;
  units::Co2Volumes target;
  units::Temperature holds_at;       // where the target shall hold
  units::Temperature conditions_at;  // where the sugar ferments
  Sugar sugar = Sugar::sucrose;
  bool headspace_purged = true;  // full of CO2 at ambient pressure; else air
};
struct PrimingPlan {
  units::Estimate<units::Mass> sugar;
  units::Mass for_headspace;  // of that
  units::Estimate<units::Co2Volumes> residual;
  // Fermented out and not yet cooled: against the keg's rated pressure.
  units::Estimate<units::GaugePressure> while_conditioning;
};
// Refuses a target at or under the residual (Subject::co2).
[[nodiscard]] Result<PrimingPlan> priming(const PrimingQuestion&);
// What a known amount of sugar comes to, where the target shall hold.
[[nodiscard]] Result<units::Estimate<units::Co2Volumes>> primed_to(const PrimingQuestion&,
                                                                   units::Mass sugar);

}  // namespace ullage::physics
