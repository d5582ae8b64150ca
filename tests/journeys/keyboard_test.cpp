// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whole tasks by keyboard alone, from the first start to the printed sheet: real
// key events through the desk's own windows, with its real boxes.
#include <gmock/gmock.h>

#include <QProcess>
#include <QTableView>

#include "core/store/exchange.h"
#include "core/units/present.h"
#include "tests/journeys/desk_journey.h"
#include "ui/models/log_table.h"
#include "ui/pages/log_page.h"

namespace ullage {
namespace {

class Keyboard : public DeskJourney {
 protected:
  [[nodiscard]] cellar::LineStatus line(std::string_view name) const {
    for (const cellar::LineStatus& each : cellar().status()->lines) {
      if (each.record.name == name) return each;
    }
    ADD_FAILURE() << "no line " << name;
    return {};
  }
  void start_with_new_cellar() {
    typist_.expect(QStringLiteral("first_start"), [this] { typist_.key(Qt::Key_Return); });
    typist_.expect(QStringLiteral("new_cellar"), [this] {
      typist_.keys(QStringLiteral("Back room"));
      typist_.fill(QStringLiteral("cellar_altitude"), QStringLiteral("120 m"));
      typist_.fill(QStringLiteral("cellar_zone"), QStringLiteral("Europe/London"));
      typist_.choose(QStringLiteral("Units"), QStringLiteral("British"));
      typist_.key(Qt::Key_Return);
    });
    typist_.expect(QStringLiteral("QFileDialog"), [this] {
      typist_.paste(path("back room.cellar"));
      typist_.key(Qt::Key_Return);
    });
    ASSERT_TRUE(desk_.start());
    typist_.finish();
    ASSERT_EQ(desk_.windows().size(), 1U);
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window()));
  }
  void start_with_demo() {
    typist_.expect(QStringLiteral("first_start"), [this] { typist_.chord("Alt+D"); });
    ASSERT_TRUE(desk_.start());
    typist_.finish();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window()));
  }
  // The first beer's way to a tap.
  void register_beer_and_batch() {
    task("beer", "form_beer_record", [this] {
      typist_.fill("name", "Tern Bitter");
      typist_.fill("co2_low_g_per_l", "2 vol");
      typist_.fill("co2_high_g_per_l", "2.4 vol");
      log_it();
    });
    ASSERT_EQ(cellar().status()->beers.size(), 1U);
    task("batch", "form_batch_record", [this] {
      typist_.fill("beer", "tern");
      typist_.fill("name", "Brew 7");
      EXPECT_EQ(testing::Typist::spoken(), "Batch number");
      typist_.fill("original_gravity_sg", "1.048");
      typist_.fill("final_gravity_sg", "1.011");
      log_it();
    });
    ASSERT_EQ(cellar().status()->batches.size(), 1U);
  }
  void fill_k03() {
    task("transfer k3", "transfer_form", [this] {
      typist_.fill("transfer_batch", "brew 7");
      typist_.push("Log now: Cleaned");
      typist_.push("Log now: Purged of air");
      typist_.fill("cycles", "5");
      typist_.fill("pressure_pa", "30 psi");
      if (!typist_.tab_to("step_filled")) return;
      typist_.fill("beer_volume_m3", "18 L");
      typist_.fill("temperature_k", "4 C");
      typist_.choose("gas_way", "Set and wait");
      if (!typist_.tab_to("step_gas_set")) return;
      typist_.fill("pressure_pa", "12 psi");
      log_it();
    });
    ASSERT_TRUE(keg("K03").contents);
    EXPECT_EQ(present(keg("K03").contents).beer.name, "Tern Bitter");
    EXPECT_NEAR(units::in_psi(present(keg("K03").gas.set)), 12, 0.01);
  }
  void put_k03_on_line_1() {
    task("line", "form_line_record", [this] {
      typist_.fill("name", "Line 1");
      typist_.fill("tap", "1");
      typist_.fill("length_m", "3 m");
      typist_.fill("bore_m", "4.8 mm");
      log_it();
    });
    typist_.expect("keg_change", [this] {
      typist_.fill("line", "line 1");
      typist_.fill("keg_on", "K03");
      log_it();
    });
    typist_.chord("Ctrl+K");
    typist_.finish();
  }
};

