// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/hold_beer.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>
#include <vector>

#include "core/physics/co2_gas.h"
#include "core/physics/equilibrium.h"
#include "core/physics/hold_beer_course.h"
#include "core/physics/hold_check.h"
#include "core/units/quantiles.h"

namespace ullage::physics {

using namespace units;

namespace {

using LogSeconds = OnScale<struct LogSecondsTag>;  // ln of a time constant in s

constexpr Range inside_time_constant_range{60.0, 1e8};  // s

class BeerBalance {
 public:
  BeerBalance(const HoldTest& test, const BeerInside& inside) : test_(test), inside_(inside) {
    for (const HoldReading& r : test.readings)
      course_.push_back({r.at, r.pressure.value(), r.temperature.value()});
  }

  // The same with the readings between the first and the last off by this.
  [[nodiscard]] BeerBalance with_middle_off(const ErrorSource& source, double half_widths) const {
    BeerBalance out = *this;
    for (std::size_t i = 1; i + 1 < course_.size(); ++i) {
      out.course_[i].pressure = test_.readings[i].pressure.shifted(source, half_widths);
      out.course_[i].temperature = test_.readings[i].temperature.shifted(source, half_widths);
    }
    return out;
  }

  // Gas lost between the first reading and the last.
  Result<Mass> lost(GaugePressure p1, Temperature t1, GaugePressure p2, Temperature t2,
                    Co2Volumes co2, LogSeconds tau, Co2Volumes equation_off) const {
    Co2Volumes in_beer = co2;
    const auto pull = [&](Co2Volumes held) {
      return volumes_of_co2(held.count() + equation_off.count());
    };
    GaugePressure from = p1;
    Temperature from_t = t1;
    for (std::size_t i = 1; i < course_.size(); ++i) {
      const bool end = i + 1 == course_.size();
      const GaugePressure to = end ? p2 : course_[i].pressure;
      const Temperature to_t = end ? t2 : course_[i].temperature;
      const auto a = equilibrium_co2(from.at_ambient(test_.ambient), from_t);
      const auto b = equilibrium_co2(to.at_ambient(test_.ambient), to_t);
      if (!a) return std::unexpected(a.error());
      if (!b) return std::unexpected(b.error());
      in_beer = after_uptake(in_beer, {pull(*a), pull(*b)}, course_[i].at - course_[i - 1].at,
                             seconds(std::exp(tau.count())));
      from = to;
      from_t = to_t;
    }
    const auto before = gas_amount(p1.at_ambient(test_.ambient), test_.gas_space, t1);
    const auto after = gas_amount(p2.at_ambient(test_.ambient), test_.gas_space, t2);
    if (!before) return std::unexpected(before.error());
    if (!after) return std::unexpected(after.error());
    return co2_mass(*before - *after + dissolved_amount(co2, inside_.beer) -
                    dissolved_amount(in_beer, inside_.beer));
  }

  LogSeconds log_tau() const { return LogSeconds(std::log(in_seconds(inside_.resting.median()))); }

