// SPDX-License-Identifier: GPL-3.0-or-later
//
// What each section of the keg panel is shown: the keg, the cellar it stands
// in, and the words and units to say it in. Valid only during the call.
#pragma once

#include <functional>

#include "core/cellar/status.h"
#include "core/report/keg_grounds.h"
#include "core/report/say.h"

namespace ullage::ui {

struct PanelSubject {
  const cellar::CellarStatus& cellar;
  const cellar::KegStatus& keg;
  const report::Speaker& speaker;
};

// For a Figure: the reasons as they stand now, asked for later.
[[nodiscard]] inline std::function<report::Grounds()> reasons_of(
    const PanelSubject& subject, report::Grounds (*grounds)(const report::KegSubject&)) {
  cellar::CellarStatus places;  // all of the cellar that grounds look at
  places.places = subject.cellar.places;
  return [places = std::move(places), keg = subject.keg, speaker = subject.speaker, grounds] {
    return grounds({places, keg, speaker});
  };
}

}  // namespace ullage::ui
