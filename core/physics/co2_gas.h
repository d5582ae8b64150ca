// SPDX-License-Identifier: GPL-3.0-or-later
//
// CO2 as a real gas at keg pressures.
//
// Volume-explicit virial equation: V / n = R T / p + B(T), with
// B = -1636.75 + 12.0408 T - 0.0327957 T^2 + 3.16528e-5 T^3 cm3/mol (Weiss 1974,
// Mar. Chem. 2:203). Good to better than 0.3 % of the density from -5 to 50 C up
// to 10 bar; it knows nothing of liquid CO2. Air and nitrogen are taken as
// ideal; in a mixture B is weighted by the square of the CO2 share (the cross
// terms move keg densities by under 1 %).
#pragma once

#include "core/physics/error.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::physics {

inline constexpr double gas_constant = 8.314462618;  // J/(mol K)
inline constexpr double co2_kilograms_per_mole = 44.0095e-3;
inline constexpr Range gas_temperature_range{263.15, 323.15};  // K
inline constexpr Range gas_pressure_range{0.0, 1.2e6};         // Pa, absolute

// Litres of beer times volumes of CO2 to moles: one volume is 44.9 mol/m3.
[[nodiscard]] units::Amount dissolved_amount(units::Co2Volumes, units::Volume beer);
[[nodiscard]] units::Mass co2_mass(units::Amount);

// n from p, V, T, and p from n, V, T. `co2` is the share of CO2 in the gas.
[[nodiscard]] Result<units::Amount> gas_amount(units::AbsolutePressure, units::Volume,
                                               units::Temperature,
                                               units::MoleFraction co2 = units::mole_fraction(1));
[[nodiscard]] Result<units::AbsolutePressure> gas_pressure(
    units::Amount, units::Volume, units::Temperature,
    units::MoleFraction co2 = units::mole_fraction(1));
[[nodiscard]] Result<units::Density> co2_gas_density(units::AbsolutePressure, units::Temperature);
// Z = p V / (n R T)
[[nodiscard]] Result<double> co2_compressibility(units::AbsolutePressure, units::Temperature);

// The second virial coefficient in m3/mol. `t` must be within
// gas_temperature_range; callers on a hot path have checked it already.
[[nodiscard]] double co2_second_virial(units::Temperature t);

}  // namespace ullage::physics
