// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which entries of the journal the Log page shows.
#pragma once

#include <QString>
#include <QStringList>
#include <optional>
#include <string>
#include <string_view>

#include "core/cellar/journal.h"

namespace ullage::ui {

enum class EntryGroup { all, kegs, beer, gas, lines, places, routine, the_register, corrections };

[[nodiscard]] EntryGroup group_of_kind(std::string_view kind);

struct LogFilter {
  std::optional<cellar::SubjectRef> about;
  EntryGroup group = EntryGroup::all;
  std::string kind;                         // of that kind alone; any when empty
  std::optional<cellar::Instant> from, to;  // happened at, to excluded
  QStringList words;                        // all must occur in the entry's line, any case
  bool with_struck = true;

  // Everything but the words, which need the entry's line first.
  [[nodiscard]] bool admits(const cellar::Entry&, const cellar::Journal&) const;
  [[nodiscard]] bool matches_words(const QString& line) const;
};

}  // namespace ullage::ui
