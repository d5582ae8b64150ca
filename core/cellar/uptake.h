// SPDX-License-Identifier: GPL-3.0-or-later
//
// How fast beer in a keg comes to rest with its gas: the time in which two
// thirds (1 - 1/e) of what is missing are taken up, usual and learned.
#pragma once

#include <cstdint>

#include "core/cellar/message.h"
#include "core/units/quantities.h"

namespace ullage::cellar {

struct UptakeBand {
  units::Duration low, likely, high;  // 95 %
};
struct UptakeRate {
  UptakeBand usual;    // for a keg of its size and fill
  UptakeBand learned;  // by its own readings; the same without any
  std::int64_t readings = 0;
  bool readings_fit = true;  // else nothing was learned from them
};

[[nodiscard]] inline Message uptake_words(const UptakeRate& r) {
  const UptakeBand& now = r.learned;
  if (!r.readings_fit)
    return message(MessageKey::uptake_conflict, now.likely, now.low, now.high, r.readings);
  if (r.readings == 0) return message(MessageKey::uptake_usual, now.likely, now.low, now.high);
  return message(MessageKey::uptake_learned, now.likely, now.low, now.high, r.readings,
                 r.usual.likely, r.usual.low, r.usual.high);
}

}  // namespace ullage::cellar
