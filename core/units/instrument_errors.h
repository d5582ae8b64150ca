// SPDX-License-Identifier: GPL-3.0-or-later
//
// From what an instrument shows to an estimate of what is there. An instrument
// errs in two ways: its bias is the same in every reading it gives, its
// repeatability is new each time. So two readings of one instrument share the
// source "<name>: bias", which cancels in their difference, and each has a
// source of its own, "<name>: reading <key>".
//
// Both errors are 95 % half-widths. `name` must name one instrument and no
// other; `reading` must be unique among the readings of that instrument and
// stay the same when the estimate is made again (the identity of the entry that
// holds the reading, say), or errors that should cancel do not.
#pragma once

#include <cmath>
#include <concepts>
#include <string>
#include <string_view>

#include "core/units/estimate.h"

namespace ullage::units {

// An instrument that is off by so much wherever it points: a dial, a scale.
template <Quantity Q>
struct InstrumentErrors {
  std::string name;
  Difference<Q> bias{};
  Difference<Q> repeatability{};
};

// An instrument that is off by a share of what it shows: a flow meter, a heft.
struct RelativeErrors {
  std::string name;
  Fraction bias{};
  Fraction repeatability{};
};

[[nodiscard]] inline ErrorSource bias_of(std::string_view instrument) {
  return {std::string(instrument) + ": bias"};
}
[[nodiscard]] inline ErrorSource reading_of(std::string_view instrument, std::string_view reading) {
  return {std::string(instrument) + ": reading " + std::string(reading)};
}

template <Quantity Q>
[[nodiscard]] Estimate<Q> read_with(const InstrumentErrors<Q>& instrument, Q shown,
                                    std::string_view reading) {
  return Estimate<Q>::exact(shown)
      .with_error(bias_of(instrument.name), instrument.bias)
      .with_error(reading_of(instrument.name, reading), instrument.repeatability);
}

// A share of a point on a scale means nothing (5 % of 4 °C?), so only quantities
// that start at zero can be read this way.
template <Quantity Q>
  requires std::same_as<Q, Difference<Q>>
[[nodiscard]] Estimate<Q> read_with(const RelativeErrors& instrument, Q shown,
                                    std::string_view reading) {
  const double size = std::abs(to_magnitude(shown));
  return Estimate<Q>::exact(shown)
      .with(bias_of(instrument.name), instrument.bias.count() * size)
      .with(reading_of(instrument.name, reading), instrument.repeatability.count() * size);
}

}  // namespace ullage::units
