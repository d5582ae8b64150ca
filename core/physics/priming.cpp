// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/priming.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/physics/atmosphere.h"
#include "core/physics/co2_gas.h"
#include "core/physics/equilibrium.h"
#include "core/units/gravity_scale.h"

namespace ullage::physics {

using namespace units;

namespace {

// 2 or 4 CO2 of 44.0095 over the molar mass of the sugar.
constexpr double glucose_yield = 2 * 44.0095 / 180.156;
constexpr double sucrose_yield = 4 * 44.0095 / 342.297;
constexpr double monohydrate_yield = 2 * 44.0095 / 198.171;
constexpr double balling_yield = 0.9565 / 2.0665;
constexpr double fermented_share = 0.95;
constexpr double fermented_share_error = 0.05;
constexpr double malt_fermentable = 0.58;
constexpr double malt_fermentable_error = 0.09;
// Real extract falls by this share of the apparent (gravity.h).
constexpr double real_per_apparent = 0.8192;
constexpr Range gravity_to_come_range{least_gravity.count(), greatest_gravity.count()};
constexpr Range priming_sugar_range{0.0, 20.0};  // kg

const ErrorSource yield_source{"sugar yield"};

Result<Amount> head_at_start(const PrimingQuestion& q) {
  if (!q.headspace_purged) return moles(0);
  return gas_amount(q.ambient, q.brimful - q.beer, q.conditions_at);
}

ClosedKeg keg_at(const PrimingQuestion& q, Temperature t) { return {q.brimful, q.beer, t}; }

std::optional<RangeError> check_priming(const PrimingQuestion& q) {
  if (auto bad = outside(Subject::ambient_pressure, in_pascals(q.ambient), ambient_pressure_range))
    return *bad;
  if (auto bad = outside(Subject::co2, q.target.count(), co2_range)) return *bad;
  return std::nullopt;
}

// Sugar for a target, from the residual and the yield.
Result<Mass> sugar_for(const PrimingQuestion& q, Co2Volumes residual, SugarYield yield,
                       bool with_headspace) {
  if (auto bad = outside(Subject::co2, q.target.count(),
                         {std::nextafter(residual.count(), 9.0), co2_range.high}))
    return std::unexpected(*bad);
  const ClosedKeg keg = keg_at(q, q.holds_at);
  const auto goal = resting_at(keg, q.target);
  if (!goal) return std::unexpected(goal.error());
  const auto total = co2_in_keg(keg, *goal);
  const auto had = head_at_start(q);
  if (!total) return std::unexpected(total.error());
  if (!had) return std::unexpected(had.error());
  const Amount made =
      with_headspace
          ? Amount(*total - dissolved_amount(residual, q.beer) - *had)
          : Amount(dissolved_amount(q.target, q.beer) - dissolved_amount(residual, q.beer));
  return Mass(co2_mass(made) / yield.count());
}

Result<KegAtRest> rest_with(const PrimingQuestion& q, Mass sugar, Co2Volumes residual,
                            SugarYield yield, Temperature t) {
  const auto had = head_at_start(q);
  if (!had) return std::unexpected(had.error());
  const Amount made = moles(in_kilograms(sugar) * yield.count() / co2_kilograms_per_mole);
  return at_rest(keg_at(q, t), made + dissolved_amount(residual, q.beer) + *had);
}

}  // namespace

const char* sugar_name(Sugar sugar) {
  constexpr std::array names{"sucrose", "glucose", "glucose_monohydrate", "dry_malt_extract"};
  return names.at(static_cast<std::size_t>(sugar));
}

std::optional<SugarYield> stoichiometric_yield(Sugar sugar) {
  switch (sugar) {
    case Sugar::sucrose:
      return SugarYield(sucrose_yield);
    case Sugar::glucose:
      return SugarYield(glucose_yield);
    case Sugar::glucose_monohydrate:
      return SugarYield(monohydrate_yield);
    case Sugar::dry_malt_extract:
      return std::nullopt;
  }
  return std::nullopt;
}

Estimate<SugarYield> sugar_yield(Sugar sugar) {
  if (const auto most = stoichiometric_yield(sugar)) {
    return Estimate<SugarYield>(SugarYield(most->count() * fermented_share))
        .with(yield_source, most->count() * fermented_share_error);
  }
  return Estimate<SugarYield>(SugarYield(balling_yield * malt_fermentable))
      .with(yield_source, balling_yield * malt_fermentable_error);
}

Result<Estimate<Co2Volumes>> residual_co2(const Estimate<Temperature>& warmest,
                                          AbsolutePressure ambient) {
  if (auto bad = outside(Subject::ambient_pressure, in_pascals(ambient), ambient_pressure_range))
    return std::unexpected(*bad);
  auto middle = try_propagate(
      [&](Temperature t) -> Result<Co2Volumes> {
        const auto beer = equilibrium_co2(ambient, t);
        const auto water = equilibrium_co2(ambient, t, Equation::pure_water);
        if (!beer) return beer;
        if (!water) return water;
        return volumes_of_co2((beer->count() + water->count()) / 2);
      },
      warmest);
  if (!middle) return middle;
  const auto beer = equilibrium_co2(ambient, warmest.value());
  const double apart = std::abs(middle->value().count() - beer->count());
  return middle->with({"residual CO₂"}, apart + 0.05);
}

Result<Co2Volumes> co2_still_to_come(SpecificGravity now, SpecificGravity final) {
  for (const SpecificGravity g : {now, final}) {
    if (auto bad = outside(Subject::gravity, g.count(), gravity_to_come_range))
      return std::unexpected(*bad);
  }
  if (now <= final) return volumes_of_co2(0);
  // Grams in 100 g, over a litre of beer of that gravity.
  const double apparent = to_plato(now)->count() - to_plato(final)->count();
  const double grams_a_litre = real_per_apparent * apparent * 10 * now.count();
  return to_volumes(grams_per_litre(grams_a_litre * balling_yield));
}

Result<PrimingPlan> priming(const PrimingQuestion& q) {
  if (const auto bad = check_priming(q)) return std::unexpected(*bad);
  const auto residual = residual_co2(q.warmest, q.ambient);
  if (!residual) return std::unexpected(residual.error());
  const Estimate<SugarYield> yield = sugar_yield(q.sugar);
  auto sugar = try_propagate([&](Co2Volumes r, SugarYield y) { return sugar_for(q, r, y, true); },
                             *residual, yield);
  if (!sugar) return std::unexpected(sugar.error());
  const auto bare = sugar_for(q, residual->value(), yield.value(), false);
  if (!bare) return std::unexpected(bare.error());
  auto pressure = try_propagate(
      [&](Co2Volumes r, SugarYield y) -> Result<GaugePressure> {
        const auto rest = rest_with(q, sugar->value(), r, y, q.conditions_at);
        if (!rest) return std::unexpected(rest.error());
        return GaugePressure::from_absolute(rest->headspace, q.ambient);
      },
      *residual, yield);
  if (!pressure) return std::unexpected(pressure.error());
  return PrimingPlan{*sugar, sugar->value() - *bare, *residual, *pressure};
}

Result<Estimate<Co2Volumes>> primed_to(const PrimingQuestion& q, Mass sugar) {
  if (const auto bad = check_priming(q)) return std::unexpected(*bad);
  if (auto bad = outside(Subject::mass, in_kilograms(sugar), priming_sugar_range))
    return std::unexpected(*bad);
  const auto residual = residual_co2(q.warmest, q.ambient);
  if (!residual) return std::unexpected(residual.error());
  return try_propagate(
      [&](Co2Volumes r, SugarYield y) -> Result<Co2Volumes> {
        const auto rest = rest_with(q, sugar, r, y, q.holds_at);
        if (!rest) return std::unexpected(rest.error());
        return rest->co2;
      },
      *residual, sugar_yield(q.sugar));
}

}  // namespace ullage::physics
