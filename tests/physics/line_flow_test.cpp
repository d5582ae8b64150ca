// SPDX-License-Identifier: GPL-3.0-or-later
//
// Beer lines by property: both ways agree, what should rise rises, nothing steps
// in the transition, refusals name their limit.
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <limits>

#include "core/physics/atmosphere.h"
#include "core/physics/break_out.h"
#include "core/physics/draught_line.h"
#include "core/physics/line_balance.h"
#include "core/physics/line_calibration.h"
#include "core/units/present.h"

namespace ullage::physics {
namespace {

using namespace units;

double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 1000001) / 1e6;
}

Hose any_hose() {
  return {metres(between(0.3, 30)), millimetres(between(3, 16)), millimetres(between(0, 0.02)),
          metres(between(-0.5, 2))};
}

// One to five parts, at least one hose.
LineParts any_parts() {
  LineParts parts{any_hose()};
  for (int i = *rc::gen::inRange(0, 5); i > 0; --i) {
    if (*rc::gen::inRange(0, 2) == 0)
      parts.emplace_back(any_hose());
    else
      parts.emplace_back(Fitting{psi(between(0, 3))});
  }
  return parts;
}

FlowingBeer any_beer() {
  return *flowing_beer(celsius(between(0, 30)), specific_gravity(between(1.0, 1.03)),
                       ViscosityFactor(between(1, 3)));
}

LineFlow line_of(const LineParts& parts, const FlowingBeer& beer = *flowing_beer(celsius(4))) {
  return LineFlow::make(parts, beer).value();
}

// The solver stops at a bracket of 2^-40 of ln Q (about 1e-11), far inside 1e-7.
TEST(LineFlowProperty, FlowAndPressureAreInverse) {
  EXPECT_TRUE(rc::check([] {
    const LineFlow line = line_of(any_parts(), any_beer());
    const VolumeFlow q = litres_per_second(std::exp(between(std::log(1e-4), std::log(0.2))));
    const auto p = line.pressure_for(q);
    RC_PRE(p.has_value());
    const auto back = line.flow_at(*p);
    RC_ASSERT(back.has_value());
    // Near standstill the lift swamps the loss: the flow is as good as the
    // difference of two pressures in doubles.
    const double loss = in_pascals(*p) - in_pascals(line.lift());
    RC_PRE(loss > 1.0);
    RC_ASSERT(std::abs(back->value() / q.value() - 1) < 1e-7);
  }));
}

TEST(LineFlowProperty, MorePressurePoursFaster) {
  EXPECT_TRUE(rc::check([] {
    const LineFlow line = line_of(any_parts(), any_beer());
    const double low = in_psi(line.lift()) + between(0.5, 20);
    const auto slow = line.flow_at(gauge_psi(low));
    const auto fast = line.flow_at(gauge_psi(low * 1.01 + 0.1));
    RC_PRE(slow && fast);
    RC_ASSERT(fast->value() > slow->value());
  }));
}

TEST(LineFlowProperty, LengthAndBoreAreInverse) {
  EXPECT_TRUE(rc::check([] {
    const LineParts parts = any_parts();
    const LineFlow line = line_of(parts, any_beer());
    const GaugePressure p = gauge_psi(std::max(0.0, in_psi(line.lift())) + between(3, 30));
    const auto q = line.flow_at(p);
    RC_PRE(q.has_value());
    const Hose& first = *get_if<Hose>(&parts[0]);
    const auto length = line.length_for(0, p, *q);
    // A hose that loses next to nothing beside the others is found less exactly.
    RC_PRE(line.loss_in(0, *q)->value() > 0.01 * in_pascals(p));
    RC_ASSERT(length.has_value());
    RC_ASSERT(std::abs(length->value() / first.length.value() - 1) < 1e-5);
    const auto bore = line.bore_for(0, p, *q);
    RC_ASSERT(bore.has_value());
    RC_ASSERT(std::abs(bore->value() / first.bore.value() - 1) < 1e-5);
  }));
}

