// SPDX-License-Identifier: GPL-3.0-or-later
//
// Making and opening a cellar file. The order matters: nothing is written, and
// SQLite is not even let near the file, before it is known to be ours.
#include <fmt/format.h>

#include "core/store/field_binding.h"
#include "core/store/file_probe.h"
#include "core/store/files.h"
#include "core/store/migration.h"
#include "core/store/schema.h"
#include "core/store/store_impl.h"

namespace ullage::store {

namespace {

std::unexpected<StoreError> fail(StoreFault fault, const std::filesystem::path& path,
                                 std::string detail) {
  return std::unexpected(StoreError{fault, path, std::move(detail)});
}

Access access_for(const OpenOptions& options, const Surroundings& around) {
  if (options.read_only) return Access::read_only_asked;
  if (around.medium_read_only) return Access::read_only_medium;
  if (!around.file_writable || !around.folder_writable) return Access::read_only_permission;
  return Access::read_write;
}

// Immutable means: nothing can change the file and nothing is made beside it.
Expected<Connection> connect(const std::filesystem::path& path, Access access,
                             const OpenOptions& options, const Surroundings& around) {
  ConnectionMode mode = ConnectionMode::read_only;
  if (access == Access::read_write) mode = ConnectionMode::read_write;
  const bool nothing_beside =
      around.medium_read_only || !around.folder_writable || around.on_network;
  if (nothing_beside) {
    if (has_log(path)) {
      return fail(StoreFault::read_only_needs_copy, path, "a log beside it must be played back");
    }
    mode = ConnectionMode::immutable;
  }
  return Connection::open(path, mode, options.vfs, options.wait_for_lock);
}

Expected<void> settle_version(const Connection& db, Access access, const OpenOptions& options) {
  auto version = db.number("PRAGMA user_version");
  if (!version) return std::unexpected(version.error());
  if (*version > schema_version) {
    return fail(StoreFault::newer_version, db.path(),
                fmt::format("schema {}, this program knows up to {}", *version, schema_version));
  }
  if (*version < 1) return fail(StoreFault::damaged, db.path(), "schema number out of range");
  if (*version == schema_version) return {};
  if (access != Access::read_write || !options.migrate_at) {
    return fail(StoreFault::older_version, db.path(),
                fmt::format("schema {}, wanted {}", *version, schema_version));
  }
  return migrate(db, released_steps(), options.migrate_at->today);
}

// WAL: readers and a writer do not wait for one another, and a commit is one
// sync. The setting is kept in the file; a backup or an import comes without.
Expected<void> use_log(const Connection& db) {
  auto mode = db.text("PRAGMA journal_mode = WAL");
  if (!mode) return std::unexpected(mode.error());
  if (*mode != "wal") {
    return fail(StoreFault::device_error, db.path(), "write-ahead log refused: " + *mode);
  }
  return {};
}

Expected<void> set_up(const Connection& db, const OpenOptions& options) {
  auto ready = set_up_connection(db);
  if (!ready || !options.throwaway) return ready;
  return db.run("PRAGMA synchronous = OFF");
}

std::filesystem::path real_path(const std::filesystem::path& path) {
  std::error_code error;
  auto real = std::filesystem::weakly_canonical(path, error);
  return error ? std::filesystem::absolute(path) : real;
}

}  // namespace

Expected<void> StoreInternals::read_identity(OpenStore& store) {
  auto row = store.db.prepare("SELECT file_id FROM cellar_file");
  if (!row) return std::unexpected(row.error());
  int code = row->step();
  if (code != SQLITE_ROW || !read_uuid(row->get(), 0, store.file_id)) {
    return code == SQLITE_ROW || code == SQLITE_DONE
               ? Expected<void>(fail(StoreFault::damaged, store.path, "no identity"))
               : store.db.failure(code);
  }
  const auto& kinds = kind_table();
  store.code_of_kind.assign(kinds.size(), -1);
  auto codes = store.db.prepare("SELECT code, word FROM kind ORDER BY code");
  if (!codes) return std::unexpected(codes.error());
  for (code = codes->step(); code == SQLITE_ROW; code = codes->step()) {
    const std::int64_t number = codes->integer(0);
    if (number < 0 || number > 10'000) continue;
    store.kind_of_code.resize(static_cast<std::size_t>(number) + 1, -1);
    for (std::size_t k = 0; k < kinds.size(); ++k) {
      if (kinds[k].kind != codes->text(1)) continue;
      store.kind_of_code.back() = static_cast<int>(k);
      store.code_of_kind[k] = number;
    }
  }
  if (code != SQLITE_DONE) return store.db.failure(code);
  for (std::size_t k = 0; k < kinds.size(); ++k) {
    if (store.code_of_kind[k] < 0) {
      return fail(StoreFault::damaged, store.path, fmt::format("kind {} unknown", kinds[k].kind));
    }
  }
  store.insert_payload.resize(kinds.size());
  return {};
}

Expected<std::unique_ptr<OpenStore>> StoreInternals::around(Connection db) {
  auto impl = std::make_unique<OpenStore>();
  impl->path = db.path();
  impl->db = std::move(db);
  if (auto read = read_identity(*impl); !read) return std::unexpected(read.error());
  return impl;
}

Expected<JournalStore> JournalStore::open(const std::filesystem::path& named,
                                          const OpenOptions& options) {
  const std::filesystem::path path = real_path(named);
  if (auto probed = probe_file(path); !probed) return std::unexpected(probed.error());
  const Surroundings around = options.surroundings(path);
  if (around.on_network && !(options.read_only && options.allow_network_read_only)) {
    return fail(StoreFault::network_file_system, path, around.file_system);
  }
  const Access access = access_for(options, around);
  auto db = connect(path, access, options, around);
  if (!db) return std::unexpected(db.error());
  if (auto ready = set_up(*db, options); !ready) return std::unexpected(ready.error());
  if (auto settled = settle_version(*db, access, options); !settled) {
    return std::unexpected(settled.error());
  }
  if (access == Access::read_write) {
    if (auto logged = use_log(*db); !logged) return std::unexpected(logged.error());
  }
  auto impl = StoreInternals::around(std::move(*db));
  if (!impl) return std::unexpected(impl.error());
  (*impl)->access = access;
  JournalStore store = StoreInternals::make(std::move(*impl));
  if (auto seen = store.changed_elsewhere(); !seen) return std::unexpected(seen.error());
  std::error_code ignored;
  if (std::filesystem::file_size(path, ignored) <= options.quick_check_up_to) {
    if (auto sound = store.quick_check(); !sound) return std::unexpected(sound.error());
    store.impl_->checked_at_open = true;
  }
  return store;
}

// Built under another name, complete and on the disk, then given its own.
Expected<JournalStore> JournalStore::create(const std::filesystem::path& named,
                                            cellar::Uuid file_id, cellar::Instant now,
                                            const OpenOptions& options) {
  const std::filesystem::path path = real_path(named);
  std::error_code ignored;
  if (std::filesystem::exists(std::filesystem::symlink_status(path, ignored))) {
    return fail(StoreFault::already_exists, path, "");
  }
  const Surroundings around = options.surroundings(path);
  if (around.on_network) return fail(StoreFault::network_file_system, path, around.file_system);
  if (around.medium_read_only) return fail(StoreFault::read_only, path, "read-only medium");
  const TemporaryFile temporary(path, "new");
  {
    auto db = Connection::open(temporary.path(), ConnectionMode::create, options.vfs,
                               options.wait_for_lock);
    if (!db) return std::unexpected(db.error());
    if (auto ready = set_up(*db, options); !ready) return std::unexpected(ready.error());
    if (auto made = create_schema(*db, schema_version); !made) {
      return std::unexpected(made.error());
    }
    auto identity = db->prepare("INSERT INTO cellar_file VALUES (1, ?1, ?2)");
    if (!identity) return std::unexpected(identity.error());
    identity->bind(1, std::span<const std::uint8_t>(file_id.bytes));
    identity->bind(2, static_cast<std::int64_t>(now.time_since_epoch().count()));
    if (const int code = identity->step(); code != SQLITE_DONE) return db->failure(code);
  }
  const Flush flush = options.throwaway ? Flush::no : Flush::yes;
  if (auto moved = move_into_place(temporary.path(), path, Existing::refuse, flush); !moved) {
    return std::unexpected(moved.error());
  }
  return open(path, options);
}

JournalStore::JournalStore(std::unique_ptr<OpenStore> impl) : impl_(std::move(impl)) {}
JournalStore::JournalStore(JournalStore&&) noexcept = default;
JournalStore& JournalStore::operator=(JournalStore&&) noexcept = default;
JournalStore::~JournalStore() = default;

void JournalStore::close() { impl_.reset(); }
Access JournalStore::access() const { return impl_->access; }
bool JournalStore::checked_at_open() const { return impl_->checked_at_open; }
const std::filesystem::path& JournalStore::path() const { return impl_->path; }
cellar::Uuid JournalStore::file_id() const { return impl_->file_id; }

}  // namespace ullage::store
