// SPDX-License-Identifier: GPL-3.0-or-later
//
// A keg under gas as typed, which several computations follow over time.
// Defined in work_carbonation.cpp.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/physics/carbonation.h"
#include "core/report/slate/fields.h"

namespace ullage::report::slate {

// "low" and "high", the beer ("temperature", "start"), the place, the keg, the
// instruments and how fast it goes.
[[nodiscard]] std::vector<Field> keg_fields();
// The beer goes to the place's temperature, with the gas on at "pressure".
[[nodiscard]] physics::CarbonationHistory history_of(const Inputs&);
// The field that each subject of the model is typed in: durations and the beer's CO2
// have another one in each computation.
[[nodiscard]] constexpr auto keg_subjects(std::string_view duration, std::string_view co2) {
  using physics::Subject;
  return std::to_array<SubjectField>({{Subject::temperature, "place"},
                                      {Subject::gauge_pressure, "pressure"},
                                      {Subject::volume, "brimful"},
                                      {Subject::beer_volume, "beer"},
                                      {Subject::headspace, "beer"},
                                      {Subject::co2, co2},
                                      {Subject::co2_fraction, "share"},
                                      {Subject::duration, duration},
                                      {Subject::step_time, duration},
                                      {Subject::co2_above_water, "pressure"},
                                      {Subject::absolute_pressure, "pressure"}});
}
// A range that ends below where it begins.
[[nodiscard]] std::optional<Problem> check_range(const Inputs&, const units::Printer&);

// With what the model's CO2 is unsure of then.
[[nodiscard]] AnswerValue window_value(std::string name, const physics::Window&,
                                       const physics::CarbonationModel&, bool main);
// CO2 over time with its band, and the range wanted.
void draw_co2(const physics::CarbonationModel&, const Inputs&, units::Duration until, Answer&);

}  // namespace ullage::report::slate
