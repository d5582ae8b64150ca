// SPDX-License-Identifier: GPL-3.0-or-later
//
// Payloads and entries for RapidCheck properties. Draw inside a property:
//   RapidSource source;
//   PayloadMaker maker(source);
//   const auto entries = maker.entries(10);
#pragma once

#include <rapidcheck.h>

#include "tests/support/payload_generator.h"

namespace ullage::testing {

class RapidSource {
 public:
  std::int64_t integer(std::int64_t low, std::int64_t high) {
    return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange<std::int64_t>(low, high + 1));
  }
  double real(double low, double high) {
    constexpr std::int64_t steps = std::int64_t{1} << 53;
    return low +
           (high - low) * (static_cast<double>(integer(0, steps)) / static_cast<double>(steps));
  }
};

}  // namespace ullage::testing
