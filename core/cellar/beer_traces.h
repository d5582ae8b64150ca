// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which beer was where, read off the journal: in a keg at a moment, in a line
// before and after it was cleaned. Only entries in force count.
#pragma once

#include <optional>

#include "core/cellar/journal.h"

namespace ullage::cellar {

// The batch a payload put into its keg: filled, received, or found with beer.
[[nodiscard]] std::optional<BatchId> batch_put_in(const Payload&);

// What a keg held at a moment; nullopt when it was empty or nothing is known.
[[nodiscard]] std::optional<BatchId> batch_in_keg(const Journal&, KegId, Instant);

struct BeersAround {
  std::optional<BatchId> before, after;
};
// `before` is of the keg last put on; `after` of the same keg when it stayed on,
// else of the next one.
[[nodiscard]] BeersAround beers_around(const Journal&, LineId, Instant);

}  // namespace ullage::cellar
