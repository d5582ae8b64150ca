// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/migration.h"

#include <fmt/format.h>

#include "core/store/backup_files.h"
#include "core/store/verified_copy.h"

namespace ullage::store {

namespace {

Expected<void> references_hold(const Connection& db) {
  auto check = db.prepare("PRAGMA foreign_key_check");
  if (!check) return std::unexpected(check.error());
  const int code = check->step();
  if (code == SQLITE_DONE) return {};
  if (code != SQLITE_ROW) return db.failure(code);
  return std::unexpected(StoreError{
      StoreFault::damaged, db.path(),
      fmt::format("a reference from {} row {} leads nowhere", check->text(0), check->integer(1))});
}

Expected<void> take_step(const Connection& db, const MigrationStep& step) {
  auto transaction = Transaction::begin(db, Transaction::Kind::write);
  if (!transaction) return std::unexpected(transaction.error());
  // Another program may have taken the step while this one waited for the lock.
  auto version = db.number("PRAGMA user_version");
  if (!version) return std::unexpected(version.error());
  if (*version != step.from) return {};
  if (auto changed = db.run(step.sql); !changed) return changed;
  if (auto numbered = db.run(fmt::format("PRAGMA user_version = {}", step.from + 1)); !numbered) {
    return numbered;
  }
  if (auto sound = references_hold(db); !sound) return sound;
  return transaction->commit();
}

}  // namespace

Expected<void> migrate(const Connection& db, std::span<const MigrationStep> steps,
                       cellar::Date today) {
  auto version = db.number("PRAGMA user_version");
  if (!version) return std::unexpected(version.error());
  if (auto copied = back_up(db, BackupReason::before_migration, today); !copied) {
    return std::unexpected(copied.error());
  }
  // Tables are rebuilt by create, copy, drop, rename: with references enforced,
  // the drop would be refused. They are checked as a whole before the commit.
  if (auto off = db.run("PRAGMA foreign_keys = OFF"); !off) return off;
  for (const MigrationStep& step : steps) {
    if (step.from < *version) continue;
    if (auto taken = take_step(db, step); !taken) {
      StoreError error = taken.error();
      error.detail = fmt::format("step {} to {}: {}", step.from, step.from + 1, error.detail);
      if (error.fault != StoreFault::locked_by_other) error.fault = StoreFault::migration_failed;
      const auto on = db.run("PRAGMA foreign_keys = ON");
      if (!on) error.detail += "; " + on.error().detail;
      return std::unexpected(std::move(error));
    }
  }
  return db.run("PRAGMA foreign_keys = ON");
}

}  // namespace ullage::store
