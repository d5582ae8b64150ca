// SPDX-License-Identifier: GPL-3.0-or-later
//
// What people read, as estimates: the value and the errors of the instrument it
// was read on. A bias is one named source for all readings of an instrument, so
// it cancels between them; repeatability is a source of its own per reading. A
// reading without an instrument gets the usual errors of its kind under a bias
// of its own ("unnamed dial").
#pragma once

#include <cstdint>
#include <optional>

#include "core/cellar/lookup.h"
#include "core/units/estimate.h"

namespace ullage::cellar {

using PressureEstimate = units::Estimate<GaugePressure>;
using TemperatureEstimate = units::Estimate<Temperature>;
using MassEstimate = units::Estimate<Mass>;
using VolumeEstimate = units::Estimate<Volume>;
using Co2Estimate = units::Estimate<units::Co2Volumes>;

class Readings {
 public:
  explicit Readings(Lookup& lookup) : lookup_(lookup) {}

  // `reading` tells readings apart: the entry's sequence.
  [[nodiscard]] PressureEstimate pressure(GaugePressure, std::optional<InstrumentId>,
                                          std::int64_t reading);
  [[nodiscard]] TemperatureEstimate temperature(Temperature, std::optional<InstrumentId>,
                                                std::int64_t reading);
  [[nodiscard]] MassEstimate mass(Mass, std::optional<InstrumentId>, std::int64_t reading);
  // Metered volume: a share of what was read.
  [[nodiscard]] VolumeEstimate metered(Volume, std::optional<InstrumentId>, std::int64_t reading);
  // CO2 by a meter, with its own half-width where one was stated.
  [[nodiscard]] Co2Estimate co2(Co2Concentration, std::optional<Co2Concentration> half_width,
                                std::optional<InstrumentId>, std::int64_t reading);

 private:
  [[nodiscard]] InstrumentRecord instrument(std::optional<InstrumentId>, InstrumentKind otherwise,
                                            const char* unnamed);
  Lookup& lookup_;
};

}  // namespace ullage::cellar
