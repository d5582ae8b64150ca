// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/physics/carbonation_solver.h"
#include "core/physics/co2_gas.h"

namespace ullage::physics {

namespace {

// phi_1..3 of the exponential integrators at -z: phi_1 = (1 - e^-z) / z,
// phi_n+1 = (1/n! - phi_n) / z; by series where that cancels.
struct Phi {
  double one;
  double two;
  double three;
};

Phi phi(double z) {
  if (z < 0.1) {
    return {1.0 - z / 2 * (1.0 - z / 3 * (1.0 - z / 4 * (1.0 - z / 5 * (1.0 - z / 6)))),
            0.5 - z / 6 * (1.0 - z / 4 * (1.0 - z / 5 * (1.0 - z / 6 * (1.0 - z / 7)))),
            (1.0 - z / 4 * (1.0 - z / 5 * (1.0 - z / 6 * (1.0 - z / 7)))) / 6};
  }
  const double one = -std::expm1(-z) / z;
  const double two = (1.0 - one) / z;
  return {one, two, (0.5 - two) / z};
}

}  // namespace

double KegPiece::temperature(double t) const {
  return offset_k == 0 ? place_k : place_k + offset_k * std::exp(-t / cooling_s);
}

double KegPiece::concentration(double t) const {
  const double z = lambda * t;
  if (f1 == 0 && f2 == 0) return c0 + (f0 / lambda - c0) * -std::expm1(-z);
  const double x = length_s > 0 ? t / length_s : 0;
  const Phi p = phi(z);
  return std::exp(-z) * c0 + t * (f0 * p.one + f1 * x * p.two + 2 * f2 * x * x * p.three);
}

KegPiece::Gas KegPiece::gas(double t) const {
  const double k = temperature(t);
  const double virial = co2_second_virial(units::kelvin(k)) * share_squared;
  const double taken_up = beer_m3 * (concentration(t) - c0);
  if (!flowing) {
    const double co2 = co2_mol - taken_up;
    const double total = co2 + inert_mol;
    return {co2, inert_mol, gas_constant * k * total / (headspace_m3 - virial * total)};
  }
  const double total = set_pa * headspace_m3 / (gas_constant * k + virial * set_pa);
  const double inert = inert_mol + (1 - supply_co2) * (taken_up + total - co2_mol - inert_mol);
  return {total - inert, inert, set_pa};
}

double KegPiece::flow_in(double t) const {
  const double x = length_s > 0 ? t / length_s : 0;
  const double uptake = beer_m3 * (f0 + x * (f1 + x * f2) - lambda * concentration(t));
  if (offset_k == 0) return uptake;
  const double k = temperature(t);
  const double virial = co2_second_virial(units::kelvin(k)) * share_squared;
  const double virial_slope =
      (12.0408 - 2 * 0.0327957 * k + 3 * 3.16528e-5 * k * k) * 1e-6 * share_squared;
  const double molar = gas_constant * k + virial * set_pa;
  const double per_kelvin =
      -set_pa * headspace_m3 * (gas_constant + virial_slope * set_pa) / (molar * molar);
  return uptake + per_kelvin * (place_k - k) / cooling_s;
}

}  // namespace ullage::physics
