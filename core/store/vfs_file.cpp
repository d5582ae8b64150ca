// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/vfs_file.h"

#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstddef>
#include <string>
#include <vector>

#include "core/store/file_probe.h"

namespace ullage::store {

struct VfsFile::Open {
  std::filesystem::path path;
  const char* name = nullptr;
  std::vector<std::max_align_t> storage;  // SQLite's file object, of the size it asks for

  [[nodiscard]] sqlite3_file* file() { return reinterpret_cast<sqlite3_file*>(storage.data()); }
  Open() = default;
  Open(const Open&) = delete;
  Open& operator=(const Open&) = delete;
  ~Open() {
    if (!storage.empty() && file()->pMethods != nullptr) file()->pMethods->xClose(file());
    if (name != nullptr) sqlite3_free_filename(const_cast<char*>(name));
  }
};

Expected<VfsFile> VfsFile::open(const std::filesystem::path& path) {
  struct stat about{};
  if (::stat(path.c_str(), &about) != 0 || ::access(path.c_str(), R_OK) != 0) {
    return std::unexpected(system_error(StoreFault::unreadable, path, errno));
  }
  if (!S_ISREG(about.st_mode)) {
    return std::unexpected(StoreError{StoreFault::not_a_file, path, "not a regular file"});
  }
  sqlite3_initialize();
  sqlite3_vfs* const vfs = sqlite3_vfs_find(nullptr);
  auto opened = std::make_unique<Open>();
  opened->path = path;
  opened->storage.resize(static_cast<std::size_t>(vfs->szOsFile) / sizeof(std::max_align_t) + 1);
  opened->name =
      sqlite3_create_filename(std::filesystem::absolute(path).c_str(), "", "", 0, nullptr);
  const int code = vfs->xOpen(vfs, opened->name, opened->file(),
                              SQLITE_OPEN_READONLY | SQLITE_OPEN_MAIN_DB, nullptr);
  if (code != SQLITE_OK) {
    return std::unexpected(StoreError{StoreFault::unreadable, path, sqlite3_errstr(code)});
  }
  return VfsFile(std::move(opened));
}

Expected<std::int64_t> VfsFile::size() const {
  sqlite3_int64 bytes = 0;
  const int code = open_->file()->pMethods->xFileSize(open_->file(), &bytes);
  if (code == SQLITE_OK) return bytes;
  return std::unexpected(StoreError{StoreFault::unreadable, open_->path, sqlite3_errstr(code)});
}

Expected<void> VfsFile::read(std::int64_t offset, std::span<char> into) const {
  const int code = open_->file()->pMethods->xRead(open_->file(), into.data(),
                                                  static_cast<int>(into.size()), offset);
  if (code == SQLITE_OK || code == SQLITE_IOERR_SHORT_READ) return {};
  return std::unexpected(StoreError{StoreFault::unreadable, open_->path, sqlite3_errstr(code)});
}

VfsFile::VfsFile(std::unique_ptr<Open> open) : open_(std::move(open)) {}
VfsFile::VfsFile(VfsFile&&) noexcept = default;
VfsFile& VfsFile::operator=(VfsFile&&) noexcept = default;
VfsFile::~VfsFile() = default;

}  // namespace ullage::store
