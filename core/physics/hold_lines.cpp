// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/physics/co2_gas.h"
#include "core/physics/hold_fit.h"

namespace ullage::physics {

using namespace units;

HoldTest hold_points(const HoldTest& test, int count) {
  HoldTest dense = test;
  dense.readings.clear();
  const double begin = in_seconds(test.readings.front().at);
  const double end = in_seconds(test.readings.back().at);
  std::size_t next = 1;
  for (int i = 0; i < count; ++i) {
    const double at = begin + (end - begin) * i / (count - 1);
    while (next + 1 < test.readings.size() && in_seconds(test.readings[next].at) < at) ++next;
    const HoldReading& a = test.readings[next - 1];
    const HoldReading& b = test.readings[next];
    const double share = std::clamp((at - in_seconds(a.at)) / in_seconds(b.at - a.at), 0.0, 1.0);
    const double k = in_kelvin(a.temperature.value()) +
                     share * (in_kelvin(b.temperature.value()) - in_kelvin(a.temperature.value()));
    dense.readings.push_back(
        {seconds(at), test.readings.front().pressure, Estimate<Temperature>(kelvin(k))});
  }
  return dense;
}

Result<std::vector<HoldPoint>> hold_lines(const HoldTest& test, const HoldOutcome& outcome,
                                          int count) {
  if (const auto valid = judge_hold(test); !valid) return std::unexpected(valid.error());
  if (auto bad = outside(Subject::parts, count, {2, 10000})) return std::unexpected(*bad);
  if (test.readings.size() < 2) return std::vector<HoldPoint>{};
  const HoldTest dense = hold_points(test, count);
  const ReadingErrors errors(test);
  const LeakPath tight(dense, LeakLaw::viscous);
  const auto none = tight.pressures(test.readings.front().pressure.value().at_ambient(test.ambient),
                                    LeakRate::from_value(0));
  std::vector<HoldPoint> out;
  for (std::size_t i = 0; i < none.size(); ++i) {
    const Duration at = dense.readings[i].at;
    const GaugePressure dry = GaugePressure::from_absolute(none[i], test.ambient);
    out.push_back({at, dry, dry - errors.uptake(at), dry, {}});
  }
  for (const LawFit& fit : outcome.laws) {
    const LeakPath path(dense, fit.law);
    const double kilograms_a_day = in_kilograms(fit.at_test.likely.value_or(fit.at_test.low));
    const auto p = path.pressures(
        fit.start,
        LeakRate::from_value(kilograms_a_day / co2_kilograms_per_mole / in_seconds(days(1))));
    for (std::size_t i = 0; i < p.size(); ++i) {
      out[i].leaking.push_back(GaugePressure::from_absolute(p[i], test.ambient));
    }
  }
  return out;
}

}  // namespace ullage::physics
