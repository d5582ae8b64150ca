// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/axis_decimals.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace ullage::ui {

int axis_decimals(double span, int ticks) {
  if (!(span > 0) || ticks < 1) return 0;
  const double exact = span / ticks;
  const double power = std::floor(std::log10(exact));
  const double mantissa = exact / std::pow(10.0, power);
  constexpr std::array steps{1.0, 2.0, 2.5, 5.0, 10.0};
  const double step = *std::min_element(steps.begin(), steps.end(), [&](double a, double b) {
    return std::abs(a - mantissa) < std::abs(b - mantissa);
  });
  const int places = -static_cast<int>(power) + (step == 2.5 ? 1 : step == 10.0 ? -1 : 0);
  return std::clamp(places, 0, 6);
}

}  // namespace ullage::ui
