// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <utility>

#include "core/physics/carbonation.h"
#include "core/physics/equilibrium.h"

namespace ullage::physics {

using namespace units;

namespace {

constexpr double settling_days = 60;

MoleFraction last_supply(const CarbonationHistory& history) {
  MoleFraction last = mole_fraction(1);
  for (const Step& step : history.steps) {
    if (const auto* gas = get_if<GasOn>(&step.what)) last = gas->co2;
  }
  return last;
}

CarbonationHistory up_to(const CarbonationHistory& history, Duration when) {
  CarbonationHistory past = history;
  std::erase_if(past.steps, [&](const Step& s) { return s.at > when; });
  past.readings.clear();  // what they taught is kept
  return past;
}

}  // namespace

Result<DropPlan> drop_plan(const CarbonationModel& model, Co2Volumes target,
                           const Estimate<GaugePressure>& serving, Duration now) {
  if (auto bad = outside(Subject::co2, target.count(), co2_range)) return std::unexpected(*bad);
  DropPlan plan;
  plan.drop = model.time_to_reach(target, now);
  const Duration when = plan.drop.likely.value_or(now);
  const auto before = model.at(when);
  if (!before) return std::unexpected(before.error());
  plan.vent_by = std::max(pascals(0), before->headspace - serving.value());

  CarbonationHistory lowered = up_to(model.history(), when);
  const MoleFraction gas = last_supply(lowered);
  CarbonationHistory vented = lowered;
  lowered.steps.push_back({when, GasOn{serving, gas}});
  vented.steps.push_back({when, GasOn{serving, gas}});
  vented.steps.push_back({when, Vented{serving.value()}});
  const auto after = model.under(vented, days(settling_days));
  if (!after) return std::unexpected(after.error());
  plan.settles_at = after->equilibrium_end();
  const auto kept = model.under(lowered, days(settling_days));
  if (!kept) return std::unexpected(kept.error());
  plan.if_not_vented = kept->equilibrium_end().value();
  return plan;
}

}  // namespace ullage::physics
