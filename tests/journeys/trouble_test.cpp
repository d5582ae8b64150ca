// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a person does when something went wrong with the file, through the real
// windows: a damaged page, a backup put back, a file found damaged while in use.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QRegularExpression>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <algorithm>

#include "app/demo_cellar.h"
#include "app/desk.h"
#include "app/surroundings.h"
#include "core/cellar/presets.h"
#include "core/store/backups.h"
#include "tests/support/ahead_clock.h"
#include "tests/support/typist.h"
#include "ui/dialogs/box_prompts.h"

namespace ullage {
namespace {

constexpr qint64 page_size = 4096;

class Trouble : public ::testing::Test {
 protected:
  [[nodiscard]] QString path(const char* name) const {
    return folder_.filePath(QString::fromLatin1(name));
  }
  [[nodiscard]] std::filesystem::path file() const { return path("home.cellar").toStdString(); }
  // A cellar with a story, closed again so that everything is in the one file.
  void make_cellar() {
    auto made = app::make_demo(file(), {clock_, ids_});
    ASSERT_TRUE(made);
    entries_ = (*made)->journal().entries().size();
  }
  // Overwrites the page that holds the words: the table of one kind, with one row.
  void damage(const char* marker) {
    QFile raw(QString::fromStdString(file().string()));
    ASSERT_TRUE(raw.open(QIODevice::ReadWrite));
    const QByteArray all = raw.readAll();
    const qint64 at = all.lastIndexOf(marker);
    ASSERT_GE(at, 0) << marker;
    ASSERT_TRUE(raw.seek(at / page_size * page_size));
    raw.write(QByteArray(page_size, '\xA5'));
  }
  [[nodiscard]] ui::MainWindow& window() const { return *desk_.windows().front(); }
  // The sentences of the box in front.
  static QString box_words() {
    QStringList words;
    for (QLabel* label : QApplication::activeModalWidget()->findChildren<QLabel*>()) {
      words << label->text();
    }
    return words.join(QLatin1Char('\n'));
  }

