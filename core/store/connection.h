// SPDX-License-Identifier: GPL-3.0-or-later
//
// One connection to an SQLite file and its prepared statements, with errors as
// values. Knows nothing of cellars.
#pragma once

#include <sqlite3.h>

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <utility>

#include "core/store/store_error.h"

namespace ullage::store {

// The fault that an SQLite result code (extended) and the system's errno mean.
[[nodiscard]] StoreFault fault_of(int sqlite_code, int system_errno = 0);

// Binds and steps; a thin owner of sqlite3_stmt. Parameters count from 1, columns
// from 0. Bound texts and blobs must outlive the step.
class Statement {
 public:
  Statement() = default;
  explicit Statement(sqlite3_stmt* s) : stmt_(s) {}

  void bind(int at, std::int64_t v) { sqlite3_bind_int64(stmt_.get(), at, v); }
  void bind(int at, double v) { sqlite3_bind_double(stmt_.get(), at, v); }
  void bind(int at, std::string_view v) {
    sqlite3_bind_text(stmt_.get(), at, v.data() == nullptr ? "" : v.data(),
                      static_cast<int>(v.size()), SQLITE_STATIC);
  }
  void bind(int at, std::span<const std::uint8_t> v) {
    sqlite3_bind_blob(stmt_.get(), at, v.data(), static_cast<int>(v.size()), SQLITE_STATIC);
  }
  void bind_null(int at) { sqlite3_bind_null(stmt_.get(), at); }

  // SQLITE_ROW, SQLITE_DONE or an error code (extended).
  [[nodiscard]] int step() { return sqlite3_step(stmt_.get()); }
  void reset() { sqlite3_reset(stmt_.get()); }

  [[nodiscard]] std::int64_t integer(int column) const {
    return sqlite3_column_int64(stmt_.get(), column);
  }
  [[nodiscard]] std::string_view text(int column) const {
    const unsigned char* t = sqlite3_column_text(stmt_.get(), column);
    if (t == nullptr) return {};
    return {reinterpret_cast<const char*>(t),
            static_cast<std::size_t>(sqlite3_column_bytes(stmt_.get(), column))};
  }
  [[nodiscard]] sqlite3_stmt* get() const { return stmt_.get(); }
  explicit operator bool() const { return stmt_ != nullptr; }

 private:
  struct Finalize {
    void operator()(sqlite3_stmt* s) const { sqlite3_finalize(s); }
  };
  std::unique_ptr<sqlite3_stmt, Finalize> stmt_;
};

enum class ConnectionMode {
  create,      // must not exist
  in_memory,   // the path is only a name for messages
  read_write,  // must exist
  read_only,   // must exist
  immutable,   // read only, and nothing beside the file is read or made
};

class Connection {
 public:
  // Opens with extended result codes and a busy timeout; runs no statement.
  [[nodiscard]] static Expected<Connection> open(
      const std::filesystem::path&, ConnectionMode, const char* vfs = nullptr,
      std::chrono::milliseconds wait_for_lock = std::chrono::milliseconds{5000});

  [[nodiscard]] Expected<Statement> prepare(std::string_view sql) const;
  // Runs every statement of the text. Rows are thrown away.
  [[nodiscard]] Expected<void> run(const std::string& sql) const;
  // The first column of the first row; `damaged` when there is no row.
  [[nodiscard]] Expected<std::int64_t> number(std::string_view sql) const;
  [[nodiscard]] Expected<std::string> text(std::string_view sql) const;

  // The error of the last call that failed on this connection.
  [[nodiscard]] StoreError error(int code) const;
  [[nodiscard]] std::unexpected<StoreError> failure(int code) const {
    return std::unexpected(error(code));
  }

  [[nodiscard]] sqlite3* handle() const { return db_.get(); }
  [[nodiscard]] const std::filesystem::path& path() const { return path_; }

 private:
  struct Close {
    void operator()(sqlite3* db) const { sqlite3_close_v2(db); }
  };
  std::unique_ptr<sqlite3, Close> db_;
  std::filesystem::path path_;
};

// A transaction that rolls back unless committed. One begun within another is a part of
// that: it can be undone by itself, and is kept with the whole.
class Transaction {
 public:
  enum class Kind { read, write };
  [[nodiscard]] static Expected<Transaction> begin(const Connection&, Kind);
  Transaction(Transaction&& other) noexcept
      : db_(std::exchange(other.db_, nullptr)), is_part_(other.is_part_) {}
  Transaction& operator=(Transaction&&) = delete;
  ~Transaction();
  [[nodiscard]] Expected<void> commit();

 private:
  Transaction(const Connection& db, bool is_part) : db_(&db), is_part_(is_part) {}
  const Connection* db_;
  bool is_part_;
};

}  // namespace ullage::store
