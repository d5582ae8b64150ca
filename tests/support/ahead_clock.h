// SPDX-License-Identifier: GPL-3.0-or-later
//
// The machine's time, and as much later as a test wants it to be.
#pragma once

#include <chrono>

#include "app/surroundings.h"

namespace ullage::testing {

class AheadClock final : public cellar::Clock {
 public:
  [[nodiscard]] cellar::Instant now() const override { return real_.now() + ahead; }
  std::chrono::seconds ahead{0};

 private:
  app::SystemClock real_;
};

}  // namespace ullage::testing
