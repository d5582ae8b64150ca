// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/verified_copy.h"

#include <fmt/format.h>

#include "core/store/field_binding.h"
#include "core/store/file_probe.h"
#include "core/store/kind_table.h"
#include "core/store/schema.h"

namespace ullage::store {

namespace {

Expected<void> copy_pages(const Connection& from, const Connection& to) {
  sqlite3_backup* backup = sqlite3_backup_init(to.handle(), "main", from.handle(), "main");
  if (backup == nullptr) return to.failure(sqlite3_extended_errcode(to.handle()));
  const int stepped = sqlite3_backup_step(backup, -1);  // all pages under one read lock
  const int finished = sqlite3_backup_finish(backup);
  if (stepped != SQLITE_DONE || finished != SQLITE_OK) {
    const int code = finished != SQLITE_OK ? finished : stepped;
    return std::unexpected(
        StoreError{fault_of(code), to.path(), fmt::format("copying: {}", sqlite3_errstr(code))});
  }
  return {};
}

// Runs a check whose rows are findings; the word "ok" is none.
Expected<void> no_findings(const Connection& db, const std::string& sql) {
  auto check = db.prepare(sql);
  if (!check) return std::unexpected(check.error());
  std::string findings;
  int rows = 0;
  int code = check->step();
  for (; code == SQLITE_ROW; code = check->step()) {
    if (check->text(0) == "ok") continue;
    if (rows++ < 20) findings += fmt::format("{}{}", findings.empty() ? "" : "; ", check->text(0));
  }
  if (code != SQLITE_DONE) return db.failure(code);
  if (rows > 0) return std::unexpected(StoreError{StoreFault::damaged, db.path(), findings});
  return {};
}

// Every entry has its row in the table of its kind, and no row is without entry.
std::string orphans_sql() {
  std::string sql;
  for (const KindOps& ops : kind_table()) {
    if (!sql.empty()) sql += " UNION ALL ";
    sql += fmt::format(
        "SELECT * FROM (SELECT 'entry ' || e.sequence || ' has no row in {0}' FROM entry e JOIN "
        "kind k ON k.code = e.kind AND k.word = '{0}' LEFT JOIN {1} p ON p.sequence = e.sequence "
        "WHERE p.sequence IS NULL LIMIT 5)",
        ops.kind, quoted(ops.kind));
  }
  return sql;
}

std::string strays_sql() {
  std::string sql;
  for (const KindOps& ops : kind_table()) {
    if (!sql.empty()) sql += " UNION ALL ";
    sql += fmt::format(
        "SELECT * FROM (SELECT 'row ' || p.sequence || ' in {0} is of another kind' FROM {1} p "
        "JOIN entry e ON e.sequence = p.sequence JOIN kind k ON k.code = e.kind WHERE k.word <> "
        "'{0}' LIMIT 5)",
        ops.kind, quoted(ops.kind));
  }
  return sql;
}

}  // namespace

Expected<void> full_check(const Connection& db) {
  if (auto sound = no_findings(db, "PRAGMA integrity_check(20)"); !sound) return sound;
  if (auto sound = no_findings(
          db,
          "SELECT 'a reference from ' || \"table\" || ' row ' || coalesce(rowid, '?') || "
          "' leads nowhere' FROM pragma_foreign_key_check");
      !sound) {
    return sound;
  }
  // An older schema lacks later kinds; that each entry has its row is asked of ours.
  auto version = db.number("PRAGMA user_version");
  if (!version) return std::unexpected(version.error());
  if (*version != schema_version) return {};
  if (auto sound = no_findings(db, orphans_sql()); !sound) return sound;
  return no_findings(db, strays_sql());
}

Expected<cellar::Uuid> verify_cellar(const std::filesystem::path& path) {
  auto version = probe_file(path);
  if (!version) return std::unexpected(version.error());
  if (*version > schema_version) {
    return std::unexpected(
        StoreError{StoreFault::newer_version, path, fmt::format("schema {}", *version)});
  }
  const bool alone = !has_log(path);
  auto db = Connection::open(path, alone ? ConnectionMode::immutable : ConnectionMode::read_only);
  if (!db) return std::unexpected(db.error());
  if (auto ready = set_up_connection(*db); !ready) return std::unexpected(ready.error());
  if (auto sound = full_check(*db); !sound) return std::unexpected(sound.error());
  auto row = db->prepare("SELECT file_id FROM cellar_file");
  if (!row) return std::unexpected(row.error());
  cellar::Uuid id;
  if (row->step() != SQLITE_ROW || !read_uuid(row->get(), 0, id)) {
    return std::unexpected(StoreError{StoreFault::damaged, path, "no identity"});
  }
  return id;
}

Expected<void> verified_copy(const Connection& from, const std::filesystem::path& to,
                             Existing existing) {
  std::error_code ignored;
  if (existing == Existing::refuse && std::filesystem::exists(to, ignored)) {
    return std::unexpected(StoreError{StoreFault::already_exists, to, ""});
  }
  const TemporaryFile temporary(to, "copying");
  {
    auto copy = Connection::open(temporary.path(), ConnectionMode::create);
    if (!copy) return std::unexpected(copy.error());
    if (auto copied = copy_pages(from, *copy); !copied) return copied;
    // One file, whole by itself: no log to forget when it is carried away.
    if (auto plain = copy->run("PRAGMA journal_mode = DELETE"); !plain) return plain;
  }
  if (auto good = verify_cellar(temporary.path()); !good) {
    StoreError error = good.error();
    if (error.fault != StoreFault::disk_full) error.fault = StoreFault::backup_failed;
    error.file = to;
    return std::unexpected(std::move(error));
  }
  return move_into_place(temporary.path(), to, existing);
}

}  // namespace ullage::store
