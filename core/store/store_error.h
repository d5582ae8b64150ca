// SPDX-License-Identifier: GPL-3.0-or-later
//
// What can go wrong with a cellar file, each case told apart so that the screen
// can say what happened and offer the right way out. Nothing here is an
// exception: every function of the store that can fail returns an Expected.
#pragma once

#include <expected>
#include <filesystem>
#include <string>

namespace ullage::store {

enum class StoreFault {
  // opening
  absent,                // there is no file of that name
  not_a_file,            // a folder or a device
  unreadable,            // there, but the disk or the system would not let it be read
  permission,            // this user may not read, write or create it
  not_ours,              // some other file: it is left exactly as it was
  damaged,               // ours, but its contents are broken: restore or recover
  newer_version,         // written by a later release
  older_version,         // of an earlier release and may not be brought up to date here
  migration_failed,      // bringing it up to date failed: file unchanged, backup kept
  read_only_needs_copy,  // on a read-only medium with a log that must be played back first
  network_file_system,   // locks are not reliable there
  locked_by_other,       // another program holds it
  already_exists,        // asked to create over an existing file
  // writing
  read_only,      // opened for reading only, for whatever reason
  disk_full,      // nothing was written
  device_error,   // the disk reported an error; nothing was kept
  refused_value,  // a value the file can never hold; detail names table and rule
  duplicate,      // an entry of that id is there already
  // looking after
  backup_failed,  // the copy could not be made or did not pass its check
  other_cellar,   // a backup of a different cellar
  cancelled,
  out_of_memory,
};

struct StoreError {
  StoreFault fault = StoreFault::device_error;
  std::filesystem::path file;
  std::string detail;  // for the curious and for bug reports: SQLite's or the system's words
};

template <class T>
using Expected = std::expected<T, StoreError>;

// One or two plain sentences: what happened, to which file, and what to do.
// Never empty; leaves out `detail`, which a screen may show folded away.
[[nodiscard]] std::string describe(const StoreError&);

}  // namespace ullage::store
