// SPDX-License-Identifier: GPL-3.0-or-later
//
// The card that tells where a keg's CO2 goes.
#include <gmock/gmock.h>

#include "core/cellar/replay.h"
#include "core/report/cards/keg_card.h"
#include "core/units/present.h"
#include "tests/cellar/scenario.h"

namespace ullage::testing {
namespace {

using report::CardFigure;
using report::KegCard;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;

class KegDrift : public ::testing::Test {
 protected:
  // Rises by 0.01 a day from 2.5, 0.05 either way.
  KegDrift() {
    speaker_ = {{units::DisplayUnits::us(), {}}, &calendar_, report::RegionalWords::us, day(0, 12)};
    keg_.contents = Contents{};
    keg_.co2.now = units::Estimate<units::Co2Volumes>(units::volumes_of_co2(2.5))
                       .with({"K01: carbonation rate"}, 0.05);
    keg_.co2.target_low = units::volumes_of_co2(2.4);
    keg_.co2.target_high = units::volumes_of_co2(2.6);
    keg_.gas.on = true;
    keg_.gas.set = units::gauge_psi(12);
    for (int h = 0; h <= 30 * 24; h += 6) {
      const double v = 2.5 + 0.01 * h / 24;
      ahead_.points.push_back({day(0, 12 + h), units::volumes_of_co2(v - 0.05),
                               units::volumes_of_co2(v), units::volumes_of_co2(v + 0.05)});
    }
  }
  [[nodiscard]] std::optional<KegCard> card() const {
    return report::drift_card({cellar_, keg_, speaker_}, ahead_);
  }
  LondonCalendar calendar_;
  CellarStatus cellar_;
  KegStatus keg_;
  CarbonationCurveData ahead_;
  report::Speaker speaker_;
};

TEST_F(KegDrift, TellsTheDaysAheadWithTheirRangeAndWhenItLeaves) {
  const auto c = card();
  ASSERT_TRUE(c);
  ASSERT_EQ(present(c).figures.size(), 4U);
  EXPECT_EQ(present(c).verdict, "If it stays at 12 psi");
  EXPECT_EQ(present(c).figures[0].name, "In 7 days");
  EXPECT_THAT(present(c).figures[0].value, StartsWith("2.57 vol (2.52 to 2.62"));
  EXPECT_THAT(present(c).figures[2].value, StartsWith("2.8"));
  // 2.6 is reached after ten days, Thursday 12 November; by the edges after 5 and 15.
  EXPECT_EQ(present(c).figures[3].value, "above it from 12 Nov (Sat 7 Nov to 17 Nov)");
  for (const CardFigure& f : present(c).figures) EXPECT_FALSE(f.grounds.empty());
}

TEST_F(KegDrift, StaysQuietWithoutACurve) {
  ahead_.points.clear();
  EXPECT_FALSE(card());
}

// What would narrow each figure is what makes its own range, not today's.
TEST_F(KegDrift, EachFigureNamesWhatWouldNarrowIt) {
  const auto of = [](double rate, double dial) {
    return units::Estimate<units::Co2Volumes>(units::volumes_of_co2(2.5))
        .with({"K01: carbonation rate"}, rate)
        .with({"Wall dial: bias"}, dial);
  };
  ahead_.sources = {{day(0, 12), of(0.2, 0.01)}, {day(10), of(0.1, 0.1)}, {day(30), of(0.01, 0.2)}};
  const auto c = card();
  ASSERT_TRUE(c);
  const auto first = [&](std::size_t i) { return c->figures[i].grounds.narrow.at(0); };
  EXPECT_THAT(present(c).figures[0].grounds.narrow, ::testing::SizeIs(2)) << "a week on: both";
  EXPECT_THAT(first(2), HasSubstr("Wall dial: bias"));
  EXPECT_THAT(present(c).figures[2].grounds.narrow, ::testing::SizeIs(1));
  EXPECT_EQ(present(c).figures[3].grounds.narrow, present(c).figures[0].grounds.narrow)
      << "it leaves on day 10";
}

// From a journal: fresh beer hangs on how fast its keg is, a month later on the gas.
TEST(KegDriftFromJournal, AMonthHangsOnTheGasNotOnTheRate) {
  Scenario s;
  const KegId keg = s.keg("K05", s.place("Cold box", 4.0));
  s.prepare(keg, day(-1));
  s.fill(keg, s.batch("Amber", 2.4, 2.6, 20), day(0), 18.6, 4);
  s.gas(keg, day(0, 1), 12);
  const CellarStatus status = s.cellar(day(3));
  const auto ahead =
      Replay(s.journal, s.calendar)
          .carbonation_curve(keg, day(3), day(3), after(day(3), report::drift_horizon()));
  ASSERT_GT(ahead.sources.size(), 5U);
  EXPECT_EQ(ahead.sources.front().at, ahead.points.front().at);
  EXPECT_EQ(ahead.sources.back().at, ahead.points.back().at);
  const report::Speaker speaker{
      {units::DisplayUnits::us(), {}}, &s.calendar, report::RegionalWords::us, day(3)};
  const auto c = report::drift_card({status, *status.find(keg), speaker}, ahead);
  ASSERT_TRUE(c);
  EXPECT_THAT(present(status.find(keg)->co2.now).largest()->source.name,
              HasSubstr("carbonation rate"));
  EXPECT_THAT(present(c).figures[2].name, StartsWith("In 30 days"));
  EXPECT_THAT(present(c).figures[2].grounds.narrow.at(0), Not(HasSubstr("carbonation rate")));
}

TEST_F(KegDrift, InsideAllAlongSaysSo) {
  for (auto& p : ahead_.points) {
    p.likely = units::volumes_of_co2(2.5);
    p.low = units::volumes_of_co2(2.45);
    p.high = units::volumes_of_co2(2.55);
  }
  const auto c = card();
  ASSERT_TRUE(c);
  EXPECT_EQ(present(c).figures.back().value, "not in 30 days");
}

}  // namespace
}  // namespace ullage::testing
