// SPDX-License-Identifier: GPL-3.0-or-later
//
// What can be known of a file before SQLite is let near it, so that a file that
// is not ours is never changed, not even by tidying its log away.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string_view>

#include "core/store/journal_store.h"

namespace ullage::store {

// The name of a file system by the number statfs gives; empty when not listed.
[[nodiscard]] std::string_view file_system_of_magic(std::uint64_t magic);
// Whether locks on it go over a network. `name` as in mountinfo: "nfs4", "fuse.sshfs".
[[nodiscard]] bool is_network_file_system(std::string_view name);

// Reads the first 100 bytes. Success gives the schema version in the file's
// header (its log may know a later one); errors: absent, not_a_file,
// permission, unreadable, not_ours, damaged.
[[nodiscard]] Expected<int> probe_file(const std::filesystem::path&);

// An SQLite file whose mark is another program's.
[[nodiscard]] bool is_foreign_sqlite(const std::filesystem::path&);

// Whether a log with something in it lies beside the file.
[[nodiscard]] bool has_log(const std::filesystem::path&);

[[nodiscard]] StoreError system_error(StoreFault fallback, const std::filesystem::path&, int error);

}  // namespace ullage::store
