// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the cellar owns as lists, read back from their CSV as another program would.
#include "core/report/register_lists.h"

#include <gmock/gmock.h>

#include "core/cellar/gas_account.h"
#include "core/report/csv_reader.h"
#include "tests/report/told_book.h"

namespace ullage::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::SizeIs;
using ::testing::StartsWith;

struct RegisterLists : ToldBook {
  report::CsvFile table;

  // The list as CSV; its rows fit its headings.
  void take(const report::TableSheet& sheet) {
    const auto read = report::read_csv(report::csv_of(sheet));
    ASSERT_TRUE(read) << sheet.title;
    table = *read;
    ASSERT_EQ(table.lines.size(), sheet.rows.size());
    for (const report::TableRow& row : sheet.rows) {
      EXPECT_EQ(row.cells.size(), sheet.columns.size()) << sheet.title;
      EXPECT_EQ(row.data.size(), sheet.keys.size()) << sheet.title;
    }
  }
  [[nodiscard]] std::string fact(std::size_t row, const std::string& key) const {
    const auto& keys = table.header.fields;
    const auto at = std::find(keys.begin(), keys.end(), key);
    if (at == keys.end()) return "no column " + key;
    return table.lines.at(row).fields.at(static_cast<std::size_t>(at - keys.begin()));
  }
};

TEST_F(RegisterLists, ABottleTellsItsGasItsWeightsAndItsDates) {
  GasAccount account;
  account.runs_out = Window{day(31), day(34), {}};
  now.bottles.front().account = std::make_shared<GasAccount>(account);
  take(report::bottle_list(now, speaker, ""));
  ASSERT_THAT(table.lines, SizeIs(2));
  EXPECT_EQ(fact(0, "bottle"), "Bottle 1");
  EXPECT_EQ(fact(0, "co2_percent"), "100");
  EXPECT_EQ(fact(0, "tare_kg"), "8.2");
  EXPECT_EQ(fact(0, "content_kg"), "6.35");
  EXPECT_THAT(fact(0, "left_kg"), StartsWith("4.")) << "12.4 less 8.2 kg, less what was used";
  EXPECT_THAT(fact(0, "weighed_at"), StartsWith("2026-11-03T18:00"));
  EXPECT_EQ(fact(0, "runs_out"), "2026-12-06");
  EXPECT_EQ(fact(0, "runs_out_latest"), "") << "nobody can tell";
  EXPECT_EQ(fact(0, "retest_due"), "2029-05-01");
  EXPECT_EQ(fact(0, "place"), "Cellar, north");
  EXPECT_EQ(fact(1, "feeds"), "Serving regulator") << "changed over on day 4";
  const auto past = [&] {
    now.bottles.front().test_due = date(0);
    return report::bottle_list(now, speaker, "").rows.front().marked;
  };
  EXPECT_TRUE(past());
}

TEST_F(RegisterLists, ARegulatorTellsWhatItDrawsFromAndWhatItDrives) {
  book.s.log(
      day(22, 10),
      GasSet{.keg = book.k02, .pressure = units::gauge_psi(11), .regulator = book.regulator});
  tell_anew();
  take(report::regulator_list(now, speaker, ""));
  ASSERT_THAT(table.lines, SizeIs(1));
  EXPECT_EQ(fact(0, "regulator"), "Serving regulator");
  EXPECT_EQ(fact(0, "bottle"), "Stout gas");
  EXPECT_EQ(fact(0, "kegs"), "K02: 11 psi");
  EXPECT_EQ(fact(0, "secured"), "") << "nobody said";
}

TEST_F(RegisterLists, APlaceTellsWhatItIsSetToAndWhatWasRead) {
  take(report::place_list(now, speaker, ""));
  ASSERT_THAT(table.lines, SizeIs(2));
  const std::size_t box = fact(0, "place") == "Cold box" ? 0 : 1;
  EXPECT_EQ(fact(box, "set_c"), "3");
  EXPECT_EQ(fact(box, "read_c"), "5.5");
  EXPECT_THAT(fact(box, "read_at"), StartsWith("2026-11-07T08:00"));
  EXPECT_EQ(fact(1 - box, "read_c"), "") << "set, and never read";
}

TEST_F(RegisterLists, AnInstrumentTellsHowFarItMayBeOff) {
  now.instruments.front().checked_on = date(-3);
  now.instruments.front().check_note = "0.3 too high in ice slush";
  take(report::instrument_list(now, speaker, ""));
  ASSERT_THAT(table.lines, SizeIs(1));
  EXPECT_EQ(fact(0, "instrument"), "Probe in water");
  EXPECT_EQ(fact(0, "kind"), "thermometer");
  EXPECT_NE(fact(0, "temperature_bias_k"), "");
  EXPECT_EQ(fact(0, "pressure_bias_kpa"), "");
  EXPECT_EQ(fact(0, "checked_on"), "2026-10-30");
}

// Line 1 of two pieces, line 2 of one hose, of line 3 nothing is known.
TEST_F(RegisterLists, HoseIsToldPieceByPiece) {
  for (const auto& [position, metres] : {std::pair(1, 1.5), std::pair(2, 6.0)}) {
    SegmentRecord piece{.segment = SegmentId{Uuid{{7, static_cast<std::uint8_t>(position)}}},
                        .line = book.one};
    piece.position = position;
    piece.length = units::metres(metres);
    piece.bore = units::metres(0.0047);
    now.segments.push_back(piece);
  }
  now.lines.at(0).record.length = units::metres(3);
  now.lines.at(1).record.length = units::metres(4);
  take(report::hose_list(now, speaker, ""));
  ASSERT_THAT(table.lines, SizeIs(3));
  EXPECT_EQ(fact(0, "length_m"), "1.5");
  EXPECT_EQ(fact(0, "bore_mm"), "4.7");
  EXPECT_EQ(fact(1, "position"), "2");
  EXPECT_EQ(fact(2, "line"), "Line 2");
  EXPECT_EQ(fact(2, "length_m"), "4");
}

TEST_F(RegisterLists, ABeerTellsItsRangeAndItsPrice) {
  take(report::beer_list(now, speaker, ""));
  ASSERT_THAT(table.lines, SizeIs(2));
  const std::size_t bitter = fact(0, "beer") == "Tern Bitter" ? 0 : 1;
  EXPECT_EQ(fact(bitter, "co2_low_vol"), "1.9");
  EXPECT_EQ(fact(bitter, "price_per_litre"), "4.5");
  EXPECT_EQ(fact(bitter, "allergens"), "barley");
  EXPECT_EQ(fact(1 - bitter, "price_per_litre"), "");
}

TEST_F(RegisterLists, WhatIsOutOfUseIsLeftOut) {
  for (auto& bottle : now.bottles) bottle.record.in_use = false;
  for (auto& regulator : now.regulators) regulator.in_use = false;
  for (auto& place : now.places) place.record.in_use = false;
  for (auto& instrument : now.instruments) instrument.in_use = false;
  for (const auto& sheet :
       {report::bottle_list(now, speaker, ""), report::regulator_list(now, speaker, ""),
        report::place_list(now, speaker, ""), report::instrument_list(now, speaker, "")}) {
    EXPECT_TRUE(sheet.rows.empty()) << sheet.title;
    EXPECT_THAT(text_of(sheet), HasSubstr(sheet.when_empty));
  }
}

}  // namespace
}  // namespace ullage::testing
