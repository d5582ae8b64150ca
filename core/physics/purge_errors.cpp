// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/purge_errors.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/physics/gas_use.h"

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

// The purge with every input off, one after the other.
Result<OutcomeRuns<PurgeOutcome>> runs_of(const KnownVessel& v, const PurgeAct& act,
                                          const Estimate<PressureDifference>& off,
                                          const SupplyGas& gas, const PurgeMixing& mixing) {
  return try_runs(
      [&](Volume space, Volume beer, AbsolutePressure ambient, Temperature t,
          PressureDifference by) {
        return purge_on({}, Vessel{space, beer, ambient, t, v.oxygen}, off_by(act, by), gas,
                        mixing);
      },
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

std::vector<Contribution> with_mixing(std::vector<Contribution> errors, const PurgeOutcome& out,
                                      bool is_push) {
  errors.push_back({{is_push ? "air left on top" : "purge: mixing"},
                    std::log(out.worst.count() / out.oxygen.count())});
  return errors;
}

}  // namespace

Result<PurgeEstimate> purge_estimate(const KnownVessel& v, const PurgeAct& act,
                                     const Estimate<PressureDifference>& off, ErrorSource method,
                                     const SupplyGas& gas, const PurgeMixing& mixing) {
  const auto plain = purge_on({},
                              Vessel{v.gas_space.value(), v.beer.value(), v.ambient.value(),
                                     v.temperature.value(), v.oxygen},
                              act, gas, mixing);
  if (!plain) return std::unexpected(plain.error());
  const auto runs = runs_of(v, act, off, gas, mixing);
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
  const bool is_push = get_if<LiquidPush>(&act) != nullptr;
  out.oxygen_errors = with_mixing(left.contributions(), *plain, is_push);
  out.in_beer_errors = with_mixing(in_beer.contributions(), *plain, is_push);
  return out;
}

}  // namespace ullage::physics
