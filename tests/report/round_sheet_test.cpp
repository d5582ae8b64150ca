// SPDX-License-Identifier: GPL-3.0-or-later
//
// The round sheet: in walking order, with the stations that the round asks.
#include <gmock/gmock.h>

#include <map>

#include "core/cellar/round.h"
#include "core/report/cellar_lists.h"
#include "tests/report/golden.h"
#include "tests/report/logs_fixture.h"

namespace ullage::testing {
namespace {

using RoundSheet = Logs;

TEST_F(RoundSheet, RoundReadsAsAgreed) {
  expect_golden("round.txt", text_of(report::round_sheet(journal, now, speaker, "MK")));
}

TEST_F(RoundSheet, TheRoundGoesInWalkingOrder) {
  PlaceRecord first;
  for (const PlaceStatus& place : now.places) {
    if (place.record.place == book.cellar_room) first = place.record;
  }
  first.walk_order = 1;
  book.s.log(day(14), first);
  now = Replay(book.journal(), book.s.calendar).status(Book::now());
  const auto sheet = report::round_sheet(journal, now, speaker, "");
  EXPECT_EQ(sheet.rows.front().cells.front(), "Cellar, north");
}

// A place taken out of use heads what was left in it, at the end.
TEST_F(RoundSheet, TheRoundSheetKeepsWhatStandsInAPlaceOutOfUse) {
  PlaceRecord closed{.place = book.box, .name = "Cold box"};
  closed.in_use = false;
  book.s.log(day(22, 14.5), closed);
  tell_anew();
  const auto sheet = report::round_sheet(journal, now, speaker, "");
  std::string heading;
  std::map<std::string, std::string> under;
  for (const report::TableRow& row : sheet.rows) {
    if (row.kind == report::RowKind::heading)
      heading = row.cells.front();
    else
      under[row.cells.front()] = heading;
  }
  EXPECT_EQ(under.at("K01"), "Place out of use: Cold box");
  EXPECT_EQ(under.at("P01"), "Place out of use: Cold box");
  EXPECT_EQ(under.at("Bottle 1"), "Cellar, north");
}

// What is written on the sheet is typed at the same station of the round, in the same
// order; what the round does not ask has a dash.
TEST_F(RoundSheet, TheRoundSheetHasTheStationsOfTheRoundInTheirOrder) {
  auto stations = round_stations(now, journal);
  // An empty or a locked tap has a row with a dash throughout.
  std::erase_if(stations, [](const RoundStation& s) { return s.questions.empty(); });
  const auto sheet = report::round_sheet(journal, now, speaker, "");
  std::vector<std::string> asked;
  std::vector<std::string> to_ask;
  for (const RoundStation& station : stations) {
    const LineStatus* line =
        station.about.kind == SubjectKind::line ? now.find(LineId{station.about.uuid}) : nullptr;
    to_ask.push_back(station.about.kind == SubjectKind::place ? "Temperature"
                     : line != nullptr                        ? "Tap " + line->record.tap
                                                              : station.name);
  }
  EXPECT_THAT(to_ask, ::testing::Contains("Tap 1"));
  std::size_t at = 0;
  for (const report::TableRow& row : sheet.rows) {
    if (row.kind == report::RowKind::heading) continue;
    ASSERT_EQ(row.cells.size(), sheet.columns.size());
    const auto open = std::count(row.cells.begin() + 3, row.cells.end() - 1, std::string());
    if (open == 0) continue;
    asked.push_back(row.cells.front());
    ASSERT_LT(at, stations.size());
    EXPECT_LE(static_cast<std::size_t>(open), stations[at].questions.size()) << row.cells.front();
    ++at;
  }
  EXPECT_EQ(asked, to_ask);
  // A keg with nothing to read is named all the same.
  for (const KegStatus& keg : now.kegs) {
    if (keg.lent_to || !keg.record.in_use) continue;
    EXPECT_THAT(text_of(sheet), ::testing::HasSubstr(keg.record.tag));
  }
}

}  // namespace
}  // namespace ullage::testing
