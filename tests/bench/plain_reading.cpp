// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/plain_reading.h"

#include <sqlite3.h>

#include <stdexcept>
#include <string>
#include <vector>

namespace ullage::bench {

namespace {

void read_row(sqlite3_stmt* statement, int columns, PlainReading& into) {
  ++into.rows;
  for (int c = 0; c < columns; ++c) {
    switch (sqlite3_column_type(statement, c)) {
      case SQLITE_INTEGER:
        into.sum += static_cast<double>(sqlite3_column_int64(statement, c));
        break;
      case SQLITE_FLOAT:
        into.sum += sqlite3_column_double(statement, c);
        break;
      case SQLITE_NULL:
        break;
      default:
        into.bytes +=
            sqlite3_column_blob(statement, c) == nullptr ? 0 : sqlite3_column_bytes(statement, c);
    }
  }
}

template <class F>
void for_each_row(sqlite3* db, const std::string& sql, F&& f) {
  sqlite3_stmt* statement = nullptr;
  if (sqlite3_prepare_v2(db, sql.c_str(), -1, &statement, nullptr) != SQLITE_OK) {
    throw std::runtime_error(sqlite3_errmsg(db));
  }
  while (sqlite3_step(statement) == SQLITE_ROW) f(statement);
  sqlite3_finalize(statement);
}

}  // namespace

PlainReading read_plainly(const std::filesystem::path& file) {
  sqlite3* db = nullptr;
  if (sqlite3_open_v2(file.c_str(), &db, SQLITE_OPEN_READONLY, nullptr) != SQLITE_OK) {
    throw std::runtime_error("cannot open " + file.string());
  }
  // The index of subjects is derived from the rows; opening does not need it.
  std::vector<std::string> tables;
  for_each_row(db, "SELECT name FROM sqlite_master WHERE type = 'table' AND name <> 'subject'",
               [&](sqlite3_stmt* s) {
                 tables.emplace_back(reinterpret_cast<const char*>(sqlite3_column_text(s, 0)));
               });
  PlainReading reading;
  for (const std::string& table : tables) {
    for_each_row(db, "SELECT * FROM \"" + table + "\"",
                 [&](sqlite3_stmt* s) { read_row(s, sqlite3_column_count(s), reading); });
  }
  sqlite3_close(db);
  return reading;
}

}  // namespace ullage::bench
