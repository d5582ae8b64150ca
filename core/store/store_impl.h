// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a JournalStore holds, for the sources of this folder.
#pragma once

#include <optional>
#include <vector>

#include "core/store/connection.h"
#include "core/store/journal_store.h"
#include "core/store/kind_table.h"

namespace ullage::store {

struct OpenStore {
  Connection db;
  std::filesystem::path path;
  cellar::Uuid file_id;
  Access access = Access::read_write;
  bool checked_at_open = false;
  std::int64_t data_version = 0;

  // The file's number for each kind, by index in kind_table(), and back. -1: none.
  std::vector<std::int64_t> code_of_kind;
  std::vector<int> kind_of_code;

  // Made when first needed, then kept.
  Statement insert_entry, insert_subject, next_sequence, read_data_version;
  std::vector<Statement> insert_payload;  // by index in kind_table()
};

// How new entries get their sequence numbers.
enum class Numbering { next_free, as_given };

struct StoreInternals {
  [[nodiscard]] static JournalStore make(std::unique_ptr<OpenStore> impl) {
    return JournalStore(std::move(impl));
  }
  [[nodiscard]] static OpenStore& impl(JournalStore& store) { return *store.impl_; }
  [[nodiscard]] static const OpenStore& impl(const JournalStore& store) { return *store.impl_; }
  // Adds one entry inside a transaction the caller holds.
  [[nodiscard]] static Expected<void> insert(OpenStore&, const cellar::Entry&);
  [[nodiscard]] static Expected<void> append(OpenStore&, std::span<cellar::Entry>, Numbering);
  // Reads the identity and the kinds of a file just opened or made.
  [[nodiscard]] static Expected<void> read_identity(OpenStore&);
  // A store on any connection that holds the schema, for checking an import and for recovery.
  [[nodiscard]] static Expected<std::unique_ptr<OpenStore>> around(Connection);
};

// Column order of the header wherever it is read: see entry_columns.
inline constexpr const char* entry_columns =
    "sequence, id, act, kind, happened_at_utc_s, recorded_at_utc_s, utc_offset_min, by_initials, "
    "replaces, note";
// Fills the header; gives the kind's number in the file, or -1 when the row makes no sense.
[[nodiscard]] std::int64_t read_header(sqlite3_stmt*, cellar::EntryHeader&);

}  // namespace ullage::store
