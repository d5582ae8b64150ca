// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/purge_errors.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>

#include "core/physics/gas_use.h"
#include "core/units/present.h"

namespace ullage::physics {

using namespace units;

namespace {

using LogOxygen = OnScale<struct LogOxygenTag>;  // ln of a share, or of mg/L

GaugePressure filled_to(GaugePressure read, PressureDifference off) {
  return std::max(GaugePressure(read + off), gauge_pascals(0));
}

PurgeAct off_by(PurgeAct act, PressureDifference off) {
  if (auto* cycles = get_if<PressureCycles>(&act)) {
    cycles->high = std::max(filled_to(cycles->high, off), cycles->low);
  }
  if (auto* push = get_if<LiquidPush>(&act)) push->pressure = filled_to(push->pressure, off);
  return act;
}

// Acts one after another, as purge_on has each.
struct PurgeRun {
  std::span<const PurgeAct> acts;
  const SupplyGas& gas;
  const PurgeMixing& mixing;
  std::optional<PurgeOutcome> before;

  [[nodiscard]] Result<PurgeOutcome> on(const Vessel& v, PressureDifference off) const {
    std::optional<PurgeOutcome> left = before;
    if (left) left->co2_used = kilograms(0);
    for (const PurgeAct& act : acts) {
      const auto after = purge_on(left, v, off_by(act, off), gas, mixing);
      if (!after) return after;
      left = *after;
    }
    return present(left);
  }
};

// The acts with every input off, one after the other.
Result<OutcomeRuns<PurgeOutcome>> runs_of(const KnownVessel& v, const PurgeRun& run,
                                          const Estimate<PressureDifference>& off) {
  return try_runs(
      [&](Volume space, Volume beer, AbsolutePressure ambient, Temperature t,
          PressureDifference by) { return run.on(Vessel{space, beer, ambient, t, v.oxygen}, by); },
      v.gas_space, v.beer, v.ambient, v.temperature, off);
}

struct Sides {
  double below = 0, above = 0;  // in the logarithm
};
Sides sides_with(const PurgeOutcome& out, double half_width) {
  const double likely = out.oxygen.count();
  return {std::hypot(std::log(likely / out.best.count()), half_width),
          std::hypot(std::log(out.worst.count() / likely), half_width)};
}

bool is_push(const PurgeAct& act) { return get_if<LiquidPush>(&act) != nullptr; }

std::vector<Contribution> with_mixing(std::vector<Contribution> errors, const PurgeOutcome& out,
                                      std::span<const PurgeAct> acts) {
  const auto pushes = std::count_if(acts.begin(), acts.end(), is_push);
  const char* name = pushes == 0 ? "purge: mixing"
                     : pushes == static_cast<std::ptrdiff_t>(acts.size())
                         ? "air left on top"
                         : "air left on top, and mixing";
  errors.push_back({{name}, std::log(out.worst.count() / out.oxygen.count())});
  return errors;
}

}  // namespace

Result<PurgeEstimate> purge_estimate(const KnownVessel& v, const PurgeAct& act,
                                     const Estimate<PressureDifference>& off, ErrorSource method,
                                     const SupplyGas& gas, const PurgeMixing& mixing) {
  return purge_estimate(v, std::span(&act, 1), off, std::move(method), gas, mixing);
}

Result<PurgeEstimate> purge_estimate(const KnownVessel& v, std::span<const PurgeAct> acts,
                                     const Estimate<PressureDifference>& off, ErrorSource method,
                                     const SupplyGas& gas, const PurgeMixing& mixing,
                                     const std::optional<PurgeOutcome>& before) {
  if (acts.empty())
    return std::unexpected(RangeError{Subject::cycles, 0, 1, purge_cycles_range.high});
  const PurgeRun run{acts, gas, mixing, before};
  const auto plain = run.on(
      {v.gas_space.value(), v.beer.value(), v.ambient.value(), v.temperature.value(), v.oxygen},
      PressureDifference());
  if (!plain) return std::unexpected(plain.error());
  const auto runs = runs_of(v, run, off);
  if (!runs) return std::unexpected(runs.error());
  const auto left =
      runs->taken([](const PurgeOutcome& o) { return LogOxygen(std::log(o.oxygen.count())); });
  const auto in_beer = runs->taken(
      [](const PurgeOutcome& o) { return LogOxygen(std::log(o.if_all_in_beer.count())); });
  const auto used = runs->taken([](const PurgeOutcome& o) { return o.co2_used; });

  PurgeEstimate out{
      *plain, plain->if_all_in_beer, gas_to_purge(plain->co2_used, std::move(method)), {}, {}};
  for (const Contribution& c : used.contributions())
    out.co2_used = out.co2_used.with(c.source, c.half_width);
  if (!(plain->oxygen.count() > 0)) return out;
  const Sides share = sides_with(*plain, left.half_width());
  const Sides beer = sides_with(*plain, in_beer.half_width());
  const double likely = plain->oxygen.count();
  out.outcome.best = mole_fraction(likely * std::exp(-share.below));
  out.outcome.worst = mole_fraction(std::min(1.0, likely * std::exp(share.above)));
  const double taken_up = plain->if_all_in_beer.count();
  out.if_all_in_beer_best = OxygenConcentration(taken_up * std::exp(-beer.below));
  out.outcome.if_all_in_beer_worst = OxygenConcentration(taken_up * std::exp(beer.above));
  out.oxygen_errors = with_mixing(left.contributions(), *plain, acts);
  out.in_beer_errors = with_mixing(in_beer.contributions(), *plain, acts);
  return out;
}

Result<CyclesNeeded> cycles_needed(MoleFraction target, const KnownVessel& v, GaugePressure high,
                                   const Estimate<PressureDifference>& off, const SupplyGas& gas,
                                   const Mixing& mixing) {
  using CycleCount = OnScale<struct CycleCountTag>;
  const auto needed = [&](AbsolutePressure ambient, PressureDifference by,
                          Fraction mixes) -> Result<CycleCount> {
    const Vessel vessel{v.gas_space.value(), v.beer.value(), ambient, v.temperature.value(),
                        v.oxygen};
    const auto n = cycles_to_reach(target, vessel, filled_to(high, by), gas, mixes);
    if (!n) return std::unexpected(n.error());
    return CycleCount(*n);
  };
  const auto by_mixing = [&](Fraction mixes) {
    return needed(v.ambient.value(), PressureDifference(), mixes);
  };
  const auto likely = by_mixing(mixing.likely);
  const auto best = by_mixing(mixing.best);
  const auto worst = by_mixing(mixing.worst);
  for (const auto* n : {&likely, &best, &worst}) {
    if (!*n) return std::unexpected(n->error());
  }
  CyclesNeeded out{likely->count(), best->count(), std::nullopt, {}};
  const auto read =
      try_propagate([&](AbsolutePressure ambient,
                        PressureDifference by) { return needed(ambient, by, mixing.likely); },
                    v.ambient, off);
  if (read) {
    const double h = read->half_width();
    out.fewest = std::max(0.0, out.likely - std::hypot(out.likely - best->count(), h));
    out.most = out.likely + std::hypot(worst->count() - out.likely, h);
    out.errors = read->contributions();
  }
  out.errors.push_back({{"purge: mixing"}, worst->count() - out.likely});
  return out;
}

}  // namespace ullage::physics
