// SPDX-License-Identifier: GPL-3.0-or-later
//
// Oxygen left in a keg after purging with CO2, and the gas it took.
//
// Pressure cycles:  y' - ys = (y - ys)(1 - m (1 - PL / PH)), absolute pressures
// Sweep:            y - ys = (y0 - ys) exp(-m n), n vessel volumes of gas
// Liquid push:      air left on top of the liquid, thinned by the pushing gas,
//                   plus oxygen the liquid gives off
// ys is the oxygen of the supply gas itself, a floor no number of cycles passes.
// m is the mixing efficiency, 1 for perfect mixing (the textbook case; Crowl &
// Louvar, Branan). Ideal mixing ratios; masses of CO2 from the real gas.
#pragma once

#include "core/physics/error.h"
#include "core/units/gauge_pressure.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::physics {

using OxygenConcentration = units::OnScale<struct MilligramsOfOxygenPerLitreTag>;  // mg/L
[[nodiscard]] constexpr OxygenConcentration milligrams_of_oxygen_per_litre(double v) {
  return OxygenConcentration(v);
}
[[nodiscard]] constexpr double in_ppm(units::MoleFraction y) { return y.count() * 1e6; }
[[nodiscard]] constexpr units::MoleFraction ppm(double v) { return units::mole_fraction(v * 1e-6); }

inline constexpr units::MoleFraction air_oxygen = units::mole_fraction(0.20946);
// Beverage-grade CO2 is sold with at most this much oxygen (trade guideline,
// from memory).
inline constexpr units::MoleFraction supply_oxygen = units::mole_fraction(30e-6);

inline constexpr Range purge_cycles_range{0.0, 60.0};
inline constexpr Range swept_volumes_range{0.0, 60.0};
inline constexpr Range purge_pressure_range{0.0, 9.0e5};  // Pa gauge: 130 psi

// Three values of the mixing efficiency: worst, likely, best.
struct Mixing {
  units::Fraction worst = units::fraction(1);
  units::Fraction likely = units::fraction(1);
  units::Fraction best = units::fraction(1);
};
// Assumed for a keg (common practice, no source): a jet filling an empty keg
// mixes well, 0.9 (0.8 to 1); a slow sweep from post to relief valve short-cuts,
// 0.6 (0.3 to 1).
[[nodiscard]] Mixing cycle_mixing();
[[nodiscard]] Mixing sweep_mixing();

struct Vessel {
  units::Volume gas_space;  // what is purged: an empty keg, or a headspace
  units::Volume beer;       // the beer that will take up what is left
  units::AbsolutePressure ambient;
  units::Temperature temperature;
  units::MoleFraction oxygen = air_oxygen;  // before
};
struct SupplyGas {
  units::MoleFraction oxygen = supply_oxygen;
};

struct PurgeOutcome {
  units::MoleFraction best;
  units::MoleFraction oxygen;  // likely
  units::MoleFraction worst;
  units::MoleFraction floor;  // the supply's own oxygen
  units::Mass co2_used;
  OxygenConcentration if_all_in_beer;  // likely; the beer's own is separate
  OxygenConcentration if_all_in_beer_worst;
};

struct PressureCycles {
  int cycles = 0;
  units::GaugePressure high;
  units::GaugePressure low;  // vented to; 0 is ambient
};
[[nodiscard]] Result<PurgeOutcome> purge_by_cycles(const Vessel&, const PressureCycles&,
                                                   const SupplyGas& gas = {},
                                                   const Mixing& mixing = cycle_mixing());
// How many cycles to the target, as an exact number (round up); refuses a target
// at or below the supply's own oxygen.
[[nodiscard]] Result<double> cycles_to_reach(units::MoleFraction target, const Vessel&,
                                             units::GaugePressure high, const SupplyGas& gas = {},
                                             units::Fraction mixing = units::fraction(1));

[[nodiscard]] Result<PurgeOutcome> purge_by_sweep(const Vessel&, double vessel_volumes,
                                                  const SupplyGas& gas = {},
                                                  const Mixing& mixing = sweep_mixing());
[[nodiscard]] Result<double> volumes_to_reach(units::MoleFraction target, const Vessel&,
                                              const SupplyGas& gas = {},
                                              units::Fraction mixing = units::fraction(1));

// The vessel was full of liquid but for `air_left`, and pushed out with gas at
// `pressure`. What was on top of the liquid is air, whatever the vessel held before
// (`Vessel::oxygen` plays no part): it was open to be filled. `given_off` is the share of the
// liquid's dissolved oxygen (taken as air-saturated, 9 mg/L) that goes into the gas: 5 %, 0 to 20 %
// (assumed). The best case has none given off.
struct LiquidPush {
  units::GaugePressure pressure;
  units::Fraction air_left = units::fraction(0.01);  // of the vessel, before the push
  units::Fraction air_left_worst = units::fraction(0.03);
  units::Fraction given_off = units::fraction(0.05);
  units::Fraction given_off_worst = units::fraction(0.20);
};
[[nodiscard]] Result<PurgeOutcome> purge_by_liquid(const Vessel&, const LiquidPush&,
                                                   const SupplyGas& gas = {});

}  // namespace ullage::physics
