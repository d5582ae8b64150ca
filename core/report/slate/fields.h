// SPDX-License-Identifier: GPL-3.0-or-later
//
// Fields that several computations share, the errors that go with them, and the
// way from a refusal of the physics to a problem at a field.
#pragma once

#include <span>

#include "core/physics/carbonation.h"
#include "core/physics/error.h"
#include "core/physics/ranged.h"
#include "core/report/slate/computation.h"
#include "core/units/gauge_pressure.h"

namespace ullage::report::slate {

[[nodiscard]] Field beer_temperature_field(std::string_view key, std::string_view label,
                                           units::Temperature start);
[[nodiscard]] Field place_temperature_field(units::Temperature start);
[[nodiscard]] Field pressure_field(std::string_view key, std::string_view label,
                                   units::GaugePressure start);
[[nodiscard]] Field co2_field(std::string_view key, std::string_view label,
                              units::Co2Volumes start);
[[nodiscard]] Field brimful_field();
[[nodiscard]] Field beer_volume_field(std::string_view label, units::Volume start);
[[nodiscard]] Field glass_field();
[[nodiscard]] Field altitude_field();
[[nodiscard]] Field co2_share_field();
[[nodiscard]] Field dial_error_field();
[[nodiscard]] Field thermometer_error_field();
[[nodiscard]] Field mass_field(std::string_view key, std::string_view label, units::Mass start,
                               units::Mass least, units::Mass greatest);
[[nodiscard]] Field duration_field(std::string_view key, std::string_view label,
                                   units::Duration start, units::Duration least,
                                   units::Duration greatest);
[[nodiscard]] Field choice_field(std::string_view key, std::string_view label,
                                 std::vector<std::string_view> choices);
[[nodiscard]] Field number_field(std::string_view key, std::string_view label, double start,
                                 double least, double greatest);

// The typed values with the errors of what they are read on.
[[nodiscard]] units::Estimate<units::GaugePressure> on_dial(const Inputs&, std::string_view key);
[[nodiscard]] units::Estimate<units::Temperature> on_thermometer(const Inputs&,
                                                                 std::string_view key);
// Air pressure at the altitude, with the weather. The field's limits are the
// equation's, so it has an answer.
[[nodiscard]] units::Estimate<units::AbsolutePressure> air_at(const Inputs&);
[[nodiscard]] units::MoleFraction gas_share(const Inputs&);
// How far off a CO2 that stands in another field may be.
[[nodiscard]] Field co2_error_field(std::string_view key, std::string_view label);
// How fast a keg at rest takes gas up or gives it off: the fields that may say so,
// and the prior of a keg of this size where they are blank ("brimful", "beer", "days",
// "days_factor").
[[nodiscard]] Field uptake_field();
[[nodiscard]] Field uptake_factor_field();
[[nodiscard]] physics::Result<physics::CarbonationRates> uptake_rates(const Inputs&);

// With its range and what that comes from; where one end of the errors has no answer,
// with what can be said.
template <units::Quantity Q>
[[nodiscard]] AnswerValue within(std::string name, const physics::Ranged<Q>& r, bool main = false) {
  return because(r.errors, r.low && r.high
                               ? between(std::move(name), r.likely, *r.low, *r.high, main)
                               : exactly(std::move(name), r.likely, main));
}

// The field, folded away among the further ones, or one that may be left blank.
[[nodiscard]] Field further(Field);
[[nodiscard]] Field may_be_blank(Field);

// Which field a refused subject belongs to. The first that fits is taken; a
// refusal that fits none is told about the whole.
struct SubjectField {
  physics::Subject subject;
  std::string_view field;
};
using SubjectFields = std::span<const SubjectField>;
[[nodiscard]] Problem problem_of(const physics::RangeError&, SubjectFields, const Inputs&,
                                 const units::Printer&);
[[nodiscard]] Problem impossible(std::string_view field, std::string sentence);
// The same, with what stands in the field and the limit it breaks.
[[nodiscard]] Problem beyond(std::string_view field, const Inputs&, const Value& limit,
                             std::string sentence);

// Sets of computations, each in its own source.
void add_co2_computations(std::vector<Computation>&);
void add_carbonation_computations(std::vector<Computation>&);
void add_purge_computations(std::vector<Computation>&);
void add_beer_computations(std::vector<Computation>&);
void add_gas_computations(std::vector<Computation>&);
void add_room_computations(std::vector<Computation>&);
void add_line_computations(std::vector<Computation>&);
void add_regulator_computations(std::vector<Computation>&);
void add_level_computations(std::vector<Computation>&);
void add_measure_computations(std::vector<Computation>&);
void add_hold_computations(std::vector<Computation>&);
void add_rescue_computations(std::vector<Computation>&);
void add_priming_computations(std::vector<Computation>&);
void add_break_out_computations(std::vector<Computation>&);
void add_bottle_computations(std::vector<Computation>&);
void add_run_out_computations(std::vector<Computation>&);
void add_rocking_computations(std::vector<Computation>&);
void add_shut_keg_computations(std::vector<Computation>&);
void add_piece_computations(std::vector<Computation>&);
void add_cleaner_computations(std::vector<Computation>&);

}  // namespace ullage::report::slate