  QTemporaryDir folder_;
  app::SystemClock clock_;
  app::RandomIds ids_;
  QSettings settings_{path("settings.ini"), QSettings::IniFormat};
  ui::BoxPrompts prompts_;
  app::Desk desk_{{clock_, ids_, settings_, prompts_, std::chrono::milliseconds(50)}};
  testing::Typist typist_;
  std::size_t entries_ = 0;
};

TEST_F(Trouble, ADamagedFileIsRecoveredAndWhatWasLostIsNamed) {
  make_cellar();
  damage("smells of vinegar");
  QString told;
  typist_.expect("message_box", [this] {
    EXPECT_TRUE(box_words().contains("damaged")) << box_words().toStdString();
    typist_.push("Save what can be read…");
  });
  typist_.expect("QFileDialog", [this] {
    typist_.paste(path("saved.cellar"));
    typist_.key(Qt::Key_Return);
  });
  typist_.expect("message_box", [this, &told] {
    told = box_words();
    typist_.key(Qt::Key_Return);
  });
  EXPECT_TRUE(desk_.open(file()));
  typist_.finish();
  ASSERT_EQ(desk_.windows().size(), 1U);
  const std::size_t saved = desk_.session_of(&window())->journal().entries().size();
  EXPECT_EQ(saved, entries_ - 1);
  EXPECT_TRUE(told.contains(QString::number(saved))) << told.toStdString();
  // What was lost, as a person would ask for it: which entry, of which keg, when, by whom.
  const QRegularExpression lost("Entry \\d+, .*\\d\\d:\\d\\d by MK: Held back – K09");
  EXPECT_TRUE(told.contains(lost)) << told.toStdString();
}

// The program must not end because for a moment it has no window.
TEST_F(Trouble, ABackupIsPutBackFromTheMenu) {
  make_cellar();
  ASSERT_TRUE(desk_.open(file()));  // makes today's backup
  app::CellarSession* session = desk_.session_of(&window());
  const auto kegs = session->status()->kegs.size();
  cellar::KegRecord extra = cellar::keg_from_preset(cellar::KegKind::ball_lock_19);
  extra.keg = session->fresh<cellar::KegId>();
  extra.tag = "K99";
  ASSERT_TRUE(session->log({{{cellar::Payload(extra), session->now(), {}, {}}}, "MK"}));
  EXPECT_EQ(session->status()->kegs.size(), kegs + 1);

  typist_.expect("backups", [this] { typist_.push("restore_backup"); });
  typist_.expect("message_box", [this] {
    EXPECT_TRUE(box_words().contains("kept as")) << box_words().toStdString();
    typist_.key(Qt::Key_Return);
  });
  QTimer::singleShot(0, &desk_, [this] { window().run(ui::Command::backups); });
  QTimer::singleShot(4000, qApp, [] { QApplication::exit(42); });
  EXPECT_EQ(QApplication::exec(), 42);  // ended by us, not by the last window's going
  typist_.finish();
  ASSERT_EQ(desk_.windows().size(), 1U);
  EXPECT_TRUE(window().isVisible());
  EXPECT_EQ(desk_.session_of(&window())->status()->kegs.size(), kegs);
}

TEST_F(Trouble, ABackupIsMadeByHandFromTheMenu) {
  make_cellar();
  ASSERT_TRUE(desk_.open(file()));
  const auto before = store::list_backups(file()).size();
  typist_.expect("message_box", [this] { typist_.key(Qt::Key_Return); });
  window().run(ui::Command::back_up);
  typist_.finish();
  EXPECT_EQ(store::list_backups(file()).size(), before + 1);
}

// A pub's window stays open: the next day has its backup too, and a third look makes no
// second one.
TEST_F(Trouble, ACellarThatStaysOpenIsBackedUpEachDay) {
  make_cellar();
  testing::AheadClock clock;
  app::Desk desk{
      {clock, ids_, settings_, prompts_, std::chrono::hours(1), std::chrono::milliseconds(20)}};
  ASSERT_TRUE(desk.open(file()));
  const auto daily = [this] {
    const auto all = store::list_backups(file());
    return std::count_if(all.begin(), all.end(), [](const store::Backup& b) {
      return b.reason == store::BackupReason::daily;
    });
  };
  EXPECT_EQ(daily(), 1);
  clock.ahead = std::chrono::hours(24);
  EXPECT_TRUE(QTest::qWaitFor([&] { return daily() == 2; }));
  QTest::qWait(100);
  EXPECT_EQ(daily(), 2);
}

// What opening lets pass, the look in the background finds, with the same ways out.
TEST_F(Trouble, DamageFoundInTheBackgroundHasAWayOut) {
  make_cellar();
  ASSERT_TRUE(desk_.open(file()));
  damage("smells of vinegar");
  typist_.expect("message_box", [this] {
    EXPECT_TRUE(box_words().contains("damaged")) << box_words().toStdString();
    typist_.push("Restore a backup…");
  });
  typist_.expect("backups", [this] { typist_.push("restore_backup"); });
  typist_.expect("message_box", [this] { typist_.key(Qt::Key_Return); });
  typist_.finish();
  ASSERT_EQ(desk_.windows().size(), 1U);
  EXPECT_EQ(desk_.session_of(&window())->journal().entries().size(), entries_);
}

TEST_F(Trouble, RecentCellarsAreOfferedInTheMenuWhileTheyAreThere) {
  make_cellar();
  ASSERT_TRUE(desk_.open(file()));
  auto* cellars = window().menuBar()->actions().front()->menu();
  emit cellars->aboutToShow();
  QMenu* recent = nullptr;
  for (QAction* action : cellars->actions()) {
    if (action->menu()) recent = action->menu();
  }
  ASSERT_NE(recent, nullptr);
  ASSERT_EQ(recent->actions().size(), 1);
  EXPECT_TRUE(recent->actions().front()->text().contains("home.cellar"));
  recent->actions().front()->trigger();
  EXPECT_EQ(desk_.windows().size(), 2U);
  while (!desk_.windows().empty()) desk_.close(desk_.windows().front());
  QFile::remove(path("home.cellar"));
  EXPECT_TRUE(app::RecentCellars(settings_).list().isEmpty());
}

}  // namespace
}  // namespace ullage
