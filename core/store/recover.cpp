// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/recover.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

#include "core/store/contents_graft.h"
#include "core/store/exchange_entry.h"
#include "core/store/field_binding.h"
#include "core/store/file_probe.h"
#include "core/store/files.h"
#include "core/store/salvage.h"
#include "core/store/schema.h"
#include "core/store/store_impl.h"
#include "core/store/verified_copy.h"

namespace ullage::store {

namespace {

constexpr std::int64_t entries_a_transaction = 5000;

// Entries that are read whole go into the new cellar; the others into the report.
class Rescue {
 public:
  Rescue(Salvage& from, OpenStore& to, const RecoverOptions& options, RecoveryReport& report)
      : from_(from), to_(to), options_(options), report_(report) {}

  Expected<void> run() {
    const std::int64_t last = from_.last_sequence();
    report_.end_uncertain = from_.end_uncertain();
    for (std::int64_t next = 1; next <= last; next += entries_a_transaction) {
      auto transaction = Transaction::begin(to_.db, Transaction::Kind::write);
      if (!transaction) return std::unexpected(transaction.error());
      const std::int64_t end = std::min(last, next + entries_a_transaction - 1);
      for (std::int64_t sequence = next; sequence <= end; ++sequence) {
        if (auto taken = take(sequence); !taken) return taken;
      }
      if (auto kept = transaction->commit(); !kept) return kept;
      if (options_.progress) options_.progress(end, last);
      if (options_.stop.stop_requested()) {
        return std::unexpected(StoreError{StoreFault::cancelled, report_.new_file, ""});
      }
    }
    return {};
  }

 private:
  Expected<void> take(std::int64_t sequence) {
    Salvage::Found found = from_.at(sequence);
    if (found.lost) report_.lost.push_back(std::move(*found.lost));
    if (!found.entry) return {};
    const cellar::Entry& entry = *found.entry;
    if (!speaks_of_known(entry)) {
      lose(entry, Loss::orphan, "the entry it speaks of is lost");
      return {};
    }
    // A savepoint, so that an entry refused half way leaves nothing behind.
    if (auto set = to_.db.run("SAVEPOINT one"); !set) return set;
    const auto kept = StoreInternals::insert(to_, entry);
    if (!kept) {
      const StoreFault fault = kept.error().fault;
      if (fault != StoreFault::refused_value && fault != StoreFault::duplicate) return kept;
      if (auto undone = to_.db.run("ROLLBACK TO one"); !undone) return undone;
      lose(entry, Loss::refused, kept.error().detail);
    }
    if (auto released = to_.db.run("RELEASE one"); !released) return released;
    if (kept) {
      known_.insert(entry.header.id);
      ++report_.saved;
    }
    return {};
  }

  [[nodiscard]] bool speaks_of_known(const cellar::Entry& entry) const {
    return std::ranges::all_of(entries_named_by(entry),
                               [&](const auto& named) { return known_.contains(named.second); });
  }

  void lose(const cellar::Entry& entry, Loss loss, std::string detail) {
    LostEntry lost;
    lost.sequence = entry.header.sequence;
    lost.loss = loss;
    lost.kind = cellar::kind_of(entry.payload);
    lost.header = entry.header;
    lost.subjects = cellar::subjects_of(entry.payload);
    lost.detail = std::move(detail);
    report_.lost.push_back(std::move(lost));
  }

