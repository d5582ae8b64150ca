// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the cards share: the equations only they show, and how a refusal of the physics is told.
#pragma once

#include "core/physics/error.h"
#include "core/report/cards/keg_card.h"
#include "core/report/keg_inputs.h"

namespace ullage::report::cards {

inline constexpr Law venting_law{
    "A closed keg keeps its CO₂: what a vent lets out of the headspace is missing, and beer and "
    "headspace come to rest anew.",
    "physics-rescue.md", "Rescue of over-carbonated beer",
    "Mass balance, real gas (Weiss 1974); how fast beer gives gas off is assumed",
    Certainty::common_practice};
inline constexpr Law sugar_law{
    "CO₂ wanted in beer and headspace, less what fermentation left, over what a gram of the sugar "
    "gives.",
    "physics-sugar.md", "Priming sugar",
    "Stoichiometry; the share that feeds the yeast and the malt’s fermentability by practice",
    Certainty::common_practice};

// An answer that can't be given: why, and the form of the reading that is wanted.
[[nodiscard]] KegCard cant_tell(std::string why, std::vector<CardAct> wanted = {});
// "Can’t tell: at 31 °C the equation ends at 30 °C" and the like.
[[nodiscard]] std::string why_refused(const physics::RangeError&, const units::Printer&);

using report::air_input;
using report::beer_temperature_input;
using report::level_input;
using report::size_input;
[[nodiscard]] std::optional<units::AbsolutePressure> air_of(const KegSubject&);

[[nodiscard]] CardAct weigh_it(const KegSubject&);
[[nodiscard]] CardAct read_pressure(const KegSubject&);

// "9 (7 to 12)", "9" where both ends are it.
[[nodiscard]] std::string say_count(int likely, int fewest, std::optional<int> most);
// "vent", "vents"
[[nodiscard]] std::string plural(int n, const std::string& one);

}  // namespace ullage::report::cards
