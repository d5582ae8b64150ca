// SPDX-License-Identifier: GPL-3.0-or-later
//
// A 19 L soda keg and the errors a home dial and thermometer have, for the tests.
#pragma once

#include <ostream>

#include "core/physics/atmosphere.h"
#include "core/physics/carbonation.h"
#include "core/physics/error.h"

namespace ullage::physics {

inline void PrintTo(const RangeError& e, std::ostream* out) { *out << describe(e); }

namespace cases {

inline units::Estimate<units::GaugePressure> dial(double psi) {
  return units::Estimate<units::GaugePressure>(units::gauge_psi(psi))
      .with({"dial: bias"}, units::in_pascals(units::psi(2)));
}
inline units::Estimate<units::GaugePressure> exactly(double psi) {
  return units::Estimate<units::GaugePressure>(units::gauge_psi(psi));
}
inline units::Estimate<units::Temperature> thermometer(double celsius) {
  return units::Estimate<units::Temperature>(units::celsius(celsius))
      .with({"thermometer: bias"}, 0.5);
}

inline CarbonationHistory soda_keg(double celsius, std::vector<Step> steps) {
  CarbonationHistory h;
  h.brimful = units::litres(19.6);
  h.beer = units::litres(18.5);
  h.initial =
      units::Estimate<units::Co2Volumes>(units::volumes_of_co2(0.85)).with({"CO2 at fill"}, 0.1);
  h.ambient = units::Estimate<units::AbsolutePressure>(sea_level())
                  .with({"weather"}, weather_half_width_pascals);
  h.start = thermometer(celsius);
  h.steps = std::move(steps);
  return h;
}

inline CarbonationRates rates() {
  return carbonation_priors(units::litres(19.6), units::litres(18.5), "K01").value();
}

}  // namespace cases
}  // namespace ullage::physics
