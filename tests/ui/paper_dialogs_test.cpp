// SPDX-License-Identifier: GPL-3.0-or-later
//
// The previews of logs and tags, and the import of a keg list, as a person uses
// them.
#include <gmock/gmock.h>

#include <QCheckBox>
#include <QComboBox>
#include <QDate>
#include <QDateEdit>
#include <QFile>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>

#include "core/cellar/presets.h"
#include "core/report/csv_reader.h"
#include "core/units/present.h"
#include "tests/support/accessibility.h"
#include "tests/support/fake_facade.h"
#include "tests/support/fake_surroundings.h"
#include "tests/support/own_preferences.h"
#include "tests/support/sample_status.h"
#include "ui/dialogs/import_kegs.h"
#include "ui/dialogs/log_preview.h"
#include "ui/dialogs/papers.h"
#include "ui/dialogs/scan_offer.h"
#include "ui/dialogs/tag_preview.h"

namespace ullage::testing {
namespace {

struct PaperDialogs : ::testing::Test {
  FakeFacade cellar{sample_cellar_of(12)};
  OwnPreferences own;
  QueuedPrompts prompts;
  RecordingNavigator navigator;
  ui::Context context{cellar, own.preferences, prompts, navigator};
  QTemporaryDir folder;

  [[nodiscard]] QString file(const char* name, const QByteArray& bytes) const {
    const QString path = folder.filePath(QLatin1String(name));
    QFile out(path);
    EXPECT_TRUE(out.open(QIODevice::WriteOnly));
    out.write(bytes);
    return path;
  }
};

TEST_F(PaperDialogs, EveryLogHasPagesAndSavesAsPdf) {
  using enum report::LogBook;
  for (const report::LogBook which :
       {line_cleaning, temperature, gas, wastage, report::LogBook::round, custody, kegs, lines,
        rules, batches, recall, due, all}) {
    ui::LogPreview preview(context, which);
    preview.show();
    EXPECT_GE(preview.pages().count(), 1);
    const QString path = folder.filePath(QStringLiteral("log.pdf"));
    EXPECT_TRUE(preview.save_pdf(path));
    EXPECT_TRUE(QFile::exists(path));
    QFile::remove(path);
  }
}

auto csv_in(const QString& path) {
  QFile in(path);
  EXPECT_TRUE(in.open(QIODevice::ReadOnly));
  const QByteArray bytes = in.readAll();
  return report::read_csv({bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

TEST_F(PaperDialogs, ATableSavesAsCsvThatReadsBack) {
  ui::LogPreview preview(context, report::LogBook::kegs);
  const QString path = folder.filePath(QStringLiteral("kegs.csv"));
  ASSERT_TRUE(preview.save_csv(path));
  const auto read = csv_in(path);
  ASSERT_TRUE(read);
  EXPECT_EQ(read->lines.size(), preview.sheet().rows.size());
  EXPECT_FALSE(preview.save_csv(folder.filePath(QStringLiteral("no/such/place.csv"))));
}

TEST_F(PaperDialogs, LinesRulesAndBatchesSaveAsCsvToo) {
  cellar::CellarStatus status = *cellar.status();
  cellar::LineStatus line;
  line.record.name = "Line, one";
  status.lines.push_back(line);
  status.rules.emplace_back();
  status.batches.emplace_back();
  cellar.show(status);
  using enum report::LogBook;
  for (const auto& [which, first] :
       {std::pair(lines, "tap"), std::pair(rules, "for"), std::pair(batches, "beer")}) {
    ui::LogPreview preview(context, which);
    preview.show();
    EXPECT_TRUE(preview.findChild<QPushButton*>(QStringLiteral("save_csv"))->isVisible());
    const QString path = folder.filePath(QStringLiteral("table.csv"));
    ASSERT_TRUE(preview.save_csv(path));
    const auto read = csv_in(path);
    ASSERT_TRUE(read) << first;
    EXPECT_EQ(read->header.fields.at(0), first);
    EXPECT_EQ(read->lines.size(), 1U);
  }
}

TEST_F(PaperDialogs, WhatTheCellarOwnsIsChosenInOnePreviewAndSavedAsCsv) {
  using enum report::LogBook;
  ui::LogPreview preview(context, bottles);
  auto* list = preview.findChild<QComboBox*>(QStringLiteral("list"));
  ASSERT_NE(list, nullptr);
  const std::vector<std::pair<report::LogBook, std::string>> lists = {
      {bottles, "bottle"},
      {regulators, "regulator"},
      {report::LogBook::places, "place"},
      {instruments, "instrument"},
      {hose, "tap"},
      {beers, "beer"}};
  ASSERT_EQ(list->count(), static_cast<int>(lists.size()));
  for (std::size_t i = 0; i < lists.size(); ++i) {
    list->setCurrentIndex(static_cast<int>(i));
    EXPECT_EQ(preview.windowTitle(), ui::title_of(lists[i].first));
    const QString path = folder.filePath(QStringLiteral("list.csv"));
    ASSERT_TRUE(preview.save_csv(path));
    QFile saved(path);
    ASSERT_TRUE(saved.open(QIODevice::ReadOnly));
    EXPECT_TRUE(saved.readLine().startsWith(QByteArray::fromStdString(lists[i].second + ",")));
  }
}

TEST_F(PaperDialogs, WhatIsDueSavesAsCsvUpToTheDayChosen) {
  cellar::CellarStatus status = *cellar.status();
  cellar::BottleStatus bottle;
  bottle.record.bottle = numbered<cellar::BottleId>(71);
  bottle.record.name = "Bottle, old";
  bottle.test_due = cellar.calendar().date_of(status.now) - std::chrono::days(1);
  status.bottles.push_back(bottle);
  cellar.show(status);
  ui::LogPreview preview(context, report::LogBook::due);
  ASSERT_FALSE(preview.sheet().rows.empty());
  const QString path = folder.filePath(QStringLiteral("due.csv"));
  ASSERT_TRUE(preview.save_csv(path));
  const auto read = csv_in(path);
  ASSERT_TRUE(read);
  EXPECT_EQ(read->header.fields.at(0), "due");
  EXPECT_EQ(read->lines.size(), preview.sheet().rows.size());
  // A day before everything: nothing is due by then.
  preview.findChild<QDateEdit*>()->setDate(QDate(2000, 1, 1));
  EXPECT_TRUE(preview.sheet().rows.empty());
}

TEST_F(PaperDialogs, APeriodTypedTheWrongWayRoundIsTheTimeBetween) {
  ui::LogPreview preview(context, report::LogBook::temperature);
  preview.set_period(QDate(2026, 11, 24), QDate(2026, 11, 2));
  EXPECT_EQ(preview.sheet().period, "2026-11-02 to 2026-11-24");
}

TEST_F(PaperDialogs, TagsFollowTheChoices) {
  const ui::TagPreview preview(context, ui::TagKind::kegs);
  const int with_backs = preview.pages().count();
  preview.findChild<QCheckBox*>()->setChecked(false);
  EXPECT_EQ(preview.pages().count() * 2, with_backs);
  preview.findChild<QComboBox*>(QStringLiteral("which"))->setCurrentIndex(1);
  EXPECT_EQ(preview.pages().count(), 1);
  preview.findChild<QComboBox*>(QStringLiteral("size"))->setCurrentIndex(1);
  EXPECT_NEAR(preview.pages().layout().pageSize().size(QPageSize::Millimeter).width(), 105, 0.5);
}

TEST_F(PaperDialogs, AListIsShownThenLoggedAsOneAct) {
  const QString path = file("kegs.csv", "Number,Kind\nN01,ball_lock_19\nN02,keg_50\n");
  ui::ImportKegs dialog(context, path);
  dialog.show();
  EXPECT_EQ(dialog.kegs(), 2U);
  EXPECT_EQ(dialog.findChild<QTableWidget*>()->rowCount(), 2);
  EXPECT_TRUE(dialog.findChild<QPushButton*>(QStringLiteral("import"))->isEnabled());
  ASSERT_TRUE(dialog.log());
  ASSERT_EQ(cellar.logged().size(), 1U);
  ASSERT_EQ(cellar.logged().front().drafts.size(), 2U);
  const auto& first = get<cellar::KegRecord>(cellar.logged().front().drafts[0].payload);
  const auto& second = get<cellar::KegRecord>(cellar.logged().front().drafts[1].payload);
  EXPECT_EQ(first.tag, "N01");
  EXPECT_NE(first.keg, second.keg);
}

// What would be registered is seen before it is: where, how much to the brim, how heavy;
// and which of it the file says.
TEST_F(PaperDialogs, AListShowsPlaceAndFullVolumeAndWhatWasAssumed) {
  cellar::CellarStatus status = *cellar.status();
  cellar::PlaceStatus room;
  room.record = present(status.kegs.front().place);
  status.places.push_back(room);
  cellar.show(status);
  const std::string place = room.record.name;
  const QString path = file(
      "kegs.csv", QByteArray("Number,Kind,Place,Full volume (l),Tare (kg)\nN01,ball_lock_19,") +
                      QByteArray::fromStdString(place) + ",19.4,4.1\nN02,ball_lock_19,,,\n");
  const ui::ImportKegs dialog(context, path);
  ASSERT_EQ(dialog.kegs(), 2U) << dialog.faults().join(' ').toStdString();
  const auto* table = dialog.findChild<QTableWidget*>();
  const auto cell = [&](int row, const QString& name) {
    for (int column = 0; column < table->columnCount(); ++column) {
      if (table->horizontalHeaderItem(column)->text() == name)
        return table->item(row, column)->text();
    }
    return QStringLiteral("no column ") + name;
  };
  EXPECT_EQ(cell(0, QStringLiteral("Place")), ui::q(place));
  EXPECT_EQ(cell(1, QStringLiteral("Place")), QString());
  const cellar::KegRecord usual = cellar::keg_from_preset(cellar::KegKind::ball_lock_19);
  ASSERT_TRUE(usual.tare_half_width);
  for (const char* name : {"Full volume", "Empty"}) {
    EXPECT_FALSE(cell(0, QLatin1String(name)).contains(QStringLiteral("assumed"))) << name;
    EXPECT_TRUE(cell(1, QLatin1String(name)).startsWith(QLatin1Char('~'))) << name;
    EXPECT_TRUE(cell(1, QLatin1String(name)).contains(QStringLiteral("±"))) << name;
    EXPECT_TRUE(cell(1, QLatin1String(name)).endsWith(QStringLiteral(", assumed"))) << name;
  }
}

TEST_F(PaperDialogs, AnotherColumnCanBeChosen) {
  const QString path = file("kegs.csv", "Fass,Kind\nN01,ball_lock_19\n");
  const ui::ImportKegs dialog(context, path);
  EXPECT_FALSE(dialog.findChild<QPushButton*>(QStringLiteral("import"))->isEnabled());
  dialog.findChild<QComboBox*>(QStringLiteral("column_0"))->setCurrentIndex(1);
  EXPECT_TRUE(dialog.findChild<QPushButton*>(QStringLiteral("import"))->isEnabled());
  EXPECT_EQ(dialog.kegs(), 1U);
}

TEST_F(PaperDialogs, AHostileFileIsRefusedWithItsLineAndNothingIsWritten) {
  const std::string huge(report::csv_most_bytes + 10, 'x');
  const std::vector<std::pair<QByteArray, QString>> hostile = {
      {QByteArray(), QStringLiteral("no lines")},
      {QByteArray("tag,kind\nN01,\"ball_lock"), QStringLiteral("line 2")},
      {QByteArray("tag,kind\nN01,ball_lock_19\nN\xE4,keg_50\n"), QStringLiteral("Line 3")},
      {QByteArray("tag,kind\nN01,ball_lock_19\nN01,keg_50\n"), QStringLiteral("Line 3")},
      {QByteArray("tag,tare_kg,kind\nN01,heavy,keg_50\n"), QStringLiteral("Line 2")},
      {QByteArray("tag,kind\nN01,ball_lock_19,more\n"), QStringLiteral("Line 2")},
      {QByteArray("PK\x03\x04 a zip file\n"), QStringLiteral("control character")},
      {QByteArray::fromStdString(huge), QStringLiteral("larger")}};
  for (const auto& [bytes, says] : hostile) {
    ui::ImportKegs dialog(context, file("bad.csv", bytes));
    EXPECT_FALSE(dialog.findChild<QPushButton*>(QStringLiteral("import"))->isEnabled());
    EXPECT_TRUE(dialog.faults().join(QLatin1Char(' ')).contains(says))
        << dialog.faults().join(QLatin1Char(' ')).toStdString();
    EXPECT_FALSE(dialog.log());
  }
  EXPECT_TRUE(cellar.logged().empty());
  const ui::ImportKegs absent(context, folder.filePath(QStringLiteral("absent.csv")));
  EXPECT_FALSE(absent.faults().isEmpty());
}

TEST_F(PaperDialogs, TheCalendarIsWrittenOrSaidNotToBe) {
  const QString path = folder.filePath(QStringLiteral("cellar.ics"));
  EXPECT_TRUE(ui::save_calendar(context, path));
  QFile in(path);
  ASSERT_TRUE(in.open(QIODevice::ReadOnly));
  EXPECT_TRUE(in.readAll().startsWith("BEGIN:VCALENDAR\r\n"));
  EXPECT_FALSE(ui::save_calendar(context, folder.filePath(QStringLiteral("no/such/place.ics"))));
  EXPECT_TRUE(navigator.announced.back().contains(QStringLiteral("no/such/place.ics")));
}

// On the smallest screen there may be, 1024 by 640 without its frame and title bar.
void expect_usable(QWidget& window, const std::string& what) {
  window.resize(1016, 600);
  window.show();
  QTest::qWait(20);
  EXPECT_LE(window.width(), 1016) << what;
  EXPECT_LE(window.height(), 600) << what;
  for (const auto& faults : {unnamed_controls(window), tab_order_faults(window),
                             contrast_faults(window), clipped_texts(window)}) {
    for (const std::string& fault : faults) ADD_FAILURE() << what << ": " << fault;
  }
}

TEST_F(PaperDialogs, AreUsableByKeyboardAndScreenReader) {
  ui::LogPreview log(context, report::LogBook::line_cleaning);
  expect_usable(log, "log");
  ui::LogPreview recall(context, report::LogBook::recall);
  expect_usable(recall, "recall");
  ui::TagPreview tags(context, ui::TagKind::kegs);
  expect_usable(tags, "tags");
  ui::ImportKegs good(context, file("good.csv", "Number,Kind\nN01,ball_lock_19\n"));
  expect_usable(good, "import");
  ui::ImportKegs bad(context, file("bad.csv", "Number,Kind\nN01,what\n"));
  expect_usable(bad, "refused import");
  ui::ScanOffer offer(context);
  offer.show_keg(cellar.status()->kegs.front().record.keg);
  expect_usable(offer, "scan");
}

}  // namespace
}  // namespace ullage::testing
