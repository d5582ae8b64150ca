// SPDX-License-Identifier: GPL-3.0-or-later
//
// The errors that answers state, against brute force: every named source drawn at
// random, the answer asked again with exact numbers, the middle 95 % of what comes
// out beside the stated one. What is carried as a straight line may differ by as
// much as the answer bends: each row says how much of the width that is. The
// carbonation band (carbonation_test), the level filter, hold tests, the gas
// account and the learned rate have such tests of their own.
#include <gtest/gtest.h>

#include <cmath>
#include <string>

#include "core/physics/break_out.h"
#include "core/physics/carbonation_answers.h"
#include "core/physics/co2_gas.h"
#include "core/physics/gas_ledger.h"
#include "core/physics/gas_use.h"
#include "core/physics/gravity.h"
#include "core/physics/keg_cooling.h"
#include "core/physics/level.h"
#include "core/physics/line_calibration.h"
#include "core/physics/priming.h"
#include "core/physics/rescue.h"
#include "core/units/present.h"
#include "tests/physics/keg_cases.h"
#include "tests/physics/sampled.h"

namespace ullage::physics {
namespace {

using namespace units;
using sampled::Case;
using sampled::expect_middle;
using sampled::Middle;
using sampled::middle_of;
using sampled::off_by;
using sampled::stated_by;

template <class Q>
std::optional<double> number_of(const Result<Q>& r) {
  return r ? std::optional<double>(to_magnitude(*r)) : std::nullopt;
}
template <class Q>
std::optional<double> value_of(const Result<Estimate<Q>>& r) {
  return r ? std::optional<double>(to_magnitude(r->value())) : std::nullopt;
}

Estimate<AbsolutePressure> weathered() { return off_by(sea_level(), "weather", 2000); }

// Quantiles of 4000 cases are good to about 2 % of the width; nearly straight.
TEST(Sampling, EquilibriumBothWays) {
  const auto dial = cases::dial(12);
  const auto warmth = off_by(celsius(4), "thermometer", 1.0);
  const double miss = equation_half_width(Equation::fitted_chart).count();
  const auto held = equilibrium_co2_estimate(dial, warmth, weathered(), {"equation"});
  ASSERT_TRUE(held);
  expect_middle(stated_by(*held),
                middle_of(4000,
                          [&](Case& c) -> std::optional<double> {
                            const auto v = equilibrium_co2(GasAbove{c.of(dial), c.of(weathered())},
                                                           c.of(warmth));
                            return v->count() + miss * c.offset("equation");
                          }),
                0.06);
  const auto wanted = off_by(volumes_of_co2(2.5), "CO2", 0.1);
  const auto set = equilibrium_gauge_estimate(wanted, warmth, weathered(), {"equation"});
  ASSERT_TRUE(set);
  expect_middle(stated_by(*set),
                middle_of(4000,
                          [&](Case& c) {
                            return number_of(equilibrium_gauge(
                                volumes_of_co2(c.of(wanted).count() - miss * c.offset("equation")),
                                c.of(warmth), c.of(weathered())));
                          }),
                0.06);
}

// When the target is reached: the band's edges cross it where 2.5 and 97.5 % of the
// cases have. The rate's factor of two bends it.
TEST(Sampling, WhenCarbonationReachesItsTarget) {
  const CarbonationHistory h = cases::soda_keg(3, {{hours(0), GasOn{cases::dial(20)}}});
  const CarbonationRates rates = cases::rates();
  const auto model = CarbonationModel::make(h, rates);
  ASSERT_TRUE(model);
  const Window w = model->time_to_reach(volumes_of_co2(2.2), hours(0));
  ASSERT_TRUE(w.earliest && w.likely && w.latest);
  const Middle sampled = middle_of(800, [&](Case& c) -> std::optional<double> {
    const auto gas = get<GasOn>(h.steps[0].what).pressure;
    CarbonationHistory one =
        cases::soda_keg(3, {{hours(0), GasOn{Estimate<GaugePressure>(c.of(gas))}}});
    one.start = Estimate<Temperature>(c.of(h.start));
    one.initial = Estimate<Co2Volumes>(c.of(h.initial));
    one.ambient = Estimate<AbsolutePressure>(c.of(h.ambient));
    // At one pressure and temperature: the exponential in closed form.
    const double rest =
        equilibrium_co2(GasAbove{c.of(gas), c.of(h.ambient)}, c.of(h.start))->count() +
        equation_half_width(Equation::fitted_chart).count() * c.offset("equilibrium equation");
    const double start = one.initial.value().count();
    if (rest <= 2.2) return std::nullopt;
    return in_seconds(c.of(rates.resting)) * std::log((rest - start) / (rest - 2.2));
  });
  expect_middle({in_seconds(present(w.earliest)), in_seconds(present(w.likely)),
                 in_seconds(present(w.latest))},
                sampled, 0.12);
}

TEST(Sampling, DriftAtAServingPressure) {
  const CarbonationHistory h = cases::soda_keg(3, {{hours(0), GasOn{cases::dial(8)}}});
  const auto model = CarbonationModel::make(h, cases::rates());
  ASSERT_TRUE(model);
  const auto told = drift_at(*model, cases::dial(12), days(60), days(4));
  ASSERT_TRUE(told);
  const double miss = equation_half_width(Equation::fitted_chart).count();
  expect_middle(stated_by(told->change),
                middle_of(2000,
                          [&](Case& c) -> std::optional<double> {
                            const auto rest = [&](double psi) {
                              return equilibrium_co2(
                                         GasAbove{c.of(cases::dial(psi)), c.of(h.ambient)},
                                         c.of(h.start))
                                         ->count() +
                                     miss * c.offset("equilibrium equation");
                            };
                            const double tau = in_days(c.of(cases::rates().resting));
                            return (rest(12) - rest(8)) * (1 - std::exp(-4 / tau));
                          }),
                0.12);
}

// The number of vents is whole: to one vent, and a tenth of the width.
TEST(Sampling, VentsToTheTarget) {
  const OverCarbonated keg{litres(19.9),
                           off_by(litres(15), "level", 1e-3),
                           off_by(volumes_of_co2(3.4), "CO2", 0.15),
                           off_by(celsius(4), "thermometer", 1.0),
                           sea_level(),
                           volumes_of_co2(2.6),
                           LogEstimate<Duration>(days(4), 2, {"uptake"})};
  const auto plan = vents_to_target(keg);
  ASSERT_TRUE(plan && plan->most);
  const Middle sampled = middle_of(800, [&](Case& c) -> std::optional<double> {
    OverCarbonated one = keg;
    one.beer = Estimate<Volume>(c.of(keg.beer));
    one.co2 = Estimate<Co2Volumes>(c.of(keg.co2));
    one.temperature = Estimate<Temperature>(c.of(keg.temperature));
    const auto asked = vents_to_target(one);
    return asked ? std::optional<double>(asked->vents) : std::nullopt;
  });
  const double slack = 1 + 0.1 * (sampled.high - sampled.low);
  EXPECT_NEAR(plan->fewest, sampled.low, slack);
  EXPECT_NEAR(plan->vents, sampled.median, slack);
  EXPECT_NEAR(*plan->most, sampled.high, slack);
}

// Sugar goes by what is missing over what a gram gives: the residual and the yield
// drawn, the rest of the balance as it is.
TEST(Sampling, PrimingSugar) {
  const PrimingQuestion q{litres(19),  litres(18),          off_by(celsius(18), "warmest", 2.0),
                          sea_level(), volumes_of_co2(2.5), celsius(18),
                          celsius(20)};
  const auto plan = priming(q);
  ASSERT_TRUE(plan);
  const auto yield = sugar_yield(Sugar::sucrose);
  const double co2_missing = in_grams(plan->sugar.value()) * yield.value().count();
  const double per_volume = in_grams(co2_mass(dissolved_amount(volumes_of_co2(1), q.beer)));
  expect_middle(stated_by(plan->sugar),
                middle_of(4000,
                          [&](Case& c) -> std::optional<double> {
                            const double residual = c.of(plan->residual).count();
                            const double missing =
                                co2_missing -
                                per_volume * (residual - plan->residual.value().count());
                            return missing / c.of(yield).count() * 1e-3;
                          }),
                0.06);
}

LineParts sampled_line() {
  return {Fitting{psi(0.3)},
          Hose{metres(2.5), millimetres(4.76), drawn_tube_roughness(), metres(0.6)},
          Fitting{psi(0.5)}};
}

TEST(Sampling, PourAndItsCalibration) {
  const auto bore = off_by(BoreFactor(0.95), "bore", 0.06);
  const PourInputs in{bore, cases::dial(14), off_by(celsius(5), "thermometer", 1.0),
                      specific_gravity(1.010), ordinary_viscosity_factor({"viscosity"})};
  const auto told = pour_flow(sampled_line(), in);
  ASSERT_TRUE(told);
  expect_middle(
      stated_by(*told),
      middle_of(1500,
                [&](Case& c) {
                  return value_of(pour_flow(
                      sampled_line(),
                      {Estimate<BoreFactor>(c.of(bore)), Estimate<GaugePressure>(c.of(in.pressure)),
                       Estimate<Temperature>(c.of(in.temperature)), in.gravity,
                       Estimate<ViscosityFactor>(c.of(in.viscosity))}));
                }),
      0.10);
  const MeasuredPour pour{off_by(litres(0.473), "glass", 1e-5), off_by(seconds(11), "watch", 0.4),
                          cases::dial(12), off_by(celsius(4), "thermometer", 0.5)};
  const auto resists = calibrate_bore(sampled_line(), pour, in.gravity, in.viscosity);
  ASSERT_TRUE(resists);
  const BoreRange bores = range_of_bores(*resists);
  ASSERT_TRUE(bores.high);
  expect_middle(
      {bores.low.count(), bores.likely.count(), present(bores.high).count()},
      middle_of(4000,
                [&](Case& c) -> std::optional<double> {
                  const auto one = calibrate_bore(
                      sampled_line(),
                      {Estimate<Volume>(c.of(pour.volume)), Estimate<Duration>(c.of(pour.duration)),
                       Estimate<GaugePressure>(c.of(pour.pressure)),
                       Estimate<Temperature>(c.of(pour.temperature))},
                      in.gravity, Estimate<ViscosityFactor>(c.of(in.viscosity)));
                  if (!one) return std::nullopt;
                  return bores_of(one->value()).count();
                }),
      0.06);
}

// One dial carbonated the beer and serves it now: its bias cancels in the margin, in
// the sampled cases as in the stated one.
TEST(Sampling, MarginAgainstBreakOut) {
  const auto line = LineFlow::make(sampled_line(), *flowing_beer(celsius(4))).value();
  const auto kept = off_by(celsius(4), "fridge", 1.0);
  const auto co2 = equilibrium_co2_estimate(cases::dial(12), kept, weathered(), {"equation"});
  ASSERT_TRUE(co2);
  const auto tower = off_by(celsius(10), "tower", 2.0);
  const auto told = break_out_at_rest(line, cases::dial(12), {kept, kept, tower},
                                      {*co2, weathered(), {"equation"}});
  ASSERT_TRUE(told);
  const StandingPlace& top = told->back();
  const double lift = in_pascals(line.lift());
  const double miss = equation_half_width(Equation::fitted_chart).count();
  expect_middle(stated_by(top.margin),
                middle_of(3000,
                          [&](Case& c) -> std::optional<double> {
                            const double held =
                                equilibrium_co2(GasAbove{c.of(cases::dial(12)), c.of(weathered())},
                                                c.of(kept))
                                    ->count();
                            // The equation's miss is in what the beer holds and in what it needs.
                            const double known = held + miss * c.offset("equation");
                            const auto needed = equilibrium_gauge(
                                volumes_of_co2(known - miss * c.offset("equation")), c.of(tower),
                                c.of(weathered()));
                            return in_pascals(c.of(cases::dial(12)).above_ambient()) - lift -
                                   in_pascals(needed->above_ambient());
                          }),
                0.08);
}

TEST(Sampling, GasUsedAndDaysLeft) {
  const auto drawn = off_by(litres(19), "level", 1e-3);
  const SupplyState supply{cases::dial(12), off_by(celsius(4), "thermometer", 1.0), sea_level()};
  const auto told = gas_to_push(drawn, supply, {"method"});
  ASSERT_TRUE(told);
  expect_middle(stated_by(*told),
                middle_of(4000,
                          [&](Case& c) -> std::optional<double> {
                            const auto n = gas_amount(c.of(supply.pressure).at_ambient(sea_level()),
                                                      c.of(drawn), c.of(supply.temperature));
                            return in_kilograms(co2_mass(*n)) *
                                   (1 + gas_use_method_share * c.offset("method"));
                          }),
                0.06);
  const GasSpending spending{off_by(kilograms(1.2), "scale", 0.1),
                             off_by(kilograms(0.03), "use", 0.008),
                             off_by(kilograms(0.004), "loss", 0.003)};
  const auto left = days_left(spending);
  ASSERT_TRUE(left && left->earliest && left->likely && left->latest);
  expect_middle({in_days(*left->earliest), in_days(*left->likely), in_days(*left->latest)},
                middle_of(4000,
                          [&](Case& c) -> std::optional<double> {
                            const double a_day = in_kilograms(c.of(spending.use_per_day)) +
                                                 in_kilograms(c.of(spending.loss_per_day));
                            if (a_day <= 0) return std::nullopt;
                            return in_kilograms(c.of(spending.gas)) / a_day;
                          }),
                0.06);
}

TEST(Sampling, LevelByWeightAndAlcohol) {
  const Weighing w{off_by(kilograms(18), "scale", 0.2),
                   off_by(kilograms(4.6), "tare", 0.3),
                   specific_gravity(1.010),
                   celsius(4),
                   litres(19.9),
                   gauge_psi(12),
                   sea_level()};
  const auto told = beer_from_weight(w);
  ASSERT_TRUE(told);
  expect_middle(stated_by(*told),
                middle_of(4000,
                          [&](Case& c) -> std::optional<double> {
                            Weighing one = w;
                            one.gross = Estimate<Mass>(c.of(w.gross));
                            one.tare = Estimate<Mass>(c.of(w.tare));
                            const auto v = beer_from_weight(one);
                            return in_cubic_metres(v->value()) *
                                   (1 + 0.002 * c.offset("beer density"));
                          }),
                0.06);
  const auto og = off_by(specific_gravity(1.050), "hydrometer", 0.001);
  const auto fg = off_by(specific_gravity(1.010), "hydrometer at the end", 0.001);
  const auto abv = alcohol(og, fg, {"formula"});
  ASSERT_TRUE(abv);
  // "formula" is at least 0.1 (docs/physics.md), and 0.12 here: 5.32 against 5.20.
  expect_middle(stated_by(*abv),
                middle_of(4000,
                          [&](Case& c) -> std::optional<double> {
                            return fermented(c.of(og), c.of(fg))->abv.count() +
                                   0.12 * c.offset("formula");
                          }),
                0.06);
}

TEST(Sampling, WhenAKegIsCold) {
  const auto tau = *cooling_time_constant(litres(19.9), {"cooling"});
  const auto told = time_to_temperature(celsius(20), celsius(2), celsius(4), tau);
  ASSERT_TRUE(told && *told);
  expect_middle({in_hours((*told)->earliest), in_hours((*told)->likely), in_hours((*told)->latest)},
                middle_of(4000,
                          [&](Case& c) -> std::optional<double> {
                            return in_hours(c.of(tau)) * std::log((20.0 - 2) / (4.0 - 2));
                          }),
                0.05);
}

}  // namespace
}  // namespace ullage::physics
