// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/physics/co2_gas.h"
#include "core/physics/equilibrium.h"
#include "core/physics/hold_check.h"
#include "core/physics/hold_fit.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double barometer_memory_seconds = 12 * 3600.0;
// D of CO2 in water near 15 C is 1.5e-9 m2/s; 0.25 L stand some 7 mm deep in the
// bottom of a soda keg, and 4 / pi^2 L^2 / D is about 4 h.
constexpr double uptake_seconds = 4 * 3600.0;
constexpr double half_widths_per_sd = 1.959963984540054;
// 1.96 standard deviations of a uniform span, over half of it.
constexpr double half_width_of_uniform = half_widths_per_sd / 1.7320508075688772;
constexpr double least_pascals = 1.0;  // keeps the covariance of exact readings whole

// The CO2 that clean water takes up at the pressure and temperature of a reading.
double uptake_at(const HoldTest& test, const HoldReading& r) {
  const AbsolutePressure p = r.pressure.value().at_ambient(test.ambient);
  const auto held = equilibrium_co2(p, r.temperature.value(), Equation::pure_water);
  if (!held) return 0;
  const double moles_taken = in_moles(dissolved_amount(*held, test.wet_residue));
  return moles_taken * gas_constant * in_kelvin(r.temperature.value()) /
         in_cubic_metres(test.gas_space);
}

}  // namespace

ReadingErrors::ReadingErrors(const HoldTest& test) : test_(test) {
  const std::size_t n = test.readings.size();
  for (const HoldReading& r : test.readings) {
    uptake_pascals_ = std::max(uptake_pascals_, uptake_at(test, r));
  }
  for (std::size_t i = 0; i < n; ++i) {
    const HoldReading& r = test.readings[i];
    for (const Contribution& c : r.pressure.contributions()) name(c.source, i, c.half_width);
    const double pascals_per_kelvin =
        in_pascals(r.pressure.value().at_ambient(test.ambient)) / in_kelvin(r.temperature.value());
    for (const Contribution& c : r.temperature.contributions()) {
      name(c.source, i, -c.half_width * pascals_per_kelvin);
    }
    const double half_uptake = in_pascals(uptake(r.at)) / 2;
    name({"wet residue"}, i, -half_uptake * half_width_of_uniform);
    if (!is_settled(test, r)) name({"settling"}, i, in_pascals(test.settling));
    dry_.push_back(r.pressure.value().above_ambient() + pascals(half_uptake));
  }
  barometer_.resize(n * n);
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j < n; ++j) {
      const double apart = std::abs(in_seconds(test.readings[i].at - test.readings[j].at));
      barometer_[i * n + j] =
          std::pow(in_pascals(test.barometer), 2) / 2 * std::exp(-apart / barometer_memory_seconds);
    }
  }
  factor();
}

PressureDifference ReadingErrors::uptake(Duration at) const {
  const double closed = in_seconds(test_.closed_at.value_or(test_.readings.front().at));
  const double since = std::max(0.0, in_seconds(at) - closed);
  return pascals(uptake_pascals_ * -std::expm1(-since / uptake_seconds));
}

void ReadingErrors::name(const ErrorSource& source, std::size_t reading, double half_width) {
  auto at = std::find_if(named_.begin(), named_.end(),
                         [&](const Named& s) { return s.source == source; });
  if (at == named_.end()) {
    named_.push_back({source, std::vector<double>(test_.readings.size(), 0.0)});
    at = std::prev(named_.end());
  }
  at->half_widths[reading] += half_width;
}

void ReadingErrors::factor() {
  const std::size_t n = test_.readings.size();
  root_ = barometer_;
  for (const Named& s : named_) {
    for (std::size_t i = 0; i < n; ++i) {
      if (s.half_widths[i] == 0) continue;
      for (std::size_t j = 0; j < n; ++j) {
        root_[i * n + j] += s.half_widths[i] * s.half_widths[j];
      }
    }
  }
  for (double& v : root_) v /= half_widths_per_sd * half_widths_per_sd;
  for (std::size_t i = 0; i < n; ++i) root_[i * n + i] += least_pascals * least_pascals;
  for (std::size_t j = 0; j < n; ++j) {
    for (std::size_t k = 0; k < j; ++k) root_[j * n + j] -= std::pow(root_[j * n + k], 2);
    root_[j * n + j] = std::sqrt(root_[j * n + j]);
    for (std::size_t i = j + 1; i < n; ++i) {
      for (std::size_t k = 0; k < j; ++k) root_[i * n + j] -= root_[i * n + k] * root_[j * n + k];
      root_[i * n + j] /= root_[j * n + j];
    }
  }
}

std::vector<double> ReadingErrors::whitened(std::vector<double> r) const {
  const std::size_t n = r.size();
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t k = 0; k < i; ++k) r[i] -= root_[i * n + k] * r[k];
    r[i] /= root_[i * n + i];
  }
  return r;
}

std::vector<double> ReadingErrors::unwhitened(std::vector<double> w) const {
  const std::size_t n = w.size();
  for (std::size_t i = n; i-- > 0;) {
    for (std::size_t k = i + 1; k < n; ++k) w[i] -= root_[k * n + i] * w[k];
    w[i] /= root_[i * n + i];
  }
  return w;
}

std::vector<Contribution> ReadingErrors::contributions(const std::vector<double>& weights) const {
  std::vector<Contribution> out;
  const std::size_t n = weights.size();
  for (const Named& s : named_) {
    double sum = 0;
    for (std::size_t i = 0; i < n; ++i) sum += weights[i] * s.half_widths[i];
    if (sum != 0) out.push_back({s.source, sum});
  }
  double square = 0;
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j < n; ++j) square += weights[i] * weights[j] * barometer_[i * n + j];
  }
  if (square > 0) out.push_back({{"barometer"}, std::sqrt(square)});
  return out;
}

}  // namespace ullage::physics
