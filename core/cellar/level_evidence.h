// SPDX-License-Identifier: GPL-3.0-or-later
//
// What one entry says about how much beer is in a keg: an amount left, or an
// amount gone since.
#pragma once

#include <optional>

#include "core/cellar/keg_timeline.h"

namespace ullage::cellar {

struct LevelEvidence {
  std::optional<VolumeEstimate> left;
  std::optional<VolumeEstimate> poured;
  std::optional<Message> refused;  // the reading can't be right, and why
};

[[nodiscard]] LevelEvidence level_evidence(const LevelReading&, const Entry&, const KegTimeline&,
                                           Readings&, Lookup&);
// By stated volume (2 %, common practice) or by weighing; nullopt when neither was told.
[[nodiscard]] std::optional<VolumeEstimate> filled_volume(const Filled&, const Entry&,
                                                          const KegRecord&, Readings&, Lookup&);
// Guessed volumes: 20 % (common practice).
[[nodiscard]] VolumeEstimate wasted_volume(const Wasted&, const Entry&);

// Tare of a keg with its error; nullopt when it is not known.
[[nodiscard]] std::optional<MassEstimate> tare_of(const KegRecord&);

}  // namespace ullage::cellar
