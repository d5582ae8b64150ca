// SPDX-License-Identifier: GPL-3.0-or-later
//
// Beer that was lost: logged as wasted, or run out of a line when it was cleaned.
// One reading of an entry for the Beers page and the wastage book, so that both
// count the same.
#pragma once

#include <cstdint>
#include <optional>

#include "core/cellar/journal.h"

namespace ullage::cellar {

struct Loss {
  std::optional<SubjectRef> from;  // the keg, or the line that was cleaned
  std::optional<BatchId> batch;
  Volume volume = units::litres(0);
  WasteReason reason = WasteReason::other;
  std::optional<std::int64_t> cost_minor;  // at the price the beer had then
};

// Whatever the entry's standing; nullopt for one that tells of no loss.
[[nodiscard]] std::optional<Loss> loss_in(const Entry&, const Journal&);

}  // namespace ullage::cellar
