// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/closed_keg.h"

#include <cmath>
#include <optional>

#include "core/physics/carbonation.h"
#include "core/physics/co2_gas.h"
#include "core/physics/equilibrium.h"
#include "core/physics/keg_cooling.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double moles_per_volume_m3 = grams_per_litre_per_volume / co2_kilograms_per_mole;

std::optional<RangeError> check_closed(const ClosedKeg& k) {
  if (auto bad = outside(Subject::volume, in_cubic_metres(k.brimful), vessel_volume_range))
    return *bad;
  const double brimful = in_cubic_metres(k.brimful);
  if (auto bad = outside(
          Subject::beer_volume, in_cubic_metres(k.beer),
          {brimful * (1 - headspace_share_range.high), brimful * (1 - headspace_share_range.low)}))
    return *bad;
  if (auto bad = outside(Subject::temperature, in_kelvin(k.temperature), beer_temperature_range))
    return *bad;
  return std::nullopt;
}

}  // namespace

Result<Amount> co2_in_keg(const ClosedKeg& k, const KegAtRest& s) {
  if (const auto bad = check_closed(k)) return std::unexpected(*bad);
  const auto gas = gas_amount(s.headspace, k.brimful - k.beer, k.temperature);
  if (!gas) return gas;
  if (auto bad = outside(Subject::co2, s.co2.count(), initial_co2_range))
    return std::unexpected(*bad);
  return Amount(*gas + dissolved_amount(s.co2, k.beer));
}

Result<KegAtRest> at_rest(const ClosedKeg& k, Amount total) {
  if (const auto bad = check_closed(k)) return std::unexpected(*bad);
  const SolubilityLine line = fitted_chart_line(k.temperature);
  const double rt = gas_constant * in_kelvin(k.temperature);
  const double b = co2_second_virial(k.temperature);
  const double beer = in_cubic_metres(k.beer) * moles_per_volume_m3;
  const double head = in_cubic_metres(k.brimful - k.beer);
  // Newton on a function that is straight but for the virial term.
  double p = 1e5;
  for (int i = 0; i < 20; ++i) {
    const double stretch = rt + b * p;
    const double n =
        beer * (line.volumes_per_pascal * p + line.intercept_volumes) + p * head / stretch;
    const double slope = beer * line.volumes_per_pascal + head * rt / (stretch * stretch);
    const double step = (in_moles(total) - n) / slope;
    p += step;
    if (std::abs(step) < 1e-6 * std::abs(p)) break;
  }
  if (auto bad = outside(Subject::absolute_pressure, p, equilibrium_pressure_range))
    return std::unexpected(*bad);
  const auto co2 = equilibrium_co2(pascals_absolute(p), k.temperature);
  if (!co2) return std::unexpected(co2.error());
  return KegAtRest{pascals_absolute(p), *co2};
}

Result<KegAtRest> resting_at(const ClosedKeg& k, Co2Volumes co2) {
  if (const auto bad = check_closed(k)) return std::unexpected(*bad);
  const auto p = equilibrium_pressure(co2, k.temperature);
  if (!p) return std::unexpected(p.error());
  return KegAtRest{*p, co2};
}

Result<Fraction> closed_time_share(const ClosedKeg& k) {
  if (const auto bad = check_closed(k)) return std::unexpected(*bad);
  const double beer = in_cubic_metres(k.beer) * moles_per_volume_m3 *
                      fitted_chart_line(k.temperature).volumes_per_pascal;
  const double head =
      in_cubic_metres(k.brimful - k.beer) / (gas_constant * in_kelvin(k.temperature));
  return fraction(head / (head + beer));
}

}  // namespace ullage::physics