TEST(LineFlowProperty, ProfileRunsFromTheKegToTheAir) {
  EXPECT_TRUE(rc::check([] {
    const LineParts parts = any_parts();
    const LineFlow line = line_of(parts, any_beer());
    const GaugePressure p = gauge_psi(std::max(0.0, in_psi(line.lift())) + between(1, 30));
    const auto pouring = line.profile_pouring(p);
    const auto rest = line.profile_at_rest(p);
    RC_PRE(pouring.has_value());
    RC_ASSERT(pouring->size() == parts.size() + 1);
    RC_ASSERT(pouring->front().pressure == p);
    RC_ASSERT(std::abs(in_pascals(pouring->back().pressure)) < 1e-5 * in_pascals(p) + 1e-3);
    const double lost = in_pascals(p) - in_pascals(rest->back().pressure);
    RC_ASSERT(std::abs(lost - in_pascals(line.lift())) < 1e-6 * in_pascals(p) + 1e-6);
    RC_ASSERT(std::abs((pouring->back().along - total_length(parts)).value()) < 1e-9);
  }));
}

// One smooth rise: over 0.1 % of Reynolds number the pressure lost (f Re^2) must
// rise, and by no more than its steepest law allows. In the transition f itself
// climbs from 64/2300 to 0.04 over ln(4000/2300) = 0.55 with a peak slope 1.875
// times the mean of a smooth step: d ln(f Re^2)/d ln Re < 2 + 1.875 * 4000 / 1700
// * (0.047 / 0.0278 - 1) < 5.1, for rougher pipe (f up to 0.08) < 12.
TEST(Friction, RisesSmoothlyThroughTheTransition) {
  for (const double rough : {0.0, 1e-4, 1e-3, 0.01, 0.05}) {
    double before = pipe_detail::friction(1500, rough) * 1500 * 1500;
    double slope_before = 1.0;
    double re = 1500;
    while ((re *= 1.001) < 6000) {
      const double now = pipe_detail::friction(re, rough) * re * re;
      const double slope = std::log(now / before) / std::log(1.001);
      EXPECT_GT(slope, 0.9) << re;
      EXPECT_LT(slope, 12.0) << re;
      // No kink: the slope itself moves little from step to step.
      EXPECT_LT(std::abs(slope - slope_before), 0.15) << re << " " << rough;
      slope_before = slope;
      before = now;
    }
  }
}

TEST(Friction, NoStepAtTheEndsOfTheTransition) {
  for (const double edge : {laminar_below, turbulent_above}) {
    const double below = pipe_detail::friction(edge * (1 - 1e-9), 1e-4);
    const double above = pipe_detail::friction(edge * (1 + 1e-9), 1e-4);
    EXPECT_NEAR(below / above, 1.0, 1e-7);
  }
}

// The pour of a 3/8 in line in small steps of pressure: each step pours a little
// more, and never jumps: a step of 0.5 % of pressure moves the flow by at most
// 0.5 % (laminar, slope 1).
TEST(LineFlow, DoesNotOscillateNearThirtyFourHundred) {
  const LineFlow line = line_of({Hose{feet(20), inches(0.375), drawn_tube_roughness()}});
  double before = 0;
  double p = 0.2 / 1.005;
  while ((p *= 1.005) < 4) {
    const double q = line.flow_at(gauge_psi(p))->value();
    if (before > 0) {
      EXPECT_GT(q, before);
      EXPECT_LT(q / before, 1.0052);
    }
    before = q;
  }
}

