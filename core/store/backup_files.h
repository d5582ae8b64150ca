// SPDX-License-Identifier: GPL-3.0-or-later
//
// Names of backups, and making one from a connection.
//
// "home backups/2026-11-25 daily.ullage", "... before an update.ullage",
// "... put aside (2).ullage": the day on the cellar's calendar, the reason, and
// from the second of a day on its number.
#pragma once

#include <optional>

#include "core/store/backups.h"
#include "core/store/connection.h"

namespace ullage::store {

[[nodiscard]] std::filesystem::path backup_path(const std::filesystem::path& cellar_file,
                                                BackupReason, cellar::Date day, int number);
// nullopt when the name is not that of a backup.
[[nodiscard]] std::optional<Backup> backup_from_name(const std::filesystem::path&);

// Makes the folder when needed, and a name that is not taken.
[[nodiscard]] Expected<Backup> next_backup(const std::filesystem::path& cellar_file, BackupReason,
                                           cellar::Date day);

[[nodiscard]] Expected<Backup> back_up(const Connection&, BackupReason, cellar::Date day);

}  // namespace ullage::store
