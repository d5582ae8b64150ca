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
template <class Ask>
[[nodiscard]] std::function<report::Grounds()> reasons_of(const PanelSubject& subject,
                                                          Ask grounds) {
  cellar::CellarStatus around;  // all of the cellar that grounds look at
  around.cellar = subject.cellar.cellar;
  around.places = subject.cellar.places;
  around.regulators = subject.cellar.regulators;
  around.instruments = subject.cellar.instruments;
  return
      [around = std::move(around), keg = subject.keg, speaker = subject.speaker,
       grounds = std::move(grounds)] { return grounds(report::KegSubject{around, keg, speaker}); };
}

}  // namespace ullage::ui