TEST_F(Keyboard, FromTheFirstStartToABeerOnTap) {
  start_with_new_cellar();
  EXPECT_EQ(cellar().status()->cellar->name, "Back room");

  // Stock first: eight kegs at once, then what is in the first two.
  typist_.expect("register_kegs", [this] {
    typist_.keys("K01..K08");
    log_it();
  });
  typist_.chord("Ctrl+Shift+K");
  typist_.finish();
  ASSERT_EQ(cellar().status()->kegs.size(), 8U);

  task("place", "form_place_record", [this] {
    typist_.fill("name", "Cold box");
    typist_.fill("set_temperature_k", "3 C");
    log_it();
  });
  task("regulator", "form_regulator_record", [this] {
    typist_.fill("name", "Main regulator");
    typist_.fill("place", "cold");  // part of the name is enough
    log_it();
  });
  ASSERT_EQ(cellar().status()->regulators.size(), 1U);
  EXPECT_TRUE(cellar().status()->regulators.front().place);

  task("stock", "stock_take", [this] {
    log_it();  // not known is an answer
    typist_.push("skip");
    typist_.key(Qt::Key_Escape);
  });
  EXPECT_EQ(keg("K01").phase, cellar::Phase::unknown);
  EXPECT_EQ(cellar().journal().story(cellar::subject(keg("K01").record.keg)).size(), 2U);

  register_beer_and_batch();
  fill_k03();
  put_k03_on_line_1();
  EXPECT_EQ(keg("K03").phase, cellar::Phase::on_tap);
  EXPECT_EQ(line("Line 1").keg, keg("K03").record.keg);
}

TEST_F(Keyboard, ATaskOfAKegThroughThePalette) {
  start_with_demo();
  task("vent k4", "form_vented", [this] { log_it(); });
  task("gas k4", "form_gas_set", [this] {
    typist_.fill("pressure_pa", "0.8 bar");
    typist_.fill("when", "1 h ago");
    log_it();
  });
  EXPECT_NEAR(units::in_psi(present(keg("K04").gas.set)), 11.603, 0.001);  // 0.8 bar, NIST SP 811
  typist_.chord("Ctrl+Z");
  EXPECT_NE(units::in_psi(keg("K04").gas.set.value_or(units::gauge_psi(0))), 11.603);
  typist_.chord("Ctrl+Shift+Z");
  EXPECT_NEAR(units::in_psi(present(keg("K04").gas.set)), 11.603, 0.001);
}

TEST_F(Keyboard, NonsenseIsRefusedAtItsFieldAndCanBePutRight) {
  start_with_demo();
  task("gas k4", "form_gas_set", [this] {
    typist_.fill("pressure_pa", "30 frogs");
    log_it();
    EXPECT_EQ(testing::Typist::focus()->accessibleName(), "Pressure");  // led back to the field
    typist_.chord("Ctrl+A");
    typist_.keys("12 psi");
    typist_.key(Qt::Key_Return);
  });
  EXPECT_NEAR(units::in_psi(present(keg("K04").gas.set)), 12, 0.001);
}

TEST_F(Keyboard, ALineIsLockedAndOnlyAPassedCheckReleasesIt) {
  start_with_demo();
  typist_.expect("form_line_locked", [this] {
    typist_.fill("line", "line 1");
    typist_.choose("Agent", "Caustic");
    typist_.fill("by", "JB");
    log_it();
  });
  typist_.chord("Ctrl+D");
  typist_.finish();
  ASSERT_TRUE(line("Line 1").lock);
  EXPECT_EQ(present(line("Line 1").lock).by, "JB");

  // From the page of the lines, where it stands.
  typist_.chord("Ctrl+2");
  typist_.expect("form_line_released", [this] {
    typist_.fill("checked_by", "MK");
    log_it();
    EXPECT_TRUE(line("Line 1").lock);  // the check has not passed
    typist_.push("passed");
    log_it();
  });
  typist_.push("Release by a check…, Line 1");
  typist_.finish();
  EXPECT_FALSE(line("Line 1").lock);
}

