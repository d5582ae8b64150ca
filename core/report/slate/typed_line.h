// SPDX-License-Identifier: GPL-3.0-or-later
//
// A draught line as typed: its fields, and how far what it does is known, by the
// errors of the bore, the dial, the thermometer and the beer's viscosity together.
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "core/physics/draught_line.h"
#include "core/physics/handbook_restriction.h"
#include "core/physics/line_calibration.h"
#include "core/report/slate/fields.h"
#include "core/units/quantiles.h"

namespace ullage::report::slate {

[[nodiscard]] Field material_field();  // "material"
[[nodiscard]] Field bore_field();      // "bore"
[[nodiscard]] Field run_field();       // "length"
[[nodiscard]] Field seconds_field();   // "seconds": a glass is wanted in
[[nodiscard]] Field length_like_field(std::string_view key, std::string_view label,
                                      units::Length start, units::Length least,
                                      units::Length greatest, FieldKind kind);
// "rise", "fittings", and among the further ones "temperature" and what instruments
// are off by.
[[nodiscard]] std::vector<Field> common_line_fields();

[[nodiscard]] physics::HoseMaterial typed_material(const Inputs&);
// The hose of "bore" and "rise" at this length, and its fittings.
[[nodiscard]] physics::LineParts typed_parts(const Inputs&, units::Length length);

// What a pour goes by, each with its error.
struct LineKnown {
  physics::LineParts parts;
  units::Estimate<physics::BoreFactor> bores;
  units::Estimate<units::GaugePressure> pressure;
  units::Estimate<units::Temperature> temperature;
  units::Estimate<physics::ViscosityFactor> viscosity;
};
// With the prior of its material for the bore; `pressure` as the dial shows it.
[[nodiscard]] physics::Result<LineKnown> typed_line(const Inputs&, physics::LineParts,
                                                    units::GaugePressure pressure);

template <units::Quantity Q>
using LineAnswer = physics::Ranged<Q>;

// `solve(line, pressure, bore factor)` to a Result<Q>, over all errors. What it refuses
// at an end of them counts as `instead(refusal)`, or, where that is empty, as more than
// any answer.
template <units::Quantity Q, class Solve, class Instead>
[[nodiscard]] physics::Result<LineAnswer<Q>> over_line_errors(const LineKnown& known,
                                                              const Solve& solve,
                                                              const Instead& instead) {
  const auto strict = [&](physics::BoreFactor bores, units::GaugePressure p, units::Temperature t,
                          physics::ViscosityFactor thick) -> physics::Result<Q> {
    const auto beer = physics::flowing_beer(t, units::specific_gravity(1.010), thick);
    if (!beer) return std::unexpected(beer.error());
    const auto line = physics::LineFlow::make(physics::with_bores(known.parts, bores), *beer);
    if (!line) return std::unexpected(line.error());
    return solve(*line, p, bores);
  };
  return physics::ranged<Q>(strict, instead, known.bores, known.pressure, known.temperature,
                            known.viscosity);
}

// How fast it pours; one that stands still at an end of the errors pours nothing there.
[[nodiscard]] physics::Result<LineAnswer<units::VolumeFlow>> pour_of(const LineKnown&);

[[nodiscard]] units::VolumeFlow wanted_flow(const Inputs&);  // by "glass" and "seconds"
[[nodiscard]] std::string print_flow(units::VolumeFlow, const units::Printer&);
// "60 mL/s (45 mL/s to 72 mL/s)"
[[nodiscard]] std::string print_flow(const LineAnswer<units::VolumeFlow>&, const units::Printer&);
[[nodiscard]] std::string seconds_words(units::Duration, const units::Printer&);
// "9.0 s (7.5 s to 12 s)"
[[nodiscard]] std::string glass_words(const LineAnswer<units::VolumeFlow>&, units::Volume glass,
                                      const units::Printer&);
// What it pours, and how long a glass takes.
void tell_pour(const LineAnswer<units::VolumeFlow>&, units::Volume glass, const units::Printer&,
               Answer&);
void draw_profile(const physics::LineFlow&, units::GaugePressure, Answer&);
void draw_profile(const LineKnown&, units::GaugePressure, Answer&);

}  // namespace ullage::report::slate
