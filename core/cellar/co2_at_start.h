// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much CO2 the beer held when its story in this keg begins.
#pragma once

#include <expected>
#include <optional>

#include "core/cellar/keg_timeline.h"

namespace ullage::cellar {

struct Co2AtStart {
  Co2Estimate co2;
  std::optional<GaugePressure> headspace;  // stated; else at rest with the beer
  bool at_ambient = false;                 // filled open: the headspace is at air pressure
  std::optional<InputUsed> input;
};

struct Surroundings {
  units::Estimate<units::AbsolutePressure> ambient;
  std::string tag;
  units::ErrorSource equation;
};

// The reason when nothing can be told.
[[nodiscard]] std::expected<Co2AtStart, Message> co2_at_start(const Entry& filling,
                                                              const KegTimeline&,
                                                              const Surroundings&, Lookup&);

// A carbonation reading as CO2: by meter, or from pressure at rest and temperature.
[[nodiscard]] std::optional<Co2Estimate> co2_read(const CarbonationReading&, const Entry&,
                                                  const Surroundings&, Lookup&);

}  // namespace ullage::cellar
