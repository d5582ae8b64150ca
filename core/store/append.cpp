// SPDX-License-Identifier: GPL-3.0-or-later
//
// Adding entries: one transaction an act, numbered by the file.
#include <fmt/format.h>

#include <set>

#include "core/store/field_binding.h"
#include "core/store/store_impl.h"

namespace ullage::store {

namespace {

std::string_view word_of(cellar::SubjectKind kind) {
  using enum cellar::SubjectKind;
  switch (kind) {
    case keg:
      return "keg";
    case beer:
      return "beer";
    case batch:
      return "batch";
    case place:
      return "place";
    case line:
      return "line";
    case bottle:
      return "bottle";
    case regulator:
      return "regulator";
    case instrument:
      return "instrument";
    case segment:
      return "segment";
    case rule:
      return "rule";
    case cellar:
      return "cellar";
  }
  return "cellar";
}

// The kept statement, made when it is first needed.
Expected<void> ensure(const Connection& db, Statement& statement, std::string_view sql) {
  if (statement) return {};
  auto made = db.prepare(sql);
  if (!made) return std::unexpected(made.error());
  statement = std::move(*made);
  return {};
}

// Steps a statement that gives no rows, and leaves it ready for the next.
Expected<void> run_once(const Connection& db, Statement& statement, const std::string& what) {
  const int code = statement.step();
  if (code == SQLITE_DONE) {
    statement.reset();
    return {};
  }
  StoreError error = db.error(code);
  error.detail = what + ": " + error.detail;
  statement.reset();
  return std::unexpected(std::move(error));
}

std::unexpected<StoreError> refuse(const OpenStore& store, std::string_view table,
                                   std::string_view field, std::string_view why) {
  return std::unexpected(StoreError{StoreFault::refused_value, store.path,
                                    fmt::format("{}.{} {}", table, field, why)});
}

Expected<void> insert_header(OpenStore& store, const cellar::Entry& entry, std::size_t kind) {
  static const std::string sql = fmt::format(
      "INSERT INTO entry ({}) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10)", entry_columns);
  if (auto ready = ensure(store.db, store.insert_entry, sql); !ready) return ready;
  const cellar::EntryHeader& header = entry.header;
  FieldBinder bind{store.insert_entry, 1};
  bind("sequence", header.sequence);
  bind("id", header.id);
  bind("act", header.act);
  bind("kind", store.code_of_kind[kind]);
  bind("happened_at_utc_s", header.happened_at);
  bind("recorded_at_utc_s", header.recorded_at);
  bind("utc_offset_min", static_cast<std::int64_t>(header.utc_offset.count()));
  bind("by_initials", header.by);
  bind("replaces", header.replaces);
  bind("note", header.note);
  if (!bind.fault.empty()) return refuse(store, "entry", bind.fault, bind.why);
  return run_once(store.db, store.insert_entry, "entry");
}

Expected<void> insert_payload(OpenStore& store, const cellar::Entry& entry, std::size_t kind) {
  const KindOps& ops = kind_table()[kind];
  Statement& statement = store.insert_payload[kind];
  if (auto ready = ensure(store.db, statement, ops.insert); !ready) return ready;
  statement.bind(1, entry.header.sequence);
  const BadField bad = bind_payload(statement, entry.payload);
  if (!bad.field.empty()) return refuse(store, ops.kind, bad.field, bad.why);
  return run_once(store.db, statement, std::string(ops.kind));
}

Expected<void> insert_subject(OpenStore& store, std::int64_t sequence,
                              const cellar::SubjectRef& about) {
  if (auto ready = ensure(store.db, store.insert_subject,
                          "INSERT INTO subject (uuid, sequence, subject_kind) VALUES (?1, ?2, ?3)");
      !ready) {
    return ready;
  }
  store.insert_subject.bind(1, std::span<const std::uint8_t>(about.uuid.bytes));
  store.insert_subject.bind(2, sequence);
  store.insert_subject.bind(3, word_of(about.kind));
  return run_once(store.db, store.insert_subject, "subject");
}

Expected<std::int64_t> next_sequence(OpenStore& store) {
  if (auto ready =
          ensure(store.db, store.next_sequence, "SELECT coalesce(max(sequence), 0) + 1 FROM entry");
      !ready) {
    return std::unexpected(ready.error());
  }
  const int code = store.next_sequence.step();
  const std::int64_t next = code == SQLITE_ROW ? store.next_sequence.integer(0) : 0;
  store.next_sequence.reset();
  if (code != SQLITE_ROW) return store.db.failure(code);
  return next;
}

// The things an entry names, each once. A cellar is not an id of its own.
std::set<cellar::SubjectRef> named_by(const cellar::Payload& payload) {
  std::set<cellar::SubjectRef> named;
  for (const cellar::SubjectRef& s : cellar::subjects_of(payload)) named.insert(s);
  for (const cellar::InstrumentId& i : cellar::instruments_of(payload)) {
    named.insert(cellar::subject(i));
  }
  return named;
}

}  // namespace

Expected<void> StoreInternals::insert(OpenStore& store, const cellar::Entry& entry) {
  const std::size_t kind = entry.payload.index();
  if (auto done = insert_header(store, entry, kind); !done) return done;
  if (auto done = insert_payload(store, entry, kind); !done) return done;
  for (const cellar::SubjectRef& about : named_by(entry.payload)) {
    if (auto done = insert_subject(store, entry.header.sequence, about); !done) return done;
  }
  return {};
}

Expected<void> StoreInternals::append(OpenStore& store, std::span<cellar::Entry> entries,
                                      Numbering numbering) {
  if (store.access != Access::read_write) {
    return std::unexpected(StoreError{StoreFault::read_only, store.path, ""});
  }
  if (entries.empty()) return {};
  const auto kept = [&]() -> Expected<void> {
    auto transaction = Transaction::begin(store.db, Transaction::Kind::write);
    if (!transaction) return std::unexpected(transaction.error());
    if (numbering == Numbering::next_free) {
      auto next = next_sequence(store);
      if (!next) return std::unexpected(next.error());
      for (cellar::Entry& entry : entries) entry.header.sequence = (*next)++;
    }
    for (const cellar::Entry& entry : entries) {
      if (auto done = insert(store, entry); !done) return done;
    }
    return transaction->commit();
  }();
  if (!kept && numbering == Numbering::next_free) {
    for (cellar::Entry& entry : entries) entry.header.sequence = 0;
  }
  return kept;
}

Expected<void> JournalStore::append(std::span<cellar::Entry> entries) {
  return StoreInternals::append(*impl_, entries, Numbering::next_free);
}

Expected<void> JournalStore::as_one(const std::function<void()>& appends) {
  auto transaction = Transaction::begin(impl_->db, Transaction::Kind::write);
  if (!transaction) return std::unexpected(transaction.error());
  appends();
  return transaction->commit();
}

}  // namespace ullage::store
