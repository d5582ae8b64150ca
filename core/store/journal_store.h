// SPDX-License-Identifier: GPL-3.0-or-later
//
// The journal in its file. One cellar is one SQLite file; this is the only door
// to it. Entries are appended and read, never changed. What is appended is on
// the disk when append returns: a kill or a power cut afterwards loses nothing,
// and before that leaves no part of an act behind.
//
// A store belongs to one thread. Several stores, in one program or in many, may
// have the same file open: each sees the others' entries (changed_elsewhere).
// See docs/data-file.md for the tables.
#pragma once

#include <chrono>
#include <cstdint>
#include <functional>
#include <memory>
#include <span>
#include <vector>

#include "core/cellar/entry.h"
#include "core/store/store_error.h"

namespace ullage::store {

// Why a store will not write.
enum class Access {
  read_write,
  read_only_asked,       // OpenOptions::read_only
  read_only_medium,      // a disc, a locked card, a read-only mount
  read_only_permission,  // this user may read but not write it
};
// A sentence for a banner; empty for read_write.
[[nodiscard]] std::string describe(Access);

// What the file stands on. Found out from the system unless a test says otherwise.
struct Surroundings {
  std::string file_system = {};  // "ext4", "nfs", "fuse.sshfs"
  bool on_network = false;
  bool medium_read_only = false;
  bool file_writable = true;    // by this user
  bool folder_writable = true;  // so that the log can be kept beside the file
};
[[nodiscard]] Surroundings surroundings_of(const std::filesystem::path&);

// The moment as the caller's clock and calendar have it: dates in file names of
// backups are the cellar's own days.
struct Moment {
  cellar::Instant now{};
  cellar::Date today{};
};

struct OpenOptions {
  bool read_only = false;
  // Reading from a network file system is allowed on request; writing never is.
  bool allow_network_read_only = false;
  // When the file is of an earlier schema: bring it up to date, after a verified
  // backup. Without a moment to name the backup by, it is refused as older_version.
  std::optional<Moment> migrate_at;
  std::chrono::milliseconds wait_for_lock{5000};
  // Files up to this size get SQLite's quick_check before open returns; larger
  // ones should be handed to check_file (check.h) on a thread of its own.
  std::uintmax_t quick_check_up_to = 4U << 20U;
  // For a file that goes when the program ends: nothing waits for the disk.
  bool throwaway = false;
  // A registered SQLite VFS by name; null for the usual one. Tests put faults here.
  const char* vfs = nullptr;
  std::function<Surroundings(const std::filesystem::path&)> surroundings = surroundings_of;
};

struct OpenStore;  // store_impl.h

class JournalStore {
 public:
  // Makes a new, empty cellar file. The file appears whole or not at all.
  // Errors: already_exists, permission, disk_full, network_file_system ...
  [[nodiscard]] static Expected<JournalStore> create(const std::filesystem::path&,
                                                     cellar::Uuid file_id, cellar::Instant now,
                                                     const OpenOptions& = {});
  // Opens an existing one. A file that is not ours is never changed. On a medium
  // or with rights that allow reading only, it opens and access() says so.
  [[nodiscard]] static Expected<JournalStore> open(const std::filesystem::path&,
                                                   const OpenOptions& = {});

  JournalStore(JournalStore&&) noexcept;
  JournalStore& operator=(JournalStore&&) noexcept;
  ~JournalStore();  // closes

  // Every entry, in rising sequence. `damaged` when a row cannot be read.
  [[nodiscard]] Expected<std::vector<cellar::Entry>> load() const;
  // Those that came after a sequence number: what others wrote since.
  [[nodiscard]] Expected<std::vector<cellar::Entry>> load_after(std::int64_t sequence) const;

  // Appends all entries as one transaction and gives them their sequence
  // numbers. On failure none is kept, their sequences are 0 again, and the store
  // can be used further.
  [[nodiscard]] Expected<void> append(std::span<cellar::Entry>);

  // Whatever `appends` appends becomes one transaction. When it throws, none is kept.
  [[nodiscard]] Expected<void> as_one(const std::function<void()>& appends);

  // True once after another store committed to the file. Cheap: ask each second.
  [[nodiscard]] Expected<bool> changed_elsewhere();

  // The entries that name a thing (subjects and instruments), by sequence.
  [[nodiscard]] Expected<std::vector<std::int64_t>> sequences_about(cellar::SubjectRef) const;
  [[nodiscard]] Expected<std::int64_t> last_sequence() const;

  // A copy in one file, checked before it gets its name. Others may go on
  // writing meanwhile. Errors: backup_failed, disk_full, already_exists.
  [[nodiscard]] Expected<void> backup_to(const std::filesystem::path&) const;

  // SQLite's quick structural check, on this thread. Success means sound.
  [[nodiscard]] Expected<void> quick_check() const;

  [[nodiscard]] Access access() const;
  [[nodiscard]] bool read_only() const { return access() != Access::read_write; }
  // True when open already ran the quick check (see OpenOptions).
  [[nodiscard]] bool checked_at_open() const;
  [[nodiscard]] const std::filesystem::path& path() const;
  [[nodiscard]] cellar::Uuid file_id() const;

  // Closes before its time is up. The store is unusable after.
  void close();

 private:
  friend struct StoreInternals;  // for the other sources of this folder

  explicit JournalStore(std::unique_ptr<OpenStore>);
  std::unique_ptr<OpenStore> impl_;
};

}  // namespace ullage::store
