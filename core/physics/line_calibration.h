// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a line is really like, from a timed pour: a measured glass, its seconds,
// the pressure and the beer's temperature. Either the bores of its hoses are off
// by one common factor (the default: a hose's bore is the least certain of its
// figures and the pour goes with its power of 2.7), or the hose walls are rougher
// than drawn tube. Both describe the same pour; they differ when it is carried to
// another flow, by a few percent within a factor of two.
//
// The error comes from what was measured: the fill of the glass, the watch, the
// dial and the thermometer, under their own names. So a prediction with the same
// dial is better than either alone: the dial's bias cancels.
#pragma once

#include <boost/variant2/variant.hpp>
#include <optional>
#include <vector>

#include "core/physics/draught_line.h"
#include "core/units/estimate.h"

namespace ullage::physics {

using BoreFactor = units::OnScale<struct EffectiveBoreFactorTag>;  // true over stated bore

// The same told as what the hoses resist over what they should: factor^-4.75, the
// power that friction goes with in smooth hose (Blasius). In it what a pour's errors
// do is nearly straight; in the factor it bends, as a dial that reads low makes the
// bore rise faster than one that reads high lets it fall.
using HoseResistance = units::OnScale<struct HoseResistanceTag>;
[[nodiscard]] HoseResistance resistance_of(BoreFactor);
// Not finite where nothing resists (0 or less).
[[nodiscard]] BoreFactor bores_of(HoseResistance);

// Bores as they are known: as a prior states them, or by timed pours.
using KnownBores =
    boost::variant2::variant<units::Estimate<BoreFactor>, units::Estimate<HoseResistance>>;
struct BoreRange {  // 95 %
  BoreFactor low, likely;
  std::optional<BoreFactor> high;  // none where no width is ruled out
};
[[nodiscard]] BoreRange range_of_bores(const KnownBores&);

inline constexpr Range bore_factor_range{0.5, 1.6};
inline constexpr Range pour_volume_range{2e-5, 0.05};    // m3: 20 mL to 50 L
inline constexpr Range pour_time_range{0.5, 3600.0};     // s
inline constexpr double watch_half_width_seconds = 0.4;  // start and stop by hand, 95 %, assumed

struct MeasuredPour {
  units::Estimate<units::Volume> volume;
  units::Estimate<units::Duration> duration;
  units::Estimate<units::GaugePressure> pressure;
  units::Estimate<units::Temperature> temperature;  // of the beer
};

[[nodiscard]] LineParts with_bores(LineParts, BoreFactor);
[[nodiscard]] LineParts with_roughness(LineParts, units::Length);

// The factor on all bores at which the line would have poured so. Refuses, beside
// ranges, a pour that no factor in range explains (`factor`).
[[nodiscard]] Result<units::Estimate<HoseResistance>> calibrate_bore(
    const LineParts&, const MeasuredPour&, units::SpecificGravity,
    const units::Estimate<ViscosityFactor>&);

// The roughness of all hoses that explains it; refuses (`roughness`) a pour that
// is faster than a smooth hose of the stated bore, or slower than 1 mm explains.
[[nodiscard]] Result<units::Length> calibrate_roughness(const LineParts&, const MeasuredPour&,
                                                        units::SpecificGravity, ViscosityFactor);

// Several pours of one line: weighted by what each knows alone; what they share
// (one dial) does not average away. Refuses an empty list (`parts`).
[[nodiscard]] Result<units::Estimate<HoseResistance>> combine(
    const std::vector<units::Estimate<HoseResistance>>&);

// --- the other way: how fast a line pours, with its error

struct PourInputs {
  KnownBores bores;
  units::Estimate<units::GaugePressure> pressure;
  units::Estimate<units::Temperature> temperature;
  units::SpecificGravity gravity = units::specific_gravity(1.010);
  units::Estimate<ViscosityFactor> viscosity;
};
// Refuses where the likely line runs but one shifted by an error stands still.
[[nodiscard]] Result<units::Estimate<units::VolumeFlow>> pour_flow(const LineParts&,
                                                                   const PourInputs&);
// Seconds for a glass: in the logarithm, since a slow pour may be far slower.
struct PourTime {
  units::Duration low, likely, high;  // 95 %
};
[[nodiscard]] Result<PourTime> pour_time(const units::Estimate<units::VolumeFlow>&, units::Volume);

}  // namespace ullage::physics
