// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/files.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <cerrno>
#include <cstdio>
#include <system_error>
#include <vector>

#include "core/store/file_probe.h"
#include "core/store/vfs_file.h"

namespace ullage::store {

namespace {

Expected<void> flush_to_disk(const std::filesystem::path& path, int flags) {
  const int fd = ::open(path.c_str(), flags | O_CLOEXEC);
  if (fd < 0) return std::unexpected(system_error(StoreFault::device_error, path, errno));
  const int code = ::fsync(fd);
  const int error = errno;
  ::close(fd);
  // Some file systems cannot flush a folder and say so; then there is nothing to wait for.
  if (code != 0 && error != EINVAL) {
    return std::unexpected(system_error(StoreFault::device_error, path, error));
  }
  return {};
}

}  // namespace

TemporaryFile::TemporaryFile(const std::filesystem::path& target, std::string_view purpose) {
  static std::atomic<unsigned> counter{0};
  std::error_code ignored;
  do {
    path_ = target;
    path_ += fmt::format(".{}-{}-{}", purpose, ::getpid(), ++counter);
  } while (std::filesystem::exists(path_, ignored));
}

TemporaryFile::~TemporaryFile() {
  std::error_code ignored;
  for (const char* tail : {"", "-wal", "-shm", "-journal"}) {
    std::filesystem::remove(path_.string() + tail, ignored);
  }
}

Expected<void> move_into_place(const std::filesystem::path& from, const std::filesystem::path& to,
                               Existing existing, Flush flush) {
  if (flush == Flush::yes) {
    if (auto flushed = flush_to_disk(from, O_RDONLY); !flushed) return flushed;
  }
  int code = -1;
  if (existing == Existing::refuse) {
    code = ::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE);
    // Not every file system knows the flag.
    if (code != 0 && (errno == EINVAL || errno == ENOSYS)) {
      std::error_code ignored;
      if (std::filesystem::exists(to, ignored)) {
        return std::unexpected(StoreError{StoreFault::already_exists, to, ""});
      }
      code = ::rename(from.c_str(), to.c_str());
    }
  } else {
    code = ::rename(from.c_str(), to.c_str());
  }
  if (code != 0) return std::unexpected(system_error(StoreFault::device_error, to, errno));
  return flush == Flush::yes ? flush_folder_of(to) : Expected<void>();
}

Expected<void> flush_folder_of(const std::filesystem::path& path) {
  return flush_to_disk(std::filesystem::absolute(path).parent_path(), O_RDONLY | O_DIRECTORY);
}

Expected<void> copy_bytes(const std::filesystem::path& from, const std::filesystem::path& to) {
  auto in = VfsFile::open(from);
  if (!in) return std::unexpected(in.error());
  auto left = in->size();
  if (!left) return std::unexpected(left.error());
  const int out = ::open(to.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0644);
  if (out < 0) return std::unexpected(system_error(StoreFault::device_error, to, errno));
  std::vector<char> buffer(std::size_t{64} * 1024);
  Expected<void> copied;
  for (std::int64_t at = 0; copied && *left > 0;) {
    const auto size = static_cast<std::size_t>(std::min<std::int64_t>(*left, std::ssize(buffer)));
    const std::span<char> chunk(buffer.data(), size);
    copied = in->read(at, chunk);
    if (copied && ::write(out, chunk.data(), size) != static_cast<ssize_t>(size)) {
      copied = std::unexpected(system_error(StoreFault::disk_full, to, errno));
    }
    at += static_cast<std::int64_t>(size);
    *left -= static_cast<std::int64_t>(size);
  }
  if (copied && ::fsync(out) != 0) {
    copied = std::unexpected(system_error(StoreFault::device_error, to, errno));
  }
  ::close(out);
  return copied;
}

}  // namespace ullage::store
