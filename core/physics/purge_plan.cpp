// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/purge_plan.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage::physics {

using namespace units;

namespace {

constexpr double volumes_step = 0.5;  // swept volumes are told in halves

// Under a target and within the range of cycles or volumes there may be no plan.
using MaybePlan = Result<std::optional<PurgePlan>>;

Result<PurgeOutcome> purge_once(const Vessel& v, const PurgeAct& act, const SupplyGas& gas,
                                const PurgeMixing& mixing) {
  if (const auto* cycles = get_if<PressureCycles>(&act))
    return purge_by_cycles(v, *cycles, gas, mixing.cycle);
  if (const auto* sweep = get_if<Sweep>(&act))
    return purge_by_sweep(v, sweep->vessel_volumes, gas, mixing.sweep);
  return purge_by_liquid(v, get<LiquidPush>(act), gas);
}

Vessel holding(const Vessel& v, MoleFraction oxygen) {
  Vessel out = v;
  out.oxygen = oxygen;
  return out;
}

LiquidPush push_with(const PurgeMeans& means) {
  LiquidPush push = means.liquid_push;
  push.pressure = means.push;
  return push;
}

class PurgePlanner {
 public:
  PurgePlanner(MoleFraction target, const Vessel& v, const PurgeMeans& means)
      : target_(target), vessel_(v), means_(means) {}

  MaybePlan cycles(const std::optional<PurgeOutcome>& from, GaugePressure high) const {
    PurgePlan plan;
    plan.cycles = {0, high, gauge_pascals(0)};
    if (!there(from)) {
      const auto exact =
          cycles_to_reach(target_, start(from), high, means_.gas, means_.mixing.cycle.likely);
      if (!exact) return std::unexpected(exact.error());
      const double whole = std::ceil(*exact - 1e-9);
      if (whole > purge_cycles_range.high) return std::optional<PurgePlan>();
      plan.cycles.cycles = static_cast<int>(whole);
    }
    const PressureCycles act = plan.cycles;
    return carried_out(std::move(plan), from, act);
  }

  MaybePlan sweep(const std::optional<PurgeOutcome>& from) const {
    PurgePlan plan;
    plan.way = PurgeWay::sweep;
    if (!there(from)) {
      const auto exact =
          volumes_to_reach(target_, start(from), means_.gas, means_.mixing.sweep.likely);
      if (!exact) return std::unexpected(exact.error());
      plan.vessel_volumes = std::ceil(*exact / volumes_step - 1e-9) * volumes_step;
      if (plan.vessel_volumes > swept_volumes_range.high) return std::optional<PurgePlan>();
    }
    const Sweep act{plan.vessel_volumes};
    return carried_out(std::move(plan), from, act);
  }

  // Cycles after it where it does not do alone.
  MaybePlan push() const {
    PurgePlan plan;
    plan.way = PurgeWay::liquid_push;
    auto pushed = carried_out(std::move(plan), std::nullopt, push_with(means_));
    if (!pushed || (*pushed)->outcome.oxygen <= target_) return pushed;
    if (means_.pressures.empty()) return std::optional<PurgePlan>();
    auto more = cycles((*pushed)->outcome, means_.pressures.front());
    if (!more || !*more) return more;
    (*more)->way = PurgeWay::push_then_cycles;
    (*more)->outcome.co2_used += (*pushed)->outcome.co2_used;
    return more;
  }

 private:
  [[nodiscard]] bool there(const std::optional<PurgeOutcome>& from) const {
    return from && from->oxygen <= target_;
  }
  [[nodiscard]] Vessel start(const std::optional<PurgeOutcome>& from) const {
    return from ? holding(vessel_, from->oxygen) : vessel_;
  }
  [[nodiscard]] MaybePlan carried_out(PurgePlan plan, std::optional<PurgeOutcome> from,
                                      const PurgeAct& act) const {
    if (from) from->co2_used = kilograms(0);
    const auto outcome = purge_on(from, vessel_, act, means_.gas, means_.mixing);
    if (!outcome) return std::unexpected(outcome.error());
    plan.outcome = *outcome;
    return std::optional(std::move(plan));
  }

