// SPDX-License-Identifier: GPL-3.0-or-later
//
// By keyboard alone: the ways back and out. Corrections, undo, the past, JSON,
// backups, settings, the reasons of a row's numbers.
#include <QPalette>
#include <QProcess>
#include <QRegularExpression>
#include <QScrollArea>
#include <QTableView>

#include "core/store/backups.h"
#include "core/store/exchange.h"
#include "tests/journeys/desk_journey.h"
#include "ui/models/log_table.h"
#include "ui/pages/log_page.h"
#include "ui/widgets/reasons_popup.h"

namespace ullage {
namespace {

class KeyboardWays : public DeskJourney {
 protected:
  // Sets K04's gas, so that it is the newest entry of the log.
  cellar::EntryId set_gas_of_k04(const char* pressure) {
    task("gas k4", "form_gas_set", [this, pressure] {
      typist_.fill("pressure_pa", QString::fromLatin1(pressure));
      log_it();
    });
    return cellar().journal().entries().back().header.id;
  }
  ui::LogPage& log_page() {
    typist_.chord("Ctrl+8");
    auto* page = window().findChild<ui::LogPage*>();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !page->table().searching(); }));
    return *page;
  }
  void newest_in_log() {
    typist_.tab_to("log_table");
    typist_.key(Qt::Key_Home);
  }
  [[nodiscard]] double psi_of_k04() const {
    return units::in_psi(keg("K04").gas.set.value_or(units::gauge_psi(0)));
  }
  static QString pdf_text(const QString& file) {
    QProcess reader;
    reader.start("pdftotext", {"-layout", file, "-"});
    EXPECT_TRUE(reader.waitForFinished());
    return QString::fromUtf8(reader.readAllStandardOutput());
  }
  // In the preview in front: saves the sheet as a PDF and closes it.
  void save_sheet(const QString& file) {
    typist_.expect("sheet_preview", [this, file] {
      answer_file_dialog(file);
      typist_.chord("Alt+S");
      typist_.key(Qt::Key_Escape);
    });
  }
  void register_k77() {
    typist_.expect("register_kegs", [this] {
      typist_.keys("K77");
      log_it();
    });
    typist_.chord("Ctrl+Shift+K");
    typist_.finish();
    ASSERT_NE(cellar().status()->keg_by_tag("K77"), nullptr);
  }
};

TEST_F(KeyboardWays, AnEntryIsCorrectedWithAReasonAndBothStayReadable) {
  open_demo_file();
  const cellar::EntryId wrong = set_gas_of_k04("12 psi");
  ui::LogPage& page = log_page();
  newest_in_log();
  typist_.expect("form_gas_set", [this] {
    typist_.fill("pressure_pa", "10 psi");
    log_it();
    EXPECT_EQ(cellar().journal().entries().back().header.replaces, std::nullopt);  // no reason yet
    typist_.fill("reason_of_correction", "read the wrong dial");
    log_it();
  });
  typist_.push("log_correct");
  typist_.finish();
  EXPECT_NEAR(psi_of_k04(), 10, 0.001);
  EXPECT_EQ(cellar().journal().standing(wrong), cellar::Standing::replaced);
  ASSERT_TRUE(QTest::qWaitFor([&] { return !page.table().searching(); }));
  QString all;
  for (int row = 0; row < std::min(6, page.table().rowCount()); ++row) {
    for (int column = 0; column < page.table().columnCount(); ++column) {
      all += page.table().index(row, column).data().toString() + QLatin1Char('\n');
    }
  }
  EXPECT_TRUE(all.contains("12 psi")) << all.toStdString();
  EXPECT_TRUE(all.contains("10 psi")) << all.toStdString();
  typist_.chord("Ctrl+Z");
  EXPECT_NEAR(psi_of_k04(), 12, 0.001);
  typist_.chord("Ctrl+Shift+Z");
  EXPECT_NEAR(psi_of_k04(), 10, 0.001);
}

TEST_F(KeyboardWays, AStrikeIsItselfUndone) {
  open_demo_file();
  const cellar::EntryId id = set_gas_of_k04("12 psi");
  log_page();
  newest_in_log();
  typist_.expect("message_box", [this] {
    typist_.keys("wrong keg");
    typist_.key(Qt::Key_Return);
  });
  typist_.push("log_strike");
  typist_.finish();
  EXPECT_EQ(cellar().journal().standing(id), cellar::Standing::struck);
  typist_.chord("Ctrl+Z");
  EXPECT_EQ(cellar().journal().standing(id), cellar::Standing::in_force);
  EXPECT_NEAR(psi_of_k04(), 12, 0.001);
}

