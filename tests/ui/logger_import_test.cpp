// SPDX-License-Identifier: GPL-3.0-or-later
//
// Importing a logger's file: shown first, logged only when accepted, as one act.
#include "ui/dialogs/logger_import.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include "tests/support/accessibility.h"
#include "tests/support/entry_maker.h"
#include "tests/support/fake_facade.h"
#include "tests/support/fake_surroundings.h"
#include "tests/support/own_preferences.h"
#include "tests/support/sample_status.h"
#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"

namespace ullage::testing {
namespace {

cellar::CellarStatus with_a_place() {
  cellar::CellarStatus status = sample_cellar();
  cellar::PlaceStatus place;
  place.record.place = numbered<cellar::PlaceId>(1);
  place.record.name = "Back room";
  status.places = {place};
  return status;
}

class LoggerImportDialog : public ::testing::Test {
 protected:
  LoggerImportDialog() : facade_(with_a_place()) { ui::dress(ui::light_theme()); }

  QString file(const QByteArray& bytes) {
    const QString path = folder_.filePath(QStringLiteral("probe.csv"));
    QFile f(path);
    EXPECT_TRUE(f.open(QIODevice::WriteOnly));
    f.write(bytes);
    return path;
  }
  QComboBox* choice(ui::LoggerImport& form, const char* name) {
    auto* combo = form.findChild<QComboBox*>(QLatin1String(name));
    EXPECT_NE(combo, nullptr) << name;
    return combo;
  }
  static void pick(QComboBox& combo, int index) {
    combo.setCurrentIndex(index);
    emit combo.activated(index);
  }

