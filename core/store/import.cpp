// SPDX-License-Identifier: GPL-3.0-or-later
//
// From exchange text to entries, and into a store. Everything is checked before
// anything is written: form, names, types, references, and, by keeping the
// entries in an empty cellar in memory, every rule of the schema.
#include <fmt/format.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <set>
#include <unordered_map>
#include <unordered_set>

#include "core/store/exchange.h"
#include "core/store/exchange_entry.h"
#include "core/store/exchange_reader.h"
#include "core/store/schema.h"
#include "core/store/store_impl.h"

namespace ullage::store {

namespace {

struct Located {
  std::size_t line = 0;
  std::size_t number = 0;
};
struct ImportedEntries {
  std::vector<cellar::Entry> entries;
  std::vector<Located> where;  // of each entry
};

// Sequences rise, ids come once, and entries speak of earlier ones only.
void check_order(const ImportedEntries& in, ProblemList& problems) {
  std::unordered_set<cellar::EntryId> known;
  std::int64_t last = 0;
  for (std::size_t i = 0; i < in.entries.size() && !problems.full(); ++i) {
    const auto [line, number] = in.where[i];
    const cellar::EntryHeader& header = in.entries[i].header;
    if (header.sequence <= last) {
      problems.add(
          {line, number, "sequence",
           fmt::format("Sequence numbers must rise; {} follows {}.", header.sequence, last)});
    }
    last = std::max(last, header.sequence);
    for (const auto& [field, id] : entries_named_by(in.entries[i])) {
      if (known.contains(id)) continue;
      problems.add({line, number, field,
                    fmt::format("There is no earlier entry {}.", cellar::to_text(id.uuid))});
    }
    if (!known.insert(header.id).second) {
      problems.add({line, number, "id",
                    fmt::format("The id {} comes twice.", cellar::to_text(header.id.uuid))});
    }
  }
}

// "gravity_read: CHECK constraint failed: temperature_k > 0 (275)" -> the rule.
std::string rule_in(const std::string& detail) {
  static constexpr std::string_view mark = "constraint failed: ";
  const std::size_t at = detail.find(mark);
  if (at == std::string::npos) return detail;
  std::string rule = detail.substr(at + mark.size());
  if (const std::size_t code = rule.rfind(" ("); code != std::string::npos) rule.resize(code);
  return rule;
}

// Keeps each entry in a cellar in memory; what the schema refuses is a problem.
Expected<void> try_out(const ImportedEntries& in, ProblemList& problems) {
  auto db = Connection::open("the import", ConnectionMode::in_memory);
  if (!db) return std::unexpected(db.error());
  if (auto made = create_schema(*db, schema_version); !made) return made;
  auto identity = db->run(
      "INSERT INTO cellar_file VALUES (1, zeroblob(16), 0); "
      "PRAGMA foreign_keys = OFF");
  if (!identity) return identity;
  auto staged = StoreInternals::around(std::move(*db));
  if (!staged) return std::unexpected(staged.error());
  auto transaction = Transaction::begin((*staged)->db, Transaction::Kind::write);
  if (!transaction) return std::unexpected(transaction.error());
  for (std::size_t i = 0; i < in.entries.size() && !problems.full(); ++i) {
    const auto kept = StoreInternals::insert(**staged, in.entries[i]);
    if (kept || kept.error().fault == StoreFault::duplicate) continue;
    if (kept.error().fault != StoreFault::refused_value) return kept;
    const std::string rule = rule_in(kept.error().detail);
    const std::string field = rule.substr(0, rule.find(' '));
    problems.add({in.where[i].line, in.where[i].number, field,
                  fmt::format("It holds a value that can never be true; the rule is: {}.", rule)});
  }
  return {};
}

std::expected<ImportedEntries, ImportRefusal> parse(std::string_view text) {
  ProblemList problems;
  ImportedEntries in;
  read_exchange(text, problems, [&](const RawEntry& raw) {
    if (auto entry = entry_from(raw, problems)) {
      in.entries.push_back(std::move(*entry));
      in.where.push_back({raw.line, raw.number});
    }
  });
  // References are only judged when all entries could be read: one that could
  // not would make others seem to speak of nothing.
  if (problems.empty()) check_order(in, problems);
  if (problems.empty()) {
    if (auto tried = try_out(in, problems); !tried) {
      problems.add({0, 0, "", describe(tried.error())});
    }
  }
  if (problems.empty()) return in;
  return std::unexpected(problems.take());
}

std::unexpected<ImportRefusal> refuse(const StoreError& error) {
  return std::unexpected(ImportRefusal{{{0, 0, "", describe(error)}}, false});
}

std::expected<std::string, ImportRefusal> whole_file(const std::filesystem::path& path) {
  std::error_code error;
  const auto size = std::filesystem::file_size(path, error);
  if (error) return refuse({StoreFault::absent, path, error.message()});
  if (size > import_size_limit) {
    return std::unexpected(ImportRefusal{
        {{0, 0, "", "It is larger than 1 GiB, more than any cellar comes to."}}, false});
  }
  std::ifstream in(path, std::ios::binary);
  std::string text(static_cast<std::size_t>(size), '\0');
  in.read(text.data(), static_cast<std::streamsize>(size));
  if (!in) return refuse({StoreFault::unreadable, path, ""});
  return text;
}

// Entries of the file that the store has already.
void check_against(const OpenStore& store, const ImportedEntries& in, ProblemList& problems) {
  auto there = store.db.prepare("SELECT 1 FROM entry WHERE id = ?1");
  if (!there) {
    problems.add({0, 0, "", describe(there.error())});
    return;
  }
  for (std::size_t i = 0; i < in.entries.size() && !problems.full(); ++i) {
    there->bind(1, std::span<const std::uint8_t>(in.entries[i].header.id.uuid.bytes));
    const int code = there->step();
    there->reset();
    if (code == SQLITE_ROW) {
      problems.add(
          {in.where[i].line, in.where[i].number, "id", "This entry is in the cellar already."});
    }
  }
}

}  // namespace

std::string describe(const ImportProblem& problem) {
  std::string place;
  if (problem.line > 0) place = fmt::format("Line {}", problem.line);
  if (problem.entry > 0) place += fmt::format(", entry {}", problem.entry);
  if (!problem.field.empty()) place += fmt::format(", {}", problem.field);
  return place.empty() ? problem.what : place + ": " + problem.what;
}

std::expected<std::vector<cellar::Entry>, ImportRefusal> from_exchange(std::string_view text) {
  auto in = parse(text);
  if (!in) return std::unexpected(std::move(in.error()));
  return std::move(in->entries);
}

std::expected<std::size_t, ImportRefusal> import_from(JournalStore& store,
                                                      const std::filesystem::path& path) {
  auto text = whole_file(path);
  if (!text) return std::unexpected(text.error());
  auto in = parse(*text);
  if (!in) return std::unexpected(std::move(in.error()));
  OpenStore& impl = StoreInternals::impl(store);
  ProblemList problems;
  check_against(impl, *in, problems);
  if (!problems.empty()) return std::unexpected(problems.take());
  const auto last = store.last_sequence();
  if (!last) return refuse(last.error());
  const auto kept = StoreInternals::append(impl, in->entries,
                                           *last == 0 ? Numbering::as_given : Numbering::next_free);
  if (!kept) return refuse(kept.error());
  return in->entries.size();
}

}  // namespace ullage::store
