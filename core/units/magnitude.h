// SPDX-License-Identifier: GPL-3.0-or-later
//
// How a quantity becomes the one number that storage, exchange and numerical
// methods work on: its value in the SI unit (or on its own scale), and back.
// Only code that is generic over quantities may use it; everything else names a
// unit.
#pragma once

#include <concepts>

#include "core/units/gauge_pressure.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::units {

template <class Q>
struct Magnitude;  // to(Q) -> double, from(double) -> Q

template <class Unit>
struct Magnitude<boost::units::quantity<Unit>> {
  using Q = boost::units::quantity<Unit>;
  static double to(Q q) { return q.value(); }
  static Q from(double v) { return Q::from_value(v); }
};

template <>
struct Magnitude<GaugePressure> {
  static double to(GaugePressure q) { return in_pascals(q); }
  static GaugePressure from(double v) { return gauge_pascals(v); }
};

template <class Tag>
struct Magnitude<OnScale<Tag>> {
  static constexpr double to(OnScale<Tag> q) { return q.count(); }
  static constexpr OnScale<Tag> from(double v) { return OnScale<Tag>(v); }
};

template <class Q>
concept Quantity = requires(Q q, double v) {
  { Magnitude<Q>::to(q) } -> std::convertible_to<double>;
  { Magnitude<Q>::from(v) } -> std::same_as<Q>;
};

template <Quantity Q>
[[nodiscard]] double to_magnitude(Q q) {
  return Magnitude<Q>::to(q);
}
template <Quantity Q>
[[nodiscard]] Q from_magnitude(double v) {
  return Magnitude<Q>::from(v);
}

// What two of a quantity differ by: a span for a point on a scale, the quantity
// itself for everything that starts at zero. Its magnitude is in the same unit.
template <Quantity Q>
struct DifferenceOf {
  using type = Q;
};
template <>
struct DifferenceOf<Temperature> {
  using type = TemperatureDifference;
};
template <>
struct DifferenceOf<AbsolutePressure> {
  using type = PressureDifference;
};
template <>
struct DifferenceOf<GaugePressure> {
  using type = PressureDifference;
};
template <Quantity Q>
using Difference = typename DifferenceOf<Q>::type;

}  // namespace ullage::units
