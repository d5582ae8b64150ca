// SPDX-License-Identifier: GPL-3.0-or-later
//
// Hold tests told by a keg's journal.
#include "core/cellar/hold_test.h"

#include <gtest/gtest.h>

#include "core/units/present.h"
#include "tests/cellar/scenario.h"

namespace ullage::cellar {
namespace {

using testing::day;
using units::gauge_psi;

class HeldKeg : public ::testing::Test {
 protected:
  HeldKeg() {
    box = s.place("Cold box");
    k = s.keg("K01", box);
    s.log(day(0), Cleaned{k, CleaningMethod::caustic, "caustic", {}, {}, {}});
  }
  void read(Instant when, double psi, double celsius, bool first = false) {
    s.log(when, HoldReading{k, gauge_psi(psi), {}, units::celsius(celsius), {}, first});
  }
  KegStatus at(Instant when) { return s.status(k, when); }
  MessageKey result(Instant when) {
    const auto status = at(when);
    return status.hold_result ? status.hold_result->key : MessageKey{};
  }

  testing::Scenario s;
  KegId k;
  PlaceId box;
};

TEST_F(HeldKeg, HoldsOverThreeDays) {
  read(day(1), 30, 20, true);
  EXPECT_EQ(result(day(1, 1)), MessageKey::hold_one_reading);
  read(day(1, 6), 30, 20);
  EXPECT_EQ(result(day(1, 7)), MessageKey::hold_read_again);
  read(day(4), 30, 20);
  EXPECT_EQ(result(day(4, 1)), MessageKey::hold_holds);
  const auto status = at(day(4, 1));
  ASSERT_TRUE(status.hold_study && status.hold_study->outcome);
  EXPECT_EQ(status.hold_study->entries.size(), 3u);
  EXPECT_NEAR(units::in_psi(present(status.hold_study->outcome->proven_down_to)), 30, 1e-9);
}

TEST_F(HeldKeg, CooledAndTightIsNotFailed) {
  read(day(1), 30, 20, true);
  read(day(2), 27.5, 4);
  EXPECT_NE(result(day(2, 1)), MessageKey::hold_falls);
  EXPECT_FALSE(at(day(2, 1)).hold_failed);
}

TEST_F(HeldKeg, AReadingWithTheGasOnIsNoTest) {
  s.gas(k, day(1), 30, GasPurpose::seat_lid);
  read(day(1, 1), 30, 20, true);
  read(day(3), 30, 20);
  EXPECT_EQ(result(day(3, 1)), MessageKey::hold_gas_on);
  const auto on = at(day(3, 1));
  ASSERT_FALSE(on.advice.empty());
  bool offers = false;
  for (const Advice& a : on.advice) offers = offers || (a.action && a.action->kind == "gas_off");
  EXPECT_TRUE(offers);
  s.log(day(3, 2), GasOff{k});
  read(day(3, 3), 30, 20);
  read(day(6), 30, 20);
  EXPECT_EQ(result(day(6, 1)), MessageKey::hold_holds);
  const auto off = at(day(6, 1));
  EXPECT_EQ(off.hold_study->test.readings.size(), 2u) << "those with the gas on don't count";
  ASSERT_TRUE(off.hold_study->test.closed_at);
  EXPECT_NEAR(units::in_hours(present(off.hold_study->test.closed_at)), -1, 1e-9);
}

TEST_F(HeldKeg, GasLetInOrOutStartsAnew) {
  read(day(1), 30, 20, true);
  read(day(2), 18, 20);
  EXPECT_TRUE(at(day(2, 1)).hold_failed);
  s.log(day(2, 2), Vented{k, gauge_psi(10)});
  read(day(2, 3), 10, 20);
  EXPECT_EQ(result(day(2, 4)), MessageKey::hold_one_reading);
  read(day(5), 10, 20);
  EXPECT_EQ(result(day(5, 1)), MessageKey::hold_holds);
}

// Of beer that takes up gas nothing can be told in a day, and it is no test of
// the empty keg it was.
TEST_F(HeldKeg, WithBeerInsideItIsToldApart) {
  read(day(1), 30, 20, true);
  read(day(4), 30, 20);
  s.read(box, day(1), 4.0);
  const BatchId rye = s.batch("Rye");
  s.fill(k, rye, day(5), 18.0, 4.0);
  s.gas(k, day(5, 1), 30, GasPurpose::burst);
  s.log(day(5, 2), GasOff{k});
  read(day(5, 3), 30, 4, true);
  read(day(6), 14, 4);
  const auto status = at(day(6, 1));
  EXPECT_EQ(present(status.hold_result).key, MessageKey::hold_holds) << "the keg was tested empty";
  ASSERT_TRUE(status.hold_study && status.hold_study->beer && status.hold_study->outcome);
  EXPECT_EQ(hold_words(*status.hold_study).key, MessageKey::hold_absorption);
}

TEST_F(HeldKeg, AbsurdReadingsAreSaidToBe) {
  read(day(1), 30, 20, true);
  read(day(2), 500, 20);
  EXPECT_EQ(result(day(2, 1)), MessageKey::hold_out_of_range);
  EXPECT_FALSE(at(day(2, 1)).hold_failed);
}

}  // namespace
}  // namespace ullage::cellar
