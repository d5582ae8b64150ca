// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/co2_gas.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr Range gas_volume_range{1e-7, 10.0};  // m3: a drop of headspace to a tank
constexpr Range gas_amount_range{0.0, 1e4};    // mol
constexpr Range unit_range{0.0, 1.0};

double mixture_virial(Temperature t, MoleFraction co2) {
  return co2_second_virial(t) * co2.count() * co2.count();
}

}  // namespace

double co2_second_virial(Temperature t) {
  const double k = in_kelvin(t);
  return (-1636.75 + k * (12.0408 + k * (-0.0327957 + k * 3.16528e-5))) * 1e-6;
}

Amount dissolved_amount(Co2Volumes co2, Volume beer) {
  // g/L is kg/m3.
  return moles(to_concentration(co2).count() * in_cubic_metres(beer) / co2_kilograms_per_mole);
}

Mass co2_mass(Amount n) { return kilograms(in_moles(n) * co2_kilograms_per_mole); }

Result<Amount> gas_amount(AbsolutePressure p, Volume v, Temperature t, MoleFraction co2) {
  const double pa = in_pascals(p);
  if (auto bad = outside(Subject::temperature, in_kelvin(t), gas_temperature_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::absolute_pressure, pa, gas_pressure_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::headspace, in_cubic_metres(v), gas_volume_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::co2_fraction, co2.count(), unit_range))
    return std::unexpected(*bad);
  return moles(pa * in_cubic_metres(v) /
               (gas_constant * in_kelvin(t) + mixture_virial(t, co2) * pa));
}

Result<AbsolutePressure> gas_pressure(Amount n, Volume v, Temperature t, MoleFraction co2) {
  if (auto bad = outside(Subject::temperature, in_kelvin(t), gas_temperature_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::headspace, in_cubic_metres(v), gas_volume_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::mass, in_moles(n), gas_amount_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::co2_fraction, co2.count(), unit_range))
    return std::unexpected(*bad);
  const double molar = in_moles(n) / in_cubic_metres(v);
  const double pa = gas_constant * in_kelvin(t) * molar / (1.0 - mixture_virial(t, co2) * molar);
  if (auto bad = outside(Subject::absolute_pressure, pa, gas_pressure_range))
    return std::unexpected(*bad);
  return pascals_absolute(pa);
}

Result<Density> co2_gas_density(AbsolutePressure p, Temperature t) {
  const auto n = gas_amount(p, cubic_metres(1), t);
  if (!n) return std::unexpected(n.error());
  return kilograms_per_cubic_metre(in_kilograms(co2_mass(*n)));
}

Result<double> co2_compressibility(AbsolutePressure p, Temperature t) {
  const auto n = gas_amount(p, cubic_metres(1), t);
  if (!n) return std::unexpected(n.error());
  return in_pascals(p) / (in_moles(*n) * gas_constant * in_kelvin(t));
}

}  // namespace ullage::physics
