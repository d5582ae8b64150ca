// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much beer is in a keg, from one piece of evidence at a time. Each answer
// is an estimate whose sources say what would narrow it (the tare, the scale,
// the eye ...). Joining several is the cellar's work.
#pragma once

#include "core/physics/error.h"
#include "core/units/estimate.h"
#include "core/units/gauge_pressure.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::physics {

inline constexpr Range gross_mass_range{0.5, 500.0};  // kg
inline constexpr Range tare_range{0.5, 100.0};        // kg
inline constexpr Range glasses_range{0.0, 5000.0};

// Weight: V = (gross - tare - gas(brimful)) / (beer density - gas density): the
// headspace's CO2 (up to 0.1 kg in an empty 50 L keg) is taken off. An answer
// below zero but within its own error of zero is given as zero with that error
// ("empty, as far as the scale can tell"); further below is refused with
// Subject::mass (the scale or the tare is wrong), as is more than the keg holds
// beyond its error, with Subject::beer_volume (within its error: full). 0.2 % is
// added under "beer density" for dissolved CO2 and the beer's own gravity.
struct Weighing {
  units::Estimate<units::Mass> gross;
  units::Estimate<units::Mass> tare;
  units::SpecificGravity gravity;  // of the beer now
  units::Temperature temperature;
  units::Volume brimful;
  units::GaugePressure headspace;
  units::AbsolutePressure ambient;
};
[[nodiscard]] Result<units::Estimate<units::Volume>> beer_from_weight(const Weighing&);

// By hand, in tenths of a keg: +-15 % of a keg (common practice, no source).
[[nodiscard]] Result<units::Estimate<units::Volume>> beer_from_heft(units::Fraction of_full,
                                                                    units::Volume nominal,
                                                                    units::ErrorSource source);
// Height of the dew or frost line over the height of the keg: +-8 % of a keg
// (common practice, no source): the ends are domed and the line is a band.
[[nodiscard]] Result<units::Estimate<units::Volume>> beer_from_condensation_line(
    units::Fraction of_height, units::Volume nominal, units::ErrorSource source);

// From a known start less what was poured. Fill +-5 % of the glass taken as one
// bias for all glasses; foam and loss 5 % +-5 % of what was poured (common
// practice, no source).
struct Glasses {
  double count = 0;
  units::Volume glass;
  units::ErrorSource fill;  // name shared by all counts of one bar
  units::ErrorSource loss;
};
[[nodiscard]] Result<units::Estimate<units::Volume>> beer_after_glasses(
    const units::Estimate<units::Volume>& start, const Glasses&);

// Amount poured that way: glasses plus loss.
[[nodiscard]] Result<units::Estimate<units::Volume>> poured_by_glasses(const Glasses&);

}  // namespace ullage::physics
