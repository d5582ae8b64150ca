// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every way in which a file can't be opened as usual has its own sentence and a
// way out, through the real boxes by keyboard; and no file is changed by it.
#include <QFile>
#include <QLineEdit>
#include <algorithm>
#include <optional>
#include <set>

#include "core/store/backups.h"
#include "core/store/connection.h"
#include "core/units/present.h"
#include "tests/journeys/desk_journey.h"
#include "tests/store/fault_vfs.h"
#include "ui/notice_strip.h"
#include "ui/widgets/banner.h"

namespace ullage {
namespace {

class TroubleFiles : public DeskJourney {
 protected:
  [[nodiscard]] std::filesystem::path file(const char* name = "home.cellar") const {
    return path(name).toStdString();
  }
  void make_cellar() { ASSERT_TRUE(app::make_demo(file(), {clock_, ids_})); }
  void run_sql(const char* sql) {
    auto db = store::Connection::open(file(), store::ConnectionMode::read_write);
    ASSERT_TRUE(db);
    ASSERT_TRUE(db->run(sql));
  }
  void write(const char* name, const QByteArray& bytes) {
    QFile raw(path(name));
    ASSERT_TRUE(raw.open(QIODevice::WriteOnly));
    raw.write(bytes);
  }
  [[nodiscard]] QByteArray bytes(const char* name) const {
    QFile raw(path(name));
    EXPECT_TRUE(raw.open(QIODevice::ReadOnly));
    return raw.readAll();
  }
  // What the box says when the file is opened; the person gives up.
  QString refusal(const std::filesystem::path& which, const store::OpenOptions& options = {}) {
    QString told;
    typist_.expect("message_box", [this, &told] {
      told = words_in(*QApplication::activeModalWidget());
      EXPECT_FALSE(QApplication::activeModalWidget()->accessibleName().isEmpty());
      typist_.key(Qt::Key_Escape);
    });
    EXPECT_FALSE(desk_.open(which, nullptr, options));
    typist_.finish();
    EXPECT_TRUE(desk_.windows().empty());
    return told;
  }
  static store::OpenOptions standing_on(const store::Surroundings& around) {
    store::OpenOptions options;
    options.surroundings = [around](const std::filesystem::path&) { return around; };
    return options;
  }
  [[nodiscard]] bool read_only_is_said() const {
    for (const auto* banner : window().findChildren<ui::Banner*>()) {
      if (banner->isVisible() && banner->headline() == "Read-only") return true;
    }
    return false;
  }
};

TEST_F(TroubleFiles, EachCauseHasASentenceOfItsOwnAndChangesNothing) {
  std::set<std::string> sentences;
  const auto met = [&](const QString& told, const char* word) {
    EXPECT_TRUE(told.contains(QLatin1String(word))) << told.toStdString();
    EXPECT_TRUE(sentences.insert(told.toStdString()).second) << told.toStdString();
  };
  write("letter.cellar", "Dear cellar, this is no database.");
  const QByteArray letter = bytes("letter.cellar");
  met(refusal(file("letter.cellar")), "letter.cellar");
  EXPECT_EQ(bytes("letter.cellar"), letter);
  met(refusal(file("nowhere.cellar")), "nowhere.cellar");
  ASSERT_TRUE(QDir(folder_.path()).mkdir("folder.cellar"));
  met(refusal(file("folder.cellar")), "folder.cellar");
  make_cellar();
  met(refusal(file(), standing_on({.file_system = "nfs4", .on_network = true})), "network");
  run_sql("PRAGMA journal_mode = DELETE; PRAGMA user_version = 99");
  const QByteArray newer = bytes("home.cellar");
  met(refusal(file()), "later release");
  EXPECT_EQ(bytes("home.cellar"), newer);
  EXPECT_EQ(sentences.size(), 5U);
}

TEST_F(TroubleFiles, AnotherFileCanBeChosenFromTheBox) {
  write("letter.cellar", "Dear cellar");
  make_cellar();
  typist_.expect("message_box", [this] { typist_.push("Choose another file…"); });
  answer_file_dialog(path("home.cellar"));
  EXPECT_TRUE(desk_.open(file("letter.cellar")));
  typist_.finish();
  ASSERT_EQ(desk_.windows().size(), 1U);
  EXPECT_NE(cellar().status()->keg_by_tag("K01"), nullptr);
}

TEST_F(TroubleFiles, AFileOnTheNetworkCanBeReadAndSaysSo) {
  make_cellar();
  typist_.expect("message_box", [this] { typist_.push("Open read-only"); });
  EXPECT_TRUE(
      desk_.open(file(), nullptr, standing_on({.file_system = "nfs4", .on_network = true})));
  typist_.finish();
  ASSERT_EQ(desk_.windows().size(), 1U);
  EXPECT_TRUE(cellar().read_only());
  EXPECT_TRUE(read_only_is_said());
}

TEST_F(TroubleFiles, AReadOnlyMediumIsSaidAndNothingThatWritesIsOffered) {
  make_cellar();
  ASSERT_TRUE(desk_.open(file(), nullptr, standing_on({.medium_read_only = true})));
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window()));
  EXPECT_TRUE(read_only_is_said());
  EXPECT_TRUE(window().notice().contains("medium")) << window().notice().toStdString();
  typist_.chord("Ctrl+G");  // a command that writes is off
  EXPECT_EQ(QApplication::activeModalWidget(), nullptr);
}

