// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/purge.h"

#include <array>
#include <cmath>
#include <optional>

#include "core/physics/atmosphere.h"
#include "core/physics/co2_gas.h"
#include "core/physics/keg_cooling.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double oxygen_kilograms_per_mole = 31.998e-3;
constexpr double dissolved_oxygen_kg_per_m3 = 9e-3;  // water in air at about 20 C
constexpr Range share_range{0.0, 1.0};
constexpr Range mixing_range{0.01, 1.0};
constexpr Range gas_space_range{1e-4, 1.0};  // m3

std::optional<RangeError> check(const Vessel& v, const SupplyGas& gas) {
  if (auto bad = outside(Subject::headspace, in_cubic_metres(v.gas_space), gas_space_range))
    return *bad;
  if (auto bad = outside(Subject::beer_volume, in_cubic_metres(v.beer), {1e-4, 1.0})) return *bad;
  if (auto bad = outside(Subject::ambient_pressure, in_pascals(v.ambient), ambient_pressure_range))
    return *bad;
  if (auto bad = outside(Subject::temperature, in_kelvin(v.temperature), gas_temperature_range))
    return *bad;
  if (auto bad = outside(Subject::oxygen_fraction, v.oxygen.count(), share_range)) return *bad;
  if (auto bad = outside(Subject::oxygen_fraction, gas.oxygen.count(), share_range)) return *bad;
  return std::nullopt;
}

std::optional<RangeError> check(const Mixing& mixing) {
  for (const Fraction m : {mixing.worst, mixing.likely, mixing.best}) {
    if (auto bad = outside(Subject::fraction, m.count(), mixing_range)) return *bad;
  }
  return std::nullopt;
}

OxygenConcentration in_beer(MoleFraction oxygen, const Vessel& v) {
  const double moles_of_gas = in_pascals(v.ambient) * in_cubic_metres(v.gas_space) /
                              (gas_constant * in_kelvin(v.temperature));
  const double kilograms_of_oxygen = moles_of_gas * oxygen.count() * oxygen_kilograms_per_mole;
  return milligrams_of_oxygen_per_litre(kilograms_of_oxygen * 1e6 / in_litres(v.beer));
}

PurgeOutcome outcome(const Vessel& v, const SupplyGas& gas, MoleFraction best, MoleFraction likely,
                     MoleFraction worst, Mass used) {
  return {best, likely, worst, gas.oxygen, used, in_beer(likely, v), in_beer(worst, v)};
}

// Share of the gas in place that one cycle replaces.
Result<double> replaced(const Vessel& v, GaugePressure high, GaugePressure low) {
  if (auto bad = outside(Subject::gauge_pressure, in_pascals(high), purge_pressure_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::gauge_pressure, in_pascals(low), {0.0, in_pascals(high)}))
    return std::unexpected(*bad);
  return 1 - in_pascals(low.at_ambient(v.ambient)) / in_pascals(high.at_ambient(v.ambient));
}

}  // namespace

Mixing cycle_mixing() { return {fraction(0.8), fraction(0.9), fraction(1)}; }
Mixing sweep_mixing() { return {fraction(0.3), fraction(0.6), fraction(1)}; }

Result<PurgeOutcome> purge_by_cycles(const Vessel& v, const PressureCycles& c, const SupplyGas& gas,
                                     const Mixing& mixing) {
  if (const auto bad = check(v, gas)) return std::unexpected(*bad);
  if (const auto bad = check(mixing)) return std::unexpected(*bad);
  if (auto bad = outside(Subject::cycles, c.cycles, purge_cycles_range))
    return std::unexpected(*bad);
  const auto share = replaced(v, c.high, c.low);
  if (!share) return std::unexpected(share.error());
  const double floor = gas.oxygen.count();
  const auto left = [&](Fraction m) {
    return mole_fraction(floor +
                         (v.oxygen.count() - floor) * std::pow(1 - m.count() * *share, c.cycles));
  };
  const auto filled = gas_amount(c.high.at_ambient(v.ambient), v.gas_space, v.temperature);
  const auto vented = gas_amount(c.low.at_ambient(v.ambient), v.gas_space, v.temperature);
  if (!filled) return std::unexpected(filled.error());
  if (!vented) return std::unexpected(vented.error());
  const double used = (in_moles(*filled) - in_moles(*vented)) * c.cycles;
  return outcome(v, gas, left(mixing.best), left(mixing.likely), left(mixing.worst),
                 co2_mass(moles(used)));
}

