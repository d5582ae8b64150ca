// SPDX-License-Identifier: GPL-3.0-or-later
//
// Saving what can be read of a damaged cellar. The damaged file is not touched:
// the work is done on a copy, and every entry that can be read whole goes into a
// new file. What cannot is named.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/cellar/entry.h"
#include "core/store/store_error.h"

namespace ullage::store {

// Where an entry was hurt.
enum class Loss {
  header,   // when, by whom and in which act are gone; the kind may still be known
  payload,  // the header is there, what happened is not
  refused,  // it can be read, but holds a value that is impossible
  orphan,   // readable, but it speaks of an entry (struck, replaced) that is lost
};

struct LostEntry {
  std::int64_t sequence = 0;
  Loss loss = Loss::header;
  std::string kind;                           // "filled"; empty when not known
  std::optional<cellar::EntryHeader> header;  // when readable
  std::vector<cellar::SubjectRef> subjects;   // what it was about, as far as known
  std::string detail;
};

struct RecoveryReport {
  std::filesystem::path new_file;
  std::int64_t saved = 0;
  std::vector<LostEntry> lost;  // by sequence
  // True when the end of the journal was among what is broken, so that entries
  // beyond the highest number seen may have been there and cannot be counted.
  bool end_uncertain = false;
  // True when the table of contents had to be rebuilt from the schema.
  bool contents_rebuilt = false;
};

// A few lines for a person: how many were saved, and which were lost, by kind
// and number.
[[nodiscard]] std::string summary(const RecoveryReport&);

struct RecoverOptions {
  std::function<void(std::int64_t done, std::int64_t of)> progress;  // may be empty
  std::stop_token stop;
};

// Close every store on `damaged` first. Reads it, writes `new_file` (which must not exist). Errors:
// absent, unreadable, not_ours, already_exists, disk_full, cancelled; `damaged` when nothing at all
// could be read. On any error no new file is left.
[[nodiscard]] Expected<RecoveryReport> recover(const std::filesystem::path& damaged,
                                               const std::filesystem::path& new_file,
                                               const RecoverOptions& = {});

}  // namespace ullage::store
