// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/rescue.h"

#include <algorithm>
#include <cmath>

#include "core/physics/atmosphere.h"
#include "core/physics/co2_gas.h"
#include "core/physics/equilibrium.h"
#include "core/units/quantiles.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr Range vent_to_range{0.0, 4.5e5};  // Pa
constexpr double waited_out = 3.0;          // time constants: 95 % of the way
constexpr double near_target = 0.1;         // volumes
constexpr int draws_to_empty = 400;         // steps of the served plan

ClosedKeg keg_of(const OverCarbonated& o) {
  return {o.brimful, o.beer.value(), o.temperature.value()};
}

std::optional<RangeError> check_over(const OverCarbonated& o) {
  if (auto bad = outside(Subject::ambient_pressure, in_pascals(o.ambient), ambient_pressure_range))
    return *bad;
  if (auto bad = outside(Subject::co2, o.target.count(), co2_range)) return *bad;
  if (auto bad = outside(Subject::co2, o.co2.value().count(),
                         {std::nextafter(o.target.count(), 9.0), co2_range.high}))
    return *bad;
  return std::nullopt;
}

// The target must rest above what is vented to, or no number of vents gets there.
std::optional<RangeError> check_reach(const ClosedKeg& keg, Co2Volumes target,
                                      GaugePressure vent_to, AbsolutePressure ambient) {
  const auto goal = resting_at(keg, target);
  if (!goal) return goal.error();
  const double at_goal = in_pascals(GaugePressure::from_absolute(goal->headspace, ambient));
  if (auto bad = outside(Subject::gauge_pressure, in_pascals(vent_to),
                         {vent_to_range.low, std::nextafter(at_goal, -1e9)}))
    return *bad;
  return std::nullopt;
}

struct VentCourse {
  VentCount count;
  std::vector<VentStep> steps;
  Amount vented = moles(0);
};

Result<VentCourse> vent_course(const ClosedKeg& keg, Co2Volumes co2, Co2Volumes target,
                               GaugePressure vent_to, AbsolutePressure ambient) {
  auto now = resting_at(keg, co2);
  if (!now) return std::unexpected(now.error());
  VentCourse out;
  while (now->co2 > target) {
    if (out.steps.size() >= most_vents)
      return std::unexpected(
          RangeError{Subject::cycles, most_vents + 1.0, 0, static_cast<double>(most_vents)});
    const auto full = co2_in_keg(keg, *now);
    const auto let_down = co2_in_keg(keg, {vent_to.at_ambient(ambient), now->co2});
    if (!full) return std::unexpected(full.error());
    if (!let_down) return std::unexpected(let_down.error());
    const auto next = at_rest(keg, *let_down);
    if (!next) return std::unexpected(next.error());
    out.steps.push_back({GaugePressure::from_absolute(now->headspace, ambient), next->co2,
                         GaugePressure::from_absolute(next->headspace, ambient)});
    out.vented += *full - *let_down;
    const double step = now->co2.count() - next->co2.count();
    out.count =
        VentCount(out.count.count() + std::min(1.0, (now->co2.count() - target.count()) / step));
    now = next;
  }
  return out;
}

// One vent and the wait after it. Where the headspace stands at `to` or below,
// nothing comes out.
Result<KegAtRest> vented_once(const ClosedKeg& keg, const KegAtRest& now, AbsolutePressure to) {
  if (now.headspace <= to) return now;
  const auto let_down = co2_in_keg(keg, {to, now.co2});
  if (!let_down) return std::unexpected(let_down.error());
  return at_rest(keg, *let_down);
}

// Down to which pressure a vent of beer with this CO2 must go to end with `total`.
Result<AbsolutePressure> vent_that_leaves(const ClosedKeg& keg, Co2Volumes co2, Amount total,
                                          AbsolutePressure low, AbsolutePressure high) {
  constexpr int halvings = 40;
  for (int i = 0; i < halvings; ++i) {
    const AbsolutePressure middle = low + 0.5 * (high - low);
    const auto left = co2_in_keg(keg, {middle, co2});
    if (!left) return std::unexpected(left.error());
    (*left > total ? high : low) = middle;
  }
  return low;
}

Result<Co2Volumes> co2_of(const ClosedKeg&, Co2Volumes, const Result<KegAtRest>& end) {
  if (!end) return std::unexpected(end.error());
  return end->co2;
}

// A closed keg loses what is vented and nothing else.
Result<Mass> vented_between(const ClosedKeg& keg, Co2Volumes start, const Result<KegAtRest>& end) {
  if (!end) return std::unexpected(end.error());
  const auto from = resting_at(keg, start);
  if (!from) return std::unexpected(from.error());
  const auto before = co2_in_keg(keg, *from), after = co2_in_keg(keg, *end);
  if (!before) return std::unexpected(before.error());
  if (!after) return std::unexpected(after.error());
  return co2_mass(*before - *after);
}

}  // namespace

