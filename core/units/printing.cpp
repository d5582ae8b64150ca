// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/printing.h"

#include <algorithm>
#include <cmath>

#include "core/units/number_text.h"
#include "core/units/shown.h"

namespace ullage::units {

namespace {

std::string with_unit(const std::string& number, const std::string& unit) {
  return unit.empty() || number == no_number ? number : number + " " + unit;
}

template <class Q>
std::string print_reading(const Shown<Q>& as, Q q, NumberStyle style) {
  const std::string number = write_number(as.in(q), as.decimals, style);
  return with_unit(number, number == "1" && !as.one.empty() ? as.one : as.unit);
}

// On a bent scale the two sides differ a little and the mean is shown. A side
// that has no number on that scale leaves the other to speak for both.
template <class Q>
double shown_half_width(const Shown<Q>& as, const Estimate<Q>& e) {
  const double value = as.in(e.value());
  const double above = std::abs(as.in(e.high()) - value);
  const double below = std::abs(value - as.in(e.low()));
  if (!std::isfinite(above)) return below;
  return std::isfinite(below) ? (above + below) / 2.0 : above;
}

template <class Q>
std::string print_estimate(const Shown<Q>& as, const Estimate<Q>& e, NumberStyle style) {
  const double value = as.in(e.value());
  const double width = shown_half_width(as, e);
  if (!std::isfinite(value) || !std::isfinite(width)) return no_number;
  // One place finer than a reading is the limit: past it the error is too small
  // to matter on a screen and the value prints as a reading.
  const int finest = -as.decimals.most - 1;
  if (width < 0.5 * std::pow(10.0, finest)) return print_reading(as, e.value(), style);
  const int place = std::max(place_of_error(width), finest);
  return with_unit(
      write_to_place(value, place, style) + " ± " + write_to_place(width, place, style), as.unit);
}

// Both ends with the same number of decimals: "2.30 to 2.75", never "2.3 to 2.75".
template <class Q>
std::string print_ends(const Shown<Q>& as, Q low, Q high, NumberStyle style) {
  int needed = as.decimals.least;
  for (const Q& end : {low, high}) {
    const std::string text = write_number(as.in(end), as.decimals, style);
    const auto mark = text.find(style.decimal_mark);
    if (mark != std::string::npos)
      needed = std::max(needed, static_cast<int>(text.size() - mark - 1));
  }
  const std::string from = write_number(as.in(low), {needed, needed}, style);
  const std::string to = write_number(as.in(high), {needed, needed}, style);
  if (from == no_number || to == no_number) return no_number;
  return with_unit(from == to ? from : from + " to " + to, as.unit);
}

template <class Q>
Q larger(Q a, Q b) {
  return std::abs(to_magnitude(a)) < std::abs(to_magnitude(b)) ? b : a;
}

template <class Q>
Q size_of(const Estimate<Q>& e) {
  return larger(e.value(), from_magnitude<Q>(e.half_width()));
}

// A bore sold by the inch is named by its fraction: 3/16, 1/4, 5/16.
std::string inch_fraction(double inches) {
  constexpr int finest_denominator = 32;
  constexpr double close = 0.0005;  // in; a decimal reading cannot tell these apart
  const double parts = std::round(inches * finest_denominator);
  if (!(parts > 0 && parts < finest_denominator)) return {};
  if (std::abs(inches - parts / finest_denominator) > close) return {};
  int numerator = static_cast<int>(parts);
  int denominator = finest_denominator;
  while (numerator % 2 == 0) {
    numerator /= 2;
    denominator /= 2;
  }
  return std::to_string(numerator) + "/" + std::to_string(denominator);
}

}  // namespace

std::string Printer::number(double v, int decimals) const {
  return write_number(v, {decimals, decimals}, style);
}

std::string Printer::print(GaugePressure q) const {
  return print_reading(shown(units, q), q, style);
}
std::string Printer::print(PressureDifference q) const {
  return print_reading(shown(units, q), q, style);
}
std::string Printer::print(Temperature q) const { return print_reading(shown(units, q), q, style); }
std::string Printer::print(TemperatureDifference q) const {
  return print_reading(shown(units, q), q, style);
}
std::string Printer::print(Volume q) const { return print_reading(shown(units, q), q, style); }
std::string Printer::print(Mass q) const { return print_reading(shown(units, q), q, style); }
std::string Printer::print(Length q) const { return print_reading(shown(units, q), q, style); }
std::string Printer::print(Co2Volumes q) const { return print_reading(shown(units, q), q, style); }
std::string Printer::print(Co2Concentration q) const {
  return print_reading(shown(units, q), q, style);
}
std::string Printer::print(SpecificGravity q) const {
  return print_reading(shown(units, q), q, style);
}
std::string Printer::print(Plato q) const { return print_reading(shown(units, q), q, style); }
std::string Printer::print(Abv q) const { return print_reading(shown(units, q), q, style); }
std::string Printer::print(Fraction q) const { return print_reading(shown(units, q), q, style); }
std::string Printer::print(Duration q) const { return print_reading(shown(units, q), q, style); }

std::string Printer::print_bore(Length q) const {
  if (units.bore == BoreUnit::inch) {
    const std::string fraction = inch_fraction(in_inches(q));
    if (!fraction.empty()) return with_unit(fraction, unit_name(units.bore));
  }
  return print_reading(shown_bore(units), q, style);
}

std::string Printer::print_glasses(Volume q) const {
  return print_reading(shown_glasses(units), q, style);
}

std::string Printer::print(const Estimate<Co2Volumes>& e) const {
  return print_estimate(shown(units, size_of(e)), e, style);
}
std::string Printer::print(const Estimate<Co2Concentration>& e) const {
  return print_estimate(shown(units, size_of(e)), e, style);
}
std::string Printer::print(const Estimate<Volume>& e) const {
  return print_estimate(shown(units, size_of(e)), e, style);
}
std::string Printer::print(const Estimate<GaugePressure>& e) const {
  return print_estimate(shown(units, size_of(e)), e, style);
}
std::string Printer::print(const Estimate<PressureDifference>& e) const {
  return print_estimate(shown(units, size_of(e)), e, style);
}
std::string Printer::print(const Estimate<Temperature>& e) const {
  return print_estimate(shown(units, size_of(e)), e, style);
}
std::string Printer::print(const Estimate<TemperatureDifference>& e) const {
  return print_estimate(shown(units, size_of(e)), e, style);
}
std::string Printer::print(const Estimate<Mass>& e) const {
  return print_estimate(shown(units, size_of(e)), e, style);
}
std::string Printer::print(const Estimate<SpecificGravity>& e) const {
  return print_estimate(shown(units, size_of(e)), e, style);
}
std::string Printer::print(const Estimate<Abv>& e) const {
  return print_estimate(shown(units, size_of(e)), e, style);
}
std::string Printer::print(const Estimate<Fraction>& e) const {
  return print_estimate(shown(units, size_of(e)), e, style);
}
std::string Printer::print(const Estimate<Duration>& e) const {
  return print_estimate(shown(units, size_of(e)), e, style);
}
std::string Printer::print_glasses(const Estimate<Volume>& e) const {
  return print_estimate(shown_glasses(units), e, style);
}

std::string Printer::print_range(Co2Volumes low, Co2Volumes high) const {
  return print_ends(shown(units, larger(low, high)), low, high, style);
}
std::string Printer::print_range(GaugePressure low, GaugePressure high) const {
  return print_ends(shown(units, larger(low, high)), low, high, style);
}
std::string Printer::print_range(Temperature low, Temperature high) const {
  return print_ends(shown(units, larger(low, high)), low, high, style);
}
std::string Printer::print_range(Volume low, Volume high) const {
  return print_ends(shown(units, larger(low, high)), low, high, style);
}
std::string Printer::print_range(Duration low, Duration high) const {
  return print_ends(shown(units, larger(low, high)), low, high, style);
}

}  // namespace ullage::units
