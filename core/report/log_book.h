// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every log over a period and every list of now, by name: the one choice that the
// previews and the command line share.
#pragma once

#include <optional>
#include <string>

#include "core/report/due_sheet.h"
#include "core/report/table_sheet.h"

namespace ullage::report {

enum class LogBook {
  line_cleaning,
  temperature,
  gas,
  wastage,
  round,
  custody,
  kegs,
  lines,
  rules,
  batches,
  recall,
  due,
  all,
  // What the cellar owns.
  bottles,
  regulators,
  places,
  instruments,
  hose,
  beers
};
// The others tell of now.
[[nodiscard]] bool over_a_period(LogBook);

// What a book is asked for; it looks at what it needs alone.
struct BookAsked {
  LogBook book = LogBook::line_cleaning;
  Period period{};                       // of one over a period
  int within_days = usually_due_within;  // of what is due
  std::optional<cellar::BatchId> batch;  // of a recall; without one the list says so
};
[[nodiscard]] TableSheet book_sheet(const BookAsked&, const cellar::Journal&,
                                    const cellar::CellarStatus&, const Speaker&,
                                    const std::string& by);

}  // namespace ullage::report
