// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/number_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/units/printing.h"

namespace ullage::units {

namespace {

// Finer places than this are rounding noise of the arithmetic, not knowledge.
constexpr int finest_place = -9;

std::string finish_number(std::string digits, NumberStyle style) {
  const bool negative = digits.starts_with('-');
  if (negative) digits.erase(0, 1);
  const bool zero = digits.find_first_not_of("0.") == std::string::npos;
  std::replace(digits.begin(), digits.end(), '.', style.decimal_mark);
  return negative && !zero ? "−" + digits : digits;
}

}  // namespace

std::string write_number(double v, Decimals decimals, NumberStyle style) {
  if (!std::isfinite(v)) return no_number;
  const int most = std::max(decimals.most, 0);
  std::string digits = fmt::format("{:.{}f}", v, most);
  for (int kept = most; kept > decimals.least && digits.ends_with('0'); --kept) digits.pop_back();
  if (digits.ends_with('.')) digits.pop_back();
  return finish_number(std::move(digits), style);
}

int place_of_error(double half_width) {
  // The exponent is read from the rounded text, so that 0.19999999 counts as
  // 0.20 and a half-width of 0.2 never gains a digit from binary rounding.
  const std::string two_digits = fmt::format("{:.1e}", half_width);
  const int exponent = std::stoi(two_digits.substr(two_digits.find('e') + 1));
  return two_digits.starts_with('1') ? exponent - 1 : exponent;
}

std::string write_to_place(double v, int place, NumberStyle style) {
  if (!std::isfinite(v)) return no_number;
  if (place <= 0) return write_number(v, {-place, -place}, style);
  const double step = std::pow(10.0, place);
  return write_number(std::round(v / step) * step, {0, 0}, style);
}

std::string value_with_error(double value, double half_width, NumberStyle style) {
  if (!std::isfinite(value) || !std::isfinite(half_width)) return no_number;
  const double width = std::abs(half_width);
  const int place = width > 0 ? std::max(place_of_error(width), finest_place) : finest_place;
  if (width < 0.5 * std::pow(10.0, place)) return write_number(value, {0, 3}, style);
  return write_to_place(value, place, style) + " ± " + write_to_place(width, place, style);
}

}  // namespace ullage::units