TEST_F(TroubleFiles, AFileHeldByAnotherProgramIsTriedAgain) {
  make_cellar();
  auto opened = store::Connection::open(file(), store::ConnectionMode::read_write);
  ASSERT_TRUE(opened);
  std::optional<store::Connection> holder(std::move(*opened));
  ASSERT_TRUE(
      holder->run("PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE; PRAGMA user_version = 1"));
  store::OpenOptions impatient;
  impatient.wait_for_lock = std::chrono::milliseconds(50);
  typist_.expect("message_box", [this, &holder] {
    const QString told = words_in(*QApplication::activeModalWidget());
    EXPECT_TRUE(told.contains("another", Qt::CaseInsensitive) || told.contains("use"))
        << told.toStdString();
    EXPECT_TRUE(holder->run("ROLLBACK"));
    holder.reset();
    typist_.push("Try again");
  });
  EXPECT_TRUE(desk_.open(file(), nullptr, impatient));
  typist_.finish();
  EXPECT_EQ(desk_.windows().size(), 1U);
}

// The disk is full at the moment of logging: the form says so and keeps what was typed,
// the cellar is as before, and once there is room the same form logs it.
TEST_F(TroubleFiles, AFullDiskIsSaidInTheFormAndNothingTypedIsLost) {
  make_cellar();
  store::OpenOptions failing;
  failing.vfs = testing::fault_vfs();
  testing::fault_plan() = {};
  ASSERT_TRUE(desk_.open(file(), nullptr, failing));
  ASSERT_TRUE(QTest::qWaitForWindowActive(&window()));
  desk_.preferences().set_units(units::DisplayUnits::british());
  const std::size_t before = cellar().journal().entries().size();
  task("gas k4", "form_gas_set", [this, before] {
    typist_.fill("pressure_pa", "9.5 psi");
    testing::fault_plan() = {
        .fail_at = 1, .from_then_on = true, .fault = testing::DiskFault::disk_full};
    log_it();
    testing::fault_plan() = {};
    QWidget* form = QApplication::activeModalWidget();
    ASSERT_NE(form, nullptr);
    ASSERT_EQ(form->objectName(), "form_gas_set") << "it closed as if it had been logged";
    EXPECT_TRUE(words_in(*form).contains("disk is full")) << words_in(*form).toStdString();
    const auto* pressure = form->findChild<QWidget*>("pressure_pa")->findChild<QLineEdit*>();
    EXPECT_EQ(pressure->text(), "9.5 psi");
    EXPECT_EQ(cellar().journal().entries().size(), before);
    log_it();
  });
  EXPECT_EQ(cellar().journal().entries().size(), before + 1);
  EXPECT_NEAR(units::in_psi(present(keg("K04").gas.set)), 9.5, 0.001);
}

// What an earlier release wrote is brought up to date as it is opened, after a backup.
TEST_F(TroubleFiles, AFileOfTheFirstReleaseIsOpenedAfterABackup) {
  ASSERT_TRUE(QFile::copy(QStringLiteral(ULLAGE_TESTS_DIR "/store/data/schema_1.ullage"),
                          path("home.cellar")));
  QFile::setPermissions(path("home.cellar"), QFile::ReadOwner | QFile::WriteOwner);
  ASSERT_TRUE(desk_.open(file()));
  ASSERT_EQ(desk_.windows().size(), 1U);
  EXPECT_FALSE(cellar().read_only());
  EXPECT_GE(cellar().journal().entries().size(), 51U);
  const auto backups = store::list_backups(file());
  EXPECT_TRUE(std::any_of(backups.begin(), backups.end(), [](const store::Backup& b) {
    return b.reason == store::BackupReason::before_migration;
  }));
}

TEST_F(TroubleFiles, TwoWindowsOnOneFileSeeEachOther) {
  open_demo_file();
  ui::MainWindow& first = window();
  ASSERT_TRUE(desk_.open(file()));
  ui::MainWindow& second = window();
  ASSERT_NE(&first, &second);
  ASSERT_TRUE(QTest::qWaitForWindowActive(&second));
  task("gas k4", "form_gas_set", [this] {
    typist_.fill("pressure_pa", "9 psi");
    log_it();
  });
  const app::CellarSession& there = *desk_.session_of(&first);
  EXPECT_TRUE(QTest::qWaitFor(
      [&] {
        const cellar::KegStatus* k04 = there.status()->keg_by_tag("K04");
        return k04->gas.set && std::abs(units::in_psi(*k04->gas.set) - 9) < 0.001;
      },
      2000));
  EXPECT_TRUE(first.notice().contains("Another window")) << first.notice().toStdString();
}

}  // namespace
}  // namespace ullage
