// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/file_probe.h"

#include <sys/stat.h>
#include <sys/statvfs.h>
#include <sys/sysmacros.h>
#include <sys/vfs.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <fstream>
#include <sstream>
#include <string>
#include <system_error>

#include "core/store/schema.h"
#include "core/store/vfs_file.h"

namespace ullage::store {

namespace {

struct FileSystemMagic {
  std::uint64_t magic;
  std::string_view name;
};
// From statfs(2); fuse says nothing about what is behind it, mountinfo does.
constexpr std::array known_file_systems = {
    FileSystemMagic{0x6969, "nfs"},          FileSystemMagic{0xff534d42, "cifs"},
    FileSystemMagic{0xfe534d42, "smb3"},     FileSystemMagic{0x517b, "smbfs"},
    FileSystemMagic{0x564c, "ncpfs"},        FileSystemMagic{0x5346414f, "afs"},
    FileSystemMagic{0x73757245, "coda"},     FileSystemMagic{0x00c36400, "ceph"},
    FileSystemMagic{0x01021997, "9p"},       FileSystemMagic{0x0bd00bd0, "lustre"},
    FileSystemMagic{0x47504653, "gpfs"},     FileSystemMagic{0x7461636f, "ocfs2"},
    FileSystemMagic{0x01161970, "gfs2"},     FileSystemMagic{0x65735546, "fuse"},
    FileSystemMagic{0xef53, "ext4"},         FileSystemMagic{0x58465342, "xfs"},
    FileSystemMagic{0x9123683e, "btrfs"},    FileSystemMagic{0x01021994, "tmpfs"},
    FileSystemMagic{0x4d44, "vfat"},         FileSystemMagic{0x2011bab0, "exfat"},
    FileSystemMagic{0x9660, "iso9660"},      FileSystemMagic{0x794c7630, "overlay"},
    FileSystemMagic{0x73717368, "squashfs"}, FileSystemMagic{0x7366746e, "ntfs3"},
};

constexpr std::array network_file_systems = {
    std::string_view("nfs"),
    std::string_view("nfs4"),
    std::string_view("cifs"),
    std::string_view("smb3"),
    std::string_view("smbfs"),
    std::string_view("ncpfs"),
    std::string_view("afs"),
    std::string_view("coda"),
    std::string_view("ceph"),
    std::string_view("9p"),
    std::string_view("lustre"),
    std::string_view("gpfs"),
    std::string_view("ocfs2"),
    std::string_view("gfs2"),
    std::string_view("fuse.sshfs"),
    std::string_view("fuse.rclone"),
    std::string_view("fuse.s3fs"),
    std::string_view("fuse.davfs"),
    std::string_view("davfs"),
    std::string_view("fuse.glusterfs"),
    std::string_view("glusterfs"),
    std::string_view("fuse.curlftpfs"),
    std::string_view("fuse.gvfsd-fuse"),
    std::string_view("fuse.ceph"),
    std::string_view("fuse.cephfs"),
};

// The file system's type as mountinfo has it for a device number.
std::string mounted_type(dev_t device) {
  std::ifstream mounts("/proc/self/mountinfo");
  const std::string wanted = std::to_string(major(device)) + ":" + std::to_string(minor(device));
  std::string line;
  std::string found;
  while (std::getline(mounts, line)) {
    std::istringstream words(line);
    std::string mount_id;
    std::string parent_id;
    std::string numbers;
    words >> mount_id >> parent_id >> numbers;
    const std::size_t dash = line.find(" - ");
    if (numbers != wanted || dash == std::string::npos) continue;
    std::istringstream rest(line.substr(dash + 3));
    rest >> found;
  }
  return found;
}

std::uint32_t big_endian(const char* bytes) {
  std::uint32_t number = 0;
  for (int i = 0; i < 4; ++i) number = (number << 8U) | static_cast<unsigned char>(bytes[i]);
  return number;
}

}  // namespace

std::string_view file_system_of_magic(std::uint64_t magic) {
  const auto* const at = std::ranges::find(known_file_systems, magic, &FileSystemMagic::magic);
  return at == known_file_systems.end() ? std::string_view() : at->name;
}

bool is_network_file_system(std::string_view name) {
  return std::ranges::find(network_file_systems, name) != network_file_systems.end();
}

StoreError system_error(StoreFault fallback, const std::filesystem::path& path, int error) {
  StoreFault fault = fallback;
  if (error == ENOENT || error == ENOTDIR) fault = StoreFault::absent;
  if (error == EACCES || error == EPERM) fault = StoreFault::permission;
  if (error == EROFS) fault = StoreFault::read_only;
  if (error == ENOSPC || error == EDQUOT) fault = StoreFault::disk_full;
  if (error == EEXIST) fault = StoreFault::already_exists;
  return {fault, path, std::generic_category().message(error)};
}

Surroundings surroundings_of(const std::filesystem::path& path) {
  Surroundings found;
  const std::filesystem::path absolute = std::filesystem::absolute(path);
  const std::filesystem::path folder = absolute.parent_path();
  std::error_code ignored;
  const bool there = std::filesystem::exists(absolute, ignored);
  const std::filesystem::path& asked = there ? absolute : folder;
  struct statfs by_number{};
  if (::statfs(asked.c_str(), &by_number) == 0) {
    found.file_system = file_system_of_magic(
        static_cast<std::uint32_t>(by_number.f_type));  // some magics come sign-extended
  }
  struct stat about{};
  if ((found.file_system.empty() || found.file_system == "fuse") &&
      ::stat(asked.c_str(), &about) == 0) {
    const std::string mounted = mounted_type(about.st_dev);
    if (!mounted.empty()) found.file_system = mounted;
  }
  found.on_network = is_network_file_system(found.file_system);
  struct statvfs flags{};
  if (::statvfs(asked.c_str(), &flags) == 0) {
    found.medium_read_only = (flags.f_flag & ST_RDONLY) != 0;
  }
  found.file_writable = !there || ::access(absolute.c_str(), W_OK) == 0;
  found.folder_writable = ::access(folder.c_str(), W_OK | X_OK) == 0;
  return found;
}

Expected<int> probe_file(const std::filesystem::path& path) {
  auto file = VfsFile::open(path);
  if (!file) return std::unexpected(file.error());
  std::array<char, 100> header{};  // zeros where the file is shorter
  if (auto read = file->read(0, header); !read) return std::unexpected(read.error());
  static constexpr std::string_view magic("SQLite format 3\0", 16);
  const bool sqlite = std::string_view(header.data(), magic.size()) == magic;
  const bool marked = big_endian(&header[68]) == application_id;
  if (sqlite && marked) return static_cast<int>(big_endian(&header[60]));
  if (marked) {
    return std::unexpected(
        StoreError{StoreFault::damaged, path, "the first bytes are overwritten"});
  }
  return std::unexpected(StoreError{StoreFault::not_ours, path,
                                    sqlite ? "an SQLite file of another program" : "not SQLite"});
}

bool is_foreign_sqlite(const std::filesystem::path& path) {
  auto file = VfsFile::open(path);
  std::array<char, 100> header{};
  if (!file || !file->read(0, header)) return false;
  return std::string_view(header.data(), 15) == "SQLite format 3" &&
         big_endian(&header[68]) != application_id;
}

bool has_log(const std::filesystem::path& path) {
  std::error_code ignored;
  const auto size = std::filesystem::file_size(path.string() + "-wal", ignored);
  return !ignored && size > 0;
}

}  // namespace ullage::store
