// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/cellar/time.h"

namespace ullage::cellar {

// When acid and a chlorinated cleaner were last in a line or keg. A keg's washing names
// its cleaner but doesn't tell whether that holds chlorine: who knows the cleaner does.
struct LastChemicals {
  std::optional<Instant> acid, chlorine;
  std::optional<Instant> washed;
  std::string washed_with;
};

}  // namespace ullage::cellar
