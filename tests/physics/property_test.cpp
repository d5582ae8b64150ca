// SPDX-License-Identifier: GPL-3.0-or-later
//
// What must hold whatever the numbers.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/physics/carbonation_solver.h"
#include "core/physics/equilibrium.h"
#include "core/physics/gravity.h"
#include "core/physics/purge.h"
#include "core/units/present.h"
#include "tests/physics/keg_cases.h"

namespace ullage::physics {
namespace {

using namespace units;
using cases::exactly;
using cases::soda_keg;

double in(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 1000001) / 1e6;
}

Step random_step(double at_hours) {
  const Duration at = hours(at_hours);
  switch (*rc::gen::inRange(0, 7)) {
    case 0:
      return {at, GasOff{}};
    case 1:
      return {at, Vented{gauge_psi(in(0, 10))}};
    case 2:
      return {at, PlaceChanged{Estimate<Temperature>(celsius(in(0, 22)))}};
    case 3:
      return {at, Rocked{minutes(in(1, 15))}};
    case 4:
      return {at, BeerDrawn{litres(in(0, 1))}};
    default:
      return {at,
              GasOn{exactly(in(0, 40)), mole_fraction(*rc::gen::arbitrary<bool>() ? 1.0 : 0.6)}};
  }
}

CarbonationHistory random_history() {
  std::vector<Step> steps;
  double t = 0;
  const int count = *rc::gen::inRange(1, 9);
  for (int i = 0; i < count; ++i) {
    steps.push_back(random_step(t));
    t += in(0, 60);
  }
  return soda_keg(in(0, 20), std::move(steps));
}

RC_GTEST_PROP(Equilibrium, RisesWithPressureAndFallsWithTemperature, ()) {
  const double psi = in(0, 40);
  const double c = in(-2, 25);
  for (Equation e : {Equation::fitted_chart, Equation::exponential, Equation::pure_water}) {
    const auto at = [&](double p, double t) {
      return equilibrium_co2(GasAbove{gauge_psi(p), sea_level()}, celsius(t), e)->count();
    };
    RC_ASSERT(at(psi + 0.5, c) > at(psi, c));
    RC_ASSERT(at(psi, c + 0.5) < at(psi, c));
  }
}

RC_GTEST_PROP(Equilibrium, InverseComesBack, ()) {
  const double psi = in(0, 40);
  const double c = in(-2, 25);
  const double share = in(0.3, 1);
  for (const Equation e : {Equation::fitted_chart, Equation::exponential, Equation::pure_water}) {
    const auto co2 =
        equilibrium_co2(GasAbove{gauge_psi(psi), sea_level(), mole_fraction(share)}, celsius(c), e);
    RC_ASSERT(co2.has_value());
    const auto back = equilibrium_gauge(*co2, celsius(c), sea_level(), mole_fraction(share), e);
    RC_ASSERT(back.has_value());
    RC_ASSERT(std::abs(in_psi(*back) - psi) < 1e-6);
  }
}

RC_GTEST_PROP(Equilibrium, NeverMoreThanWater, ()) {
  const AbsolutePressure p = pascals_absolute(in(1e3, 6e5));
  const Temperature t = celsius(in(-3, 35));
  const auto water = equilibrium_co2(p, t, Equation::pure_water);
  RC_ASSERT(water.has_value());
  for (const Equation e : {Equation::fitted_chart, Equation::exponential, Equation::polynomial}) {
    const auto beer = equilibrium_co2(p, t, e);
    if (beer) RC_ASSERT(*beer <= *water);
  }
}

// The same amount at a place needs the same absolute, so more gauge, pressure.
RC_GTEST_PROP(Equilibrium, AltitudeChangesTheGaugeNotTheBeer, ()) {
  const auto up = ambient_pressure(metres(in(0, 4000)));
  RC_ASSERT(up.has_value());
  const auto here = equilibrium_gauge(volumes_of_co2(2.5), celsius(4), *up);
  const auto sea = equilibrium_gauge(volumes_of_co2(2.5), celsius(4), sea_level());
  RC_ASSERT(std::abs(in_pascals(here->at_ambient(*up)) - in_pascals(sea->at_ambient(sea_level()))) <
            1e-3);
}

RC_GTEST_PROP(Carbonation, ShutKegKeepsItsCo2, ()) {
  std::vector<Step> steps{{hours(0), GasOn{exactly(in(5, 40))}}, {hours(in(1, 90)), GasOff{}}};
  const double off = in_hours(steps.back().at);
  steps.push_back(
      {hours(off + in(0, 30)), PlaceChanged{Estimate<Temperature>(celsius(in(0, 22)))}});
  steps.push_back({steps.back().at + hours(in(0, 30)), Rocked{minutes(in(1, 10))}});
  const CarbonationHistory h = soda_keg(in(0, 20), steps);
  RC_ASSERT(!check_history(h, cases::rates(), days(30)));
  const Trajectory t = Trajectory::solve(h, cases::rates(), {}, days(40));
  const double before = in_moles(t.co2_in_keg(hours(off + 1e-6)));
  for (int i = 1; i < 20; ++i) {
    const double later = in_moles(t.co2_in_keg(hours(off) + days(1.5 * i)));
    RC_ASSERT(std::abs(later - before) < 1e-9 * before);
  }
}

RC_GTEST_PROP(Carbonation, NoOpStepsChangeNothing, ()) {
  const CarbonationHistory h = random_history();
  const double last = in_hours(h.steps.back().at);
  CarbonationHistory split = h;
  // The weakest of acts: no beer drawn, at any time. It cuts the solver's pieces
  // elsewhere, so what is left is the solver's promised error.
  for (int i = 0; i < 3; ++i)
    split.steps.push_back({hours(in(0, last + 40)), BeerDrawn{litres(0)}});
  std::stable_sort(split.steps.begin(), split.steps.end(),
                   [](const Step& a, const Step& b) { return a.at < b.at; });
  const Trajectory one = Trajectory::solve(h, cases::rates(), {}, hours(last + 100));
  const Trajectory other = Trajectory::solve(split, cases::rates(), {}, hours(last + 100));
  for (int i = 0; i <= 20; ++i) {
    const Duration t = hours((last + 99) * i / 20.0);
    RC_ASSERT(std::abs(one.at(t).co2.count() - other.at(t).co2.count()) < 5e-4);
  }
}

RC_GTEST_PROP(Carbonation, NumbersStayNumbersAndBandsInOrder, ()) {
  CarbonationHistory h = random_history();
  for (Step& s : h.steps) {
    if (auto* gas = get_if<GasOn>(&s.what)) gas->pressure = gas->pressure.with({"dial"}, 7000);
  }
  const auto m = CarbonationModel::make(h, cases::rates(), days(20));
  if (!m) {
    RC_ASSERT(m.error().subject == Subject::beer_volume);
    return;
  }
  const std::vector<CarbonationPoint> curve = m->curve(hours(0), m->end(), 40).value();
  for (const CarbonationPoint& p : curve) {
    RC_ASSERT(std::isfinite(p.median.count()));
    RC_ASSERT(p.low.count() <= p.median.count());
    RC_ASSERT(p.median.count() <= p.high.count());
    RC_ASSERT(p.low.count() >= 0 && p.high.count() < 8);
    RC_ASSERT(in_psi(p.headspace) > -14.0 && in_psi(p.headspace) < 80.0);
  }
  const Window w = m->time_to_reach(volumes_of_co2(in(1, 3)), hours(0));
  if (w.latest) RC_ASSERT(w.likely.has_value() && present(w.likely) <= *w.latest);
  if (w.likely) RC_ASSERT(w.earliest.has_value() && present(w.earliest) <= *w.likely);
}

RC_GTEST_PROP(Carbonation, MorePressureNeverLessCo2, ()) {
  const double psi = in(2, 35);
  const double t = in(0, 15);
  const auto run = [&](double p) {
    return Trajectory::solve(soda_keg(t, {{hours(0), GasOn{exactly(p)}}}), cases::rates(), {},
                             days(30));
  };
  const Trajectory low = run(psi);
  const Trajectory high = run(psi + 1);
  for (int i = 1; i < 30; ++i) RC_ASSERT(high.at(days(i)).co2 > low.at(days(i)).co2);
}

RC_GTEST_PROP(Purge, MoreCyclesAndBetterMixingLeaveLess, ()) {
  const Vessel v{litres(19), litres(19), sea_level(), celsius(in(0, 30))};
  const int n = *rc::gen::inRange(0, 20);
  const GaugePressure p = gauge_psi(in(2, 40));
  const auto one = purge_by_cycles(v, {n, p, {}});
  const auto more = purge_by_cycles(v, {n + 1, p, {}});
  RC_ASSERT(one.has_value() && more.has_value());
  RC_ASSERT(more->oxygen < one->oxygen);
  RC_ASSERT(one->best <= one->oxygen && one->oxygen <= one->worst);
  RC_ASSERT(more->best >= more->floor);
  RC_ASSERT(more->co2_used > one->co2_used);
}

RC_GTEST_PROP(Purge, CyclesToReachIsTheInverse, ()) {
  const Vessel v{litres(19), litres(19), sea_level(), celsius(20)};
  const int n = *rc::gen::inRange(1, 8);
  const GaugePressure p = gauge_psi(in(5, 30));
  const auto left = purge_by_cycles(v, {n, p, {}}, {}, {});
  const auto back = cycles_to_reach(left->oxygen, v, p);
  RC_ASSERT(back.has_value());
  RC_ASSERT(std::abs(*back - n) < 1e-6);
}

RC_GTEST_PROP(Gravity, MoreDropMoreAlcohol, ()) {
  const double fg = in(0.998, 1.020);
  const double og = in(1.030, 1.090);
  const auto less = fermented(specific_gravity(og), specific_gravity(fg));
  const auto more = fermented(specific_gravity(og + 0.001), specific_gravity(fg));
  RC_ASSERT(more->abv > less->abv);
  RC_ASSERT(less->real_extract > less->apparent_extract);
}

}  // namespace
}  // namespace ullage::physics
