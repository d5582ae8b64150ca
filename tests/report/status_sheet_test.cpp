// SPDX-License-Identifier: GPL-3.0-or-later
//
// What stands on the status sheet, as text against a golden file, and the facts that
// a cellar hand goes by, one by one.
#include "core/report/status_sheet.h"

#include <gmock/gmock.h>

#include "core/cellar/gas_account.h"
#include "core/report/cellar_lists.h"
#include "core/report/tags.h"
#include "core/units/present.h"
#include "tests/report/golden.h"
#include "tests/report/told_book.h"

namespace ullage::testing {
namespace {

using ::testing::Contains;
using ::testing::EndsWith;
using ::testing::HasSubstr;
using ::testing::StartsWith;

// A cell a line, what is under it after a slash.
std::string as_text(const report::StatusSheet& sheet) {
  std::string out = sheet.cellar + "\n" + sheet.printed + "\n";
  for (const report::SheetRow& row : sheet.rows) {
    out += row.needs_attention ? "!\n" : "\n";
    const std::vector<std::string> cells = report::cells(row);
    for (std::size_t i = 0; i < cells.size(); ++i) {
      std::string cell = cells[i];
      for (auto at = cell.find('\n'); at != std::string::npos; at = cell.find('\n', at)) {
        cell.replace(at, 1, " / ");
      }
      out += "  " + sheet.headings.at(i) + ": " + cell + "\n";
    }
  }
  for (const report::SheetBox& box : sheet.boxes) {
    out += "\n" + box.title + "\n";
    for (const std::string& line : box.lines) out += "  " + line + "\n";
  }
  out += "\nTo read\n";
  for (const std::string& reading : sheet.readings) out += "  " + reading + "\n";
  for (const std::string& who : sheet.signatures) out += who + ": ____\n";
  return out + sheet.footnote + "\n";
}

struct SheetOfTheBook : ToldBook {
  [[nodiscard]] report::StatusSheet sheet() const {
    return report::status_sheet(now, speaker, "MK");
  }
  [[nodiscard]] report::SheetRow row(const std::string& tag) const {
    const report::StatusSheet all = sheet();
    const auto at = std::find_if(all.rows.begin(), all.rows.end(),
                                 [&](const report::SheetRow& r) { return r.keg == tag; });
    EXPECT_NE(at, all.rows.end()) << tag;
    return at == all.rows.end() ? report::SheetRow() : *at;
  }
  [[nodiscard]] std::string gas() const { return sheet().boxes.at(1).lines.front(); }
};

TEST_F(SheetOfTheBook, ReadsAsAgreed) { expect_golden("status_sheet.txt", as_text(sheet())); }

// K01 went on tap on day 1, 3 November; it is the 24th. The box, set to 3 °C, was read
// last on day 5 (17 days ago).
TEST_F(SheetOfTheBook, AKegTellsHowLongItIsOnHowWarmItStandsAndUnderWhatGas) {
  const report::SheetRow k01 = row("K01");
  EXPECT_EQ(k01.on_since, "since 3 Nov,\n21 days on");
  EXPECT_EQ(k01.temperature, "set 3 °C\nread 5.5 °C,\n17 d ago");
  EXPECT_EQ(k01.gas, "CO₂ 100 %");
  EXPECT_EQ(row("K02").level_read, "read 32 d ago") << "as it was filled";
  EXPECT_EQ(row("K02").on_since, "") << "not on tap";
  EXPECT_EQ(row("K02").gas, "") << "no gas on it";
  EXPECT_EQ(row("K03").temperature, "set 12 °C\nnot read");
  EXPECT_EQ(row("K04").temperature, "") << "lent: who knows";
}

TEST_F(SheetOfTheBook, PutOnTodayIsNoDay) {
  book.s.log(day(22, 9), Tapped{.keg = book.k02, .line = book.three});
  tell_anew();
  EXPECT_EQ(row("K02").on_since, "since today");
}

// The pressure that holds the CO2 is worked out: sheet, tag and list say how well.
TEST_F(SheetOfTheBook, WhatThePressureShouldBeIsToldAsTheEstimateThatItIs) {
  const KegStatus& keg = *now.keg_by_tag("K01");
  ASSERT_TRUE(keg.gas.should_be_half_width());
  EXPECT_GT(present(keg.gas.should_be_half_width()).value(), 0);
  EXPECT_THAT(row("K01").pressure, HasSubstr("should be ~"));
  EXPECT_THAT(row("K01").pressure, HasSubstr(" ± "));
  std::string on_tag;
  for (const auto& fact : report::keg_tag(keg, journal, now, speaker).facts) {
    if (fact.label == "Set pressure") on_tag = fact.value;
  }
  EXPECT_THAT(on_tag, StartsWith("~"));
  EXPECT_THAT(on_tag, EndsWith(" at 5.5 °C")) << "as read, which it was worked out for";
  EXPECT_THAT(on_tag, HasSubstr(" ± "));
  // A room that nobody has read, only set, is known less well.
  book.s.log(day(22, 14), TemperatureRead{book.box, units::celsius(3), {}, TemperatureOf::liquid});
  tell_anew();
  const KegStatus& read = *now.keg_by_tag("K01");
  book.s.log(day(22, 14.5), Moved{.keg = book.k01, .place = book.cellar_room});
  const CellarStatus then = Replay(book.journal(), book.s.calendar).status(Book::now());
  EXPECT_GT(present(then.keg_by_tag("K01")->gas.should_be_half_width()),
            present(read.gas.should_be_half_width()));
}

TEST_F(SheetOfTheBook, GasTellsHowManyDaysItLasts) {
  EXPECT_THAT(gas(), HasSubstr("days left not known"));
  GasAccount account;
  account.runs_out = Window{day(31, 15), day(34, 15), day(38, 15)};
  now.bottles.front().account = std::make_shared<GasAccount>(account);
  EXPECT_THAT(gas(), HasSubstr("; lasts ~12 days (9 to 16)"));
  account.runs_out->latest.reset();
  account.bottles.resize(2);
  account.name = "Bottle 1 + Bottle 2";
  now.bottles.front().account = std::make_shared<GasAccount>(account);
  EXPECT_THAT(gas(), HasSubstr("; lasts ~12 days (9 or more), Bottle 1 + Bottle 2 together"));
}

TEST_F(SheetOfTheBook, TheListOfKegsHasTheSameForPrograms) {
  const report::TableSheet list = report::keg_list(now, speaker, "");
  const auto fact = [&](const std::string& key) {
    const auto at = std::find(list.keys.begin(), list.keys.end(), key) - list.keys.begin();
    return list.rows.front().data.at(static_cast<std::size_t>(at));  // K01
  };
  EXPECT_EQ(fact("on_since"), report::Datum(std::string("2026-11-03")));
  EXPECT_EQ(fact("days_on"), report::Datum(21.0));
  EXPECT_EQ(fact("place_set_c"), report::Datum(3.0));
  EXPECT_EQ(fact("place_read_c"), report::Datum(5.5));
  EXPECT_EQ(fact("co2_percent"), report::Datum(100.0));
}

}  // namespace
}  // namespace ullage::testing