Result<VentPlan> vents_to_target(const OverCarbonated& o, GaugePressure vent_to) {
  if (const auto bad = check_over(o)) return std::unexpected(*bad);
  const ClosedKeg keg = keg_of(o);
  if (const auto bad = check_reach(keg, o.target, vent_to, o.ambient)) return std::unexpected(*bad);
  const auto course = vent_course(keg, o.co2.value(), o.target, vent_to, o.ambient);
  if (!course) return std::unexpected(course.error());
  const auto share = closed_time_share(keg);
  if (!share) return std::unexpected(share.error());
  VentPlan out;
  out.vents = static_cast<int>(course->steps.size());
  out.steps = course->steps;
  out.vented = co2_mass(course->vented);
  out.wait = LogEstimate<Duration>(o.resting.median() * (waited_out * share->count()),
                                   o.resting.factor(), o.resting.source());
  const auto spread = propagate_quantiles(
      [&](Volume beer, Co2Volumes co2, Temperature t) -> std::optional<VentCount> {
        const auto c = vent_course({o.brimful, beer, t}, co2, o.target, vent_to, o.ambient);
        return c ? std::optional(c->count) : std::nullopt;
      },
      o.beer, o.co2, o.temperature);
  const auto whole = [](VentCount c) { return static_cast<int>(std::ceil(c.count() - 1e-9)); };
  out.fewest = spread.low ? std::min(whole(*spread.low), out.vents) : 0;
  if (spread.high) out.most = std::max(whole(*spread.high), out.vents);
  return out;
}

Result<VentedEnd> end_of_vents(const OverCarbonated& o, const VentPlan& plan,
                               GaugePressure vent_to) {
  if (const auto bad = check_over(o)) return std::unexpected(*bad);
  if (plan.steps.empty())
    return std::unexpected(RangeError{Subject::cycles, 0, 1, static_cast<double>(most_vents)});
  const ClosedKeg keg = keg_of(o);
  const auto goal = resting_at(keg, o.target);
  if (!goal) return std::unexpected(goal.error());
  const auto total = co2_in_keg(keg, *goal);
  if (!total) return std::unexpected(total.error());
  const std::size_t whole = plan.steps.size() - 1;
  const Co2Volumes before = whole == 0 ? o.co2.value() : plan.steps[whole - 1].after;
  const AbsolutePressure down_to = vent_to.at_ambient(o.ambient);
  const auto last = vent_that_leaves(keg, before, *total, down_to,
                                     plan.steps.back().before.at_ambient(o.ambient));
  if (!last) return std::unexpected(last.error());
  const auto course = [&](std::size_t vents, bool and_last) {
    return [&, vents, and_last](Volume beer, Co2Volumes c, Temperature t) -> Result<KegAtRest> {
      const ClosedKeg k{o.brimful, beer, t};
      auto now = resting_at(k, c);
      for (std::size_t i = 0; now && i < vents; ++i) now = vented_once(k, *now, down_to);
      if (now && and_last) now = vented_once(k, *now, *last);
      return now;
    };
  };
  const auto gauge = [&](auto run) {
    return try_propagate(
        [&](Volume beer, Co2Volumes c, Temperature t) -> Result<GaugePressure> {
          const auto rest = run(beer, c, t);
          if (!rest) return std::unexpected(rest.error());
          return GaugePressure::from_absolute(rest->headspace, o.ambient);
        },
        o.beer, o.co2, o.temperature);
  };
  const auto over_errors = [&](const auto& answer) {
    return try_propagate(
        [&](Volume beer, Co2Volumes c, Temperature t) {
          return answer(ClosedKeg{o.brimful, beer, t}, c, course(whole, true)(beer, c, t));
        },
        o.beer, o.co2, o.temperature);
  };
  auto first = gauge(course(whole == 0 ? 0 : 1, whole == 0));
  auto rests = gauge(course(whole, true));
  auto co2 = over_errors(co2_of);
  auto vented = over_errors(vented_between);
  if (!first) return std::unexpected(first.error());
  if (!rests) return std::unexpected(rests.error());
  if (!co2) return std::unexpected(co2.error());
  if (!vented) return std::unexpected(vented.error());
  return VentedEnd{GaugePressure::from_absolute(*last, o.ambient), *std::move(first),
                   *std::move(co2), *std::move(rests), *std::move(vented)};
}

Result<HeldPlan> hold_at_target(const OverCarbonated& o) {
  if (const auto bad = check_over(o)) return std::unexpected(*bad);
  const auto goal = resting_at(keg_of(o), o.target);
  if (!goal) return std::unexpected(goal.error());
  const double above = o.co2.value().count() - o.target.count();
  const double constants = std::log(std::max(1.0, above / near_target));
  return HeldPlan{GaugePressure::from_absolute(goal->headspace, o.ambient),
                  LogEstimate<Duration>(o.resting.median() * constants, o.resting.factor(),
                                        o.resting.source())};
}

Result<ServePlan> serve_to_target(const OverCarbonated& o) {
  if (const auto bad = check_over(o)) return std::unexpected(*bad);
  ClosedKeg keg = keg_of(o);
  auto now = resting_at(keg, o.co2.value());
  if (!now) return std::unexpected(now.error());
  const Volume start = keg.beer;
  const Volume each = start / static_cast<double>(draws_to_empty);
  while (now->co2 > o.target) {
    const auto before = co2_in_keg(keg, *now);
    if (!before) return std::unexpected(before.error());
    const Amount poured = dissolved_amount(now->co2, each);
    keg.beer -= each;
    now = at_rest(keg, *before - poured);
    if (!now) return std::unexpected(now.error());
  }
  const GaugePressure then = GaugePressure::from_absolute(now->headspace, o.ambient);
  if (auto bad = outside(Subject::gauge_pressure, in_pascals(then), vent_to_range))
    return std::unexpected(*bad);
  return ServePlan{start - keg.beer, keg.beer, then};
}

}  // namespace ullage::physics
