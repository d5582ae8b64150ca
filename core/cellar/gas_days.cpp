// SPDX-License-Identifier: GPL-3.0-or-later
//
// How long the gas lasts, and whether it carries what is in the kegs.
#include <algorithm>

#include "core/cellar/gas_account.h"
#include "core/cellar/mass_sum.h"
#include "core/physics/atmosphere.h"
#include "core/physics/gas_use.h"

namespace ullage::cellar {

namespace {

constexpr double planned_over_days = 14;  // the loss that goes on meanwhile

// To push out and carbonate what is in a keg now.
void plan_for(MassSum& sum, const KegTimeline& keg, Instant now, units::AbsolutePressure ambient) {
  const Level level = keg.level.at(now, keg.record.brimful);
  if (!level.left || !keg.gas.now.set) return;
  const TemperatureEstimate t =
      (keg.warmth ? keg.warmth->at(now) : std::nullopt)
          .value_or(TemperatureEstimate(units::celsius(10)).with({"temperature"}, 8));
  const physics::SupplyState supply{PressureEstimate(*keg.gas.now.set), t, ambient,
                                    keg.gas.now.co2};
  if (const auto push = physics::gas_to_push(*level.left, supply, {"gas use: method"}))
    sum.add(*push);
  const auto co2 = keg.co2.at(now);
  if (co2 && keg.co2.model) {
    const auto taken = physics::gas_to_carbonate(
        *level.left, *co2, keg.co2.model->equilibrium_end(), keg.gas.now.co2, {"gas use: method"});
    if (taken) sum.add(*taken);
  }
}

// How the next keg on it will be served: as those that are on it now are, on the whole.
physics::SupplyState next_keg(const GasAccount& account, const GasAccountInput& in,
                              units::AbsolutePressure ambient) {
  double psi = 0, celsius = 0;
  int kegs = 0, warm = 0;
  for_each_keg(account, [&](const BranchKeg& k) {
    psi += units::in_psi(k.set);
    ++kegs;
    const KegTimeline& keg = in.timeline(k.keg);
    if (!keg.warmth) return;
    if (const auto t = keg.warmth->at(in.now)) {
      celsius += units::in_celsius(t->value());
      ++warm;
    }
  });
  constexpr double usual_psi = 12, psi_error = 4, usual_celsius = 8, celsius_error = 6;
  return {PressureEstimate(units::gauge_psi(kegs > 0 ? psi / kegs : usual_psi))
              .with({"kegs to fill: pressure"}, units::in_pascals(units::psi(psi_error))),
          TemperatureEstimate(units::celsius(warm > 0 ? celsius / warm : usual_celsius))
              .with({"kegs to fill: temperature"}, celsius_error),
          ambient, account.bottles.front().co2};
}

// What is in the bottle now: the last weighing, less what was used and lost since.
MassEstimate gas_now(const GasAccount& a, Instant now, const MassEstimate& loss) {
  const AccountWeighing& last = a.weighings.back();
  const double days = units::in_days(between(last.at, std::max(now, last.at)));
  const MassEstimate use = a.use_per_day.value_or(MassEstimate{});
  MassSum left;
  left.add(last.gas);
  left.add(use, -days);
  left.add(loss, -days);
  return left.sum();
}

}  // namespace

void tell_days_left(GasAccount& out, const GasAccountInput& in, Lookup& lookup) {
  const auto cellar = lookup.cellar();
  const auto ambient = physics::ambient_pressure(cellar ? cellar->altitude : units::metres(0));
  if (!ambient) return;
  MassSum planned;
  for_each_keg(
      out, [&](const BranchKeg& k) { plan_for(planned, in.timeline(k.keg), in.now, *ambient); });
  out.planned = planned.sum();
  out.next_keg = next_keg(out, in, *ambient);
  if (out.weighings.empty() || !out.tare_known) return;
  const MassEstimate loss = out.loss ? out.loss->per_day : MassEstimate{};
  out.gas_now = gas_now(out, in.now, loss);
  const auto enough =
      physics::enough_for(*out.gas_now, out.planned, loss, units::days(planned_over_days));
  if (enough) out.planned_enough = enough->probability;
  if (!out.use_per_day) return;
  const auto days = physics::days_left({*out.gas_now, *out.use_per_day, loss});
  if (!days || !days->likely || !days->earliest) return;
  Window w{after(in.now, *days->earliest), after(in.now, *days->likely), {}};
  if (days->latest) w.latest = after(in.now, *days->latest);
  out.runs_out = w;
}

}  // namespace ullage::cellar
