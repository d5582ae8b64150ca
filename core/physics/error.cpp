// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/error.h"

#include <fmt/format.h>

#include <array>

namespace ullage::physics {
namespace {

struct SubjectText {
  Subject subject;
  const char* name;
  const char* unit;
};

constexpr std::array subject_texts{
    SubjectText{Subject::temperature, "temperature", "K"},
    SubjectText{Subject::ambient_pressure, "ambient_pressure", "Pa"},
    SubjectText{Subject::absolute_pressure, "absolute_pressure", "Pa"},
    SubjectText{Subject::gauge_pressure, "gauge_pressure", "Pa"},
    SubjectText{Subject::altitude, "altitude", "m"},
    SubjectText{Subject::co2, "co2", "volumes"},
    SubjectText{Subject::co2_above_water, "co2_above_water", "volumes"},
    SubjectText{Subject::co2_fraction, "co2_fraction", ""},
    SubjectText{Subject::oxygen_fraction, "oxygen_fraction", ""},
    SubjectText{Subject::gravity, "gravity", ""},
    SubjectText{Subject::extract, "extract", "degrees Plato"},
    SubjectText{Subject::alcohol, "alcohol", "%"},
    SubjectText{Subject::volume, "volume", "m3"},
    SubjectText{Subject::beer_volume, "beer_volume", "m3"},
    SubjectText{Subject::headspace, "headspace", "m3"},
    SubjectText{Subject::mass, "mass", "kg"},
    SubjectText{Subject::density, "density", "kg/m3"},
    SubjectText{Subject::length, "length", "m"},
    SubjectText{Subject::cycles, "cycles", ""},
    SubjectText{Subject::vessel_volumes, "vessel_volumes", ""},
    SubjectText{Subject::glasses, "glasses", ""},
    SubjectText{Subject::duration, "duration", "s"},
    SubjectText{Subject::step_time, "step_time", "s"},
    SubjectText{Subject::time_constant, "time_constant", "s"},
    SubjectText{Subject::fraction, "fraction", ""},
    SubjectText{Subject::final_gravity, "final_gravity", ""},
    SubjectText{Subject::bore, "bore", "m"},
    SubjectText{Subject::roughness, "roughness", "m"},
    SubjectText{Subject::relative_roughness, "relative_roughness", ""},
    SubjectText{Subject::reynolds, "reynolds", ""},
    SubjectText{Subject::rise, "rise", "m"},
    SubjectText{Subject::flow, "flow", "m3/s"},
    SubjectText{Subject::pressure_loss, "pressure_loss", "Pa"},
    SubjectText{Subject::factor, "factor", ""},
    SubjectText{Subject::parts, "parts", ""},
    SubjectText{Subject::weighings, "weighings", ""},
    SubjectText{Subject::air_changes, "air_changes", "1/s"},
};

const SubjectText& text_of(Subject subject) {
  return subject_texts.at(static_cast<std::size_t>(subject));
}

}  // namespace

std::string subject_name(Subject subject) { return text_of(subject).name; }
std::string subject_unit(Subject subject) { return text_of(subject).unit; }

std::string describe(const RangeError& error) {
  const std::string unit = subject_unit(error.subject);
  return fmt::format("{} {:.6g} is outside {:.6g} to {:.6g}{}{}", subject_name(error.subject),
                     error.value, error.low, error.high, unit.empty() ? "" : " ", unit);
}

}  // namespace ullage::physics
