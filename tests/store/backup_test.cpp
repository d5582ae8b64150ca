// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <set>

#include "core/store/backup_files.h"
#include "core/store/backups.h"
#include "core/store/connection.h"
#include "core/units/present.h"
#include "tests/store/store_fixture.h"

namespace ullage::testing {
namespace {

using store::Backup;
using store::BackupReason;
using store::StoreFault;

constexpr cellar::Date day(int n) { return test_today + std::chrono::days(n); }

class BackupTest : public StoreTest {
 protected:
  void log_one(std::uint64_t seed) const {
    auto store = opened();
    SeededSource source(seed);
    auto act = PayloadMaker(source).entries(1);
    ASSERT_TRUE(store.append(act));
  }
  [[nodiscard]] std::size_t entries_in(const std::filesystem::path& path) const {
    auto store = store::JournalStore::open(path);
    EXPECT_TRUE(store) << why(store);
    return store->load().value().size();
  }
};

TEST_F(BackupTest, OneADayInAFolderBeside) {
  const auto entries = fill(10);
  auto store = opened();
  const auto made = store::daily_backup(store, day(0));
  ASSERT_TRUE(made) << why(made);
  ASSERT_TRUE(*made);
  EXPECT_EQ((*made)->file, folder_ / "home backups" / "2026-05-27 daily.ullage");
  EXPECT_FALSE(std::filesystem::exists((*made)->file.string() + "-wal")) << "whole in one file";
  const auto again = store::daily_backup(store, day(0));
  ASSERT_TRUE(again);
  EXPECT_FALSE(*again) << "today's is there";
  EXPECT_TRUE(store::daily_backup(store, day(1)).value());
  const auto all = store::list_backups(file());
  ASSERT_EQ(all.size(), 2U);
  EXPECT_EQ(all[0].day, day(1)) << "newest first";
  EXPECT_EQ(all[0].size, std::filesystem::file_size(all[0].file));
  auto copy = store::JournalStore::open(all[1].file);
  ASSERT_TRUE(copy) << why(copy);
  expect_same(copy->load().value(), entries);
}

TEST_F(BackupTest, TakesWhatIsStillInTheLogWhileAnotherWrites) {
  auto writer = made();
  SeededSource source(1);
  PayloadMaker maker(source);
  auto act = maker.entries(3);
  ASSERT_TRUE(writer.append(act));
  auto other = opened();
  ASSERT_TRUE(other.backup_to(file("copy.ullage")));
  EXPECT_EQ(entries_in(file("copy.ullage")), 3U);
  const auto over = other.backup_to(file("copy.ullage"));
  ASSERT_FALSE(over);
  EXPECT_EQ(over.error().fault, StoreFault::already_exists);
}

TEST_F(BackupTest, KeepsSevenDaysFourWeeksTenUpdatesAndAllElse) {
  std::vector<Backup> all;
  for (int n = 99; n >= 0; --n) all.push_back({{}, BackupReason::daily, day(n), 1, 0});
  for (int n = 14; n >= 0; --n) all.push_back({{}, BackupReason::before_migration, day(n), 1, 0});
  for (int n = 30; n >= 0; --n) all.push_back({{}, BackupReason::put_aside, day(n), 1, 0});
  for (int n = 30; n >= 0; --n) all.push_back({{}, BackupReason::by_hand, day(n), 1, 0});
  const auto drop = store::beyond_keeping(all);
  std::set<std::pair<BackupReason, cellar::Date>> dropped;
  for (const Backup& b : drop) dropped.emplace(b.reason, b.day);
  int days = 0;
  int updates = 0;
  std::set<std::int64_t> weeks;
  for (const Backup& b : all) {
    if (dropped.contains({b.reason, b.day})) continue;
    if (b.reason == BackupReason::daily) {
      ++days;
      if (b.day <= day(92)) weeks.insert((b.day.time_since_epoch().count() + 3) / 7);
    }
    if (b.reason == BackupReason::before_migration) ++updates;
  }
  EXPECT_EQ(days, 11);
  EXPECT_EQ(weeks.size(), 4U) << "the older ones stand for a week each";
  EXPECT_EQ(updates, 10);
  for (int n = 93; n <= 99; ++n) {
    EXPECT_FALSE(dropped.contains({BackupReason::daily, day(n)})) << n;
  }
  EXPECT_TRUE(std::ranges::none_of(drop, [](const Backup& b) {
    return b.reason == BackupReason::put_aside || b.reason == BackupReason::by_hand;
  }));
}

TEST_F(BackupTest, RotationRemovesFilesOnlyAfterTheNewOneIsThere) {
  fill(1);
  std::filesystem::create_directories(store::backup_folder(file()));
  for (int n = 0; n < 60; ++n) {
    std::filesystem::copy_file(file(), store::backup_path(file(), BackupReason::daily, day(n), 1));
  }
  write_bytes(store::backup_folder(file()) / "notes.txt", "mine");
  auto store = opened();
  ASSERT_TRUE(store::daily_backup(store, day(60)).value());
  const auto left = store::list_backups(file());
  EXPECT_EQ(left.size(), 11U);
  EXPECT_EQ(left.front().day, day(60));
  EXPECT_TRUE(std::filesystem::exists(store::backup_folder(file()) / "notes.txt"));
}

TEST_F(BackupTest, NamesAreReadAsTheyAreWritten) {
  for (const auto reason : {BackupReason::daily, BackupReason::before_migration,
                            BackupReason::put_aside, BackupReason::by_hand}) {
    for (const int number : {1, 2, 13}) {
      const auto path = store::backup_path(file(), reason, day(3), number);
      const auto read = store::backup_from_name(path);
      ASSERT_TRUE(read) << path;
      EXPECT_EQ(present(read).reason, reason);
      EXPECT_EQ(present(read).day, day(3));
      EXPECT_EQ(present(read).number, number);
    }
  }
  for (const char* name : {"2026-02-30 daily.ullage", "daily.ullage", "2026-05-27 weekly.ullage",
                           "2026-05-27 daily (x).ullage", "2026-05-27daily.ullage"}) {
    EXPECT_FALSE(store::backup_from_name(name)) << name;
  }
}

TEST_F(BackupTest, RestorePutsTheBackupInPlaceAndTheRestAside) {
  fill(4);
  const auto backup = store::backup_by_hand(opened(), day(0));
  ASSERT_TRUE(backup) << why(backup);
  log_one(8);
  ASSERT_EQ(entries_in(file()), 5U);
  const auto restored = store::restore_from(file(), backup->file, day(1));
  ASSERT_TRUE(restored) << why(restored);
  EXPECT_EQ(entries_in(file()), 4U);
  EXPECT_EQ(entries_in(restored->put_aside), 5U) << "nothing is thrown away";
  EXPECT_TRUE(std::filesystem::exists(backup->file));
  log_one(9);
  EXPECT_EQ(entries_in(file()), 5U) << "and can be gone on with";
}

TEST_F(BackupTest, RestoreIsRefusedWhileAWindowIsOpen) {
  fill(4);
  auto window = opened();
  const auto backup = store::backup_by_hand(window, day(0));
  ASSERT_TRUE(backup);
  const auto restored = store::restore_from(file(), backup->file, day(1));
  ASSERT_FALSE(restored);
  EXPECT_EQ(restored.error().fault, StoreFault::locked_by_other);
  EXPECT_EQ(window.load().value().size(), 4U);
}

TEST_F(BackupTest, RestoreWorksForADamagedAndForAMissingCellar) {
  fill(200);
  const auto backup = store::backup_by_hand(opened(), day(0));
  ASSERT_TRUE(backup);
  std::string bytes = bytes_of(file());
  for (std::size_t at = 0; at < bytes.size(); at += 3) bytes[at] = 'x';
  write_bytes(file(), bytes);
  const auto restored = store::restore_from(file(), backup->file, day(1));
  ASSERT_TRUE(restored) << why(restored);
  EXPECT_EQ(entries_in(file()), 200U);
  EXPECT_EQ(bytes_of(restored->put_aside), bytes);

  std::filesystem::remove(file());
  const auto again = store::restore_from(file(), backup->file, day(1));
  ASSERT_TRUE(again) << why(again);
  EXPECT_TRUE(again->put_aside.empty());
  EXPECT_EQ(entries_in(file()), 200U);
}

TEST_F(BackupTest, RestoreRefusesADamagedBackupAndThatOfAnotherCellar) {
  fill(200);
  const auto backup = store::backup_by_hand(opened(), day(0));
  ASSERT_TRUE(backup);
  std::string bytes = bytes_of(backup->file);
  for (std::size_t i = 0; i < 4096; ++i) bytes[std::size_t{4096} * 60 + i] = static_cast<char>(i);
  write_bytes(file("bad.ullage"), bytes);
  const auto before = bytes_of(file());
  const auto bad = store::restore_from(file(), file("bad.ullage"), day(1));
  ASSERT_FALSE(bad);
  EXPECT_EQ(bad.error().fault, StoreFault::damaged);
  EXPECT_EQ(bytes_of(file()), before);

  auto other = store::JournalStore::create(file("other.ullage"), numbered_uuid(99), test_now);
  ASSERT_TRUE(other);
  other->close();
  const auto wrong = store::restore_from(file(), file("other.ullage"), day(1));
  ASSERT_FALSE(wrong);
  EXPECT_EQ(wrong.error().fault, StoreFault::other_cellar);
  EXPECT_EQ(entries_in(file()), 200U);
}

TEST_F(BackupTest, AReadOnlyStoreMakesNoDailyBackup) {
  fill(1);
  store::OpenOptions reading;
  reading.read_only = true;
  auto store = store::JournalStore::open(file(), reading);
  ASSERT_TRUE(store);
  EXPECT_FALSE(store::daily_backup(*store, day(0)).value());
  EXPECT_TRUE(store::list_backups(file()).empty());
}

}  // namespace
}  // namespace ullage::testing
