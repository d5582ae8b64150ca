// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/purge_plan.h"

#include <algorithm>
#include <cmath>

namespace ullage::physics {

using namespace units;

namespace {

constexpr double volumes_step = 0.5;  // swept volumes are told in halves

Result<std::optional<PurgePlan>> plan_cycles(MoleFraction target, const Vessel& v,
                                             const PurgeMeans& means, GaugePressure high) {
  const auto exact = cycles_to_reach(target, v, high, means.gas, means.cycle.likely);
  if (!exact) return std::unexpected(exact.error());
  const double cycles = std::ceil(*exact - 1e-9);
  if (cycles > purge_cycles_range.high) return std::optional<PurgePlan>();
  PurgePlan plan;
  plan.cycles = {static_cast<int>(cycles), high, gauge_pascals(0)};
  const auto outcome = purge_by_cycles(v, plan.cycles, means.gas, means.cycle);
  if (!outcome) return std::unexpected(outcome.error());
  plan.outcome = *outcome;
  return std::optional(plan);
}

Result<std::optional<PurgePlan>> plan_sweep(MoleFraction target, const Vessel& v,
                                            const PurgeMeans& means) {
  const auto exact = volumes_to_reach(target, v, means.gas, means.sweep.likely);
  if (!exact) return std::unexpected(exact.error());
  PurgePlan plan;
  plan.way = PurgeWay::sweep;
  plan.vessel_volumes = std::ceil(*exact / volumes_step - 1e-9) * volumes_step;
  if (plan.vessel_volumes > swept_volumes_range.high) return std::optional<PurgePlan>();
  const auto outcome = purge_by_sweep(v, plan.vessel_volumes, means.gas, means.sweep);
  if (!outcome) return std::unexpected(outcome.error());
  plan.outcome = *outcome;
  return std::optional(plan);
}

// Cycles after a push, each of best, likely and worst going on from the push's own.
Result<std::optional<PurgePlan>> plan_push(MoleFraction target, const Vessel& v,
                                           const PurgeMeans& means) {
  LiquidPush push = means.liquid_push;
  push.pressure = means.push;
  const auto pushed = purge_by_liquid(v, push, means.gas);
  if (!pushed) return std::unexpected(pushed.error());
  PurgePlan plan;
  plan.way = PurgeWay::liquid_push;
  plan.outcome = *pushed;
  if (pushed->oxygen <= target) return std::optional(plan);
  if (means.pressures.empty()) return std::optional<PurgePlan>();
  plan.way = PurgeWay::push_then_cycles;
  const auto from = [&](MoleFraction oxygen) {
    Vessel after = v;
    after.oxygen = oxygen;
    return after;
  };
  const auto more = plan_cycles(target, from(pushed->oxygen), means, means.pressures.front());
  if (!more) return std::unexpected(more.error());
  if (!*more) return std::optional<PurgePlan>();
  plan.cycles = (*more)->cycles;
  plan.outcome = (*more)->outcome;
  const auto best = purge_by_cycles(from(pushed->best), plan.cycles, means.gas, means.cycle);
  const auto worst = purge_by_cycles(from(pushed->worst), plan.cycles, means.gas, means.cycle);
  if (!best) return std::unexpected(best.error());
  if (!worst) return std::unexpected(worst.error());
  plan.outcome.best = best->best;
  plan.outcome.worst = worst->worst;
  plan.outcome.if_all_in_beer_worst = worst->if_all_in_beer_worst;
  plan.outcome.co2_used += pushed->co2_used;
  return std::optional(plan);
}

}  // namespace

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
                                           const PurgeMeans& means) {
  std::vector<PurgePlan> out;
  const auto take = [&](const Result<std::optional<PurgePlan>>& plan) -> std::optional<RangeError> {
    if (!plan) return plan.error();
    if (*plan) out.push_back(**plan);
    return std::nullopt;
  };
  for (const GaugePressure& p : means.pressures) {
    if (const auto bad = take(plan_cycles(target, v, means, p))) return std::unexpected(*bad);
  }
  if (const auto bad = take(plan_sweep(target, v, means))) return std::unexpected(*bad);
  if (means.liquid) {
    if (const auto bad = take(plan_push(target, v, means))) return std::unexpected(*bad);
  }
  std::stable_sort(out.begin(), out.end(), [](const PurgePlan& a, const PurgePlan& b) {
    return a.outcome.co2_used < b.outcome.co2_used;
  });
  return out;
}

}  // namespace ullage::physics
