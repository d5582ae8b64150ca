// SPDX-License-Identifier: GPL-3.0-or-later
//
// Gas set with no word of the regulator, on a keg whose line the register says is
// driven by one: dial, gas, advice and account are that regulator's.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/cellar/gas_account.h"
#include "core/cellar/gas_draws.h"
#include "core/units/present.h"
#include "tests/cellar/gas_cellar.h"
#include "tests/cellar/pour_scene.h"

namespace ullage::testing {
namespace {

template <class Q>
bool has_source(const units::Estimate<Q>& e, const std::string& part) {
  return std::any_of(
      e.contributions().begin(), e.contributions().end(),
      [&](const units::Contribution& c) { return c.source.name.find(part) != std::string::npos; });
}

struct DrivenLine : PourScene {
  DrivenLine() {
    InstrumentRecord good = instrument_from_preset(InstrumentKind::regulator_dial);
    good.instrument = counted.make<InstrumentId>();
    good.name = "Dial of R1";
    log(day(-80), good);
    dial = good.instrument;
    BottleRecord mixed;
    mixed.bottle = counted.make<BottleId>();
    mixed.name = "Mixed";
    mixed.co2 = units::mole_fraction(0.6);
    log(day(-80), mixed);
    RegulatorRecord r;
    r.regulator = counted.make<RegulatorId>();
    r.name = "R1";
    r.dial = dial;
    r.bottle = mixed.bottle;
    log(day(-80), r);
    driver = r.regulator;
  }
  void say_what_drives(LineId id, const LineRecord& as) {
    LineRecord r = as;
    r.line = id;
    r.regulator = driver;
    log(day(-55), r);
  }
  InstrumentId dial;
  RegulatorId driver;
};

TEST(GasOfALine, ASetPressureWithNoRegulatorIsThatOfTheLine) {
  DrivenLine s;
  EXPECT_FALSE(s.status(s.keg, day(21, 5)).gas.regulator);
  s.say_what_drives(s.line, s.record);
  s.gas(s.keg, day(21, 1), 20);
  const KegStatus keg = s.status(s.keg, day(22));
  EXPECT_EQ(keg.gas.regulator, s.driver);
  EXPECT_NEAR(keg.gas.co2.count(), 0.6, 1e-12);
  const PourState p = s.pour_now();
  EXPECT_TRUE(has_source(p.setting.pressure, "Dial of R1"));
  EXPECT_NEAR(p.setting.co2_share.count(), 0.6, 1e-12);
  // The beer's CO2 goes where that gas leads, read on the same dial.
  EXPECT_TRUE(has_source(present(keg.co2.now), "Dial of R1"));
  ASSERT_TRUE(keg.co2.settles_at);
  // Pure CO2 at 20 psi and 4 C would take it to 3.2 volumes (the wall chart).
  EXPECT_LT(present(keg.co2.settles_at).count(), 2.7);
}

TEST(GasOfALine, WhatAnEntryStatesCountsBeforeTheRegister) {
  DrivenLine s;
  s.say_what_drives(s.line, s.record);
  RegulatorRecord other;
  other.regulator = s.counted.make<RegulatorId>();
  other.name = "R2";
  s.log(day(-80), other);
  s.log(day(21, 1),
        GasSet{s.keg, units::gauge_psi(12), GasPurpose::serving, other.regulator, {}, {}});
  EXPECT_EQ(s.status(s.keg, day(22)).gas.regulator, other.regulator);
}

// Carbonated elsewhere by nobody said what, then put on.
TEST(GasOfALine, PutOnTheLineAKegHangsOnItsRegulator) {
  DrivenLine s;
  s.say_what_drives(s.line, s.record);
  EXPECT_EQ(s.status(s.keg, day(21, 1)).gas.regulator, s.driver);
  EXPECT_NEAR(s.status(s.keg, day(21, 1)).gas.co2.count(), 0.6, 1e-12);
  EXPECT_TRUE(has_source(s.pour_now().setting.pressure, "Dial of R1"));
}

TEST(GasOfALine, TheRegisterCompletedLaterTellsOfBefore) {
  DrivenLine s;
  s.gas(s.keg, day(21, 1), 12);
  LineRecord late = s.record;
  late.regulator = s.driver;
  s.log(day(21, 5), late);
  EXPECT_EQ(s.status(s.keg, day(22)).gas.regulator, s.driver);
}

TEST(GasOfALine, TwoBeersOnLinesOfOneRegulatorAreToldAsShared) {
  DrivenLine s;
  s.say_what_drives(s.line, s.record);
  const PourFigures wheat;
  s.beer = s.batch("Wheat", 3.3, 3.6);
  const KegId second = s.Scenario::keg("K02", s.box);
  const LineId other = s.register_line("Line 2", wheat);
  s.say_what_drives(other, s.record);
  s.put_on(second, other, wheat);
  const CellarStatus all = s.cellar(day(22));
  for (const LineId id : {s.line, other})
    EXPECT_TRUE(says(all.find(id)->pour->advice, MessageKey::adv_pour_shared));
}

// The account of the bottle behind the line's regulator, in a cellar with another:
// drawn, and on its branch.
TEST(GasOfALine, WhatItDrawsIsOfThatBottle) {
  GasCellar scene;
  const BottleId second = scene.gas_bottle("Bottle 2");
  scene.gas_regulator("Regulator 2", second);
  const KegId k = scene.delivered("K01", scene.batch("Bitter"), day(0));
  LineRecord line;
  line.line = scene.line("Line 1", "1");
  line.name = "Line 1";
  line.tap = "1";
  line.regulator = scene.regulator;
  scene.log(day(-40), line);
  scene.log(day(0, 1), GasSet{k, units::gauge_psi(12), GasPurpose::serving, {}, {}, {}});
  scene.log(day(1), Tapped{k, line.line});
  scene.weigh(day(0), 2.0);
  scene.heavy(k, day(0, 2), 18.6 + 4.5);
  scene.heavy(k, day(7), 10 + 4.5);
  scene.weigh(day(7), 1.95);
  double before = 0, on_line = 0;
  for (const GasDraw& d : gas_draws(keg_timeline(k, scene.journal), scene.journal,
                                    {day(-1), day(0), day(7), day(8)})) {
    if (d.work != GasWork::pushing) continue;
    (d.regulator == scene.regulator ? on_line : before) += units::in_grams(d.mass.value());
  }
  EXPECT_GT(on_line, 15);
  EXPECT_LT(before, 5) << "from before it was on the line";
  const GasAccount& a = scene.account(day(8));
  ASSERT_EQ(a.branches.size(), 1U);
  ASSERT_EQ(a.branches.front().kegs.size(), 1U) << "the keg hangs on it";
  EXPECT_EQ(a.branches.front().kegs.front().keg, k);
  ASSERT_TRUE(a.use_per_day);
  EXPECT_GT(units::in_grams(present(a.use_per_day).value()), 2);
}

}  // namespace
}  // namespace ullage::testing
