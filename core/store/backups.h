// SPDX-License-Identifier: GPL-3.0-or-later
//
// Backups of a cellar, in a folder beside it ("home.ullage" has "home backups").
// Each is a whole cellar file in its own right, checked before it got its name.
// Kept: the newest 7 daily ones, of the older daily ones the newest of each of 4
// weeks, the newest 10 taken before a change of schema, and whatever was put
// aside by a restore or made by hand.
#pragma once

#include <filesystem>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/store/journal_store.h"

namespace ullage::store {

enum class BackupReason { daily, before_migration, put_aside, by_hand };

struct Backup {
  std::filesystem::path file;
  BackupReason reason = BackupReason::by_hand;
  cellar::Date day{};  // of the cellar's calendar, from the file's name
  int number = 1;      // the how-many-th of that day and reason
  std::uintmax_t size = 0;
};

[[nodiscard]] std::filesystem::path backup_folder(const std::filesystem::path& cellar_file);

// Newest first. Files in the folder that are not named like backups are left out.
[[nodiscard]] std::vector<Backup> list_backups(const std::filesystem::path& cellar_file);

// Which of the backups the rule above lets go. They are in the order of list_backups.
[[nodiscard]] std::vector<Backup> beyond_keeping(std::span<const Backup>);

// Makes today's backup unless there is one, then drops what need not be kept.
// nullopt when today's was there. A read-only store makes none and gives nullopt.
[[nodiscard]] Expected<std::optional<Backup>> daily_backup(const JournalStore&, cellar::Date today);
[[nodiscard]] Expected<Backup> backup_by_hand(const JournalStore&, cellar::Date today);

struct RestoreOutcome {
  std::filesystem::path put_aside;  // what the cellar was before; nothing is thrown away
};
// Puts a backup in the place of the cellar file. Close every store on the file
// first: while another program has it open this is refused as locked_by_other.
// The backup is checked first; the cellar is replaced in one step or not at all.
// Works for a damaged or missing cellar too (put_aside is empty when missing).
[[nodiscard]] Expected<RestoreOutcome> restore_from(const std::filesystem::path& cellar_file,
                                                    const std::filesystem::path& backup,
                                                    cellar::Date today);

}  // namespace ullage::store