TEST(LineFlow, RefusesAndNamesTheLimit) {
  const FlowingBeer beer = *flowing_beer(celsius(4));
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const auto with = [&](Hose h) { return LineFlow::make({h}, beer).error().subject; };
  EXPECT_EQ(LineFlow::make({}, beer).error().subject, Subject::parts);
  EXPECT_EQ(with({metres(2), millimetres(0.1)}), Subject::bore);
  EXPECT_EQ(with({metres(2), metres(nan)}), Subject::bore);
  EXPECT_EQ(with({metres(-2), millimetres(5)}), Subject::length);
  EXPECT_EQ(with({metres(0), millimetres(5)}), Subject::length);
  EXPECT_EQ(with({metres(2), millimetres(5), millimetres(0.9)}), Subject::relative_roughness);
  EXPECT_EQ(with({metres(2), millimetres(5), millimetres(0.001), metres(500)}), Subject::rise);
  EXPECT_EQ(LineFlow::make({Fitting{psi(-1)}}, beer).error().subject, Subject::pressure_loss);
  EXPECT_EQ(flowing_beer(celsius(90)).error().subject, Subject::temperature);

  const LineFlow up = line_of({Hose{metres(6), millimetres(5), drawn_tube_roughness(), metres(5)}});
  const auto none = up.flow_at(gauge_psi(5));
  ASSERT_FALSE(none);
  EXPECT_EQ(none.error().subject, Subject::gauge_pressure);
  EXPECT_NEAR(none.error().low, in_pascals(up.lift()), 1e-9);
  EXPECT_EQ(up.flow_at(gauge_psi(500)).error().subject, Subject::gauge_pressure);
  EXPECT_EQ(up.flow_at(gauge_psi(nan)).error().subject, Subject::gauge_pressure);
  EXPECT_EQ(up.length_for(1, gauge_psi(20), nominal_pour()).error().subject, Subject::parts);
  EXPECT_EQ(up.length_for(0, gauge_psi(3), nominal_pour()).error().subject, Subject::length);
  EXPECT_EQ(up.pressure_for(litres_per_second(0)).error().subject, Subject::flow);
}

MeasuredPour pour(double litres_poured, double secs, double at_psi) {
  return {Estimate<Volume>(litres(litres_poured)).with({"glass"}, 0.01e-3),
          Estimate<Duration>(seconds(secs)).with({"watch"}, watch_half_width_seconds),
          Estimate<GaugePressure>(gauge_psi(at_psi)).with({"dial: bias"}, psi(2).value()),
          Estimate<Temperature>(celsius(4)).with({"thermometer"}, 0.5)};
}

// What was poured is what the calibrated line pours at the same settings: the
// bracket is 2^-40 of the factor.
TEST(Calibration, GivesThePourBack) {
  EXPECT_TRUE(rc::check([] {
    const LineParts parts{
        Hose{feet(between(4, 20)), inches(0.1875), drawn_tube_roughness(), metres(between(0, 1.5))},
        Fitting{psi(between(0.1, 1.5))}};
    const double truth = between(0.8, 1.2);
    const LineFlow real = line_of(with_bores(parts, BoreFactor(truth)));
    const auto q = real.flow_at(gauge_psi(12));
    RC_PRE(q.has_value());
    const double secs = 0.5e-3 / q->value();
    RC_PRE(secs > 2 && secs < 200);
    const auto factor = calibrate_bore(parts, pour(0.5, secs, 12), specific_gravity(1.010),
                                       ordinary_viscosity_factor({"beer: viscosity"}));
    RC_ASSERT(factor.has_value());
    RC_ASSERT(std::abs(bores_of(factor->value()).count() - truth) < 1e-6);
    RC_ASSERT(factor->half_width() > 0.001);
  }));
}

// The dial's bias is in the calibration and in the prediction with opposite
// sign: at the same setting it cancels.
TEST(Calibration, DialBiasCancelsInThePrediction) {
  const LineParts parts{Hose{feet(6), inches(0.1875)}, Fitting{psi(1)}};
  const MeasuredPour p = pour(0.473, 9, 12);
  const auto thick = ordinary_viscosity_factor({"beer: viscosity"});
  const auto factor = calibrate_bore(parts, p, specific_gravity(1.010), thick);
  ASSERT_TRUE(factor);
  const auto same =
      pour_flow(parts, {*factor, p.pressure, p.temperature, specific_gravity(1.010), thick});
  ASSERT_TRUE(same);
  for (const Contribution& c : same->contributions()) {
    if (c.source.name == "dial: bias") {
      EXPECT_LT(std::abs(c.half_width) / same->value().value(), 0.005);
    }
  }
  const Estimate<GaugePressure> other =
      Estimate<GaugePressure>(gauge_psi(12)).with({"other dial: bias"}, psi(2).value());
  const auto another =
      pour_flow(parts, {*factor, other, p.temperature, specific_gravity(1.010), thick});
  ASSERT_TRUE(another);
  EXPECT_GT(another->half_width(), 1.5 * same->half_width());
}