Result<double> cycles_to_reach(MoleFraction target, const Vessel& v, GaugePressure high,
                               const SupplyGas& gas, Fraction mixing) {
  if (const auto bad = check(v, gas)) return std::unexpected(*bad);
  if (const auto bad = check(Mixing{mixing, mixing, mixing})) return std::unexpected(*bad);
  // A target on the floor itself takes for ever.
  const double floor = gas.oxygen.count();
  if (auto bad = outside(Subject::oxygen_fraction, target.count(),
                         {std::nextafter(floor, 1.0), v.oxygen.count()}))
    return std::unexpected(*bad);
  const auto share = replaced(v, high, gauge_pascals(0));
  if (!share) return share;
  if (*share <= 0)
    return std::unexpected(
        RangeError{Subject::gauge_pressure, in_pascals(high), 1.0, purge_pressure_range.high});
  return std::log((target.count() - floor) / (v.oxygen.count() - floor)) /
         std::log(1 - mixing.count() * *share);
}

Result<PurgeOutcome> purge_by_sweep(const Vessel& v, double vessel_volumes, const SupplyGas& gas,
                                    const Mixing& mixing) {
  if (const auto bad = check(v, gas)) return std::unexpected(*bad);
  if (const auto bad = check(mixing)) return std::unexpected(*bad);
  if (auto bad = outside(Subject::vessel_volumes, vessel_volumes, swept_volumes_range))
    return std::unexpected(*bad);
  const double floor = gas.oxygen.count();
  const auto left = [&](Fraction m) {
    return mole_fraction(floor +
                         (v.oxygen.count() - floor) * std::exp(-m.count() * vessel_volumes));
  };
  const auto one_volume = gas_amount(v.ambient, v.gas_space, v.temperature);
  if (!one_volume) return std::unexpected(one_volume.error());
  return outcome(v, gas, left(mixing.best), left(mixing.likely), left(mixing.worst),
                 co2_mass(moles(in_moles(*one_volume) * vessel_volumes)));
}

Result<double> volumes_to_reach(MoleFraction target, const Vessel& v, const SupplyGas& gas,
                                Fraction mixing) {
  if (const auto bad = check(v, gas)) return std::unexpected(*bad);
  if (const auto bad = check(Mixing{mixing, mixing, mixing})) return std::unexpected(*bad);
  const double floor = gas.oxygen.count();
  if (auto bad = outside(Subject::oxygen_fraction, target.count(),
                         {std::nextafter(floor, 1.0), v.oxygen.count()}))
    return std::unexpected(*bad);
  return std::log((v.oxygen.count() - floor) / (target.count() - floor)) / mixing.count();
}

Result<PurgeOutcome> purge_by_liquid(const Vessel& v, const LiquidPush& push,
                                     const SupplyGas& gas) {
  if (const auto bad = check(v, gas)) return std::unexpected(*bad);
  if (auto bad = outside(Subject::gauge_pressure, in_pascals(push.pressure), purge_pressure_range))
    return std::unexpected(*bad);
  for (const Fraction f :
       {push.air_left, push.air_left_worst, push.given_off, push.given_off_worst}) {
    if (auto bad = outside(Subject::fraction, f.count(), share_range)) return std::unexpected(*bad);
  }
  const auto filled = gas_amount(push.pressure.at_ambient(v.ambient), v.gas_space, v.temperature);
  if (!filled) return std::unexpected(filled.error());
  const double total = in_moles(*filled);
  const auto air_moles = [&](Fraction air_left) {
    return air_left.count() * in_pascals(v.ambient) * in_cubic_metres(v.gas_space) /
           (gas_constant * in_kelvin(v.temperature));
  };
  const auto left = [&](Fraction air_left, Fraction given_off) {
    const double air = air_moles(air_left);
    const double liquid_m3 = in_cubic_metres(v.gas_space) * (1 - air_left.count());
    const double from_liquid =
        liquid_m3 * dissolved_oxygen_kg_per_m3 * given_off.count() / oxygen_kilograms_per_mole;
    return mole_fraction(
        (air * air_oxygen.count() + from_liquid + (total - air) * gas.oxygen.count()) / total);
  };
  return outcome(v, gas, left(push.air_left, fraction(0)), left(push.air_left, push.given_off),
                 left(push.air_left_worst, push.given_off_worst),
                 co2_mass(moles(total - air_moles(push.air_left))));
}

}  // namespace ullage::physics
