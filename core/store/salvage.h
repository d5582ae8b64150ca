// SPDX-License-Identifier: GPL-3.0-or-later
//
// Reading a damaged file row by row, each by its number, so that a broken page
// costs the rows on it and no others.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/cellar/entry.h"
#include "core/store/connection.h"
#include "core/store/raw_headers.h"
#include "core/store/recover.h"

namespace ullage::store {

class Salvage {
 public:
  explicit Salvage(const Connection& db) : db_(db) {}

  // Prepares what is needed; `damaged` when not even the tables' names can be read.
  [[nodiscard]] Expected<void> prepare();

  // The highest sequence seen in any table, as far as that can be read.
  [[nodiscard]] std::int64_t last_sequence() const { return last_; }
  // True when some table's end could not be read.
  [[nodiscard]] bool end_uncertain() const { return end_uncertain_; }

  // What is known of one number: an entry, or how it is lost. Neither when there
  // never was one.
  struct Found {
    std::optional<cellar::Entry> entry;
    std::optional<LostEntry> lost;
  };
  [[nodiscard]] Found at(std::int64_t sequence);

 private:
  enum class Row { there, none, broken };
  [[nodiscard]] Row step(Statement&, std::int64_t sequence);
  void find_end(const std::string& table);
  [[nodiscard]] Found without_header(std::int64_t sequence, bool broken);
  [[nodiscard]] std::vector<cellar::SubjectRef> subjects_at(std::int64_t sequence);

  const Connection& db_;
  Statement header_;
  std::vector<Statement> payload_;  // by kind; empty when its table cannot be used
  // What looking at every page gives; looked for when the first header cannot be read.
  [[nodiscard]] const RawHeader* raw_header(std::int64_t sequence);
  std::optional<std::unordered_map<std::int64_t, RawHeader>> raw_;
  // By sequence; read when the first loss is to be named.
  std::optional<std::unordered_multimap<std::int64_t, cellar::SubjectRef>> subjects_;
  std::vector<int> kind_of_code_;
  std::int64_t last_ = 0;
  bool end_uncertain_ = false;
};

}  // namespace ullage::store
