// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the register said of a thing at a moment of the past.
#pragma once

#include "core/cellar/journal.h"

namespace ullage::cellar {

// The last record of a thing at or before a moment; the first one when the moment
// is before all of them; nullptr when it was never registered.
template <class Record>
[[nodiscard]] const Record* record_at(const Journal& journal, SubjectRef s, Instant t) {
  const Record* found = nullptr;
  for (const Entry* e : journal.story(s)) {
    const auto* record = get_if<Record>(&e->payload);
    if (record && (found == nullptr || e->header.happened_at <= t)) found = record;
  }
  return found;
}

}  // namespace ullage::cellar