TEST_F(KeyboardWays, TheSheetAsOfYesterdayDoesNotKnowToday) {
  open_demo_file();
  register_k77();
  log_page();
  const QString then = path("then.pdf");
  typist_.expect("ullage::ui::AsOfDialog", [this] {
    typist_.fill("as_of_time", "yesterday 20:00");
    typist_.key(Qt::Key_Return);
  });
  save_sheet(then);
  typist_.push("as_of");
  typist_.finish();
  const QString now = path("now.pdf");
  save_sheet(now);
  typist_.chord("Ctrl+P");
  typist_.finish();
  EXPECT_TRUE(pdf_text(now).contains("K77"));
  const QString past = pdf_text(then);
  EXPECT_TRUE(past.contains("K01"));
  EXPECT_TRUE(past.contains("As of")) << past.left(400).toStdString();
  EXPECT_FALSE(past.contains("K77"));
}

TEST_F(KeyboardWays, TheCellarGoesOutAsJsonAndComesBackTheSame) {
  open_demo_file();
  const std::string before = store::to_exchange(cellar().file().load().value());
  const QString json = path("out.json");
  answer_file_dialog(json);
  answer_box();
  menu("Alt+C", "e");
  typist_.finish();
  ASSERT_TRUE(QFile::exists(json));

  answer_file_dialog(json);
  answer_file_dialog(path("again.cellar"));
  menu("Alt+C", "i");
  typist_.finish();
  ASSERT_EQ(desk_.windows().size(), 2U);
  EXPECT_TRUE(QFile::exists(path("again.cellar")));
  EXPECT_EQ(store::to_exchange(cellar().file().load().value()), before);
}

TEST_F(KeyboardWays, AnImportThatFailsSaysWhereAndLeavesNothingBehind) {
  open_demo_file();
  // The first half of an export.
  const QByteArray whole(store::to_exchange(cellar().file().load().value()).c_str());
  QFile broken(path("broken.json"));
  ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
  broken.write(whole.left(whole.size() / 2));
  broken.close();
  answer_file_dialog(broken.fileName());
  answer_file_dialog(path("again.cellar"));
  QString told;
  answer_box(&told);
  menu("Alt+C", "i");
  typist_.finish();
  EXPECT_TRUE(told.contains("Nothing was imported")) << told.toStdString();
  const auto line = QRegularExpression("Line (\\d+)").match(told);
  EXPECT_EQ(line.captured(1).toInt(), whole.left(whole.size() / 2).count('\n') + 1)
      << told.toStdString();
  EXPECT_FALSE(QFile::exists(path("again.cellar")));
  EXPECT_EQ(desk_.windows().size(), 1U);
}

TEST_F(KeyboardWays, ABackupIsMadeAndPutBackByTheMenu) {
  open_demo_file();
  QString told;
  answer_box(&told);
  menu("Alt+C", "b");
  typist_.finish();
  EXPECT_TRUE(told.contains("backed up")) << told.toStdString();
  register_k77();
  typist_.expect("backups", [this] { typist_.push("restore_backup"); });
  answer_box(&told);
  menu("Alt+C", "r");
  typist_.finish();
  EXPECT_TRUE(told.contains("kept as")) << told.toStdString();  // what the file was before
  ASSERT_EQ(desk_.windows().size(), 1U);
  EXPECT_EQ(cellar().status()->keg_by_tag("K77"), nullptr);
  EXPECT_NE(cellar().status()->keg_by_tag("K01"), nullptr);
}

TEST_F(KeyboardWays, SettingsOfUnitsWordsAndLooks) {
  open_demo_file();
  const std::string stored = store::to_exchange(cellar().file().load().value());
  typist_.expect("settings", [this] {
    typist_.push("preset_metric");
    typist_.choose("unit_pressure", "kPa");
    typist_.choose("regional_words", "faucet, foam");
    typist_.choose("theme", "Dark");
    typist_.key(Qt::Key_Escape);
  });
  menu("Alt+E", "s");
  typist_.finish();
  EXPECT_EQ(desk_.preferences().units().pressure, units::PressureUnit::kilopascal);
  EXPECT_EQ(desk_.preferences().words(), report::RegionalWords::us);
  EXPECT_LT(window().palette().color(QPalette::Window).lightness(), 80);
  typist_.expect("form_gas_set", [this] {
    typist_.fill("pressure_pa", "80");
    EXPECT_TRUE(words_in(*QApplication::activeModalWidget()).contains("kPa"));
    typist_.key(Qt::Key_Escape);
  });
  typist_.expect("message_box", [this] { typist_.push("Leave"); });
  typist_.chord("Ctrl+G");
  typist_.finish();
  EXPECT_EQ(store::to_exchange(cellar().file().load().value()), stored);
}