// Two pours halve the watch's share (root 2) and leave the dial's bias whole.
TEST(Calibration, SharedErrorsDoNotAverageAway) {
  const Estimate<HoseResistance> one =
      Estimate<HoseResistance>(HoseResistance(1)).with({"dial"}, 0.03).with({"watch 1"}, 0.04);
  const Estimate<HoseResistance> two =
      Estimate<HoseResistance>(HoseResistance(1.1)).with({"dial"}, 0.03).with({"watch 2"}, 0.04);
  const auto both = combine({one, two});
  ASSERT_TRUE(both);
  EXPECT_NEAR(both->value().count(), 1.05, 1e-12);
  EXPECT_NEAR(both->half_width(), std::hypot(0.03, 0.04 / std::sqrt(2.0)), 1e-12);
  EXPECT_EQ(combine({}).error().subject, Subject::parts);
}

// What a pour can't bound is not bounded: as resistance 0.3 +- 0.4 the hose may be of
// any width, and there is no factor for what would resist nothing.
TEST(Calibration, AnOpenEndIsSaidToBeOpen) {
  const BoreRange open =
      range_of_bores(Estimate<HoseResistance>(HoseResistance(0.3)).with({"dial"}, 0.4));
  EXPECT_FALSE(open.high);
  EXPECT_NEAR(open.low.count(), std::pow(0.7, -1 / 4.75), 1e-12);
  EXPECT_TRUE(std::isnan(bores_of(HoseResistance(0)).count()));
  EXPECT_NEAR(bores_of(resistance_of(BoreFactor(0.93))).count(), 0.93, 1e-12);
  // As a prior states it, it stays.
  const BoreRange stated =
      range_of_bores(Estimate<BoreFactor>(BoreFactor(0.95)).with({"hose"}, 0.08));
  EXPECT_NEAR(stated.low.count(), 0.87, 1e-12);
  EXPECT_NEAR(present(stated.high).count(), 1.03, 1e-12);
  const LineParts parts{Hose{feet(6), inches(0.1875)}, Fitting{psi(1)}};
  EXPECT_FALSE(
      pour_flow(parts, {Estimate<HoseResistance>(HoseResistance(0.3)).with({"h"}, 0.4),
                        Estimate<GaugePressure>(gauge_psi(12)), Estimate<Temperature>(celsius(4)),
                        specific_gravity(1.010), ordinary_viscosity_factor({"beer: viscosity"})}));
}

TEST(Calibration, RoughnessExplainsASlowPourAndRefusesAFastOne) {
  const LineParts parts{Hose{feet(10), inches(0.1875), millimetres(0.05)}};
  const double q = line_of(parts).flow_at(gauge_psi(14))->value();
  const auto rough =
      calibrate_roughness(with_roughness(parts, metres(0)), pour(0.5, 0.5e-3 / q, 14),
                          specific_gravity(1.010), ordinary_beer_viscosity);
  ASSERT_TRUE(rough);
  EXPECT_NEAR(in_millimetres(*rough), 0.05, 1e-4);
  EXPECT_EQ(
      calibrate_roughness(parts, pour(0.5, 2, 14), specific_gravity(1.010), ordinary_beer_viscosity)
          .error()
          .subject,
      Subject::roughness);
}

