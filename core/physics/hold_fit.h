// SPDX-License-Identifier: GPL-3.0-or-later
//
// The leak of one law that fits a hold test best, and the interval of leaks that
// fit it too. Internal to core/physics; hold.h has the words.
//
// Two parameters: the pressure at the first reading and the leak at test
// conditions, found by Gauss-Newton on the readings whitened by their covariance
// (Cholesky). The interval is by profile likelihood.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/physics/hold.h"

namespace ullage::physics {

// A leak as moles a second at test conditions (first reading).
using LeakRate = boost::units::quantity<
    boost::units::divide_typeof_helper<units::si::amount, units::si::time>::type>;

// What the gas of a leaking keg reads along a test.
class LeakPath {
 public:
  LeakPath(const HoldTest&, LeakLaw);
  // Pressure at each reading's time, from `start` at the first one.
  [[nodiscard]] std::vector<units::AbsolutePressure> pressures(units::AbsolutePressure start,
                                                               LeakRate) const;
  [[nodiscard]] units::AbsolutePressure leaked(units::AbsolutePressure, units::Temperature,
                                               units::Duration, LeakRate) const;
  // The same gas at another temperature.
  [[nodiscard]] units::AbsolutePressure at_temperature(units::AbsolutePressure, units::Temperature,
                                                       units::Temperature) const;
  [[nodiscard]] units::Amount gas(units::AbsolutePressure, units::Temperature) const;
  // The fastest leak told apart from one that empties the keg at once, and the
  // leak that would lose all above ambient in the whole test.
  [[nodiscard]] LeakRate cap() const { return cap_; }
  // The fastest inflow looked at (below zero): beyond what any reading in range shows.
  [[nodiscard]] LeakRate floor() const { return floor_; }
  [[nodiscard]] LeakRate scale() const { return scale_; }
  [[nodiscard]] const HoldTest& test() const { return test_; }
  [[nodiscard]] LeakLaw law() const { return law_; }

 private:
  [[nodiscard]] units::AbsolutePressure over(units::AbsolutePressure, std::size_t interval,
                                             LeakRate) const;
  // `leaked` with gas flowing in.
  [[nodiscard]] units::AbsolutePressure filled(units::AbsolutePressure, units::Temperature,
                                               units::Duration, LeakRate) const;
  const HoldTest& test_;
  LeakLaw law_;
  double reference_drive_ = 1;
  LeakRate cap_;
  LeakRate floor_;
  LeakRate scale_;
};

// How the readings err together, as pressures.
class ReadingErrors {
 public:
  explicit ReadingErrors(const HoldTest&);
  // What the readings would be in a dry keg, on the average: the uptake of the
  // residue added back.
  [[nodiscard]] const std::vector<units::PressureDifference>& dry() const { return dry_; }
  // Most the residue may have taken by then.
  [[nodiscard]] units::PressureDifference uptake(units::Duration) const;
  // Residuals in Pa to independent ones of unit (1 standard deviation) size.
  [[nodiscard]] std::vector<double> whitened(std::vector<double> residuals) const;
  // Weights on whitened residuals to weights on the readings themselves.
  [[nodiscard]] std::vector<double> unwhitened(std::vector<double> weights) const;
  // 95 % contributions to a weighted sum of the readings.
  [[nodiscard]] std::vector<units::Contribution> contributions(
      const std::vector<double>& weights) const;

 private:
  struct Named {
    units::ErrorSource source;
    std::vector<double> half_widths;  // Pa, one for each reading
  };
  void name(const units::ErrorSource&, std::size_t reading, double half_width);
  void factor();

  const HoldTest& test_;
  std::vector<Named> named_;
  std::vector<double> barometer_;  // N x N covariance of 95 % half-widths, Pa^2
  std::vector<double> root_;       // Cholesky factor of the covariance, Pa
  std::vector<units::PressureDifference> dry_;
  double uptake_pascals_ = 0;
};

struct LeakFit {
  units::AbsolutePressure start;
  LeakRate low;
  std::optional<LeakRate> likely;
  std::optional<LeakRate> high;
  double misfit = 0;
  // 95 % half-width of the leak were it nothing (straight line).
  LeakRate half_width_at_none;
  // Mean loss over the test: moles a second and what each cause adds.
  LeakRate mean;
  std::vector<units::Contribution> mean_errors;  // moles a second
};

// `test` is in range and has two or more readings.
[[nodiscard]] LeakFit fit_leak(const LeakPath&, const ReadingErrors&);
// 95 % half-width of the leak at `assumed`, straight line.
[[nodiscard]] LeakRate leak_half_width(const LeakPath&, const ReadingErrors&,
                                       units::AbsolutePressure start, LeakRate assumed);

// The test with a reading at each of `count` points of a picture, its temperature
// straight between those read. Only times, temperatures and the first pressure mean
// anything.
[[nodiscard]] HoldTest hold_points(const HoldTest&, int count);

}  // namespace ullage::physics