 private:
  struct Seen {
    Duration at;
    GaugePressure pressure;
    Temperature temperature;
  };
  const HoldTest& test_;
  const BeerInside& inside_;
  std::vector<Seen> course_;
};

std::optional<RangeError> check_inside(const BeerInside& inside) {
  if (auto bad = outside(Subject::beer_volume, in_cubic_metres(inside.beer), {1e-5, 1.0}))
    return *bad;
  if (auto bad = outside(Subject::co2, inside.co2.value().count(), co2_range)) return *bad;
  for (const Duration& tau : {inside.resting.low(), inside.resting.high()}) {
    if (auto bad = outside(Subject::time_constant, in_seconds(tau), inside_time_constant_range))
      return *bad;
  }
  return std::nullopt;
}

struct LossOfGas {
  Estimate<Mass> straight;
  Spread<std::optional<Mass>> spread;
};

// What the errors of the readings between do to the loss, by source, with all else as
// read: their effect is small and straight. A dial's bias is in all readings, and
// the beer follows those between: without them its part would be too small.
Result<Estimate<Mass>> error_of_middle(const HoldTest& test, const BeerInside& inside,
                                       const BeerBalance& balance, LogSeconds tau) {
  const HoldReading& a = test.readings.front();
  const HoldReading& b = test.readings.back();
  std::set<ErrorSource> sources;
  for (std::size_t i = 1; i + 1 < test.readings.size(); ++i) {
    for (const Contribution& c : test.readings[i].pressure.contributions())
      sources.insert(c.source);
    for (const Contribution& c : test.readings[i].temperature.contributions())
      sources.insert(c.source);
  }
  std::vector<Contribution> out;
  for (const ErrorSource& source : sources) {
    const auto lost = [&](double half_widths) {
      return balance.with_middle_off(source, half_widths)
          .lost(a.pressure.value(), a.temperature.value(), b.pressure.value(),
                b.temperature.value(), inside.co2.value(), tau, volumes_of_co2(0));
    };
    const auto up = lost(1);
    const auto down = lost(-1);
    if (!up) return std::unexpected(up.error());
    if (!down) return std::unexpected(down.error());
    out.push_back({source, in_kilograms(*up - *down) / 2});
  }
  return Estimate<Mass>(kilograms(0), std::move(out));
}

Result<LossOfGas> loss_of_gas(const HoldTest& test, const BeerInside& inside,
                              const BeerBalance& balance, const Estimate<LogSeconds>& tau) {
  const HoldReading& a = test.readings.front();
  const HoldReading& b = test.readings.back();
  const Estimate<GaugePressure> first = a.pressure.with({"settling"}, settling_of_first(test));
  const Estimate<GaugePressure> last = b.pressure.with({"barometer"}, in_pascals(test.barometer));
  const auto off = Estimate<Co2Volumes>(volumes_of_co2(0))
                       .with(inside.equation, equation_half_width(Equation::fitted_chart).count());
  const auto between = error_of_middle(test, inside, balance, tau.value());
  if (!between) return std::unexpected(between.error());
  const auto lost = [&](Mass by_those_between, auto... q) -> Result<Mass> {
    const auto m = balance.lost(q...);
    if (!m) return m;
    return Mass(*m + by_those_between);
  };
  auto straight = try_propagate(lost, *between, first, a.temperature, last, b.temperature,
                                inside.co2, tau, off);
  if (!straight) return std::unexpected(straight.error());
  return LossOfGas{std::move(*straight),
                   propagate_quantiles(lost, *between, first, a.temperature, last, b.temperature,
                                       inside.co2, tau, off)};
}

// Whether there is more gas than the errors explain however fast the beer took it
// up or gave it off, from not at all to at once.
bool rose_at_any_rate(const HoldTest& test, const BeerInside& inside, const BeerBalance& balance) {
  for (const double seconds : {inside_time_constant_range.low, inside_time_constant_range.high}) {
    const auto loss =
        loss_of_gas(test, inside, balance, Estimate<LogSeconds>(LogSeconds(std::log(seconds))));
    if (!loss) return false;
    const std::optional<Mass>& high = loss->spread.high;
    if (!high || in_kilograms(*high) >= 0) return false;
  }
  return true;
}

}  // namespace

Result<HoldOutcome> judge_hold_with_beer(const HoldTest& test, const BeerInside& inside,
                                         Mass limit) {
  if (const auto bad = check_hold(test, limit)) return std::unexpected(*bad);
  if (const auto bad = check_inside(inside)) return std::unexpected(*bad);
  HoldOutcome out;
  out.expected = test.readings.front().pressure.value();
  if (test.readings.size() < 2) {
    out.reason = HoldReason::one_reading;
    return out;
  }
  out.lasted = test.readings.back().at - test.readings.front().at;
  const BeerBalance balance(test, inside);
  const auto tight = tight_course(test, inside);
  if (!tight) return std::unexpected(tight.error());
  out.expected = GaugePressure::from_absolute(tight->back(), test.ambient);
  out.change = Estimate<PressureDifference>(test.readings.back().pressure.value() - out.expected);
  const auto loss =
      loss_of_gas(test, inside, balance,
                  Estimate<LogSeconds>(balance.log_tau())
                      .with(inside.resting.source(), std::log(inside.resting.factor())));
  if (!loss) return std::unexpected(loss.error());
  const double lasted_days = in_days(out.lasted);
  out.leak_per_day = propagate([&](Mass m) { return Mass(m / lasted_days); }, loss->straight);
  const auto [low, median, high] = loss->spread;
  if (in_seconds(out.lasted) < hold_settle_minutes * 60) {
    out.reason = HoldReason::too_soon;
  } else if (!low || !high) {
    out.reason = HoldReason::absorption;
  } else {
    out.smallest_visible_per_day = Mass(surely_seen / 2 / lasted_days * (*high - *low));
    if (in_kilograms(*high) < 0) {
      out.reason =
          rose_at_any_rate(test, inside, balance) ? HoldReason::rose : HoldReason::absorption;
    } else if (*high / lasted_days < limit) {
      out.verdict = HoldVerdict::holds;
      out.proven_down_to =
          std::min(test.readings.front().pressure.value(), test.readings.back().pressure.value());
    } else if (in_kilograms(*low) > 0) {
      out.verdict = HoldVerdict::leaks;
    } else {
      out.reason = HoldReason::absorption;
    }
  }
  return out;
}

}  // namespace ullage::physics
