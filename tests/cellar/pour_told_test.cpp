// SPDX-License-Identifier: GPL-3.0-or-later
//
// What pour advice says and stands on: beers with no range, what makes the width,
// when beer was last drawn, kegs that share a regulator on tap or not.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/cellar/pour_advice.h"
#include "core/units/present.h"
#include "tests/cellar/pour_scene.h"

namespace ullage::testing {
namespace {

using Pressure = units::Estimate<GaugePressure>;
using Co2 = units::Estimate<units::Co2Volumes>;

const Advice* told(const std::vector<Advice>& all, MessageKey key) {
  const auto at =
      std::find_if(all.begin(), all.end(), [&](const Advice& a) { return a.headline.key == key; });
  return at == all.end() ? nullptr : &*at;
}
double psi_of(const MessageArg& arg) { return units::in_psi(get_if<Pressure>(&arg)->value()); }

// Nobody said what CO2 it should have: it still keeps what it has or not.
TEST(PourTold, ABeerWithNoRangeIsToldWhereItsGasBreaksOut) {
  PourScene s;
  BeerRecord beer = present(s.status(s.keg, day(21)).contents).beer;
  beer.co2_low.reset();
  beer.co2_high.reset();
  s.log(day(-30), beer);
  s.gas(s.keg, day(21, 1), 4);
  const PourState p = s.pour_now(day(21, 2));
  ASSERT_FALSE(p.outlook.should_be);
  const Advice* a = told(p.advice, MessageKey::adv_pour_breaks_out);
  ASSERT_TRUE(a);
  // What held it until yesterday, and half a psi for the foot that it rises.
  EXPECT_NEAR(psi_of(present(a->detail).args.at(0)), 11.5 + 0.44, 0.5);
  EXPECT_EQ(present(a->action).kind, "gas_set");
}

TEST(PourTold, TooLittlePressureLetsItGoFlat) {
  PourFigures f;
  f.psi = 3;
  const PourState p = PourScene(f).pour_now();
  const Advice* a = told(p.advice, MessageKey::adv_pour_goes_flat);
  ASSERT_TRUE(a);
  EXPECT_EQ(a->severity, Severity::advice);
  // 3 psi hold 1.7 volumes at 4 C by the wall chart.
  EXPECT_NEAR(get_if<Co2>(&a->headline.args.at(1))->value().count(), 1.7, 0.1);
  // 2.5 want 11.8 psi there, known no better than the beer's temperature is.
  EXPECT_NEAR(psi_of(present(a->detail).args.at(0)), 11.8, 0.3);
  EXPECT_GT(get_if<Pressure>(&present(a->detail).args.at(0))->half_width(), 0);
  EXPECT_FALSE(told(PourScene().pour_now().advice, MessageKey::adv_pour_goes_flat));
}

// Set again on the day after it was filled, by a gauge that is hardly off.
void set_by_a_checked_gauge(PourScene& s) {
  InstrumentRecord gauge = instrument_from_preset(InstrumentKind::regulator_dial);
  gauge.instrument = s.counted.make<InstrumentId>();
  gauge.name = "Checked gauge";
  gauge.pressure_bias = units::psi(0.1);
  gauge.pressure_repeatability = units::psi(0.1);
  s.log(day(-80), gauge);
  s.log(day(1),
        GasSet{
            s.keg, units::gauge_psi(s.figures.psi), GasPurpose::serving, {}, gauge.instrument, {}});
}

TEST(PourTold, WhatCantBeToldNamesWhatMakesItSo) {
  PourFigures f;
  f.psi = 9.5;
  {
    const PourState p = PourScene(f).pour_now();
    const Advice* a = told(p.advice, MessageKey::adv_pour_cant_tell);
    ASSERT_TRUE(a);
    EXPECT_NE(get_if<std::string>(&a->headline.args.at(2))->find("dial"), std::string::npos);
    EXPECT_EQ(present(a->detail).key, MessageKey::adv_pour_cant_tell_detail);
  }
  // A checked gauge, and a box that was turned a little and not read since.
  PourScene s(f);
  PlaceRecord turned;
  turned.place = s.box;
  turned.name = "Cold box";
  turned.set_temperature = units::celsius(4.3);
  s.log(day(-10), turned);
  set_by_a_checked_gauge(s);
  const PourState p = s.pour_now();
  const Advice* a = told(p.advice, MessageKey::adv_pour_cant_tell);
  ASSERT_TRUE(a);
  EXPECT_EQ(*get_if<std::string>(&a->headline.args.at(2)), "Cold box: as set");
  EXPECT_EQ(present(a->detail).key, MessageKey::adv_pour_cant_tell_warmth_detail);
}

TEST(PourTold, GlassesThatWereCountedEndAnIdleWeek) {
  PourScene s;
  ASSERT_TRUE(told(s.pour_now(day(32)).advice, MessageKey::adv_pour_idle));
  LevelReading glasses;
  glasses.keg = s.keg;
  glasses.method = LevelMethod::glasses;
  glasses.glasses = 6;
  glasses.glass_volume = units::us_pints(1);
  s.log(day(30), glasses);
  EXPECT_FALSE(told(s.pour_now(day(32)).advice, MessageKey::adv_pour_idle));
  const PourState later = s.pour_now(day(40));
  const Advice* a = told(later.advice, MessageKey::adv_pour_idle);
  ASSERT_TRUE(a);
  EXPECT_EQ(*get_if<Instant>(&a->headline.args.at(0)), day(30));
}

TEST(PourTold, PressureAndTemperatureTellTheirAge) {
  PourScene s;
  s.gas(s.keg, day(21, 1), 4);
  const PourState p = s.pour_now(day(21, 2));
  const Advice* a = told(p.advice, MessageKey::adv_pour_breaks_out);
  ASSERT_TRUE(a);
  ASSERT_GE(a->inputs.size(), 2U);
  EXPECT_EQ(a->inputs[0].what.key, MessageKey::input_gas);
  EXPECT_EQ(a->inputs[0].read, day(21, 1));
  EXPECT_EQ(a->inputs[1].what.key, MessageKey::input_beer_at);
  EXPECT_EQ(a->inputs[1].read, day(-20));
  // As tried it has no age.
  const PourSetting tried = with(p.setting, {.pressure = units::gauge_psi(3)});
  const PourAdvice then = pour_advice(tried, pour_outlook(tried));
  EXPECT_FALSE(then.also_of_keg.front().inputs.front().read);
}

TEST(PourTold, ALongHoseSaysTheShorterOneThatIsRight) {
  PourFigures f;
  f.feet = 40;
  const PourState p = PourScene(f).pour_now();
  const Advice* a = told(p.advice, MessageKey::adv_pour_slow);
  ASSERT_TRUE(a);
  ASSERT_TRUE(a->detail);
  ASSERT_EQ(present(a->detail).key, MessageKey::adv_pour_shorten_detail);
  const auto length = [&](std::size_t i) { return *get_if<Length>(&a->detail->args.at(i)); };
  EXPECT_LT(units::in_feet(length(0)), 15);
  EXPECT_LT(length(3), length(0)) << "as narrow as its bore may be";
  EXPECT_GT(length(4), length(0)) << "as wide";
}

// Lifted so high that no length of hose helps: more pressure, and mixed gas for it.
TEST(PourTold, AHighTapIsToldThePressureAndTheBlendForIt) {
  PourFigures f;
  f.feet = 26;
  f.bore_inch = 0.25;
  f.rise_feet = 24;
  PourScene s(f);
  set_by_a_checked_gauge(s);
  const PourState p = s.pour_now();
  const Advice* a = told(p.advice, MessageKey::adv_pour_slow);
  ASSERT_TRUE(a);
  ASSERT_TRUE(a->detail);
  ASSERT_EQ(present(a->detail).key, MessageKey::adv_pour_blend_detail);
  const double psi = units::in_psi(*get_if<GaugePressure>(&present(a->detail).args.at(0)));
  EXPECT_GT(psi, 15);
  // (b + air) / (a + air), with the 11.8 psi that hold the beer as pure CO2.
  EXPECT_NEAR(get_if<units::Fraction>(&present(a->detail).args.at(1))->count(),
              (11.8 + 14.7) / (psi + 14.7), 0.01);
}

TEST(PourTold, AHoseThatNoLengthMakesRightIsToldItsBore) {
  PourFigures f;
  f.feet = 2;
  f.bore_inch = 0.375;
  const PourState p = PourScene(f).pour_now();
  const Advice* a = told(p.advice, MessageKey::adv_pour_fast);
  ASSERT_TRUE(a);
  ASSERT_TRUE(a->detail);
  ASSERT_EQ(present(a->detail).key, MessageKey::adv_pour_bore_detail);
  EXPECT_LT(units::in_inches(*get_if<Length>(&present(a->detail).args.at(0))), 0.25);
}

struct OneRegulator : PourScene {
  OneRegulator() {
    RegulatorRecord r;
    r.regulator = counted.make<RegulatorId>();
    r.name = "R1";
    log(day(-80), r);
    regulator = r.regulator;
    log(day(20), GasSet{keg, units::gauge_psi(11.5), GasPurpose::serving, r.regulator, {}, {}});
  }
  // Full and taking up gas, not on tap.
  KegId wheat_beside() {
    const KegId wheat = Scenario::keg("K02", box);
    log(day(19), Emptied{wheat});
    prepare(wheat, day(20));
    fill(wheat, batch("Wheat", 3.3, 3.6), day(20, 3), 18.6, 4);
    log(day(20, 4),
        GasSet{wheat, units::gauge_psi(11.5), GasPurpose::set_and_wait, regulator, {}, {}});
    return wheat;
  }
};

TEST(SharedRegulator, AKegThatOnlyCarbonatesOnItCounts) {
  OneRegulator s;
  EXPECT_FALSE(told(s.pour_now().advice, MessageKey::adv_pour_shared));
  const KegId wheat = s.wheat_beside();
  ASSERT_NE(s.status(wheat, day(22)).phase, Phase::on_tap);
  const PourState p = s.pour_now();
  const Advice* a = told(p.advice, MessageKey::adv_pour_shared);
  ASSERT_TRUE(a);
  EXPECT_EQ(*get_if<std::string>(&a->headline.args.at(1)), "K02");
  EXPECT_EQ(*get_if<std::string>(&a->headline.args.at(2)), "R1");
  ASSERT_TRUE(a->detail);
  const auto* now = get_if<Co2>(&present(a->detail).args.at(1));
  const auto* then = get_if<Co2>(&present(a->detail).args.at(4));
  ASSERT_TRUE(now && then);
  EXPECT_NEAR(now->value().count(), 2.47, 0.05);  // the wall chart at 11.5 psi and 4 C
  EXPECT_GT(now->half_width(), 0.05);
  // Half way between 2.6, the most for one, and 3.3, the least for the other.
  EXPECT_NEAR(then->value().count(), 2.95, 0.02);
  EXPECT_GT(then->half_width(), 0.05);
  int kegs = 0;
  for (const InputUsed& input : a->inputs) kegs += input.what.key == MessageKey::input_keg_becomes;
  EXPECT_EQ(kegs, 2) << "each keg with what it wants and becomes";
  s.log(day(22), Emptied{wheat});
  EXPECT_FALSE(told(s.pour_now(day(22, 1)).advice, MessageKey::adv_pour_shared));
}

TEST(SharedRegulator, ATriedPressureIsJudgedForAllOfThem) {
  OneRegulator s;
  s.wheat_beside();
  const CellarStatus all = s.cellar(day(22));
  const LineStatus& line = *all.find(s.line);
  const PourSetting tried = with(line.pour->setting, {.pressure = units::gauge_psi(21)});
  const auto advice = shared_regulator_advice(all, line, tried, {});
  const Advice* a = told(advice, MessageKey::adv_pour_shared);
  ASSERT_TRUE(a);
  EXPECT_GT(get_if<Co2>(&present(a->detail).args.at(1))->value().count(), 3.1);
  EXPECT_TRUE(told(advice, MessageKey::adv_pour_over_gasses_by));
}

// One regulator gives one pressure: what is applied is logged for each keg on it.
TEST(SharedRegulator, AnAppliedPressureIsSetOnEveryKegOfIt) {
  OneRegulator s;
  const KegId wheat = s.wheat_beside();
  const KegId elsewhere = s.Scenario::keg("K03", s.box);
  s.gas(elsewhere, day(20), 10);
  const CellarStatus all = s.cellar(day(22));
  const auto entries = entries_for({.pressure = units::gauge_psi(13)}, *all.find(s.line), all);
  ASSERT_EQ(entries.size(), 2U);
  const auto* own = get_if<GasSet>(&entries[0]);
  const auto* other = get_if<GasSet>(&entries[1]);
  ASSERT_TRUE(own && other);
  EXPECT_EQ(own->keg, s.keg);
  EXPECT_EQ(own->purpose, GasPurpose::serving);
  EXPECT_EQ(other->keg, wheat);
  EXPECT_EQ(other->purpose, GasPurpose::set_and_wait);
  EXPECT_EQ(other->regulator, s.regulator);
  EXPECT_NEAR(units::in_psi(other->pressure), 13, 1e-9);
}

}  // namespace
}  // namespace ullage::testing