CarbonatedBeer beer_with(double volumes, double half_width) {
  return {Estimate<Co2Volumes>(volumes_of_co2(volumes)).with({"co2"}, half_width),
          Estimate<AbsolutePressure>(sea_level()),
          {"equation"}};
}

std::vector<Estimate<Temperature>> standing(std::initializer_list<double> c) {
  std::vector<Estimate<Temperature>> all;
  for (const double t : c) all.emplace_back(celsius(t));
  return all;
}

// 2.5 volumes need 10.9 psi at 3 C and 27.6 psi at 18 C: a cold line at 13 psi
// keeps its gas, and its warm tower loses it.
TEST(BreakOut, AtRestInAWarmTower) {
  const LineFlow line = line_of({Hose{feet(6), inches(0.1875)},
                                 Hose{feet(2), inches(0.1875), drawn_tube_roughness(), feet(2)}});
  const auto p = Estimate<GaugePressure>(gauge_psi(13)).with({"dial"}, psi(0.5).value());
  const auto cold = break_out_at_rest(line, p, standing({3, 3}), beer_with(2.5, 0.05));
  ASSERT_TRUE(cold);
  EXPECT_EQ((*cold)[0].verdict, AtRest::stays);
  const auto warm = break_out_at_rest(line, p, standing({3, 18}), beer_with(2.5, 0.05));
  ASSERT_TRUE(warm);
  EXPECT_EQ((*warm)[0].verdict, AtRest::stays);
  EXPECT_EQ((*warm)[1].verdict, AtRest::breaks_out);
  const auto volume = standing_warm(line.parts(), standing({3, 18}), celsius(6));
  EXPECT_NEAR(in_litres(*volume), in_litres(*line_volume(inches(0.1875), feet(2))), 1e-9);
  EXPECT_EQ(break_out_at_rest(line, p, standing({3}), beer_with(2.5, 0.05)).error().subject,
            Subject::parts);
}

// Right at equilibrium a dial of 2 psi cannot tell.
TEST(BreakOut, CannotTellWithinTheDial) {
  const LineFlow line = line_of({Hose{feet(6), inches(0.1875)}});
  const auto p = Estimate<GaugePressure>(gauge_psi(10)).with({"dial"}, psi(2).value());
  const auto at = break_out_at_rest(line, p, standing({3}), beer_with(2.5, 0.01));
  ASSERT_TRUE(at);
  EXPECT_EQ((*at)[0].verdict, AtRest::cant_tell);
}

TEST(BreakOut, EveryPourEndsSupersaturated) {
  EXPECT_TRUE(rc::check([] {
    const LineFlow line = line_of(any_parts());
    const GaugePressure p = gauge_psi(std::max(0.0, in_psi(line.lift())) + between(2, 25));
    const auto j = break_out_pouring(line, p, volumes_of_co2(2.5), celsius(4), sea_level());
    RC_PRE(j.has_value());
    RC_ASSERT(j->places.back().at_end.count() > 1);
    RC_ASSERT(j->supersaturated.value() >= 0);
    RC_ASSERT(j->supersaturated.value() <= j->whole.value() * (1 + 1e-12));
    const double whole = total_volume(line.parts()).value() / line.flow_at(p)->value();
    RC_ASSERT(std::abs(j->whole.value() / whole - 1) < 1e-9);
  }));
}

TEST(Balance, NearestHoseAtHand) {
  const LineFlow line = line_of({Hose{feet(5), inches(0.1875)}, Fitting{psi(1)}});
  const auto b =
      balance_length(line, 0, gauge_psi(12), nominal_pour(), {feet(3), feet(5), feet(10), feet(0)});
  ASSERT_TRUE(b && b->at_hand && b->flow);
  EXPECT_GT(in_feet(b->exact), 5.0);
  EXPECT_EQ(*b->at_hand, feet(5));
  EXPECT_GT(b->flow->value(), nominal_pour().value());
  EXPECT_EQ(balance_length(line, 0, gauge_psi(0.5), nominal_pour()).error().subject,
            Subject::length);
}

}  // namespace
}  // namespace ullage::physics
