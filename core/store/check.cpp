// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/check.h"

#include "core/store/connection.h"
#include "core/store/file_probe.h"
#include "core/store/schema.h"
#include "core/store/store_impl.h"
#include "core/store/verified_copy.h"

namespace ullage::store {

namespace {

int asked_to_stop(void* token) {
  return static_cast<std::stop_token*>(token)->stop_requested() ? 1 : 0;
}

Expected<void> quick_check_of(const Connection& db) {
  auto finding = db.text("PRAGMA quick_check(1)");
  if (!finding) return std::unexpected(finding.error());
  if (*finding == "ok") return {};
  return std::unexpected(StoreError{StoreFault::damaged, db.path(), *finding});
}

}  // namespace

Expected<void> JournalStore::quick_check() const { return quick_check_of(impl_->db); }

Expected<void> JournalStore::backup_to(const std::filesystem::path& to) const {
  return verified_copy(impl_->db, to, Existing::refuse);
}

Expected<void> check_file(const std::filesystem::path& path, CheckDepth depth,
                          std::stop_token stop) {
  if (auto probed = probe_file(path); !probed) return std::unexpected(probed.error());
  const Surroundings around = surroundings_of(path);
  const bool alone = (around.medium_read_only || !around.folder_writable) && !has_log(path);
  auto db = Connection::open(path, alone ? ConnectionMode::immutable : ConnectionMode::read_only);
  if (!db) return std::unexpected(db.error());
  sqlite3_progress_handler(db->handle(), 1000, asked_to_stop, &stop);
  if (auto ready = set_up_connection(*db); !ready) return ready;
  auto checked = depth == CheckDepth::quick ? quick_check_of(*db) : full_check(*db);
  sqlite3_progress_handler(db->handle(), 0, nullptr, nullptr);
  if (!checked && stop.stop_requested()) checked.error().fault = StoreFault::cancelled;
  return checked;
}

}  // namespace ullage::store
