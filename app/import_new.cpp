// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/import_new.h"

#include "core/store/files.h"

namespace ullage::app {
namespace {

std::unexpected<ImportFailure> fail(store::StoreError error) {
  return std::unexpected(ImportFailure{.file = std::move(error)});
}

}  // namespace

std::expected<std::size_t, ImportFailure> import_new(const std::filesystem::path& from,
                                                     const std::filesystem::path& cellar,
                                                     CellarSession::Tools tools) {
  std::error_code ignored;
  if (std::filesystem::exists(std::filesystem::symlink_status(cellar, ignored))) {
    return fail({store::StoreFault::already_exists, cellar, {}});
  }
  const store::TemporaryFile being_made(cellar, "importing");
  auto made = store::JournalStore::create(being_made.path(), tools.ids.next(), tools.clock.now());
  if (!made) {
    made.error().file = cellar;  // nobody knows the other name
    return fail(std::move(made.error()));
  }
  auto count = store::import_from(*made, from);
  made->close();  // the log goes into the file
  if (!count) return std::unexpected(ImportFailure{.refused = std::move(count.error())});
  if (auto moved = store::move_into_place(being_made.path(), cellar, store::Existing::refuse);
      !moved) {
    return fail(std::move(moved.error()));
  }
  return *count;
}

}  // namespace ullage::app
