// SPDX-License-Identifier: GPL-3.0-or-later
//
// Several kegs on one regulator: what each becomes, which pressure suits them
// best, how few regulators suit all. How long each one's line must then be is
// line_balance.h.
//
// A keg's pressures are those whose equilibrium lies in its beer's range at its
// temperature and gas. Where the spans of all overlap, the best pressure is the
// middle of the overlap; where not, the one at which the beer worst off is least
// out of its range, in volumes.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/physics/carbonation.h"

namespace ullage::physics {

struct SharingKeg {
  std::string name;  // prefix of its error sources
  units::Volume brimful = units::litres(0);
  units::Volume beer = units::litres(0);
  units::Estimate<units::Co2Volumes> now;
  units::GaugePressure headspace;  // over the beer now
  units::Estimate<units::Temperature> temperature;
  units::Estimate<units::AbsolutePressure> ambient;
  units::MoleFraction co2 = units::mole_fraction(1);  // of the shared gas
  units::Co2Volumes low, high;                        // the beer's range
};

struct PressureSpan {
  units::GaugePressure low, high;
};
[[nodiscard]] Result<PressureSpan> suiting_pressures(const SharingKeg&);

// By carbonation.h: 95 % band after `time` at that pressure. A headspace above it
// is not vented.
[[nodiscard]] Result<CarbonationPoint> co2_after(const SharingKeg&,
                                                 const units::Estimate<units::GaugePressure>&,
                                                 units::Duration time);
// The same as an estimate: what makes its band.
[[nodiscard]] Result<units::Estimate<units::Co2Volumes>> co2_estimate_after(
    const SharingKeg&, const units::Estimate<units::GaugePressure>&, units::Duration time);

struct SharedSetting {
  units::GaugePressure pressure;
  bool suits_all = false;
  std::vector<units::Co2Volumes> settles;  // each keg, in order
};
// Refuses no kegs (`parts`) and what equilibrium.h refuses.
[[nodiscard]] Result<SharedSetting> best_shared_pressure(const std::vector<SharingKeg>&);

struct RegulatorGroup {
  units::GaugePressure pressure;  // suits every keg of the group
  std::vector<std::size_t> kegs;  // indices
};
// The fewest pressures that suit every keg: no regulator fewer would do.
[[nodiscard]] Result<std::vector<RegulatorGroup>> fewest_regulators(const std::vector<SharingKeg>&);

}  // namespace ullage::physics
