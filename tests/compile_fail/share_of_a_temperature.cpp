// SPDX-License-Identifier: GPL-3.0-or-later
// Must not compile: five percent of 4 °C is not an amount; only what starts at zero has shares.
// expect: constraints not satisfied|no matching function
#include "core/units/instrument_errors.h"

using namespace ullage::units;

auto wrong() {
  const RelativeErrors probe{"probe", fraction(0.05), fraction(0.01)};
  return read_with(probe, celsius(4), "monday");
}
