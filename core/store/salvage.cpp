// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/salvage.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <utility>

#include "core/store/field_binding.h"
#include "core/store/kind_table.h"
#include "core/store/store_impl.h"

namespace ullage::store {

namespace {

// A file's kinds are numbered in the order of its schema, so when the table that
// says so is broken the order is known all the same.
std::vector<int> kinds_in_order(const Connection& db) {
  std::vector<int> of_code;
  const auto& kinds = kind_table();
  const auto put = [&](std::int64_t code, std::size_t kind) {
    if (code < 0 || code > 10'000) return;
    const auto at = static_cast<std::size_t>(code);
    if (of_code.size() <= at) of_code.resize(at + 1, -1);
    of_code[at] = static_cast<int>(kind);
  };
  if (auto codes = db.prepare("SELECT code, word FROM kind")) {
    while (codes->step() == SQLITE_ROW) {
      const auto at = std::ranges::find(kinds, codes->text(1), &KindOps::kind);
      if (at != kinds.end()) {
        put(codes->integer(0), static_cast<std::size_t>(at - kinds.begin()));
      }
    }
  }
  const auto known = std::ranges::count_if(of_code, [](int k) { return k >= 0; });
  if (known == std::ssize(kinds)) return of_code;
  of_code.clear();
  for (std::size_t k = 0; k < kinds.size(); ++k) put(static_cast<std::int64_t>(k) + 1, k);
  return of_code;
}

cellar::SubjectKind subject_kind_of(std::string_view word) {
  using enum cellar::SubjectKind;
  constexpr std::array kinds = {std::pair{std::string_view("keg"), keg},
                                std::pair{std::string_view("beer"), beer},
                                std::pair{std::string_view("batch"), batch},
                                std::pair{std::string_view("place"), place},
                                std::pair{std::string_view("line"), line},
                                std::pair{std::string_view("bottle"), bottle},
                                std::pair{std::string_view("regulator"), regulator},
                                std::pair{std::string_view("instrument"), instrument}};
  const auto* const at =
      std::ranges::find(kinds, word, &std::pair<std::string_view, cellar::SubjectKind>::first);
  return at == kinds.end() ? cellar : at->second;
}

}  // namespace

Expected<void> Salvage::prepare() {
  auto header = db_.prepare(
      fmt::format("SELECT {} FROM entry NOT INDEXED WHERE sequence = ?1", entry_columns));
  if (!header) return std::unexpected(header.error());
  header_ = std::move(*header);
  kind_of_code_ = kinds_in_order(db_);
  find_end("entry");
  for (const KindOps& ops : kind_table()) {
    auto payload = db_.prepare(
        fmt::format("SELECT {} FROM {} WHERE sequence = ?1", ops.select_list, quoted(ops.kind)));
    payload_.push_back(payload ? std::move(*payload) : Statement());
    find_end(quoted(ops.kind));
  }
  return {};
}

void Salvage::find_end(const std::string& table) {
  auto last = db_.prepare(
      fmt::format("SELECT sequence FROM {} NOT INDEXED ORDER BY sequence DESC LIMIT 1", table));
  const int code = last ? last->step() : SQLITE_ERROR;
  if (code == SQLITE_ROW) {
    // A number beyond any cellar's is itself damage.
    constexpr std::int64_t believable = 100'000'000;
    const std::int64_t seen = last->integer(0);
    if (seen > 0 && seen <= believable) {
      last_ = std::max(last_, seen);
    } else {
      end_uncertain_ = true;
    }
  } else if (code != SQLITE_DONE) {
    end_uncertain_ = true;
    // The end is on a broken page: walk forward as far as it goes.
    auto forward = db_.prepare(fmt::format(
        "SELECT sequence FROM {} NOT INDEXED WHERE sequence > ?1 ORDER BY sequence", table));
    if (!forward) return;
    forward->bind(1, std::int64_t{0});
    while (forward->step() == SQLITE_ROW) last_ = std::max(last_, forward->integer(0));
  }
}

Salvage::Row Salvage::step(Statement& statement, std::int64_t sequence) {
  statement.reset();
  statement.bind(1, sequence);
  const int code = statement.step();
  if (code == SQLITE_ROW) return Row::there;
  return code == SQLITE_DONE ? Row::none : Row::broken;
}

std::vector<cellar::SubjectRef> Salvage::subjects_at(std::int64_t sequence) {
  if (!subjects_) {
    subjects_.emplace();
    auto rows = db_.prepare("SELECT sequence, uuid, subject_kind FROM subject");
    while (rows && rows->step() == SQLITE_ROW) {
      cellar::SubjectRef about;
      if (!read_uuid(rows->get(), 1, about.uuid)) continue;
      about.kind = subject_kind_of(rows->text(2));
      subjects_->emplace(rows->integer(0), about);
    }
  }
  std::vector<cellar::SubjectRef> found;
  const auto [first, last] = subjects_->equal_range(sequence);
  for (auto at = first; at != last; ++at) found.push_back(at->second);
  return found;
}

Salvage::Found Salvage::without_header(std::int64_t sequence, bool broken) {
  LostEntry lost;
  lost.sequence = sequence;
  lost.loss = Loss::header;
  for (std::size_t k = 0; k < payload_.size(); ++k) {
    if (!payload_[k] || step(payload_[k], sequence) != Row::there) continue;
    lost.kind = kind_table()[k].kind;
    payload_[k].reset();
  }
  if (lost.kind.empty() && !broken) return {};
  lost.subjects = subjects_at(sequence);
  lost.detail = "its header cannot be read";
  return {std::nullopt, std::move(lost)};
}

const RawHeader* Salvage::raw_header(std::int64_t sequence) {
  if (!raw_) {
    // The log, if any, must be in the file to be seen there.
    const auto folded = db_.run("PRAGMA wal_checkpoint(TRUNCATE)");
    raw_ = folded ? raw_headers(db_.path()) : std::unordered_map<std::int64_t, RawHeader>();
  }
  const auto at = raw_->find(sequence);
  return at == raw_->end() ? nullptr : &at->second;
}

Salvage::Found Salvage::at(std::int64_t sequence) {
  const Row row = step(header_, sequence);
  cellar::Entry entry;
  std::int64_t code = -1;
  if (row == Row::there) {
    code = read_header(header_.get(), entry.header);
    header_.reset();
  } else if (const RawHeader* raw = row == Row::broken ? raw_header(sequence) : nullptr) {
    code = raw->kind;
    entry.header = raw->header;
  } else {
    return without_header(sequence, row == Row::broken);
  }
  const bool known = code >= 0 && code < std::ssize(kind_of_code_) &&
                     kind_of_code_[static_cast<std::size_t>(code)] >= 0;
  if (!known || entry.header.sequence != sequence) return without_header(sequence, true);
  const auto kind = static_cast<std::size_t>(kind_of_code_[static_cast<std::size_t>(code)]);
  const KindOps& ops = kind_table()[kind];
  LostEntry lost;
  lost.sequence = sequence;
  lost.loss = Loss::payload;
  lost.kind = ops.kind;
  lost.header = entry.header;
  Row payload = Row::broken;
  if (payload_[kind]) payload = step(payload_[kind], sequence);
  if (payload == Row::there) {
    entry.payload = ops.blank;
    const std::string_view bad = read_payload(payload_[kind].get(), entry.payload);
    payload_[kind].reset();
    if (bad.empty()) return {std::move(entry), std::nullopt};
    lost.detail = fmt::format("{} makes no sense", bad);
  } else {
    lost.detail = payload == Row::none ? "its row is missing" : "its row cannot be read";
  }
  lost.subjects = subjects_at(sequence);
  return {std::nullopt, std::move(lost)};
}

}  // namespace ullage::store
