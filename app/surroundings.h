// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the real program draws from the machine: the time, and ids nobody else has.
#pragma once

#include "core/cellar/ids.h"
#include "core/cellar/time.h"

namespace ullage::app {

class SystemClock final : public cellar::Clock {
 public:
  [[nodiscard]] cellar::Instant now() const override;
};

// Random UUIDs (version 4).
class RandomIds final : public cellar::IdSource {
 public:
  cellar::Uuid next() override;
};

}  // namespace ullage::app
