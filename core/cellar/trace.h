// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which batch was where: from a batch to every keg that holds or held it and
// the lines it went through, and back from a keg to all it has held. Read from
// the journal's own words, whatever else fits or doesn't.
#pragma once

#include <optional>
#include <vector>

#include "core/cellar/journal.h"

namespace ullage::cellar {

// One stay of a batch in a keg.
struct Stint {
  KegId keg;
  BatchId batch;
  Instant from{};             // filled, received, or found in it
  std::optional<Instant> to;  // emptied, or something else was put in; empty: still there
  std::vector<LineId> lines;  // served through these, in order, each once
  EntryId entry;              // that put it in

  [[nodiscard]] bool still_there() const { return !to.has_value(); }
};

// Oldest first.
[[nodiscard]] std::vector<Stint> stints_of(KegId, const Journal&);
[[nodiscard]] std::vector<Stint> stints_of(BatchId, const Journal&);

// The recall of a batch, if one is in force.
struct Recall {
  EntryId entry;
  Instant at{};
  std::string reason;
  std::string by;
};
[[nodiscard]] std::optional<Recall> recall_of(BatchId, const Journal&);

// The act that recalls a batch: the recall, and a hold on every keg that still
// has it and is not held already. `kegs` tells which are held.
struct CellarStatus;
[[nodiscard]] Act recall_act(BatchId, const std::string& reason, Instant when,
                             const std::string& by, const CellarStatus& kegs, const Journal&);

}  // namespace ullage::cellar
