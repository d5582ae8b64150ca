// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a field holds and what an answer is made of: one quantity of any kind
// the computations know, with its unit still open.
#pragma once

#include <boost/variant2/variant.hpp>
#include <compare>
#include <string>

#include "core/physics/purge.h"
#include "core/units/gauge_pressure.h"
#include "core/units/printing.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::report::slate {

// A plain number: cycles, glasses, parts per million.
struct Count {
  double number = 0;
  friend auto operator<=>(const Count&, const Count&) = default;
};
// Which of a field's choices, from 0.
struct Choice {
  int index = 0;
  friend auto operator<=>(const Choice&, const Choice&) = default;
};

using Value =
    boost::variant2::variant<Count, Choice, units::GaugePressure, units::PressureDifference,
                             units::Temperature, units::TemperatureDifference, units::Volume,
                             units::Mass, units::Length, units::Co2Volumes, units::SpecificGravity,
                             units::Fraction, units::Abv, units::Duration, units::MoleFraction,
                             physics::OxygenConcentration>;

// The number behind it, in its SI unit or on its own scale; for checks and
// charts, never to compute with.
[[nodiscard]] double magnitude_of(const Value&);
[[nodiscard]] bool is_finite(const Value&);
// The same kind of quantity with another magnitude.
[[nodiscard]] Value with_magnitude(const Value& like, double magnitude);

// "12 psi", "2070 ppm", "5"
[[nodiscard]] std::string print(const Value&, const units::Printer&);
// "15.1 ± 1.0 %", "1130 ± 90 ppm"
[[nodiscard]] std::string print_share(const units::Estimate<units::MoleFraction>&,
                                      const units::Printer&);
// The same where a length is a bore.
[[nodiscard]] std::string print_bore(const Value&, const units::Printer&);
// "2 to 8 days", "11 to 13 psi": both of one kind.
[[nodiscard]] std::string print_range(const Value& low, const Value& high, const units::Printer&);

// As a chart draws it: the number in the person's unit, and that unit. Parts of
// time are in days.
[[nodiscard]] double drawn_number(const Value&, const units::DisplayUnits&);
[[nodiscard]] std::string drawn_unit(const Value&, const units::DisplayUnits&);

}  // namespace ullage::report::slate
