// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/schema.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "core/store/schema_text.h"

namespace ullage::store {

namespace {

// The newest version is stated whole; later schemas keep the files of the first
// and add steps, so that every version is reached by the same road.
// Columns added by ALTER TABLE, written into their tables: what SQLite itself makes of
// the table's text. It reads the whole schema anew after each; a new file need not wait.
std::string with_columns_in_place(std::string sql) {
  constexpr std::string_view alter = "ALTER TABLE ";
  constexpr std::string_view add = " ADD COLUMN ";
  std::size_t at = sql.find(alter);
  while (at != std::string::npos) {
    const std::size_t end = sql.find(';', at);
    std::string statement = sql.substr(at, end - at);
    std::replace(statement.begin(), statement.end(), '\n', ' ');
    const std::size_t name_ends = statement.find(' ', alter.size());
    const std::size_t column = statement.find(add);
    const std::string table = statement.substr(alter.size(), name_ends - alter.size());
    const std::size_t made = sql.find("CREATE TABLE " + table + " (");
    if (column != std::string::npos && made < at) {
      sql.erase(at, end + 1 - at);
      sql.insert(sql.find("\n)", made), ",\n  " + statement.substr(column + add.size()));
      at = sql.find(alter, made);
    } else {
      at = sql.find(alter, end);
    }
  }
  return sql;
}

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
      with_columns_in_place(schema_sql(version)) +
      fmt::format("PRAGMA application_id = {}; PRAGMA user_version = {}", application_id, version));
  if (!made) return made;
  return transaction->commit();
}

}  // namespace ullage::store
