// SPDX-License-Identifier: GPL-3.0-or-later
//
// Putting a backup in the cellar's place. See docs/data-file.md for what is on
// the disk if the power goes at each step.
#include <unistd.h>

#include <cerrno>

#include "core/store/backup_files.h"
#include "core/store/file_probe.h"
#include "core/store/schema.h"
#include "core/store/verified_copy.h"

namespace ullage::store {

namespace {

// Empties the log into the file, which is possible only for the one program that
// has it open. A cellar too damaged for that is taken as it lies.
Expected<void> make_sole_and_single(const std::filesystem::path& path) {
  auto db =
      Connection::open(path, ConnectionMode::read_write, nullptr, std::chrono::milliseconds(1000));
  if (!db) {
    if (db.error().fault == StoreFault::locked_by_other) return std::unexpected(db.error());
    return {};
  }
  auto mode = db->text("PRAGMA journal_mode = DELETE");
  if (!mode) {
    if (mode.error().fault == StoreFault::locked_by_other) return std::unexpected(mode.error());
    return {};
  }
  if (*mode != "delete") {
    return std::unexpected(StoreError{StoreFault::locked_by_other, path, "open elsewhere"});
  }
  return {};
}

// The old file gets a second name; a file system without hard links gets a copy.
Expected<void> give_second_name(const std::filesystem::path& file,
                                const std::filesystem::path& second) {
  if (::link(file.c_str(), second.c_str()) == 0) return flush_folder_of(second);
  return copy_bytes(file, second);
}

Expected<void> put_aside(const std::filesystem::path& file, const std::filesystem::path& aside) {
  if (auto named = give_second_name(file, aside); !named) return named;
  for (const char* tail : {"-wal", "-shm"}) {
    std::error_code error;
    const std::filesystem::path beside = file.string() + tail;
    if (!std::filesystem::exists(beside, error)) continue;
    std::filesystem::rename(beside, aside.string() + tail, error);
    if (error) {
      return std::unexpected(system_error(StoreFault::device_error, beside, error.value()));
    }
  }
  return {};
}

// The id of a cellar that may be too damaged to have one.
std::optional<cellar::Uuid> id_if_readable(const std::filesystem::path& path) {
  auto id = verify_cellar(path);
  if (!id) return std::nullopt;
  return *id;
}

}  // namespace

Expected<RestoreOutcome> restore_from(const std::filesystem::path& cellar_file,
                                      const std::filesystem::path& backup, cellar::Date today) {
  auto id = verify_cellar(backup);
  if (!id) return std::unexpected(id.error());
  std::error_code ignored;
  const bool there = std::filesystem::exists(cellar_file, ignored);
  if (there) {
    const auto probed = probe_file(cellar_file);
    if (!probed && probed.error().fault == StoreFault::not_a_file) {
      return std::unexpected(probed.error());
    }
    // A file that is not ours (any more) is moved aside as it lies.
    if (probed) {
      if (auto sole = make_sole_and_single(cellar_file); !sole) {
        return std::unexpected(sole.error());
      }
    }
    const auto present = id_if_readable(cellar_file);
    if (present && *present != *id) {
      return std::unexpected(StoreError{StoreFault::other_cellar, backup, ""});
    }
  }
  const TemporaryFile temporary(cellar_file, "restoring");
  if (auto copied = copy_bytes(backup, temporary.path()); !copied) {
    return std::unexpected(copied.error());
  }
  RestoreOutcome outcome;
  if (there) {
    auto aside = next_backup(cellar_file, BackupReason::put_aside, today);
    if (!aside) return std::unexpected(aside.error());
    if (auto done = put_aside(cellar_file, aside->file); !done) {
      return std::unexpected(done.error());
    }
    outcome.put_aside = aside->file;
  }
  if (auto moved = move_into_place(temporary.path(), cellar_file, Existing::replace); !moved) {
    return std::unexpected(moved.error());
  }
  return outcome;
}

}  // namespace ullage::store
