// SPDX-License-Identifier: GPL-3.0-or-later
//
// What property tests draw and ask: numbers inside and outside of a range, and whether
// an answer is a refusal that names a limit which was indeed passed.
#pragma once

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/physics/error.h"

namespace ullage::physics::cases {

// Evenly from `low` to `high`.
inline double work_in(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 1000001) / 1e6;
}

inline bool close_to(double a, double b, double share = 1e-9) {
  return std::abs(a - b) <= share * std::max({std::abs(a), std::abs(b), 1e-12});
}

// Beyond the end of a range by more than rounding, on either side, or no number.
inline double work_outside(Range r) {
  const double far =
      1e-3 * (std::abs(r.low) + std::abs(r.high)) + work_in(0, 10) * (r.high - r.low);
  switch (*rc::gen::inRange(0, 3)) {
    case 0:
      return r.low - far;
    case 1:
      return r.high + far;
    default:
      return std::numeric_limits<double>::quiet_NaN();
  }
}

template <class T>
bool refuses(const Result<T>& r, Subject subject) {
  return !r && r.error().subject == subject &&
         !(r.error().value >= r.error().low && r.error().value <= r.error().high);
}

}  // namespace ullage::physics::cases