TEST_F(Keyboard, AnEntryIsStruckInTheLogAndBroughtBack) {
  start_with_demo();
  typist_.chord("Ctrl+8");
  auto* page = window().findChild<ui::LogPage*>();
  ASSERT_NE(page, nullptr);
  typist_.fill("log_words", "K01 filled");
  ASSERT_TRUE(QTest::qWaitFor([&] { return !page->table().searching(); }));
  ASSERT_GE(page->table().rowCount(), 1);
  ASSERT_TRUE(typist_.tab_to("log_table"));
  const cellar::EntryId id = page->table().entry_at(page->table().index(0, 0))->header.id;
  const auto with_reason = [&](const char* reason, const char* button) {
    typist_.expect("message_box", [this, reason] {
      typist_.keys(QString::fromLatin1(reason));
      typist_.key(Qt::Key_Return);
    });
    typist_.tab_to("log_table");
    typist_.key(Qt::Key_Home);
    typist_.push(button);
    typist_.finish();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !page->table().searching(); }));
  };
  with_reason("wrong keg", "log_strike");
  EXPECT_EQ(cellar().journal().standing(id), cellar::Standing::struck);
  with_reason("it was right", "log_restore");
  EXPECT_EQ(cellar().journal().standing(id), cellar::Standing::in_force);
}

TEST_F(Keyboard, TheSettingsSwitchTheUnits) {
  start_with_demo();
  const std::string stored = store::to_exchange(cellar().file().load().value());
  typist_.expect("settings", [this] {
    typist_.push("preset_us");
    typist_.choose("Trade words", "faucet, foam");
    typist_.key(Qt::Key_Escape);
  });
  typist_.chord("Ctrl+,");
  typist_.finish();
  EXPECT_EQ(desk_.preferences().units(), units::DisplayUnits::us());
  EXPECT_EQ(desk_.preferences().words(), report::RegionalWords::us);
  const QString all = words_in(window());
  EXPECT_TRUE(all.contains(QStringLiteral("°F")));
  EXPECT_FALSE(all.contains(QStringLiteral("°C")));
  EXPECT_EQ(store::to_exchange(cellar().file().load().value()), stored);
}

// The sheet is saved from its window and read back by a program not ours.
TEST_F(Keyboard, TheStatusSheetIsSavedAsAPdf) {
  start_with_demo();
  const QString pdf = path("sheet.pdf");
  typist_.expect("sheet_preview", [this, &pdf] {
    typist_.expect("QFileDialog", [this, &pdf] {
      typist_.paste(pdf);
      typist_.key(Qt::Key_Return);
    });
    typist_.chord("Alt+S");
    typist_.key(Qt::Key_Escape);
  });
  typist_.chord("Ctrl+P");
  typist_.finish();
  QProcess reader;
  reader.start("pdftotext", {"-layout", pdf, "-"});
  ASSERT_TRUE(reader.waitForFinished());
  const QString text = QString::fromUtf8(reader.readAllStandardOutput());
  for (const cellar::KegStatus& each : cellar().status()->kegs) {
    if (each.record.in_use) {
      EXPECT_TRUE(text.contains(QString::fromStdString(each.record.tag))) << each.record.tag;
    }
  }
  EXPECT_TRUE(text.contains(QStringLiteral("Tern Bitter")));
}

// The pages, the table and the way back without a mouse.
TEST_F(Keyboard, AKegIsFoundByTypingAndTheTableIsWalkedByArrows) {
  start_with_demo();
  typist_.chord("Ctrl+1");
  ASSERT_TRUE(typist_.tab_to("keg_table"));
  auto* table = qobject_cast<QTableView*>(testing::Typist::focus());
  ASSERT_NE(table, nullptr);
  const int all = table->model()->rowCount();
  typist_.key(Qt::Key_End);
  EXPECT_EQ(table->currentIndex().row(), all - 1);
  typist_.keys("k05");
  EXPECT_EQ(table->model()->rowCount(), 1);
  typist_.key(Qt::Key_Escape);
  EXPECT_EQ(table->model()->rowCount(), all);
  EXPECT_EQ(testing::Typist::focus(), table);
}

}  // namespace
}  // namespace ullage