  Salvage& from_;
  OpenStore& to_;
  const RecoverOptions& options_;
  RecoveryReport& report_;
  std::set<cellar::EntryId> known_;
};

// The damaged file and its log under another name, so that SQLite may do with
// them as it likes.
Expected<void> copy_with_log(const std::filesystem::path& from, const std::filesystem::path& to) {
  if (auto copied = copy_bytes(from, to); !copied) return copied;
  if (!has_log(from)) return {};
  return copy_bytes(from.string() + "-wal", to.string() + "-wal");
}

Expected<Connection> open_damaged(const std::filesystem::path& copy) {
  auto db = Connection::open(copy, ConnectionMode::read_write);
  if (!db) return db;
  // Tolerates, rather than refuses, cells that are not where they should be.
  if (auto set = db->run("PRAGMA cell_size_check = OFF; PRAGMA foreign_keys = OFF"); !set) {
    return std::unexpected(set.error());
  }
  return db;
}

// The identity of the damaged cellar, so that its backups stay its own.
cellar::Uuid identity_of(const Connection& db) {
  cellar::Uuid id;
  if (auto row = db.prepare("SELECT file_id FROM cellar_file")) {
    if (row->step() != SQLITE_ROW || !read_uuid(row->get(), 0, id)) id = {};
  }
  return id;
}

Expected<void> rescue_into(const std::filesystem::path& target, const Connection& damaged,
                           Salvage& salvage, const RecoverOptions& options,
                           RecoveryReport& report) {
  auto db = Connection::open(target, ConnectionMode::create);
  if (!db) return std::unexpected(db.error());
  if (auto ready = set_up_connection(*db); !ready) return ready;
  if (auto made = create_schema(*db, schema_version); !made) return made;
  auto identity = db->prepare("INSERT INTO cellar_file VALUES (1, ?1, 0)");
  if (!identity) return std::unexpected(identity.error());
  const cellar::Uuid id = identity_of(damaged);
  identity->bind(1, std::span<const std::uint8_t>(id.bytes));
  if (const int code = identity->step(); code != SQLITE_DONE) return db->failure(code);
  identity->reset();
  auto store = StoreInternals::around(std::move(*db));
  if (!store) return std::unexpected(store.error());
  return Rescue(salvage, **store, options, report).run();
}

// One way of reading the damaged file, from a fresh copy.
Expected<RecoveryReport> attempt(const std::filesystem::path& damaged,
                                 const std::filesystem::path& new_file, bool rebuild_contents,
                                 const RecoverOptions& options) {
  const TemporaryFile copy(new_file, "damaged");
  if (auto copied = copy_with_log(damaged, copy.path()); !copied) {
    return std::unexpected(copied.error());
  }
  if (rebuild_contents) {
    if (auto grafted = graft_contents(copy.path()); !grafted) {
      return std::unexpected(grafted.error());
    }
  }
  auto db = open_damaged(copy.path());
  if (!db) return std::unexpected(db.error());
  Salvage salvage(*db);
  if (auto ready = salvage.prepare(); !ready) return std::unexpected(ready.error());
  RecoveryReport report;
  report.new_file = new_file;
  report.contents_rebuilt = rebuild_contents;
  const TemporaryFile target(new_file, "recovering");
  if (auto done = rescue_into(target.path(), *db, salvage, options, report); !done) {
    return std::unexpected(done.error());
  }
  if (report.saved == 0) {
    return std::unexpected(StoreError{StoreFault::damaged, damaged, "nothing could be read"});
  }
  if (auto good = verify_cellar(target.path()); !good) return std::unexpected(good.error());
  if (auto moved = move_into_place(target.path(), new_file, Existing::refuse); !moved) {
    return std::unexpected(moved.error());
  }
  return report;
}

std::string listed(const std::map<std::string, std::vector<std::int64_t>>& numbers_by_kind) {
  std::string text;
  for (const auto& [kind, numbers] : numbers_by_kind) {
    std::string list;
    for (std::size_t i = 0; i < numbers.size() && i < 12; ++i) {
      list += fmt::format("{}{}", i == 0 ? "" : ", ", numbers[i]);
    }
    if (numbers.size() > 12) list += fmt::format(" and {} more", numbers.size() - 12);
    text += fmt::format("\n  {} {}: number {}", numbers.size(), kind, list);
  }
  return text;
}

}  // namespace

Expected<RecoveryReport> recover(const std::filesystem::path& damaged,
                                 const std::filesystem::path& new_file,
                                 const RecoverOptions& options) {
  auto probed = probe_file(damaged);
  if (!probed && probed.error().fault != StoreFault::damaged &&
      probed.error().fault != StoreFault::not_ours) {
    return std::unexpected(probed.error());
  }
  std::error_code ignored;
  if (std::filesystem::exists(new_file, ignored)) {
    return std::unexpected(StoreError{StoreFault::already_exists, new_file, ""});
  }
  // An SQLite file of another program is whole, and none of our business.
  if (!probed && is_foreign_sqlite(damaged)) return std::unexpected(probed.error());
  auto report = attempt(damaged, new_file, false, options);
  const auto gave_up = [&] {
    return !report && report.error().fault != StoreFault::damaged &&
           report.error().fault != StoreFault::device_error;
  };
  if (report || gave_up()) return report;
  report = attempt(damaged, new_file, true, options);
  if (!report && !gave_up() && !probed) return std::unexpected(probed.error());
  return report;
}

std::string summary(const RecoveryReport& report) {
  std::string text =
      fmt::format("{} {} saved.", report.saved, report.saved == 1 ? "entry was" : "entries were");
  if (report.lost.empty()) {
    text += " Nothing that was seen is lost.";
  } else {
    std::map<std::string, std::vector<std::int64_t>> numbers_by_kind;
    for (const LostEntry& lost : report.lost) {
      numbers_by_kind[lost.kind.empty() ? "of unknown kind" : lost.kind].push_back(lost.sequence);
    }
    text += fmt::format(" {} could not be:", report.lost.size()) + listed(numbers_by_kind);
  }
  if (report.end_uncertain) {
    text +=
        "\nThe end of the journal is among what is broken: entries after the last one shown "
        "may be missing too.";
  }
  return text;
}

}  // namespace ullage::store