  MoleFraction target_;
  const Vessel& vessel_;
  const PurgeMeans& means_;
};

}  // namespace

Result<PurgeOutcome> purge_on(const std::optional<PurgeOutcome>& before, const Vessel& v,
                              const PurgeAct& act, const SupplyGas& gas,
                              const PurgeMixing& mixing) {
  auto out = purge_once(before ? holding(v, before->oxygen) : v, act, gas, mixing);
  if (!out || !before) return out;
  const auto best = purge_once(holding(v, before->best), act, gas, mixing);
  const auto worst = purge_once(holding(v, before->worst), act, gas, mixing);
  if (!best) return best;
  if (!worst) return worst;
  out->best = best->best;
  out->worst = worst->worst;
  out->if_all_in_beer_worst = worst->if_all_in_beer_worst;
  out->co2_used += before->co2_used;
  return out;
}

Result<std::vector<PurgeOutcome>> purge_in_order(const Vessel& v, std::span<const PurgeAct> acts,
                                                 const SupplyGas& gas, const PurgeMixing& mixing) {
  std::vector<PurgeOutcome> out;
  for (const PurgeAct& act : acts) {
    const auto left =
        purge_on(out.empty() ? std::nullopt : std::optional(out.back()), v, act, gas, mixing);
    if (!left) return std::unexpected(left.error());
    out.push_back(*left);
  }
  return out;
}

Result<std::vector<PurgeOutcome>> purge_series(const Vessel& v, const PressureCycles& c,
                                               const SupplyGas& gas, const Mixing& mixing) {
  if (auto bad = outside(Subject::cycles, c.cycles, purge_cycles_range))
    return std::unexpected(*bad);
  std::vector<PurgeOutcome> out;
  for (int n = 0; n <= c.cycles; ++n) {
    const auto outcome = purge_by_cycles(v, {n, c.high, c.low}, gas, mixing);
    if (!outcome) return std::unexpected(outcome.error());
    out.push_back(*outcome);
  }
  return out;
}

Result<std::vector<PurgePlan>> purge_plans(MoleFraction target, const Vessel& v,
                                           const PurgeMeans& means,
                                           const std::optional<PurgeOutcome>& done) {
  // A target on the floor itself takes for ever, whatever was done.
  if (auto bad = outside(Subject::oxygen_fraction, target.count(),
                         {std::nextafter(means.gas.oxygen.count(), 1.0), 1.0}))
    return std::unexpected(*bad);
  const PurgePlanner planner(target, v, means);
  std::vector<PurgePlan> out;
  const auto take = [&](const MaybePlan& plan) -> std::optional<RangeError> {
    if (!plan) return plan.error();
    if (*plan) out.push_back(**plan);
    return std::nullopt;
  };
  for (const GaugePressure& p : means.pressures) {
    if (const auto bad = take(planner.cycles(done, p))) return std::unexpected(*bad);
  }
  if (const auto bad = take(planner.sweep(done))) return std::unexpected(*bad);
  if (means.liquid) {
    if (const auto bad = take(planner.push())) return std::unexpected(*bad);
  }
  std::stable_sort(out.begin(), out.end(), [](const PurgePlan& a, const PurgePlan& b) {
    return a.outcome.co2_used < b.outcome.co2_used;
  });
  return out;
}

std::vector<PurgeAct> acts_of(const PurgePlan& plan, const PurgeMeans& means) {
  switch (plan.way) {
    case PurgeWay::cycles:
      return {plan.cycles};
    case PurgeWay::sweep:
      return {Sweep{plan.vessel_volumes}};
    case PurgeWay::liquid_push:
      return {push_with(means)};
    case PurgeWay::push_then_cycles:
      break;
  }
  return {push_with(means), plan.cycles};
}

}  // namespace ullage::physics
