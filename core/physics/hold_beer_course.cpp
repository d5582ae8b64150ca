// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/hold_beer_course.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "core/physics/co2_gas.h"
#include "core/physics/equilibrium.h"
#include "core/physics/hold_check.h"
#include "core/physics/hold_fit.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double part_of_time_constant = 0.01;  // longest step of the course
constexpr int most_steps_between = 60;
constexpr int newton_steps = 30;
// Over longer steps the headspace of a full keg would swing about where it is drawn
// to: there the pull at the end of the step is taken for all of it.
constexpr double straight_up_to = 0.03;

// Headspace and beer, closed.
class ClosedBeer {
 public:
  ClosedBeer(const HoldTest& test, const BeerInside& inside, Co2Volumes equation_off)
      : headspace_(test.gas_space),
        beer_(inside.beer),
        time_constant_(inside.resting.median()),
        equation_off_(equation_off),
        co2_(inside.co2.value()) {}

  Result<void> begin(AbsolutePressure p, Temperature t) {
    const auto pull = pull_at(p, t);
    if (!pull) return std::unexpected(pull.error());
    const auto gas = gas_amount(p, headspace_, t);
    if (!gas) return std::unexpected(gas.error());
    pressure_ = p;
    temperature_ = t;
    pull_ = *pull;
    total_ = *gas + dissolved_amount(co2_, beer_);
    return {};
  }

  Result<AbsolutePressure> go_on(Duration span, Temperature to) {
    const double parts = in_seconds(span) / (part_of_time_constant * in_seconds(time_constant_));
    const int steps = static_cast<int>(std::clamp(std::ceil(parts), 1.0, 1.0 * most_steps_between));
    const Temperature from = temperature_;
    for (int i = 1; i <= steps; ++i) {
      const double share = 1.0 * i / steps;
      const auto stepped =
          step(Duration(span / (1.0 * steps)),
               kelvin(in_kelvin(from) + share * (in_kelvin(to) - in_kelvin(from))));
      if (!stepped) return std::unexpected(stepped.error());
    }
    return pressure_;
  }

 private:
  Result<Co2Volumes> pull_at(AbsolutePressure p, Temperature t) const {
    const auto held = equilibrium_co2(p, t);
    if (!held) return held;
    return volumes_of_co2(held->count() + equation_off_.count());
  }

  struct Tried {
    double surplus_mol = 0;  // over what is in the keg
    Co2Volumes co2, pull;
  };
  Result<Tried> tried(AbsolutePressure p, Temperature t, Duration span) const {
    const auto pull = pull_at(p, t);
    if (!pull) return std::unexpected(pull.error());
    const bool straight = in_seconds(span) <= straight_up_to * in_seconds(time_constant_);
    const Co2Volumes co2 =
        after_uptake(co2_, {straight ? pull_ : *pull, *pull}, span, time_constant_);
    const auto gas = gas_amount(p, headspace_, t);
    if (!gas) return std::unexpected(gas.error());
    return Tried{in_moles(*gas + dissolved_amount(co2, beer_) - total_), co2, *pull};
  }

  // To the pressure at which nothing is lost: what the keg holds rises with it,
  // nearly straight.
  Result<void> step(Duration span, Temperature t) {
    AbsolutePressure a = pressure_;
    AbsolutePressure b = pascals_absolute(in_pascals(a) * 1.001);
    auto at_a = tried(a, t, span);
    auto at_b = tried(b, t, span);
    for (int i = 0; i < newton_steps; ++i) {
      if (!at_a) return std::unexpected(at_a.error());
      if (!at_b) return std::unexpected(at_b.error());
      const double rise = at_b->surplus_mol - at_a->surplus_mol;
      if (std::abs(at_b->surplus_mol) <= 1e-10 * in_moles(total_) || rise == 0) break;
      const double next =
          in_pascals(b) - at_b->surplus_mol * (in_pascals(b) - in_pascals(a)) / rise;
      a = std::exchange(
          b, pascals_absolute(std::clamp(next, equilibrium_pressure_range.low, in_pascals(b) * 2)));
      at_a = std::exchange(at_b, tried(b, t, span));
    }
    if (!at_b) return std::unexpected(at_b.error());
    pressure_ = b;
    temperature_ = t;
    co2_ = at_b->co2;
    pull_ = at_b->pull;
    return {};
  }

  Volume headspace_, beer_;
  Duration time_constant_;
  Co2Volumes equation_off_;
  Co2Volumes co2_, pull_;
  AbsolutePressure pressure_;
  Temperature temperature_;
  Amount total_;
};

// A test and its beer as they would be with one source so many half-widths off.
struct OffCase {
  HoldTest test;
  BeerInside inside;
  Co2Volumes equation_off;
};

