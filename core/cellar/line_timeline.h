// SPDX-License-Identifier: GPL-3.0-or-later
//
// One line's story without a clock: whether a cleaner may stand in it, when it
// was last cleaned, which keg was put on it last, what hose it has.
//
// A line is locked by a lock entry, and by a cleaning with anything but water
// whose flush was not checked and passed: nobody knows then that the cleaner is
// out. Only a release entry with a passed check and the name of who checked ends
// it; where the line asked for a second signature by then, that of somebody else too.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/cellar/lookup.h"
#include "core/cellar/status.h"

namespace ullage::cellar {

struct LineTimeline {
  Reliance relies_on;
  LineRecord record;
  bool registered = false;
  Instant registered_at{};
  std::optional<LineLock> lock;
  std::optional<Instant> last_cleaned;  // with a cleaner, not water alone
  LastChemicals chemicals;
  std::optional<KegId> last_tapped;
  Instant tapped_at{};
  // Chlorine and acid followed one another with no flush between.
  std::optional<EntryId> acid_after_chlorine;
  Instant acid_after_chlorine_at{};
  // The hose as it is now, from the keg on, and the timed pours logged since it
  // last became another.
  std::vector<SegmentRecord> segments;
  std::vector<const Entry*> pours;
};

[[nodiscard]] LineTimeline line_timeline(LineId, const Journal&);

// Whether somebody other than who checked signed it, too.
[[nodiscard]] bool signed_by_two(const LineReleased&);

// Without its cleaning's due day: rules may call for it too (due_work.h).
[[nodiscard]] LineStatus line_status_at(const LineTimeline&);

}  // namespace ullage::cellar