TEST_F(KeyboardWays, ABeerThatIsMissingIsRegisteredOnTheWay) {
  open_demo_file();
  const auto beers = cellar().status()->beers.size();
  task("batch", "form_batch_record", [this] {
    typist_.expect("form_beer_record", [this] {
      typist_.fill("name", "Winter Stout");
      log_it();
    });
    ASSERT_TRUE(typist_.tab_to("beer"));
    typist_.key(Qt::Key_F4);  // the list; what adds a beer is its last row
    typist_.key(Qt::Key_End);
    typist_.key(Qt::Key_Return);
    typist_.fill("name", "Brew 12");
    log_it();
  });
  const auto status = cellar().status();
  ASSERT_EQ(status->beers.size(), beers + 1);
  const auto called = [](const auto& all, std::string_view name) {
    return std::find_if(all.begin(), all.end(),
                        [&](const auto& each) { return each.name == name; });
  };
  const auto stout = called(status->beers, "Winter Stout");
  const auto made = called(status->batches, "Brew 12");
  ASSERT_NE(stout, status->beers.end());
  ASSERT_NE(made, status->batches.end());
  EXPECT_EQ(made->beer, stout->beer);
}

TEST_F(KeyboardWays, TheReasonsOfARowsNumbersOpenFromTheTable) {
  open_demo_file();
  typist_.chord("Ctrl+1");
  ASSERT_TRUE(typist_.tab_to("keg_table"));
  typist_.key(Qt::Key_Home);
  typist_.key(Qt::Key_Space);
  QWidget* list = QApplication::activePopupWidget();
  ASSERT_NE(list, nullptr);
  EXPECT_EQ(list->objectName(), "row_reasons");
  EXPECT_GE(list->actions().size(), 2);
  EXPECT_TRUE(list->actions().front()->text().contains("Left in it"));
  typist_.key(Qt::Key_Down);  // on to the CO2
  typist_.key(Qt::Key_Return);
  auto* reasons = qobject_cast<ui::ReasonsPopup*>(QApplication::activePopupWidget());
  ASSERT_NE(reasons, nullptr);
  EXPECT_TRUE(words_in(*reasons).contains("CO₂ now"));
  typist_.key(Qt::Key_Escape);
  EXPECT_EQ(QApplication::activePopupWidget(), nullptr);
  EXPECT_EQ(testing::Typist::focus(), window().findChild<QTableView*>("keg_table"));
}

// Opened by key or by a link, a page is begun at its list or the first thing in
// it, not at a button of its head; opened again, where it was left.
TEST_F(KeyboardWays, APageIsBegunAtWhatPeopleComeToItFor) {
  open_demo_file();
  for (const auto& [keys, name] :
       std::initializer_list<std::pair<const char*, const char*>>{{"Ctrl+2", "lines_table"},
                                                                  {"Ctrl+5", "due_list"},
                                                                  {"Ctrl+7", "slate_words"},
                                                                  {"Ctrl+8", "log_table"},
                                                                  {"Ctrl+1", "keg_table"}}) {
    typist_.chord(keys);
    ASSERT_NE(testing::Typist::focus(), nullptr) << keys;
    EXPECT_EQ(testing::Typist::focus()->objectName(), name) << keys;
  }
  for (const char* keys : {"Ctrl+3", "Ctrl+4", "Ctrl+6"}) {
    typist_.chord(keys);
    bool scrolls = false;
    for (const QWidget* at = testing::Typist::focus(); at; at = at->parentWidget()) {
      scrolls = scrolls || qobject_cast<const QScrollArea*>(at) != nullptr;
    }
    EXPECT_TRUE(scrolls) << keys << " begins at " << testing::Typist::spoken().toStdString();
  }
  typist_.chord("Ctrl+2");
  ASSERT_TRUE(typist_.tab_to("add_line"));
  typist_.chord("Ctrl+8");
  typist_.chord("Ctrl+2");
  EXPECT_EQ(testing::Typist::focus()->objectName(), "add_line");
  // The entry that would be struck is seen to be the one.
  log_page();
  typist_.chord("Ctrl+2");
  typist_.chord("Ctrl+8");
  auto* log = window().findChild<QTableView*>("log_table");
  EXPECT_EQ(testing::Typist::focus(), log);
  EXPECT_TRUE(log->selectionModel()->hasSelection());
}

}  // namespace
}  // namespace ullage
