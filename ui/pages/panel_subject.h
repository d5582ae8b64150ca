// SPDX-License-Identifier: GPL-3.0-or-later
//
// What each section of the keg panel is shown: the keg, the cellar it stands
// in, and the words and units to say it in. Valid only during the call.
#pragma once

#include "core/cellar/status.h"
#include "core/report/say.h"

namespace ullage::ui {

struct PanelSubject {
  const cellar::CellarStatus& cellar;
  const cellar::KegStatus& keg;
  const report::Speaker& speaker;
};

}  // namespace ullage::ui
