// SPDX-License-Identifier: GPL-3.0-or-later
//
// Hold tests as people take them: a 19 L soda keg, one regulator dial, one
// thermometer.
#pragma once

#include <string>
#include <vector>

#include "core/physics/atmosphere.h"
#include "core/physics/hold.h"

namespace ullage::physics::cases {

struct DialErrors {
  units::PressureDifference bias = units::psi(2);
  units::PressureDifference repeatability = units::psi(0.5);
};

inline HoldReading hold_reading(double hours, double psi, double celsius,
                                const DialErrors& dial = {}, const std::string& name = "dial") {
  const std::string key = std::to_string(hours);
  return {units::hours(hours),
          units::Estimate<units::GaugePressure>(units::gauge_psi(psi))
              .with({name + ": bias"}, units::in_pascals(dial.bias))
              .with({name + ": reading " + key}, units::in_pascals(dial.repeatability)),
          units::Estimate<units::Temperature>(units::celsius(celsius))
              .with({"thermometer: bias"}, 0.5)
              .with({"thermometer: reading " + key}, 0.2)};
}

inline HoldTest held_keg(std::vector<HoldReading> readings) {
  HoldTest test;
  test.gas_space = units::litres(19.6);
  test.ambient = sea_level();
  test.readings = std::move(readings);
  return test;
}

}  // namespace ullage::physics::cases