OffCase off_case(const HoldTest& test, const BeerInside& inside, const ErrorSource& source,
                 double half_widths) {
  OffCase out{test, inside, volumes_of_co2(0)};
  HoldReading& first = out.test.readings.front();
  first.pressure = Estimate<GaugePressure>(
      first.pressure.with({"settling"}, settling_of_first(test)).shifted(source, half_widths));
  for (HoldReading& r : out.test.readings)
    r.temperature = Estimate<Temperature>(r.temperature.shifted(source, half_widths));
  out.inside.co2 = Estimate<Co2Volumes>(inside.co2.shifted(source, half_widths));
  out.inside.resting =
      LogEstimate<Duration>(inside.resting.shifted(source, half_widths), 1.0, source);
  if (source == inside.equation) {
    out.equation_off =
        volumes_of_co2(half_widths * equation_half_width(Equation::fitted_chart).count());
  }
  return out;
}

std::set<ErrorSource> course_sources(const HoldTest& test, const BeerInside& inside) {
  std::set<ErrorSource> all{{"settling"}, inside.resting.source(), inside.equation};
  const auto take = [&](const std::vector<Contribution>& contributions) {
    for (const Contribution& c : contributions) all.insert(c.source);
  };
  take(test.readings.front().pressure.contributions());
  for (const HoldReading& r : test.readings) take(r.temperature.contributions());
  take(inside.co2.contributions());
  return all;
}

// As the dial of the readings shows it: what it is always off by, it is off by at
// every point of the course.
Result<std::vector<GaugePressure>> shown_course(const HoldTest& test, const BeerInside& inside,
                                                const ErrorSource& source, double half_widths,
                                                int count) {
  const OffCase off = off_case(test, inside, source, half_widths);
  const auto course = tight_course(hold_points(off.test, count), off.inside, off.equation_off);
  if (!course) return std::unexpected(course.error());
  const auto& later = test.readings.back().pressure;
  const PressureDifference shared = later.shifted(source, half_widths) - later.value();
  std::vector<GaugePressure> out;
  for (const AbsolutePressure& p : *course)
    out.push_back(GaugePressure::from_absolute(p, test.ambient) - shared);
  return out;
}

}  // namespace

Co2Volumes after_uptake(Co2Volumes co2, const PulledTo& pull, Duration span,
                        Duration time_constant) {
  const double share = in_seconds(span) / in_seconds(time_constant);
  const double lag = (pull.to.count() - pull.from.count()) / share;
  return volumes_of_co2(pull.to.count() - lag +
                        (co2.count() - pull.from.count() + lag) * std::exp(-share));
}

Result<std::vector<AbsolutePressure>> tight_course(const HoldTest& test, const BeerInside& inside,
                                                   Co2Volumes equation_off) {
  const HoldReading& first = test.readings.front();
  ClosedBeer keg(test, inside, equation_off);
  std::vector<AbsolutePressure> out{first.pressure.value().at_ambient(test.ambient)};
  const auto begun = keg.begin(out.front(), first.temperature.value());
  if (!begun) return std::unexpected(begun.error());
  for (std::size_t i = 1; i < test.readings.size(); ++i) {
    const auto p = keg.go_on(test.readings[i].at - test.readings[i - 1].at,
                             test.readings[i].temperature.value());
    if (!p) return std::unexpected(p.error());
    out.push_back(*p);
  }
  return out;
}

Result<std::vector<HoldPoint>> hold_beer_lines(const HoldTest& test, const BeerInside& inside,
                                               int count) {
  if (const auto valid = judge_hold_with_beer(test, inside); !valid)
    return std::unexpected(valid.error());
  if (auto bad = outside(Subject::parts, count, {2, 10000})) return std::unexpected(*bad);
  if (test.readings.size() < 2) return std::vector<HoldPoint>{};
  const HoldTest dense = hold_points(test, count);
  const auto likely = tight_course(dense, inside);
  if (!likely) return std::unexpected(likely.error());
  std::vector<double> above(likely->size());
  std::vector<double> below(likely->size());
  for (const ErrorSource& source : course_sources(test, inside)) {
    for (const double half_widths : {1.0, -1.0}) {
      const auto off = shown_course(test, inside, source, half_widths, count);
      if (!off) return std::unexpected(off.error());
      for (std::size_t i = 0; i < off->size(); ++i) {
        const double by = in_pascals((*off)[i].at_ambient(test.ambient) - (*likely)[i]);
        (by > 0 ? above : below)[i] += by * by;
      }
    }
  }
  std::vector<HoldPoint> out;
  for (std::size_t i = 0; i < likely->size(); ++i) {
    const GaugePressure p = GaugePressure::from_absolute((*likely)[i], test.ambient);
    out.push_back({dense.readings[i].at,
                   p,
                   p - pascals(std::sqrt(below[i])),
                   p + pascals(std::sqrt(above[i])),
                   {}});
  }
  return out;
}

}  // namespace ullage::physics
