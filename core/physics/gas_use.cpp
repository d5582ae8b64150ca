// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/gas_use.h"

#include <optional>
#include <utility>

#include "core/physics/atmosphere.h"
#include "core/physics/co2_gas.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double nitrogen_kilograms_per_mole = 28.0134e-3;

std::optional<RangeError> check(const SupplyState& s) {
  if (auto bad = outside(Subject::ambient_pressure, in_pascals(s.ambient), ambient_pressure_range))
    return *bad;
  if (auto bad = outside(Subject::co2_fraction, s.co2.count(), {0.0, 1.0})) return *bad;
  return std::nullopt;
}

// By way of a cubic metre: no room holds no moles, and an error band that
// reaches below an empty room goes on in proportion; gas_amount refuses both.
Result<Amount> amount_in(AbsolutePressure p, Volume v, Temperature t, MoleFraction co2) {
  const auto n = gas_amount(p, cubic_metres(1), t, co2);
  if (!n) return n;
  return moles(in_moles(*n) * in_cubic_metres(v));
}

Estimate<Mass> with_method(const Estimate<Mass>& m, double share, ErrorSource method) {
  return m.with_error(std::move(method), share * m.value());
}

}  // namespace

Mass gas_mass(Amount n, MoleFraction co2) {
  return kilograms(in_moles(n) * (co2.count() * co2_kilograms_per_mole +
                                  (1 - co2.count()) * nitrogen_kilograms_per_mole));
}

Result<Estimate<Mass>> gas_to_push(const Estimate<Volume>& beer_drawn, const SupplyState& s,
                                   ErrorSource method) {
  if (const auto bad = check(s)) return std::unexpected(*bad);
  if (auto bad =
          outside(Subject::beer_volume, in_cubic_metres(beer_drawn.value()), gas_use_volume_range))
    return std::unexpected(*bad);
  const auto used = try_propagate(
      [&](Volume v, GaugePressure p, Temperature t) -> Result<Mass> {
        const auto n = amount_in(p.at_ambient(s.ambient), v, t, s.co2);
        if (!n) return std::unexpected(n.error());
        return gas_mass(*n, s.co2);
      },
      beer_drawn, s.pressure, s.temperature);
  if (!used) return used;
  return with_method(*used, gas_use_method_share, std::move(method));
}

Result<Estimate<Mass>> gas_to_fill_headspace(const Estimate<Volume>& headspace,
                                             GaugePressure before, const SupplyState& s,
                                             ErrorSource method) {
  if (const auto bad = check(s)) return std::unexpected(*bad);
  if (auto bad =
          outside(Subject::headspace, in_cubic_metres(headspace.value()), gas_use_volume_range))
    return std::unexpected(*bad);
  const auto used = try_propagate(
      [&](Volume v, GaugePressure p, Temperature t) -> Result<Mass> {
        const auto full = amount_in(p.at_ambient(s.ambient), v, t, s.co2);
        if (!full) return std::unexpected(full.error());
        const auto had = amount_in(before.at_ambient(s.ambient), v, t, s.co2);
        if (!had) return std::unexpected(had.error());
        return gas_mass(*full, s.co2) - gas_mass(*had, s.co2);
      },
      headspace, s.pressure, s.temperature);
  if (!used) return used;
  if (used->value().value() <= 0) return Estimate<Mass>(kilograms(0));
  return with_method(*used, gas_use_method_share, std::move(method));
}

Result<Estimate<Mass>> gas_to_carbonate(const Estimate<Volume>& beer,
                                        const Estimate<Co2Volumes>& from,
                                        const Estimate<Co2Volumes>& to, MoleFraction supply_co2,
                                        ErrorSource method) {
  if (auto bad = outside(Subject::beer_volume, in_cubic_metres(beer.value()), gas_use_volume_range))
    return std::unexpected(*bad);
  for (const auto* c : {&from, &to}) {
    if (auto bad = outside(Subject::co2, c->value().count(), {0.0, 10.0}))
      return std::unexpected(*bad);
  }
  if (auto bad = outside(Subject::co2_fraction, supply_co2.count(), {0.0, 1.0}))
    return std::unexpected(*bad);
  const Estimate<Mass> used = propagate(
      [&](Volume v, Co2Volumes a, Co2Volumes b) {
        const double taken = in_moles(dissolved_amount(b, v)) - in_moles(dissolved_amount(a, v));
        return gas_mass(moles(taken), supply_co2);
      },
      beer, from, to);
  if (used.value().value() <= 0) return Estimate<Mass>(kilograms(0));
  return with_method(used, gas_use_method_share, std::move(method));
}

Estimate<Mass> gas_to_purge(Mass by_arithmetic, ErrorSource method) {
  return with_method(Estimate<Mass>(by_arithmetic), purge_use_share, std::move(method));
}

}  // namespace ullage::physics