  QTemporaryDir folder_;
  FakeFacade facade_;
  OwnPreferences own_;
  QueuedPrompts prompts_;
  RecordingNavigator navigator_;
  ui::Context context_{facade_, own_.preferences, prompts_, navigator_};
};

constexpr const char* german_file =
    "Datum;Uhrzeit;Temp. [°C]\r\n20.11.2026;10:00;4,5\r\n20.11.2026;10:15;7,1\r\n"
    "20.11.2026;10:30;kaputt\r\n20.11.2026;10:45;4,4\r\n";

TEST_F(LoggerImportDialog, ShowsWhatWasFoundAndLogsNothingBeforeItIsAccepted) {
  ui::LoggerImport form(context_, numbered<cellar::PlaceId>(1));
  form.show();
  EXPECT_FALSE(form.findChild<QPushButton*>(QStringLiteral("import"))->isEnabled());
  prompts_.files.emplace_back(file(german_file));
  QTest::mouseClick(form.findChild<QPushButton*>(QStringLiteral("choose_file")), Qt::LeftButton);
  EXPECT_EQ(choice(form, "delimiter")->currentText(), QStringLiteral("Semicolon"));
  EXPECT_EQ(choice(form, "decimal")->currentIndex(), 1);
  EXPECT_EQ(choice(form, "temperature_column")->currentText(), QStringLiteral("Temp. [°C]"));
  EXPECT_TRUE(form.in_words().startsWith(QStringLiteral("3 readings")))
      << form.in_words().toStdString();
  const QString bad = form.findChild<QPlainTextEdit*>(QStringLiteral("bad_lines"))->toPlainText();
  EXPECT_TRUE(bad.startsWith(QStringLiteral("Line 4: no temperature"))) << bad.toStdString();
  EXPECT_TRUE(facade_.logged().empty());

  QTest::mouseClick(form.findChild<QPushButton*>(QStringLiteral("import")), Qt::LeftButton);
  ASSERT_EQ(facade_.logged().size(), 1u);
  const cellar::Act& act = facade_.logged().front();
  ASSERT_EQ(act.drafts.size(), 3u);
  const auto& read = get<cellar::TemperatureRead>(act.drafts[1].payload);
  EXPECT_EQ(read.place, numbered<cellar::PlaceId>(1));
  EXPECT_NEAR(units::in_celsius(read.temperature), 7.1, 1e-9);
  EXPECT_EQ(navigator_.announced.size(), 1);
}

TEST_F(LoggerImportDialog, WhatWasFoundCanBePutRight) {
  ui::LoggerImport form(context_, numbered<cellar::PlaceId>(1));
  form.show();
  form.read_file(file("time;t\n03/04/2026 10:00;40.1\n04/04/2026 10:00;41.0\n"));
  EXPECT_EQ(choice(form, "degrees")->currentIndex(), 1);  // guessed from the values
  EXPECT_EQ(choice(form, "date_order")->currentIndex(), 1);
  pick(*choice(form, "degrees"), 0);
  pick(*choice(form, "date_order"), 2);
  const cellar::Act act = form.act();
  ASSERT_EQ(act.drafts.size(), 2u);
  EXPECT_NEAR(units::in_celsius(get<cellar::TemperatureRead>(act.drafts[0].payload).temperature),
              40.1, 1e-9);
  EXPECT_EQ(act.drafts[0].happened_at,
            cellar::Instant(std::chrono::sys_days(std::chrono::year(2026) / 3 / 4)) + 10h);
}

// A column of mostly dashes is not taken for temperatures by itself.
TEST_F(LoggerImportDialog, WhatWasNotFoundCanBeChosenByHand) {
  ui::LoggerImport form(context_, numbered<cellar::PlaceId>(1));
  form.show();
  form.read_file(
      file("when;box\n2026-11-20 10:00;4.5\n2026-11-20 10:15;-\n2026-11-20 10:30;-\n"
           "2026-11-20 10:45;9.1\n2026-11-20 11:00;-\n"));
  EXPECT_TRUE(form.problem().startsWith(QStringLiteral("No column with temperatures")))
      << form.problem().toStdString();
  QComboBox* temperature = choice(form, "temperature_column");
  ASSERT_TRUE(temperature->isVisible());
  EXPECT_EQ(temperature->currentIndex(), -1);
  ASSERT_EQ(temperature->count(), 2);
  EXPECT_EQ(temperature->itemText(1), QStringLiteral("box"));
  EXPECT_EQ(choice(form, "delimiter")->currentText(), QStringLiteral("Semicolon"));
  pick(*temperature, 1);
  EXPECT_TRUE(form.problem().isEmpty()) << form.problem().toStdString();
  EXPECT_EQ(form.act().drafts.size(), 2u);
  // Not for what is no table.
  form.read_file(file(QByteArray("PK\x03\x04\0\0\0", 7)));
  EXPECT_FALSE(temperature->isVisible());
}

TEST_F(LoggerImportDialog, TheHoursColumnIsShownAndCanBeChosen) {
  ui::LoggerImport form(context_, numbered<cellar::PlaceId>(1));
  form.show();
  form.read_file(file(german_file));
  EXPECT_EQ(choice(form, "clock_column")->currentText(), QStringLiteral("Uhrzeit"));
  form.read_file(
      file("Date;Start;End;Temp °C\n2026-11-20;10:00;10:05;4.5\n2026-11-20;10:15;10:20;7.1\n"));
  EXPECT_EQ(choice(form, "clock_column")->currentText(), QStringLiteral("Start"));
  pick(*choice(form, "clock_column"), 3);
  ASSERT_EQ(form.act().drafts.size(), 2u);
  EXPECT_EQ(form.act().drafts[0].happened_at,
            cellar::Instant(std::chrono::sys_days(std::chrono::year(2026) / 11 / 20)) + 10h + 5min);
  form.read_file(file("time,temp °C\n2026-11-20 10:00,4.5\n2026-11-20 10:15,7.1\n"));
  EXPECT_EQ(choice(form, "clock_column")->currentText(), QStringLiteral("with the date"));
}

TEST_F(LoggerImportDialog, RefusesWhatItCannotReadAndSaysWhy) {
  ui::LoggerImport form(context_, numbered<cellar::PlaceId>(1));
  form.show();
  form.read_file(file(QByteArray("PK\x03\x04\0\0\0", 7)));
  EXPECT_EQ(form.problem(), QStringLiteral("This is not a text file"));
  form.read_file(file("dear friend\nit is cold\n"));
  EXPECT_TRUE(form.problem().startsWith(QStringLiteral("No lines with a date")));
  form.read_file(folder_.filePath(QStringLiteral("nowhere.csv")));
  EXPECT_TRUE(form.problem().contains(QStringLiteral("can’t be opened")));
  EXPECT_FALSE(form.findChild<QPushButton*>(QStringLiteral("import"))->isEnabled());
  EXPECT_FALSE(form.log());
  form.read_file(file(german_file));
  EXPECT_TRUE(form.problem().isEmpty());
}

// Nothing of a hostile file is written; a line that can't be read is told by its number.
TEST_F(LoggerImportDialog, HostileFilesWriteNothing) {
  const QByteArray good = "time,temp °C\n2026-11-20 10:00,4.5\n";
  QByteArray wide("\xFF\xFE", 2);
  for (const char c : good) wide.append(c).append('\0');
  const std::pair<const char*, QByteArray> refused[] = {
      {"empty", QByteArray()},
      {"huge", QByteArray(static_cast<qsizetype>(cellar::logger_file_limit) + 1, 'x')},
      {"no numbers", "time,temp\n2026-11-20 10:00,cold\n2026-11-20 11:00,warm\n"},
      {"cut within its heading", good.left(9)},
      {"UTF-16 cut within its heading", wide.left(19)},
      {"another program's", QByteArray("PK\x03\x04\0\0\0", 7)}};
  ui::LoggerImport form(context_, numbered<cellar::PlaceId>(1));
  form.show();
  for (const auto& [what, bytes] : refused) {
    form.read_file(file(bytes));
    EXPECT_FALSE(form.problem().isEmpty()) << what;
    EXPECT_FALSE(form.findChild<QPushButton*>(QStringLiteral("import"))->isEnabled()) << what;
    EXPECT_FALSE(form.log()) << what;
  }
  EXPECT_TRUE(facade_.logged().empty());
  form.read_file(file(good +
                      "2026-11-20 10:10,7.1\n2026-11-20 10:15,\xC3\x28\n2026-11-20 10:20,4.4\n"
                      "2026-11-20 10:30,hot\n2026-11-20 10:35,9.0\n2026-11-20 10:4"));
  EXPECT_EQ(form.act().drafts.size(), 4u);
  const QString bad = form.findChild<QPlainTextEdit*>(QStringLiteral("bad_lines"))->toPlainText();
  for (const char* line : {"Line 4", "Line 6", "Line 8"}) {
    EXPECT_TRUE(bad.contains(QLatin1String(line))) << line << ": " << bad.toStdString();
  }
  EXPECT_TRUE(facade_.logged().empty()) << "nothing before it is accepted";
}

TEST_F(LoggerImportDialog, WhatIsInTheLogAlreadyIsNotLoggedTwice) {
  ui::LoggerImport form(context_, numbered<cellar::PlaceId>(1));
  form.show();
  form.read_file(file("time,temp °C\n2026-11-20 10:00,4.5\n2026-11-20 10:15,7.1\n"));
  ASSERT_EQ(form.act().drafts.size(), 2u);
  EntryMaker maker;
  for (const cellar::Draft& draft : form.act().drafts) {
    facade_.journal_to_fill().append(maker.make(draft.happened_at, draft.payload));
  }
  // The same file again, and one that goes on from there with a moment told twice.
  form.read_file(file("time,temp °C\n2026-11-20 10:00,4.5\n2026-11-20 10:15,7.1\n"));
  EXPECT_TRUE(form.act().drafts.empty());
  EXPECT_TRUE(form.in_words().contains(QStringLiteral("in the log already")));
  EXPECT_FALSE(form.log());
  form.read_file(
      file("time,temp °C\n2026-11-20 10:15,7.1\n2026-11-20 10:30,9.9\n2026-11-20 10:30,9.9\n"));
  ASSERT_EQ(form.act().drafts.size(), 1u);
  EXPECT_TRUE(form.in_words().contains(QStringLiteral("logged already: 1.")));
}

TEST_F(LoggerImportDialog, ReadingsOfTheFutureAreLeftOutAndSaid) {
  ui::LoggerImport form(context_, numbered<cellar::PlaceId>(1));
  form.show();
  form.read_file(file("time,temp °C\n2026-11-20 10:00,4.5\n2027-11-20 10:00,9.5\n"));
  EXPECT_EQ(form.act().drafts.size(), 1u);
  EXPECT_TRUE(form.in_words().contains(QStringLiteral("in the future")));
}

TEST_F(LoggerImportDialog, WithoutAPlaceItAsksForOne) {
  ui::LoggerImport form(context_, {});
  form.show();
  form.read_file(file(german_file));
  EXPECT_FALSE(form.log());
  EXPECT_TRUE(facade_.logged().empty());
}

TEST_F(LoggerImportDialog, AccessibleInBothThemes) {
  for (const ui::Theme* theme : {&ui::light_theme(), &ui::dark_theme()}) {
    ui::dress(*theme);
    ui::LoggerImport form(context_, numbered<cellar::PlaceId>(1));
    form.read_file(file(german_file));
    form.resize(680, 560);
    form.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&form));
    EXPECT_EQ(unnamed_controls(form), std::vector<std::string>{});
    EXPECT_EQ(tab_order_faults(form), std::vector<std::string>{});
    EXPECT_EQ(contrast_faults(form), std::vector<std::string>{});
    EXPECT_EQ(clipped_texts(form), std::vector<std::string>{});
  }
}

}  // namespace
}  // namespace ullage::testing
