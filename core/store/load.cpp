// SPDX-License-Identifier: GPL-3.0-or-later
//
// Reading the journal. The header table and each kind's table are walked forward
// once, in step: every row of a kind's table belongs to the next header of that
// kind, so nothing is looked up and nothing sorted.
#include <fmt/format.h>
#include <sys/mman.h>

#include <memory>
#include <tuple>

#include "core/store/field_binding.h"
#include "core/store/store_impl.h"

namespace ullage::store {

namespace {

using cellar::Entry;

// Fresh memory is handed out page by page as it is first written to, which for a large
// journal takes as long as half of reading it. Asks for large pages in the room that
// waits there; advice only, so it does not matter when there are none.
void expect_to_fill(std::vector<Entry>& room) {
  constexpr std::size_t large_page = 2U << 20U;
  void* at = room.data();
  std::size_t left = room.capacity() * sizeof(Entry);
  if (std::align(large_page, large_page, at, left) == nullptr) return;
  std::ignore = ::madvise(at, left / large_page * large_page, MADV_HUGEPAGE);
}

class JournalReader {
 public:
  JournalReader(const OpenStore& store, std::int64_t after)
      : store_(store), after_(after), cursors_(kind_table().size()) {}

  Expected<std::vector<Entry>> read() {
    auto transaction = Transaction::begin(store_.db, Transaction::Kind::read);
    if (!transaction) return std::unexpected(transaction.error());
    auto entries = read_all();
    if (!entries) return entries;
    if (auto whole = nothing_left_over(); !whole) return std::unexpected(whole.error());
    if (auto done = transaction->commit(); !done) return std::unexpected(done.error());
    return entries;
  }

 private:
  [[nodiscard]] StoreError damage(const std::string& what) const {
    return {StoreFault::damaged, store_.path, what};
  }

  Expected<std::vector<Entry>> read_all() {
    auto count = store_.db.number(
        fmt::format("SELECT max(0, coalesce(max(sequence), 0) - {}) FROM entry", after_));
    if (!count) return std::unexpected(count.error());
    auto headers = store_.db.prepare(
        fmt::format("SELECT {} FROM entry WHERE sequence > ?1 ORDER BY sequence", entry_columns));
    if (!headers) return std::unexpected(headers.error());
    headers->bind(1, after_);
    std::vector<Entry> entries;
    entries.reserve(std::min<std::size_t>(static_cast<std::size_t>(*count), 1U << 22U));
    expect_to_fill(entries);
    int code = headers->step();
    for (; code == SQLITE_ROW; code = headers->step()) {
      if (auto read = read_entry(headers->get(), entries); !read) {
        return std::unexpected(read.error());
      }
    }
    if (code != SQLITE_DONE) return store_.db.failure(code);
    return entries;
  }

  Expected<void> read_entry(sqlite3_stmt* row, std::vector<Entry>& into) {
    cellar::EntryHeader header;
    const std::int64_t code = read_header(row, header);
    const std::int64_t sequence = header.sequence;
    if (code < 0 || code >= std::ssize(store_.kind_of_code) ||
        store_.kind_of_code[static_cast<std::size_t>(code)] < 0) {
      return std::unexpected(damage(fmt::format("entry {}: its header makes no sense", sequence)));
    }
    const auto kind = static_cast<std::size_t>(store_.kind_of_code[static_cast<std::size_t>(code)]);
    const KindOps& ops = kind_table()[kind];
    auto cursor = cursor_of(kind);
    if (!cursor) return std::unexpected(cursor.error());
    const int step = (*cursor)->step();
    if (step != SQLITE_ROW && step != SQLITE_DONE) return store_.db.failure(step);
    if (step == SQLITE_DONE || (*cursor)->integer(0) != sequence) {
      return std::unexpected(
          damage(fmt::format("entry {}: no row of its own in {}", sequence, ops.kind)));
    }
    // Made where it stays, of its kind from the start: entries are large, and many.
    Entry& entry = into.emplace_back(std::move(header), ops.blank);
    if (const auto field = read_payload((*cursor)->get(), entry.payload); !field.empty()) {
      return std::unexpected(
          damage(fmt::format("entry {}: {}.{} makes no sense", sequence, ops.kind, field)));
    }
    return {};
  }

