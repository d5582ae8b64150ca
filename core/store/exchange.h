// SPDX-License-Identifier: GPL-3.0-or-later
//
// The cellar as JSON, to take elsewhere and to bring back: complete and exact.
//
//   {"format": "ullage-cellar", "version": 1, "entries": [
//   {"sequence": 1, "id": "...", "act": "...", "kind": "filled",
//    "happened_at": "2026-03-01T18:00:00Z", ..., "keg": "...", "beer_volume_m3": 0.019},
//   ...
//   ]}
//
// docs/data-file.md has the whole format. An import is read and checked as a
// whole before anything is written, and is kept whole or not at all.
#pragma once

#include <cstddef>
#include <cstdint>
#include <expected>
#include <filesystem>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/cellar/entry.h"
#include "core/store/journal_store.h"

namespace ullage::store {

// Entries as exchange text, ending in a newline. Entries must be finite and
// valid UTF-8, as every entry that comes from a store is.
[[nodiscard]] std::string to_exchange(std::span<const cellar::Entry>);

// Everything in a store, written to a file that appears whole or not at all.
// An existing file of that name is replaced. Gives the number of entries.
[[nodiscard]] Expected<std::size_t> export_to(const JournalStore&, const std::filesystem::path&);

struct ImportProblem {
  std::size_t line = 0;   // 1 is the first; 0 when it is about the file as a whole
  std::size_t entry = 0;  // the how-many-th entry, from 1; 0 when not about one
  std::string field;      // as written in the file; empty when about the entry
  std::string what;       // a plain sentence
};
[[nodiscard]] std::string describe(const ImportProblem&);

struct ImportRefusal {
  std::vector<ImportProblem> problems;  // in line order; at most import_problem_limit
  bool more = false;                    // there were more than that
};

inline constexpr std::size_t import_problem_limit = 200;
inline constexpr std::size_t import_text_limit = std::size_t{64} * 1024;  // bytes of one text
inline constexpr std::size_t import_size_limit = std::size_t{1024} * 1024 * 1024;

// Reads exchange text; no store is involved. Also finds entries the schema can
// never hold, ids used twice, and references to entries that come later or never.
[[nodiscard]] std::expected<std::vector<cellar::Entry>, ImportRefusal> from_exchange(
    std::string_view text);

// Reads a file into a store as one transaction. Into an empty store the entries
// keep their sequence numbers; otherwise they are numbered on from its last one.
// A store error (disk full, say) comes back as one problem with line 0.
[[nodiscard]] std::expected<std::size_t, ImportRefusal> import_from(JournalStore&,
                                                                    const std::filesystem::path&);

}  // namespace ullage::store
