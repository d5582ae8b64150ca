// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which entries of the journal the Log page shows.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/cellar/journal.h"
#include "ui/models/word_search.h"

namespace ullage::ui {

enum class EntryGroup { all, kegs, beer, gas, lines, places, routine, the_register, corrections };

[[nodiscard]] EntryGroup group_of_kind(std::string_view kind);

struct LogFilter {
  std::optional<cellar::SubjectRef> about;
  EntryGroup group = EntryGroup::all;
  std::string kind;                         // of that kind alone; any when empty
  std::optional<cellar::Instant> from, to;  // happened at, to excluded
  WordSearch words;                         // found in the entry's line
  bool with_struck = true;

  // Everything but the words, which need the entry's line first.
  [[nodiscard]] bool admits(const cellar::Entry&, const cellar::Journal&) const;
};

}  // namespace ullage::ui
