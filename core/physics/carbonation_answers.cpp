// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/carbonation_answers.h"

#include <array>
#include <utility>

namespace ullage::physics {

using namespace units;

namespace {

constexpr Range drift_range{60.0, 366 * 86400.0};  // s

MoleFraction supply_of(const CarbonationHistory& history) {
  MoleFraction share = mole_fraction(1);
  for (const Step& step : history.steps) {
    if (const auto* gas = get_if<GasOn>(&step.what)) share = gas->co2;
  }
  return share;
}

}  // namespace

Result<Drift> drift_at(const CarbonationModel& model, const Estimate<GaugePressure>& serving,
                       Duration now, Duration over, BeforeServing before) {
  if (auto bad = outside(Subject::duration, in_seconds(over), drift_range))
    return std::unexpected(*bad);
  auto at_now = model.co2_at(now);
  if (!at_now) return std::unexpected(at_now.error());
  CarbonationHistory history = model.history();
  std::erase_if(history.steps, [&](const Step& s) { return s.at > now; });
  const MoleFraction share = supply_of(history);
  history.steps.push_back({now, GasOn{serving, share}});
  if (before == BeforeServing::vented) history.steps.push_back({now, Vented{serving.value()}});
  const auto ahead = model.under(history, over);
  if (!ahead) return std::unexpected(ahead.error());
  auto then = ahead->co2_at(now + over);
  if (!then) return std::unexpected(then.error());
  const auto change =
      propagate([](Co2Volumes later,
                   Co2Volumes first) { return volumes_of_co2(later.count() - first.count()); },
                *then, *at_now);
  return Drift{*std::move(at_now), *std::move(then), change, ahead->equilibrium_end()};
}

Result<EquilibriumAnswer> equilibrium_answer(const GasAbove& gas, Temperature t, Equation wanted) {
  std::optional<EquilibriumAnswer> answer;
  std::optional<RangeError> first_reason;
  for (const Equation e : {wanted, Equation::fitted_chart, Equation::exponential}) {
    if (answer && answer->by == e) continue;
    const auto co2 = equilibrium_co2(gas, t, e);
    if (!co2) {
      if (!first_reason) first_reason = co2.error();
    } else if (!answer) {
      answer = EquilibriumAnswer{*co2, e, first_reason, std::nullopt, std::nullopt};
    } else if (!answer->second) {
      answer->second = *co2;
      answer->second_by = e;
    }
  }
  if (answer) return *answer;
  return std::unexpected(first_reason.value_or(RangeError{}));
}

}  // namespace ullage::physics
