// SPDX-License-Identifier: GPL-3.0-or-later
//
// A positive quantity known to within a factor: a time constant "4 days, 95 %
// between 2 and 8". Normal in its logarithm, one named source of error.
#pragma once

#include <cmath>
#include <utility>

#include "core/units/estimate.h"

namespace ullage::physics {

template <units::Quantity Q>
class LogEstimate {
 public:
  LogEstimate() = default;
  // `factor` > 1: the 95 % interval runs from median / factor to median * factor.
  LogEstimate(Q median, double factor, units::ErrorSource source)
      : median_(median), factor_(factor), source_(std::move(source)) {}

  [[nodiscard]] Q median() const { return median_; }
  [[nodiscard]] double factor() const { return factor_; }
  [[nodiscard]] const units::ErrorSource& source() const { return source_; }
  [[nodiscard]] Q low() const { return at(-1); }
  [[nodiscard]] Q high() const { return at(1); }
  // The value `half_widths` 95 % half-widths up the logarithmic scale.
  [[nodiscard]] Q at(double half_widths) const {
    return units::from_magnitude<Q>(units::to_magnitude(median_) * std::pow(factor_, half_widths));
  }
  [[nodiscard]] Q shifted(const units::ErrorSource& source, double half_widths) const {
    return source == source_ ? at(half_widths) : median_;
  }

 private:
  Q median_{};
  double factor_ = 1;
  units::ErrorSource source_;
};

}  // namespace ullage::physics
