// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/line_balance.h"

#include <cmath>

namespace ullage::physics {

using namespace units;

PressureDifference handbook_lift(Length rise) { return psi_per_foot(0.5) * rise; }

Result<HandbookBalance> handbook_balance(GaugePressure applied, Length rise,
                                         const std::vector<HandbookRun>& runs) {
  if (auto bad = outside(Subject::gauge_pressure, in_pascals(applied), pour_pressure_range))
    return std::unexpected(*bad);
  if (auto bad = outside(Subject::rise, in_metres(rise), rise_range)) return std::unexpected(*bad);
  HandbookBalance balance{handbook_lift(rise), pascals(0), pascals(0)};
  for (const HandbookRun& run : runs) {
    if (auto bad = outside(Subject::length, in_metres(run.length), line_length_range))
      return std::unexpected(*bad);
    const PressureDifference loss = run.restriction * run.length;
    if (auto bad = outside(Subject::pressure_loss, loss.value(), fitting_loss_range))
      return std::unexpected(*bad);
    balance.runs += loss;
  }
  balance.left = applied.above_ambient() - balance.lift - balance.runs;
  return balance;
}

Result<Length> restrictor_length(PressureDifference left, PressureGradient restriction) {
  if (auto bad = outside(Subject::pressure_loss, left.value(), fitting_loss_range))
    return std::unexpected(*bad);
  const double length = left.value() / restriction.value();
  if (auto bad = outside(Subject::length, length, line_length_range)) return std::unexpected(*bad);
  return metres(length);
}

Result<BalancedHose> balance_length(const LineFlow& line, std::size_t part, GaugePressure p,
                                    VolumeFlow flow, const std::vector<Length>& at_hand) {
  const auto exact = line.length_for(part, p, flow);
  if (!exact) return std::unexpected(exact.error());
  BalancedHose balanced{*exact, {}, {}};
  // Nearest by ratio: half a metre matters more on a short hose.
  const auto off = [&](Length l) { return std::abs(std::log(l.value() / exact->value())); };
  for (const Length& l : at_hand) {
    if (l.value() <= 0) continue;
    if (!balanced.at_hand || off(l) < off(*balanced.at_hand)) balanced.at_hand = l;
  }
  if (balanced.at_hand) {
    // The same line with that hose pours where the pressure it asks for is p.
    LineParts parts = line.parts();
    get_if<Hose>(&parts[part])->length = *balanced.at_hand;
    const auto with_it = line.with_parts(std::move(parts));
    if (with_it)
      if (const auto q = with_it->flow_at(p)) balanced.flow = *q;
  }
  return balanced;
}

}  // namespace ullage::physics
