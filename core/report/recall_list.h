// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where a batch went: every keg that held it, from when to when, on which lines
// it was served, who has the keg now, and what was poured away. For a recall
// drill and for the real thing.
#pragma once

#include <string>
#include <vector>

#include "core/report/table_sheet.h"

namespace ullage::report {

struct RecalledBatch {
  cellar::BatchId batch;
  std::string reason;
  cellar::Instant at{};
};
// In the order in which they were recalled, each batch once with its last reason.
[[nodiscard]] std::vector<RecalledBatch> recalled_batches(const cellar::Journal&);

// Of any batch, recalled or not. Kegs that still hold it come first and are
// marked.
[[nodiscard]] TableSheet recall_list(const cellar::Journal&, const cellar::CellarStatus& now,
                                     cellar::BatchId, const Speaker&, const std::string& by);

}  // namespace ullage::report