  Expected<Statement*> cursor_of(std::size_t kind) {
    Statement& cursor = cursors_[kind];
    if (cursor) return &cursor;
    const KindOps& ops = kind_table()[kind];
    auto made =
        store_.db.prepare(fmt::format("SELECT {} FROM {} WHERE sequence > ?1 ORDER BY sequence",
                                      ops.select_list, quoted(ops.kind)));
    if (!made) return std::unexpected(made.error());
    made->bind(1, after_);
    cursor = std::move(*made);
    return &cursor;
  }

  // A payload whose header is gone would show as a row that nobody asked for.
  Expected<void> nothing_left_over() {
    for (std::size_t kind = 0; kind < cursors_.size(); ++kind) {
      auto cursor = cursor_of(kind);
      if (!cursor) return std::unexpected(cursor.error());
      const int step = (*cursor)->step();
      if (step == SQLITE_ROW) {
        return std::unexpected(damage(fmt::format("entry {}: a row in {} without a header",
                                                  (*cursor)->integer(0), kind_table()[kind].kind)));
      }
      if (step != SQLITE_DONE) return store_.db.failure(step);
    }
    return {};
  }

  const OpenStore& store_;
  std::int64_t after_;
  std::vector<Statement> cursors_;
};

}  // namespace

std::int64_t read_header(sqlite3_stmt* row, cellar::EntryHeader& header) {
  FieldReader reader{row, 0};
  std::int64_t kind = -1;
  std::int64_t offset_min = 0;
  reader("sequence", header.sequence);
  reader("id", header.id);
  reader("act", header.act);
  reader("kind", kind);
  reader("happened_at_utc_s", header.happened_at);
  reader("recorded_at_utc_s", header.recorded_at);
  reader("utc_offset_min", offset_min);
  reader("by_initials", header.by);
  reader("replaces", header.replaces);
  reader("note", header.note);
  header.utc_offset = cellar::UtcOffset(offset_min);
  return reader.fault.empty() ? kind : -1;
}

Expected<std::vector<Entry>> JournalStore::load() const { return load_after(0); }

Expected<std::vector<Entry>> JournalStore::load_after(std::int64_t sequence) const {
  return JournalReader(*impl_, sequence).read();
}

Expected<std::int64_t> JournalStore::last_sequence() const {
  return impl_->db.number("SELECT coalesce(max(sequence), 0) FROM entry");
}

Expected<std::vector<std::int64_t>> JournalStore::sequences_about(
    cellar::SubjectRef subject) const {
  auto statement =
      impl_->db.prepare("SELECT sequence FROM subject WHERE uuid = ?1 ORDER BY sequence");
  if (!statement) return std::unexpected(statement.error());
  statement->bind(1, std::span<const std::uint8_t>(subject.uuid.bytes));
  std::vector<std::int64_t> found;
  int code = statement->step();
  for (; code == SQLITE_ROW; code = statement->step()) found.push_back(statement->integer(0));
  if (code != SQLITE_DONE) return impl_->db.failure(code);
  return found;
}

Expected<bool> JournalStore::changed_elsewhere() {
  if (!impl_->read_data_version) {
    auto made = impl_->db.prepare("PRAGMA data_version");
    if (!made) return std::unexpected(made.error());
    impl_->read_data_version = std::move(*made);
  }
  Statement& statement = impl_->read_data_version;
  const int code = statement.step();
  const std::int64_t now = code == SQLITE_ROW ? statement.integer(0) : 0;
  statement.reset();
  if (code != SQLITE_ROW) return impl_->db.failure(code);
  const bool changed = now != impl_->data_version;
  impl_->data_version = now;
  return changed;
}

}  // namespace ullage::store
