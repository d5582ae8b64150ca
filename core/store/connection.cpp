// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/connection.h"

#include <cerrno>
#include <system_error>

namespace ullage::store {

namespace {

// A path as an SQLite URI, so that the immutable mode can be asked for.
std::string uri_of(const std::filesystem::path& path, bool immutable) {
  static constexpr std::string_view hex = "0123456789ABCDEF";
  std::string uri = "file:";
  for (const char c : std::filesystem::absolute(path).string()) {
    const auto byte = static_cast<unsigned char>(c);
    const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
                       c == '/' || c == '.' || c == '-' || c == '_';
    if (plain) {
      uri += c;
    } else {
      uri += '%';
      uri += hex[byte >> 4U];
      uri += hex[byte & 15U];
    }
  }
  if (immutable) uri += "?immutable=1";
  return uri;
}

int flags_of(ConnectionMode mode) {
  switch (mode) {
    case ConnectionMode::create:
    case ConnectionMode::in_memory:
      return SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE;
    case ConnectionMode::read_write:
      return SQLITE_OPEN_READWRITE;
    case ConnectionMode::read_only:
    case ConnectionMode::immutable:
      return SQLITE_OPEN_READONLY;
  }
  return SQLITE_OPEN_READONLY;
}

StoreFault fault_of_errno(int system_errno, StoreFault otherwise) {
  switch (system_errno) {
    case ENOSPC:
    case EDQUOT:
      return StoreFault::disk_full;
    case EACCES:
    case EPERM:
      return StoreFault::permission;
    case EROFS:
      return StoreFault::read_only;
    case ENOENT:
      return StoreFault::absent;
    default:
      return otherwise;
  }
}

}  // namespace

StoreFault fault_of(int code, int system_errno) {
  if (code == SQLITE_CONSTRAINT_UNIQUE) return StoreFault::duplicate;
  switch (code & 0xff) {
    case SQLITE_FULL:
      return StoreFault::disk_full;
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
    case SQLITE_PROTOCOL:
      return StoreFault::locked_by_other;
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
    case SQLITE_FORMAT:
      return StoreFault::damaged;
    case SQLITE_READONLY:
      return StoreFault::read_only;
    case SQLITE_PERM:
    case SQLITE_AUTH:
      return StoreFault::permission;
    case SQLITE_CANTOPEN:
      return fault_of_errno(system_errno, StoreFault::unreadable);
    case SQLITE_IOERR:
      return fault_of_errno(system_errno == ENOENT ? 0 : system_errno, StoreFault::device_error);
    case SQLITE_CONSTRAINT:
    case SQLITE_MISMATCH:
    case SQLITE_TOOBIG:
    case SQLITE_RANGE:
      return StoreFault::refused_value;
    case SQLITE_INTERRUPT:
      return StoreFault::cancelled;
    case SQLITE_NOMEM:
      return StoreFault::out_of_memory;
    case SQLITE_ERROR:
      // A table or column that must be there is not, or the schema cannot be read.
      return StoreFault::damaged;
    default:
      return StoreFault::device_error;
  }
}

Expected<Connection> Connection::open(const std::filesystem::path& path, ConnectionMode mode,
                                      const char* vfs, std::chrono::milliseconds wait_for_lock) {
  Connection c;
  c.path_ = path;
  sqlite3* raw = nullptr;
  const std::string name = mode == ConnectionMode::in_memory
                               ? ":memory:"
                               : uri_of(path, mode == ConnectionMode::immutable);
  const int code = sqlite3_open_v2(
      name.c_str(), &raw,
      flags_of(mode) | SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_URI | SQLITE_OPEN_EXRESCODE, vfs);
  c.db_.reset(raw);
  if (code != SQLITE_OK) return c.failure(code);
  sqlite3_busy_timeout(raw, static_cast<int>(wait_for_lock.count()));
  return c;
}

Expected<Statement> Connection::prepare(std::string_view sql) const {
  sqlite3_stmt* raw = nullptr;
  const int code = sqlite3_prepare_v3(db_.get(), sql.data(), static_cast<int>(sql.size()),
                                      SQLITE_PREPARE_PERSISTENT, &raw, nullptr);
  if (code != SQLITE_OK) return failure(code);
  return Statement(raw);
}

Expected<void> Connection::run(const std::string& sql) const {
  const int code = sqlite3_exec(db_.get(), sql.c_str(), nullptr, nullptr, nullptr);
  if (code != SQLITE_OK) return failure(code);
  return {};
}

Expected<std::int64_t> Connection::number(std::string_view sql) const {
  auto statement = prepare(sql);
  if (!statement) return std::unexpected(statement.error());
  const int code = statement->step();
  if (code == SQLITE_ROW) return statement->integer(0);
  return failure(code == SQLITE_DONE ? SQLITE_CORRUPT : code);
}

Expected<std::string> Connection::text(std::string_view sql) const {
  auto statement = prepare(sql);
  if (!statement) return std::unexpected(statement.error());
  const int code = statement->step();
  if (code == SQLITE_ROW) return std::string(statement->text(0));
  return failure(code == SQLITE_DONE ? SQLITE_CORRUPT : code);
}

StoreError Connection::error(int code) const {
  StoreError e;
  e.file = path_;
  const int system = db_ ? sqlite3_system_errno(db_.get()) : 0;
  e.fault = fault_of(code, system);
  e.detail = db_ ? sqlite3_errmsg(db_.get()) : sqlite3_errstr(code);
  e.detail += " (" + std::to_string(code);
  const bool from_system = (code & 0xff) == SQLITE_IOERR || (code & 0xff) == SQLITE_CANTOPEN;
  if (from_system && system != 0) {
    e.detail += ", " + std::generic_category().message(system);
  }
  e.detail += ")";
  return e;
}

Expected<Transaction> Transaction::begin(const Connection& db, Kind kind) {
  const bool is_part = sqlite3_get_autocommit(db.handle()) == 0;
  auto begun = db.run(is_part               ? "SAVEPOINT part"
                      : kind == Kind::write ? "BEGIN IMMEDIATE"
                                            : "BEGIN");
  if (!begun) return std::unexpected(begun.error());
  return Transaction(db, is_part);
}

Transaction::~Transaction() {
  if (db_ == nullptr || sqlite3_get_autocommit(db_->handle()) != 0) return;
  // A failed rollback leaves the connection in a transaction; the next begin says so.
  const char* undo = is_part_ ? "ROLLBACK TO part; RELEASE part" : "ROLLBACK";
  sqlite3_exec(db_->handle(), undo, nullptr, nullptr, nullptr);
}

Expected<void> Transaction::commit() {
  auto done = db_->run(is_part_ ? "RELEASE part" : "COMMIT");
  if (done) db_ = nullptr;
  return done;
}

}  // namespace ullage::store
