// SPDX-License-Identifier: GPL-3.0-or-later
//
// Bringing a cellar of an earlier schema up to date.
#pragma once

#include <span>

#include "core/cellar/time.h"
#include "core/store/connection.h"
#include "core/store/schema.h"

namespace ullage::store {

// Takes a verified backup, then each step that applies as one transaction, in
// which all references are checked before it is committed. `steps` are in rising
// order. Error migration_failed: the file stands as it did before the step that
// failed and the backup is kept; locked_by_other, disk_full and backup_failed
// when it did not get so far.
[[nodiscard]] Expected<void> migrate(const Connection&, std::span<const MigrationStep> steps,
                                     cellar::Date today);

}  // namespace ullage::store
