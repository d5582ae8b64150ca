// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/backups.h"

#include <algorithm>
#include <set>

#include "core/store/backup_files.h"
#include "core/store/store_impl.h"

namespace ullage::store {

namespace {

constexpr std::size_t kept_days = 7;
constexpr std::size_t kept_weeks = 4;
constexpr std::size_t kept_migrations = 10;

// Weeks begin on Monday; 1970-01-01 was a Thursday.
std::int64_t week_of(cellar::Date day) {
  const std::int64_t monday_based = day.time_since_epoch().count() + 3;
  return monday_based >= 0 ? monday_based / 7 : (monday_based - 6) / 7;
}

}  // namespace

std::vector<Backup> list_backups(const std::filesystem::path& cellar_file) {
  std::vector<Backup> found;
  std::error_code error;
  std::filesystem::directory_iterator at(backup_folder(cellar_file), error);
  while (!error && at != std::filesystem::directory_iterator()) {
    std::error_code about;
    if (at->path().extension() == cellar_file.extension() && at->is_regular_file(about)) {
      if (auto backup = backup_from_name(at->path())) {
        backup->size = at->file_size(about);
        found.push_back(std::move(*backup));
      }
    }
    at.increment(error);
  }
  std::ranges::sort(found, [](const Backup& a, const Backup& b) {
    return std::tie(b.day, b.number, b.reason) < std::tie(a.day, a.number, a.reason);
  });
  return found;
}

std::vector<Backup> beyond_keeping(std::span<const Backup> newest_first) {
  std::vector<Backup> drop;
  std::size_t days = 0;
  std::size_t migrations = 0;
  std::set<std::int64_t> weeks;
  for (const Backup& backup : newest_first) {
    if (backup.reason == BackupReason::daily && ++days > kept_days) {
      const std::int64_t week = week_of(backup.day);
      if (weeks.contains(week) || weeks.size() == kept_weeks) {
        drop.push_back(backup);
      } else {
        weeks.insert(week);
      }
    }
    if (backup.reason == BackupReason::before_migration && ++migrations > kept_migrations) {
      drop.push_back(backup);
    }
  }
  return drop;
}

Expected<std::optional<Backup>> daily_backup(const JournalStore& store, cellar::Date today) {
  if (store.read_only()) return std::nullopt;
  const auto is_todays = [&](const Backup& b) {
    return b.reason == BackupReason::daily && b.day == today;
  };
  if (std::ranges::any_of(list_backups(store.path()), is_todays)) return std::nullopt;
  auto made = back_up(StoreInternals::impl(store).db, BackupReason::daily, today);
  if (!made) return std::unexpected(made.error());
  for (const Backup& old : beyond_keeping(list_backups(store.path()))) {
    std::error_code ignored;  // one that cannot be removed today is tried again tomorrow
    std::filesystem::remove(old.file, ignored);
  }
  return std::optional(std::move(*made));
}

Expected<Backup> backup_by_hand(const JournalStore& store, cellar::Date today) {
  return back_up(StoreInternals::impl(store).db, BackupReason::by_hand, today);
}

}  // namespace ullage::store
