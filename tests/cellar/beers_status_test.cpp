// SPDX-License-Identifier: GPL-3.0-or-later
//
// Stock by batch, tracing both ways, recall in one act, wastage with its cost,
// custody, hops, the freshness clock.
#include "core/cellar/beers_status.h"

#include <gmock/gmock.h>

#include "core/units/present.h"
#include "tests/cellar/scenario.h"

namespace ullage::testing {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

class BeersStatusTest : public ::testing::Test {
 protected:
  [[nodiscard]] BeersStatus at(Instant now, Instant wasted_since = day(-365)) const {
    const auto cellar = s.cellar(now);
    return beers_status(cellar, s.journal, s.calendar, wasted_since, beers_past(cellar, s.journal));
  }
  [[nodiscard]] static const BatchStatus& of(const BeersStatus& all, BatchId id) {
    for (const BatchStatus& b : all.batches) {
      if (b.record.batch == id) return b;
    }
    throw std::out_of_range("no such batch");
  }
  Scenario s;
  PlaceId cold = s.place("Cold box", 3);
  BatchId rye = s.batch("Red Rye");
  BatchId mild = s.batch("Mild");
};

TEST_F(BeersStatusTest, SaysWhereABatchIsAndHowMuchOfIt) {
  const KegId a = s.keg("K01", cold);
  const KegId b = s.keg("K02", cold);
  s.fill(a, rye, day(0), 18.0);
  s.fill(b, rye, day(0), 17.0);
  const BatchStatus batch = of(at(day(1)), rye);
  ASSERT_THAT(batch.kegs, SizeIs(2));
  EXPECT_EQ(batch.kegs[0].tag, "K01");
  EXPECT_EQ(batch.kegs[0].place, "Cold box");
  ASSERT_TRUE(batch.left);
  EXPECT_NEAR(units::in_litres(present(batch.left).value()), 35.0, 1e-9);
  EXPECT_FALSE(batch.some_cant_tell);
  EXPECT_TRUE(of(at(day(1)), mild).gone());
}

TEST_F(BeersStatusTest, TracesABatchAndAKegBothWays) {
  const KegId a = s.keg("K01", cold);
  const LineId line = s.line("Line 1", "1");
  s.fill(a, rye, day(0));
  s.log(day(3), Tapped{a, line});
  s.log(day(9), Emptied{a});
  s.log(day(10), Cleaned{a, CleaningMethod::caustic, "caustic", {}, {}, {}});
  s.fill(a, mild, day(11));
  const auto of_rye = stints_of(rye, s.journal);
  ASSERT_THAT(of_rye, SizeIs(1));
  EXPECT_EQ(of_rye[0].keg, a);
  EXPECT_EQ(of_rye[0].from, day(0));
  EXPECT_EQ(of_rye[0].to, day(9));
  EXPECT_THAT(of_rye[0].lines, ElementsAre(line));
  const auto of_keg = stints_of(a, s.journal);
  ASSERT_THAT(of_keg, SizeIs(2));
  EXPECT_EQ(of_keg[1].batch, mild);
  EXPECT_TRUE(of_keg[1].still_there());
  EXPECT_EQ(of(at(day(12)), rye).kegs_before, 1U);
}

TEST_F(BeersStatusTest, AStruckFillingLeavesNoTrace) {
  const KegId a = s.keg("K01", cold);
  const EntryId filled = s.fill(a, rye, day(0));
  s.strike(filled);
  EXPECT_THAT(stints_of(rye, s.journal), IsEmpty());
}

TEST_F(BeersStatusTest, ARecallHoldsEveryKegThatStillHasItInOneAct) {
  const KegId a = s.keg("K01", cold);
  const KegId b = s.keg("K02", cold);
  const KegId c = s.keg("K03", cold);
  const KegId other = s.keg("K04", cold);
  s.fill(a, rye, day(0));
  s.fill(b, rye, day(0));
  s.fill(c, rye, day(0));
  s.fill(other, mild, day(0));
  s.log(day(4), Emptied{c});
  s.log(day(4), Quarantined{b, "tastes odd"});
  const Act act = recall_act(rye, "glass found", day(5), "MK", s.cellar(day(5)), s.journal);
  ASSERT_THAT(act.drafts, SizeIs(2));  // K02 is held already, K03 is empty
  EXPECT_EQ(get<BatchRecalled>(act.drafts[0].payload).reason, "glass found");
  EXPECT_EQ(get<Quarantined>(act.drafts[1].payload).keg, a);
  for (const Draft& d : act.drafts) s.log(d.happened_at, d.payload);
  const BatchStatus batch = of(at(day(5, 1)), rye);
  ASSERT_TRUE(batch.recall);
  EXPECT_EQ(present(batch.recall).reason, "glass found");
  for (const BatchInKeg& in : batch.kegs) EXPECT_TRUE(in.held_back) << in.tag;
  EXPECT_FALSE(of(at(day(5, 1)), mild).kegs[0].held_back);
}

TEST_F(BeersStatusTest, CountsWasteByReasonWithWhatItCost) {
  BeerRecord priced;
  priced.beer = s.cellar(day(0)).batches[0].beer;
  for (const BeerRecord& beer : s.cellar(day(0)).beers) {
    if (beer.name == "Red Rye") priced = beer;
  }
  priced.price_minor_per_litre = 600;
  s.log(day(-10), priced);
  const KegId a = s.keg("K01", cold);
  s.fill(a, rye, day(0));
  s.log(day(1), Wasted{a, {}, WasteReason::foam, units::litres(0.5)});
  s.log(day(2), Wasted{a, {}, WasteReason::foam, units::litres(1.0)});
  s.log(day(2), Wasted{{}, mild, WasteReason::spill, units::litres(2.0)});
  s.strike(s.log(day(2), Wasted{a, {}, WasteReason::foam, units::litres(9.0)}));
  s.log(day(-30), Wasted{a, {}, WasteReason::other, units::litres(5.0)});
  const auto wasted = at(day(3), day(-1)).wasted;
  ASSERT_THAT(wasted, SizeIs(2));
  EXPECT_EQ(wasted[0].reason, WasteReason::spill);
  EXPECT_FALSE(wasted[0].cost_minor);
  EXPECT_TRUE(wasted[0].some_without_price);
  EXPECT_EQ(wasted[1].reason, WasteReason::foam);
  EXPECT_EQ(wasted[1].times, 2);
  EXPECT_NEAR(units::in_litres(wasted[1].volume), 1.5, 1e-9);
  EXPECT_EQ(wasted[1].cost_minor, 900);
}

// What ran out of a line when it was cleaned is logged with the cleaning and nowhere
// else; and beer cost what it cost then.
TEST_F(BeersStatusTest, CountsWhatRanOutOfALineAtThePriceOfThatDay) {
  BeerRecord priced;
  for (const BeerRecord& beer : s.cellar(day(0)).beers) {
    if (beer.name == "Red Rye") priced = beer;
  }
  priced.price_minor_per_litre = 600;
  s.log(day(-10), priced);
  const KegId a = s.keg("K01", cold);
  const LineId line = s.line("Line 1", "1");
  s.fill(a, rye, day(0));
  s.log(day(1), Tapped{a, line});
  LineCleaned cleaned;
  cleaned.line = line;
  cleaned.beer_lost = units::litres(0.5);
  s.log(day(2), cleaned);
  cleaned.beer_lost = units::litres(0);
  s.log(day(2, 1), cleaned);
  priced.price_minor_per_litre = 900;
  s.log(day(3), priced);
  s.log(day(4), Wasted{a, {}, WasteReason::foam, units::litres(1.0)});
  const auto wasted = at(day(5), day(-1)).wasted;
  ASSERT_THAT(wasted, SizeIs(2));
  EXPECT_EQ(wasted[0].reason, WasteReason::foam);
  EXPECT_EQ(wasted[0].cost_minor, 900);
  EXPECT_EQ(wasted[1].reason, WasteReason::line_cleaning);
  EXPECT_EQ(wasted[1].times, 1);
  EXPECT_NEAR(units::in_litres(wasted[1].volume), 0.5, 1e-9);
  EXPECT_EQ(wasted[1].cost_minor, 300);
}

TEST_F(BeersStatusTest, KnowsWhoHasWhichKegAndForHowLong) {
  const KegId a = s.keg("K01", cold);
  s.keg("K02", cold);
  s.log(day(0), Lent{a, "The Anchor", 3000, date(5)});
  const auto away = at(day(9)).away;
  ASSERT_THAT(away, SizeIs(1));
  EXPECT_EQ(away[0].lent_to, "The Anchor");
  EXPECT_EQ(away[0].days, 9);
  EXPECT_EQ(away[0].deposit_minor, 3000);
  EXPECT_TRUE(away[0].overdue);
  s.log(day(10), Returned{a});
  EXPECT_THAT(at(day(11)).away, IsEmpty());
}

TEST_F(BeersStatusTest, RemindsOfHopsAtFiveAndTenDaysUntilTheyAreOut) {
  const KegId a = s.keg("K01", cold);
  s.fill(a, rye, day(0));
  s.log(day(0, 1), HopsIn{a, "Goldings", units::grams(40)});
  EXPECT_EQ(at(day(2)).hops.at(0).look_at, day(5, 1));
  EXPECT_EQ(at(day(6)).hops.at(0).look_at, day(10, 1));
  EXPECT_FALSE(at(day(6)).hops.at(0).overdue);
  EXPECT_TRUE(at(day(11)).hops.at(0).overdue);
  s.log(day(12), HopsOut{a});
  EXPECT_THAT(at(day(13)).hops, IsEmpty());
}

TEST_F(BeersStatusTest, TheFreshnessClockGoesByHowColdItStands) {
  const KegId a = s.keg("K01", cold);
  const PlaceId warm = s.place("Cellar", 12);
  const KegId b = s.keg("K02", warm);
  const LineId one = s.line("Line 1", "1");
  const LineId two = s.line("Line 2", "2");
  s.fill(a, rye, day(0), 18.6, 3);
  s.fill(b, rye, day(0), 18.6, 12);
  s.log(day(5), Tapped{a, one});
  s.log(day(5), Tapped{b, two});
  const BatchStatus batch = of(at(day(8)), rye);
  EXPECT_EQ(batch.kegs.at(0).fresh.storage, Storage::cold);
  EXPECT_EQ(batch.kegs.at(0).fresh.since, day(5));
  EXPECT_EQ(present(batch.kegs.at(0).fresh.keeps_until).likely, day(50));  // 45 days
  EXPECT_EQ(batch.kegs.at(1).fresh.storage, Storage::cellar);
  EXPECT_EQ(present(batch.kegs.at(1).fresh.keeps_until).likely, day(12));  // 7 days
}

// The example of docs/physics.md: warm days are not undone by the cold.
TEST_F(BeersStatusTest, TheFreshnessClockCountsEachDayAtTheWarmthOfThatDay) {
  const PlaceId warm = s.place("Cellar", 12);
  const KegId a = s.keg("K01", warm);
  s.fill(a, rye, day(0), 18.6, 12);
  s.log(day(0), Tapped{a, s.line("Line 1", "1")});
  s.log(day(6), Moved{a, cold});
  const auto then = of(at(day(6)), rye).kegs.at(0).fresh;
  EXPECT_NEAR(present(then.used).count(), 6.0 / 7, 1e-6);
  const auto days_left = [](const FreshClock& clock, Instant now) {
    return std::chrono::duration<double, std::ratio<86400>>(clock.keeps_until->likely - now)
        .count();
  };
  EXPECT_GT(days_left(then, day(6)), 5);
  EXPECT_LT(days_left(then, day(6)), 45.0 / 7);
  const auto later = of(at(day(10)), rye).kegs.at(0).fresh;
  EXPECT_EQ(later.storage, Storage::cold);
  EXPECT_EQ(present(later.keeps_until).likely, present(then.keeps_until).likely)
      << "nothing has changed since";
  EXPECT_GT(later.stood.at(Storage::cellar), std::chrono::days(6));
  EXPECT_GT(later.stood.at(Storage::cool), std::chrono::hours(1)) << "on its way";
  const auto in_all = later.stood.at(Storage::cellar) + later.stood.at(Storage::cool) +
                      later.stood.at(Storage::cold);
  EXPECT_NEAR(static_cast<double>(in_all.count()), 10 * 86400.0, 2);
  // And back into the warm: what is left goes seven times as fast.
  s.log(day(10), Moved{a, warm});
  const auto warm_again = of(at(day(10)), rye).kegs.at(0).fresh;
  EXPECT_LT(present(warm_again.keeps_until).likely, present(later.keeps_until).likely);
  EXPECT_GT(present(warm_again.keeps_until).likely, day(10));
}

// A place is known no better than it was read: near the end of a band the range shows it.
TEST_F(BeersStatusTest, TheFreshnessClockHasTheRangeOfItsTemperature) {
  const PlaceId edge = s.place("Cool box", 5);  // as set, ± 2
  const KegId a = s.keg("K01", edge);
  s.fill(a, rye, day(0), 18.6, 5);
  s.log(day(0), Tapped{a, s.line("Line 1", "1")});
  const auto clock = of(at(day(1)), rye).kegs.at(0).fresh;
  EXPECT_EQ(present(clock.keeps_until).likely, day(45));
  EXPECT_EQ(present(clock.keeps_until).latest, day(45));
  EXPECT_LT(present(clock.keeps_until).earliest, day(22));
}

TEST_F(BeersStatusTest, TheFreshnessClockRunsFromTheFirstTappingAndNotBefore) {
  const KegId a = s.keg("K01", cold);
  const KegId b = s.keg("K02", cold);
  const LineId one = s.line("Line 1", "1");
  s.fill(a, rye, day(0), 18.6, 3);
  s.log(day(0, 1), s.receive(b, rye, 3, date(30)));
  s.log(day(5), Tapped{a, one});
  s.log(day(8), Untapped{a});
  const auto kegs = of(at(day(9)), rye).kegs;
  EXPECT_TRUE(kegs.at(0).fresh.tapped) << "taken off again, and open all the same";
  EXPECT_EQ(kegs.at(0).fresh.since, day(5));
  EXPECT_EQ(present(kegs.at(0).fresh.keeps_until).likely, day(50));
  EXPECT_FALSE(kegs.at(1).fresh.tapped);
  EXPECT_FALSE(kegs.at(1).fresh.keeps_until);
  EXPECT_EQ(kegs.at(1).fresh.best_by, date(30));
  s.log(day(10), Tapped{a, one});
  EXPECT_EQ(of(at(day(11)), rye).kegs.at(0).fresh.since, day(5));
}

TEST_F(BeersStatusTest, CountsDownTheCoolingOfAWarmKeg) {
  const KegId a = s.keg("K01", cold);
  s.fill(a, rye, day(0), 18.6, 20);
  const auto cooling = at(day(0, 2)).cooling;
  ASSERT_THAT(cooling, SizeIs(1));
  EXPECT_EQ(cooling[0].keg, a);
  EXPECT_LT(cooling[0].there.earliest, cooling[0].there.likely);
  EXPECT_GT(cooling[0].there.likely, day(0, 2));
  // Practice: a warm keg takes about a day in a refrigerator, well within four.
  EXPECT_LT(cooling[0].there.likely, day(4));
  EXPECT_THAT(at(day(6)).cooling, IsEmpty());
}

}  // namespace
}  // namespace ullage::testing
