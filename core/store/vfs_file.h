// SPDX-License-Identifier: GPL-3.0-or-later
//
// Reading bytes of a file that this program may have open as a cellar. POSIX
// drops all of a process's locks on a file when any descriptor of it is closed,
// so a cellar must never be opened past SQLite: another program would take it
// for unused and fold its log away under our hands. SQLite's own file layer
// knows, and keeps such a descriptor until the locks are gone.
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <span>

#include "core/store/store_error.h"

struct sqlite3_file;

namespace ullage::store {

class VfsFile {
 public:
  // For reading. Errors: absent, permission, not_a_file, unreadable.
  [[nodiscard]] static Expected<VfsFile> open(const std::filesystem::path&);
  VfsFile(VfsFile&&) noexcept;
  VfsFile& operator=(VfsFile&&) noexcept;
  ~VfsFile();

  [[nodiscard]] Expected<std::int64_t> size() const;
  // Fills the span from an offset; beyond the end of the file with zeros.
  [[nodiscard]] Expected<void> read(std::int64_t offset, std::span<char>) const;

 private:
  struct Open;
  explicit VfsFile(std::unique_ptr<Open>);
  std::unique_ptr<Open> open_;
};

}  // namespace ullage::store
