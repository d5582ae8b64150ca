// SPDX-License-Identifier: GPL-3.0-or-later
//
// Files that appear whole or not at all: made under another name in the same
// folder, flushed to the disk, then given their own name in one step.
#pragma once

#include <filesystem>
#include <string_view>

#include "core/store/store_error.h"

namespace ullage::store {

// A name beside `target` that nobody uses. Whatever stands under it when this
// goes, with SQLite's files beside it, is removed.
class TemporaryFile {
 public:
  TemporaryFile(const std::filesystem::path& target, std::string_view purpose);
  TemporaryFile(const TemporaryFile&) = delete;
  TemporaryFile& operator=(const TemporaryFile&) = delete;
  ~TemporaryFile();
  [[nodiscard]] const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};

enum class Existing { refuse, replace };
enum class Flush { yes, no };

// Flushes `from`, renames it to `to`, flushes the folder.
[[nodiscard]] Expected<void> move_into_place(const std::filesystem::path& from,
                                             const std::filesystem::path& to, Existing,
                                             Flush = Flush::yes);

// Copies bytes and flushes them.
[[nodiscard]] Expected<void> copy_bytes(const std::filesystem::path& from,
                                        const std::filesystem::path& to);

[[nodiscard]] Expected<void> flush_folder_of(const std::filesystem::path&);

}  // namespace ullage::store
