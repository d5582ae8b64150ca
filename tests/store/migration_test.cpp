// SPDX-License-Identifier: GPL-3.0-or-later
//
// The frame that brings older files up to date, tried with steps made up here;
// and the frozen file of each released schema.
#include "core/store/migration.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

#include <set>

#include "core/store/backups.h"
#include "core/store/check.h"
#include "core/store/connection.h"
#include "core/store/exchange.h"
#include "tests/store/store_fixture.h"

namespace ullage::testing {
namespace {

using store::BackupReason;
using store::Connection;
using store::ConnectionMode;
using store::MigrationStep;
using store::StoreFault;

// A table made anew with a column more, the way a real step would.
constexpr const char* good_step =
    "CREATE TABLE vented_new (sequence INTEGER PRIMARY KEY REFERENCES entry (sequence), keg BLOB "
    "NOT NULL, to_pressure_pa REAL, slowly INTEGER CHECK (slowly IN (0, 1))) STRICT;"
    "INSERT INTO vented_new SELECT sequence, keg, to_pressure_pa, NULL FROM vented;"
    "DROP TABLE vented;"
    "ALTER TABLE vented_new RENAME TO vented;";

// The version that files are made in here, and those a step and two later.
constexpr int ours = store::schema_version;

class MigrationTest : public StoreTest {
 protected:
  [[nodiscard]] Connection connected() const {
    auto db = Connection::open(file(), ConnectionMode::read_write);
    EXPECT_TRUE(db);
    EXPECT_TRUE(store::set_up_connection(*db));
    return std::move(*db);
  }
  [[nodiscard]] static store::Expected<void> migrate(const Connection& db,
                                                     std::vector<MigrationStep> steps) {
    return store::migrate(db, steps, test_today);
  }
};

TEST_F(MigrationTest, AStepIsTakenAfterABackup) {
  const auto entries = fill(60);
  {
    const Connection db = connected();
    const auto vented = db.number("SELECT count(*) FROM vented").value();
    const auto done = migrate(db, {{ours, good_step}});
    ASSERT_TRUE(done) << why(done);
    EXPECT_EQ(db.number("PRAGMA user_version").value(), ours + 1);
    EXPECT_EQ(db.number("SELECT count(*) FROM vented WHERE slowly IS NULL").value(), vented);
    EXPECT_EQ(db.number("PRAGMA foreign_keys").value(), 1) << "on again";
    EXPECT_EQ(db.text("PRAGMA integrity_check").value(), "ok");
  }
  const auto backups = store::list_backups(file());
  ASSERT_EQ(backups.size(), 1U);
  EXPECT_EQ(backups[0].reason, BackupReason::before_migration);
  auto before = store::JournalStore::open(backups[0].file);
  ASSERT_TRUE(before) << why(before);
  expect_same(before->load().value(), entries);
  const auto opened = store::JournalStore::open(file());
  ASSERT_FALSE(opened);
  EXPECT_EQ(opened.error().fault, StoreFault::newer_version) << "a later release's";
}

TEST_F(MigrationTest, AFailingStepLeavesTheFileAndTheBackup) {
  const auto entries = fill(20);
  const std::vector<std::string> bad_steps = {
      // breaks off half way
      std::string(good_step) + "INSERT INTO no_such_table VALUES (1);",
      // would leave references that lead nowhere
      "CREATE TABLE entry_new AS SELECT * FROM entry WHERE 0; DROP TABLE entry; ALTER TABLE "
      "entry_new RENAME TO entry;",
      // a value the new table's rule refuses
      "CREATE TABLE t (x INTEGER CHECK (x < 0)) STRICT; INSERT INTO t SELECT sequence FROM entry;",
  };
  for (const std::string& bad : bad_steps) {
    const Connection db = connected();
    const auto failed = migrate(db, {{ours, bad}});
    ASSERT_FALSE(failed) << bad;
    EXPECT_EQ(failed.error().fault, StoreFault::migration_failed);
    EXPECT_THAT(failed.error().detail,
                ::testing::HasSubstr(fmt::format("step {} to {}", ours, ours + 1)));
    EXPECT_EQ(db.number("PRAGMA user_version").value(), ours);
    EXPECT_EQ(db.number("PRAGMA foreign_keys").value(), 1);
  }
  expect_same(opened().load().value(), entries);
  EXPECT_EQ(store::list_backups(file()).size(), bad_steps.size());
}

TEST_F(MigrationTest, StepsBeforeTheFilesVersionAreLeftOutAndLaterOnesFollow) {
  fill(2);
  const Connection db = connected();
  const auto done = migrate(db, {{ours - 1, "DROP TABLE entry;"},
                                 {ours, good_step},
                                 {ours + 1, "ALTER TABLE vented ADD COLUMN why TEXT;"}});
  ASSERT_TRUE(done) << why(done);
  EXPECT_EQ(db.number("PRAGMA user_version").value(), ours + 2);
  EXPECT_EQ(db.number("SELECT count(*) FROM entry").value(), 2);
  EXPECT_EQ(
      db.number("SELECT count(*) FROM pragma_table_info('vented') WHERE name = 'why'").value(), 1);
}

TEST_F(MigrationTest, WithoutABackupNoStepIsTaken) {
  fill(2);
  write_bytes(folder_ / "home backups", "a file where the folder should be");
  const Connection db = connected();
  const auto failed = migrate(db, {{ours, good_step}});
  ASSERT_FALSE(failed);
  EXPECT_EQ(db.number("PRAGMA user_version").value(), ours);
}

// A backup is looked over as a whole before any step: a file that is not sound is left
// as it is, with its old number.
TEST_F(MigrationTest, ABackupThatDoesNotPassItsCheckStopsEveryStep) {
  fill(20);
  const Connection db = connected();
  ASSERT_TRUE(
      db.run("PRAGMA foreign_keys = OFF; "
             "INSERT INTO subject (uuid, sequence, subject_kind) "
             "VALUES (zeroblob(16), 999, 'keg')"));
  const auto failed = migrate(db, {{ours, good_step}});
  ASSERT_FALSE(failed);
  EXPECT_EQ(failed.error().fault, StoreFault::backup_failed);
  EXPECT_EQ(db.number("PRAGMA user_version").value(), ours);
  EXPECT_EQ(
      db.number("SELECT count(*) FROM pragma_table_info('vented') WHERE name = 'slowly'").value(),
      0);
  EXPECT_TRUE(store::list_backups(file()).empty()) << "what failed its check is no backup";
}

TEST_F(MigrationTest, AReleasedSchemaIsReachedByItsSteps) {
  EXPECT_EQ(std::ssize(store::released_steps()), store::schema_version - 1);
  for (int v = 1; v <= store::schema_version; ++v) EXPECT_FALSE(store::schema_sql(v).empty());
}

// The file as the first release wrote it, never to be written again; what it
// must say stands beside it as exchange text.
TEST_F(MigrationTest, TheFrozenFileOfSchema1SaysWhatItSaid) {
  const std::filesystem::path data = std::filesystem::path(ULLAGE_TESTS_DIR) / "store" / "data";
  std::filesystem::copy_file(data / "schema_1.ullage", file());
  store::OpenOptions options;
  options.migrate_at = store::Moment{test_now, test_today};
  auto store = store::JournalStore::open(file(), options);
  ASSERT_TRUE(store) << why(store);
  const auto entries = store->load();
  ASSERT_TRUE(entries) << why(entries);
  EXPECT_EQ(store::to_exchange(*entries), bytes_of(data / "schema_1.json"));
  EXPECT_EQ(store->file_id(), numbered_uuid(0x11));
  std::set<std::string_view> kinds;
  for (const auto& entry : *entries) kinds.insert(cellar::kind_of(entry.payload));
  EXPECT_GE(kinds.size(), 51U) << "every kind of the first release is in it";
}

// Before it is brought up to date a backup of it is made and looked over; put back, it is
// the old file again, with all that it said.
TEST_F(MigrationTest, TheFrozenFileOfSchema1IsBackedUpBeforeItIsBroughtUpToDate) {
  const std::filesystem::path data = std::filesystem::path(ULLAGE_TESTS_DIR) / "store" / "data";
  std::filesystem::copy_file(data / "schema_1.ullage", file());
  store::OpenOptions options;
  options.migrate_at = store::Moment{test_now, test_today};
  {
    auto store = store::JournalStore::open(file(), options);
    ASSERT_TRUE(store) << why(store);
  }
  const auto sound = store::check_file(file(), store::CheckDepth::full);
  EXPECT_TRUE(sound) << why(sound);
  const auto backups = store::list_backups(file());
  ASSERT_EQ(backups.size(), 1U);
  EXPECT_EQ(backups[0].reason, BackupReason::before_migration);
  EXPECT_EQ(backups[0].day, test_today);
  {
    auto old = Connection::open(backups[0].file, ConnectionMode::read_only);
    ASSERT_TRUE(old);
    EXPECT_EQ(old->number("PRAGMA user_version").value(), 1);
    EXPECT_EQ(old->text("PRAGMA integrity_check").value(), "ok");
  }
  const auto restored = store::restore_from(file(), backups[0].file, test_today);
  ASSERT_TRUE(restored) << why(restored);
  auto again = store::JournalStore::open(file(), options);
  ASSERT_TRUE(again) << why(again);
  EXPECT_EQ(store::to_exchange(again->load().value()), bytes_of(data / "schema_1.json"));
  EXPECT_EQ(store::list_backups(file()).size(), 3U) << "the first, what was put aside, the second";
}

// Brought up to date, it takes what only the later schema knows, and its subjects
// can still be asked after.
TEST_F(MigrationTest, TheFrozenFileOfSchema1TakesEntriesOfEveryKindOnceUpToDate) {
  const std::filesystem::path data = std::filesystem::path(ULLAGE_TESTS_DIR) / "store" / "data";
  std::filesystem::copy_file(data / "schema_1.ullage", file());
  store::OpenOptions options;
  options.migrate_at = store::Moment{test_now, test_today};
  auto store = store::JournalStore::open(file(), options);
  ASSERT_TRUE(store) << why(store);
  const auto before = store->load().value();
  SeededSource source(7);
  std::vector<cellar::Entry> added = PayloadMaker(source).one_of_each();
  ASSERT_TRUE(store->append(added));
  const auto after = store->load().value();
  ASSERT_EQ(after.size(), before.size() + added.size());
  for (std::size_t i = 0; i < before.size(); ++i) EXPECT_TRUE(same(after[i], before[i])) << i;
  for (std::size_t i = 0; i < added.size(); ++i) {
    EXPECT_TRUE(same(after[before.size() + i], added[i])) << i;
  }
  for (const auto& entry : after) {
    for (const auto& about : cellar::subjects_of(entry.payload)) {
      EXPECT_THAT(store->sequences_about(about).value(),
                  ::testing::Contains(entry.header.sequence));
    }
  }
}

// What the first release exported is read whole, though it names no later field.
TEST_F(MigrationTest, AnExportOfSchema1IsStillRead) {
  const std::filesystem::path data = std::filesystem::path(ULLAGE_TESTS_DIR) / "store" / "data";
  auto store = made();
  const auto imported = store::import_from(store, data / "schema_1.json");
  ASSERT_TRUE(imported) << describe(imported.error().problems.front());
  EXPECT_EQ(store::to_exchange(store.load().value()), bytes_of(data / "schema_1.json"));
}

}  // namespace
}  // namespace ullage::testing
