// SPDX-License-Identifier: GPL-3.0-or-later
//
// The store's faults in plain words: what happened, to which file, what to do.
#include <fmt/format.h>

#include "core/store/journal_store.h"
#include "core/store/store_error.h"

namespace ullage::store {

namespace {

std::string words_of_opening(StoreFault fault, const std::string& name) {
  using enum StoreFault;
  switch (fault) {
    case absent:
      return fmt::format("There is no file {}. Check the name, or create a new cellar.", name);
    case not_a_file:
      return fmt::format("{} is a folder or a device, not a cellar file. Choose a file.", name);
    case unreadable:
      return fmt::format(
          "{} is there but cannot be read. Check that the disk is connected, then try again.",
          name);
    case permission:
      return fmt::format(
          "You may not open or change {}. Ask its owner for the right to, or copy it to a folder "
          "of your own.",
          name);
    case not_ours:
      return fmt::format(
          "{} is not a cellar file. It has been left as it was. If it used to be one, restore a "
          "backup or recover what can be read.",
          name);
    case damaged:
      return fmt::format(
          "{} is damaged. Restore a backup, or recover what can still be read into a new file; the "
          "damaged file is kept.",
          name);
    case newer_version:
      return fmt::format(
          "{} was written by a later release of Ullage. It has been left as it was. Open it with "
          "that release, or update this one.",
          name);
    case older_version:
      return fmt::format(
          "{} is from an earlier release and has to be brought up to date before it can be opened, "
          "which cannot be done while it may only be read. Open it for writing, or copy it to a "
          "disk that can be written.",
          name);
    case migration_failed:
      return fmt::format(
          "{} could not be brought up to date. Nothing in it is lost, and a backup from before is "
          "in the folder of backups beside it. Check that there is room on the disk and try again.",
          name);
    case read_only_needs_copy:
      return fmt::format(
          "{} was not closed properly and stands where nothing can be written, so its latest "
          "entries cannot be read from there. Copy it, together with the -wal file beside it, to a "
          "disk that can be written and open the copy.",
          name);
    case network_file_system:
      return fmt::format(
          "{} is on a network drive, where two programs writing at once can destroy it. Move it to "
          "a disk of this computer. It can be opened there for reading only.",
          name);
    default:
      return {};
  }
}

std::string words_of_writing(StoreFault fault, const std::string& name) {
  using enum StoreFault;
  switch (fault) {
    case locked_by_other:
      return fmt::format(
          "Another program is using {} and does not let go. Close the other program or window, "
          "then try again.",
          name);
    case already_exists:
      return fmt::format("There is already a file {}. Choose another name.", name);
    case read_only:
      return fmt::format(
          "{} can only be read here, so nothing was written. Copy it to a disk and folder you may "
          "write to.",
          name);
    case disk_full:
      return fmt::format(
          "The disk is full. Nothing was written to {}, and nothing in it is lost. Make room, then "
          "try again.",
          name);
    case refused_value:
      return fmt::format(
          "Nothing was written to {}: one of the values can never be true. Correct it and try "
          "again.",
          name);
    case duplicate:
      return fmt::format(
          "Nothing was written to {}: an entry with the same identity is there already.", name);
    case backup_failed:
      return fmt::format(
          "The backup {} could not be made, or did not pass its check and was thrown away. Check "
          "the disk it goes to, then try again.",
          name);
    case other_cellar:
      return fmt::format(
          "{} is a backup of another cellar. To look at it, copy it under a name of its own and "
          "open the copy.",
          name);
    case cancelled:
      return fmt::format("Stopped on request. {} is as it was.", name);
    case out_of_memory:
      return fmt::format("There is not enough memory for {}. Close other programs, then try again.",
                         name);
    default:
      return fmt::format(
          "The disk reported an error. Nothing was written to {}. Check the disk, and copy the "
          "file "
          "to another one before going on.",
          name);
  }
}

}  // namespace

std::string describe(const StoreError& error) {
  const std::string name =
      error.file.empty() ? "the file" : fmt::format("“{}”", error.file.filename().string());
  const std::string words = words_of_opening(error.fault, name);
  return words.empty() ? words_of_writing(error.fault, name) : words;
}

std::string describe(Access access) {
  switch (access) {
    case Access::read_write:
      return {};
    case Access::read_only_asked:
      return "Opened for reading only. Nothing can be logged.";
    case Access::read_only_medium:
      return "This cellar is on a medium that cannot be written. Nothing can be logged; copy the "
             "file to a disk to go on with it.";
    case Access::read_only_permission:
      return "You may read this cellar but not change it. Nothing can be logged; ask its owner, or "
             "copy the file to a folder of your own.";
  }
  return {};
}

}  // namespace ullage::store
