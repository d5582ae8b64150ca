// SPDX-License-Identifier: GPL-3.0-or-later
//
// How each kind of quantity is shown: into which number it turns, with how many
// decimals, and under what unit. printing.cpp puts the text together; this is
// the table it works from. A unit that depends on size (g below a kilogram, min
// below two hours) is chosen from `size`, the largest number to be written, so
// that a value and its error, or both ends of a range, share one unit.
#pragma once

#include <string>

#include "core/units/display_units.h"
#include "core/units/gauge_pressure.h"
#include "core/units/number_text.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::units {

template <class Q>
struct Shown {
  double (*in)(Q);       // the number shown
  Decimals decimals;     // of a plain reading
  std::string unit;      // "" for a specific gravity
  std::string one = {};  // the unit behind exactly 1, where it differs
};

[[nodiscard]] Shown<GaugePressure> shown(const DisplayUnits&, GaugePressure size);
[[nodiscard]] Shown<PressureDifference> shown(const DisplayUnits&, PressureDifference size);
[[nodiscard]] Shown<Temperature> shown(const DisplayUnits&, Temperature size);
[[nodiscard]] Shown<TemperatureDifference> shown(const DisplayUnits&, TemperatureDifference size);
[[nodiscard]] Shown<Volume> shown(const DisplayUnits&, Volume size);
[[nodiscard]] Shown<Mass> shown(const DisplayUnits&, Mass size);
[[nodiscard]] Shown<Length> shown(const DisplayUnits&, Length size);
[[nodiscard]] Shown<Co2Volumes> shown(const DisplayUnits&, Co2Volumes size);
[[nodiscard]] Shown<Co2Concentration> shown(const DisplayUnits&, Co2Concentration size);
[[nodiscard]] Shown<SpecificGravity> shown(const DisplayUnits&, SpecificGravity size);
[[nodiscard]] Shown<Plato> shown(const DisplayUnits&, Plato size);
[[nodiscard]] Shown<Abv> shown(const DisplayUnits&, Abv size);
[[nodiscard]] Shown<Fraction> shown(const DisplayUnits&, Fraction size);
[[nodiscard]] Shown<Duration> shown(const DisplayUnits&, Duration size);
[[nodiscard]] Shown<Length> shown_bore(const DisplayUnits&);
[[nodiscard]] Shown<Volume> shown_glasses(const DisplayUnits&);
// A glass as it is chosen: a pint, half a litre ...
[[nodiscard]] Volume one_glass(const DisplayUnits&);

}  // namespace ullage::units
