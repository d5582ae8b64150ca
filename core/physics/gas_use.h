// SPDX-License-Identifier: GPL-3.0-or-later
//
// Grams of gas that the ordinary work of a keg takes out of a bottle.
//
// Pushing:      the gas that fills the room the beer leaves: n(p, dV, T)
// Headspace:    n(p2, V, T) - n(p1, V, T) when the pressure is raised
// Carbonating:  dissolved CO2, V_beer (C2 - C1) of it
// Purging:      purge.h gives the CO2; a purge is taken at 15 % (assumed: nobody
//               lets in exactly the gas of the arithmetic)
// Real-gas moles (co2_gas.h); the mass of mixed gas counts its nitrogen. What
// beer takes out of mixed gas at constant pressure is made up mole for mole by
// the mixture.
//
// Each answer carries the errors of its inputs and one of the method, under the
// name given: 5 % (assumed) for pushing, headspace and uptake: the gas is not at
// the beer's temperature at once, foam carries gas away, dials drift.
//
// Examples: docs/physics-gas.md, "Gas used".
#pragma once

#include "core/physics/error.h"
#include "core/units/estimate.h"
#include "core/units/gauge_pressure.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::physics {

inline constexpr Range gas_use_volume_range{0.0, 10.0};  // m3 of beer
inline constexpr double gas_use_method_share = 0.05;
inline constexpr double purge_use_share = 0.15;

// Molar mass of a CO2-nitrogen mixture times moles.
[[nodiscard]] units::Mass gas_mass(units::Amount, units::MoleFraction co2);

// Where the gas works: the pressure on the regulator, the air, the temperature,
// and the supply.
struct SupplyState {
  units::Estimate<units::GaugePressure> pressure;
  units::Estimate<units::Temperature> temperature;
  units::AbsolutePressure ambient;
  units::MoleFraction co2 = units::mole_fraction(1);
};

[[nodiscard]] Result<units::Estimate<units::Mass>> gas_to_push(
    const units::Estimate<units::Volume>& beer_drawn, const SupplyState&,
    units::ErrorSource method);

// From `before` (ambient is 0 psi gauge) up to the supply's pressure; nothing is
// used, and nothing given back, when the headspace is above it already.
[[nodiscard]] Result<units::Estimate<units::Mass>> gas_to_fill_headspace(
    const units::Estimate<units::Volume>& headspace, units::GaugePressure before,
    const SupplyState&, units::ErrorSource method);

// Nothing is used when the beer gives CO2 off instead.
[[nodiscard]] Result<units::Estimate<units::Mass>> gas_to_carbonate(
    const units::Estimate<units::Volume>& beer, const units::Estimate<units::Co2Volumes>& from,
    const units::Estimate<units::Co2Volumes>& to, units::MoleFraction supply_co2,
    units::ErrorSource method);

[[nodiscard]] units::Estimate<units::Mass> gas_to_purge(units::Mass by_arithmetic,
                                                        units::ErrorSource method);

}  // namespace ullage::physics
