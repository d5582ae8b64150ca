// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is in a gas bottle, and what its high-pressure gauge tells of it.
//
// CO2 below its critical point (30.98 C, 73.77 bar) stands as liquid under its
// own vapour. While any liquid is left the pressure is that of saturation at the
// bottle's temperature and says nothing of how much there is. Only when the
// liquid is gone, or in mixed gas (all vapour), does the gauge fall with the
// contents.
//
// Saturation:  ln(p/pc)  = (Tc/T) sum a_i (1 - T/Tc)^t_i
//              ln(d/dc)  = sum a_i (1 - T/Tc)^t_i      liquid and vapour density
//   ancillary equations of Span & Wagner 1996 (J. Phys. Chem. Ref. Data 25:1509),
//   coefficients from memory; within 0.05 % of the printed tables from -20 to 30 C.
// Dense vapour: Peng & Robinson 1976 with van der Waals mixing, CO2-N2 k = -0.017,
//   all constants from memory. Within 1.1 % of the printed vapour densities up to
//   25 C, 1.9 % at 30 C, 2.7 % of nitrogen's at 200 bar; no table of mixtures was at
//   hand. Taken as 4 % (pure) and 5 % (mixed).
//
// docs/physics-gas.md, "Bottles".
#pragma once

#include <optional>

#include "core/physics/error.h"
#include "core/units/estimate.h"
#include "core/units/gauge_pressure.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::physics {

inline constexpr double co2_critical_kelvin = 304.1282;
inline constexpr double co2_critical_pascals = 7.3773e6;
inline constexpr double co2_critical_kg_per_m3 = 467.6;
inline constexpr Range saturation_temperature_range{253.1, 304.12};  // K: -20 to 30.97 C
inline constexpr Range bottle_temperature_range{253.1, 323.2};       // K: -20 to 50 C
inline constexpr Range bottle_pressure_range{5.0e4, 3.0e7};          // Pa absolute
inline constexpr Range water_capacity_range{1e-5, 0.2};              // m3
inline constexpr Range bottle_contents_range{0.0, 150.0};            // kg

struct Saturation {
  units::AbsolutePressure pressure;
  units::Density liquid;
  units::Density vapour;
};
[[nodiscard]] Result<Saturation> co2_saturation(units::Temperature);

// Density of the gas alone, up to bottle pressures; `co2` is the CO2 share of the
// moles, the rest nitrogen. Refuses pure CO2 above saturation (there is liquid).
[[nodiscard]] Result<units::Density> bottle_gas_density(units::AbsolutePressure, units::Temperature,
                                                        units::MoleFraction co2);

// 95 %, of the density: pure CO2, and anything with nitrogen in it.
inline constexpr units::Fraction dense_co2_half_width = units::fraction(0.04);
inline constexpr units::Fraction dense_mixed_half_width = units::fraction(0.05);

// --- a CO2 bottle of known contents

enum class BottlePhase {
  vapour_only,        // the gauge falls with what is drawn
  liquid_and_vapour,  // the gauge shows saturation, whatever is left
  liquid_full,        // no vapour left: pressure rises steeply with each degree
};
struct BottleState {
  BottlePhase phase = BottlePhase::vapour_only;
  // Below so much gas the liquid is gone at this temperature.
  units::Mass liquid_gone_below;
  // Absent when liquid-full: then it depends on the steel, too.
  std::optional<units::AbsolutePressure> pressure;
};
[[nodiscard]] Result<BottleState> co2_bottle_state(units::Mass gas, units::Volume water_capacity,
                                                   units::Temperature);

// --- the fill ratio: mass of CO2 by mass of water the bottle would hold

// Rules allow 68 % at most in the US (49 CFR 173.304a, verified) and up to 75 % in
// Europe, depending on the bottle's test pressure (from memory).
inline constexpr double usual_fill_ratio = 0.68;
inline constexpr Range fill_ratio_range{0.48, 0.95};

// The temperature at which the liquid fills the bottle: 26.8 C at 68 %. Above it
// the pressure leaves the saturation curve and rises steeply, to the relief
// device. A caution, not a limit to work up to.
[[nodiscard]] Result<units::Temperature> liquid_full_temperature(units::Fraction fill_ratio);
// What a bottle sold with this much gas holds in water.
[[nodiscard]] Result<units::Volume> water_capacity_for(units::Mass content,
                                                       units::Fraction fill_ratio);

// --- the gauge

enum class GaugeTells {
  nothing_while_liquid,  // at saturation within the errors: anything from `least` to full
  vapour_only,           // the liquid is gone; `gas` is what is left
  mixed_gas,             // all vapour; `gas` is what is left
  above_saturation,      // warmer than said, liquid-full, or another gas: nothing told
};
struct BottleGauge {
  units::Estimate<units::GaugePressure> pressure;
  units::Estimate<units::Temperature> temperature;  // of the bottle, not of the room
  units::AbsolutePressure ambient;
};
struct GaugeVerdict {
  GaugeTells tells = GaugeTells::nothing_while_liquid;
  std::optional<units::AbsolutePressure> saturation;  // pure CO2
  std::optional<units::Mass> least;                   // while liquid: at least this much
  std::optional<units::Estimate<units::Mass>> gas;    // where the gauge tells
};
// From 0.995 CO2 up the gas counts as pure. `equation` names the error source of
// the dense gas. Refuses temperatures where pure CO2 has no saturation.
inline constexpr double pure_co2_from = 0.995;
[[nodiscard]] Result<GaugeVerdict> what_gauge_tells(const BottleGauge&, units::MoleFraction co2,
                                                    units::Volume water_capacity,
                                                    const units::ErrorSource& equation);

}  // namespace ullage::physics
