// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/schema.h"

#include <fmt/format.h>

#include <vector>

#include "core/store/schema_text.h"

namespace ullage::store {

namespace {

// The newest version is stated whole; later schemas keep the files of the first
// and add steps, so that every version is reached by the same road.
std::string files_starting_with(std::string_view prefix) {
  std::string sql;
  for (const SchemaFile& file : schema_files()) {
    if (file.name.starts_with(prefix)) sql += file.sql;
  }
  return sql;
}

}  // namespace

std::string schema_sql(int version) {
  std::string sql = files_starting_with("001_");
  for (int v = 2; v <= version; ++v) {
    const std::string step = files_starting_with(fmt::format("{:03}_", v));
    if (step.empty()) return {};
    sql += step;
  }
  return version < 1 ? std::string() : sql;
}

std::span<const MigrationStep> released_steps() {
  static const std::vector<MigrationStep> steps = [] {
    std::vector<MigrationStep> made;
    for (int v = 2; v <= schema_version; ++v) {
      made.push_back({v - 1, files_starting_with(fmt::format("{:03}_", v))});
    }
    return made;
  }();
  return steps;
}

Expected<void> set_up_connection(const Connection& db) {
  // FULL: a commit is on the disk when it returns. trusted_schema off: a file
  // from elsewhere cannot make us run functions of its own choosing.
  return db.run(
      "PRAGMA foreign_keys = ON; PRAGMA synchronous = FULL; PRAGMA trusted_schema = OFF; "
      "PRAGMA temp_store = MEMORY; PRAGMA cache_size = -16000");
}

Expected<void> create_schema(const Connection& db, int version) {
  // page_size and auto_vacuum only take effect before the first table.
  auto ready =
      db.run("PRAGMA page_size = 4096; PRAGMA auto_vacuum = NONE; PRAGMA encoding = 'UTF-8'");
  if (!ready) return ready;
  auto transaction = Transaction::begin(db, Transaction::Kind::write);
  if (!transaction) return std::unexpected(transaction.error());
  auto made = db.run(
      schema_sql(version) +
      fmt::format("PRAGMA application_id = {}; PRAGMA user_version = {}", application_id, version));
  if (!made) return made;
  return transaction->commit();
}

}  // namespace ullage::store
