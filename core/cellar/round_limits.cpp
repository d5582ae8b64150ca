// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/round_limits.h"

#include <algorithm>

#include "core/units/magnitude.h"

namespace ullage::cellar {
namespace {

double magnitude(const RoundValue& v) {
  return visit([](auto q) { return units::to_magnitude(q); }, v);
}

const std::vector<AskLimits>& ask_limits() {
  static const std::vector<AskLimits> all{
      {RoundAsk::place_temperature, units::celsius(-20), units::celsius(45), units::kelvin(0.5), 4},
      {RoundAsk::gas_pressure, units::gauge_psi(0), units::gauge_psi(130), units::gauge_psi(1),
       35000},
      {RoundAsk::rest_pressure, units::gauge_psi(0), units::gauge_psi(130), units::gauge_psi(1),
       35000},
      {RoundAsk::hold_pressure, units::gauge_psi(0), units::gauge_psi(130), units::gauge_psi(1),
       35000},
      {RoundAsk::share_left, units::fraction(0), units::fraction(1), units::fraction(0.1), 0.5},
      {RoundAsk::keg_weight, units::kilograms(1), units::kilograms(150), units::kilograms(0.5), 10},
      {RoundAsk::bottle_weight, units::kilograms(1), units::kilograms(150), units::kilograms(0.1),
       4},
      {RoundAsk::bottle_gauge, units::gauge_bar(0), units::gauge_bar(330), units::gauge_bar(5),
       5e6},
      {RoundAsk::pour_time, units::seconds(1), units::seconds(180), units::seconds(0.5), 4}};
  return all;
}

}  // namespace

const AskLimits& ask_limits_of(RoundAsk ask) {
  return *std::find_if(ask_limits().begin(), ask_limits().end(),
                       [&](const AskLimits& l) { return l.ask == ask; });
}

// Kinds of instrument that a value is read on.
std::vector<InstrumentKind> kinds_for(RoundAsk ask) {
  using enum InstrumentKind;
  switch (ask) {
    case RoundAsk::place_temperature:
      return {thermometer, fridge_display};
    case RoundAsk::gas_pressure:
      return {regulator_dial, pressure_gauge};
    case RoundAsk::rest_pressure:
    case RoundAsk::hold_pressure:
      return {spunding_dial, pressure_gauge, regulator_dial};
    case RoundAsk::keg_weight:
    case RoundAsk::bottle_weight:
      return {parcel_scale, bathroom_scale};
    case RoundAsk::bottle_gauge:
      return {pressure_gauge};
    case RoundAsk::share_left:
    case RoundAsk::pour_time:
      break;
  }
  return {};
}

RoundDoubt doubt_about(const RoundQuestion& q, const RoundValue& value) {
  const double v = magnitude(value);
  if (!(v >= magnitude(q.least))) return RoundDoubt::below_range;
  if (!(v <= magnitude(q.greatest))) return RoundDoubt::above_range;
  if (!q.last) return RoundDoubt::none;
  const double change = v - magnitude(*q.last);
  // What is left of a keg or a bottle goes one way only.
  if (q.ask == RoundAsk::share_left && change > 0.05) return RoundDoubt::fuller;
  const bool weighed = q.ask == RoundAsk::keg_weight || q.ask == RoundAsk::bottle_weight;
  if (weighed && change > 0.3) return RoundDoubt::heavier;
  const double jump = ask_limits_of(q.ask).jump;
  if (change > jump) return RoundDoubt::much_higher;
  return change < -jump ? RoundDoubt::much_lower : RoundDoubt::none;
}

bool refuses(RoundDoubt doubt) {
  return doubt == RoundDoubt::below_range || doubt == RoundDoubt::above_range;
}

}  // namespace ullage::cellar
