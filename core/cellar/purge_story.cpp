// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/purge_story.h"

#include <algorithm>

#include "core/physics/atmosphere.h"

namespace ullage::cellar {

namespace {

constexpr double keg_share = 0.02, beer_share = 0.03;
constexpr double read_kelvin = 2, assumed_kelvin = 8;
constexpr double dial_psi = 2;

}  // namespace

std::optional<physics::PurgeAct> purge_act(const Purged& p) {
  switch (p.method) {
    case PurgeMethod::cycles:
      if (!p.cycles || !p.pressure) return std::nullopt;
      return physics::PressureCycles{static_cast<int>(*p.cycles), *p.pressure, {}};
    case PurgeMethod::swept:
      if (!p.vessel_volumes) return std::nullopt;
      return physics::Sweep{*p.vessel_volumes};
    case PurgeMethod::pushed_liquid:
      break;
  }
  return physics::LiquidPush{p.pressure.value_or(usual_push())};
}

std::vector<physics::PurgeAct> purge_acts(std::span<const Entry* const> purges) {
  std::vector<physics::PurgeAct> acts;
  for (const Entry* entry : purges) {
    const auto* purged = get_if<Purged>(&entry->payload);
    if (const auto act = purged != nullptr ? purge_act(*purged) : std::nullopt)
      acts.push_back(*act);
  }
  return acts;
}

physics::Vessel PurgeKnown::plain() const {
  return {vessel.gas_space.value(), vessel.beer.value(), vessel.ambient.value(),
          vessel.temperature.value()};
}

physics::Result<physics::PurgeEstimate> PurgeKnown::by(
    std::span<const physics::PurgeAct> acts,
    const std::optional<physics::PurgeOutcome>& before) const {
  return physics::purge_estimate(vessel, acts, off, {"purge: gas used"}, {}, {}, before);
}

std::optional<PurgeKnown> purge_known(const KegRecord& keg, units::Length altitude, Temperature at,
                                      bool read) {
  const auto air = physics::ambient_pressure_estimate(altitude, {"weather"});
  if (!air || !(keg.holds() > units::litres(0))) return std::nullopt;
  const Volume off = keg.brimful_half_width > units::litres(0) ? keg.brimful_half_width
                                                               : Volume(keg_share * keg.holds());
  const Volume beer = std::min(keg.nominal, keg.holds());
  return PurgeKnown{
      {units::Estimate(keg.holds()).with_error({"keg: brimful"}, off),
       units::Estimate(beer).with_error({"how much beer goes in"}, Volume(beer_share * beer)), *air,
       units::Estimate(at).with({"temperature of the place"}, read ? read_kelvin : assumed_kelvin)},
      units::Estimate(units::psi(0)).with_error({"dial: bias"}, units::psi(dial_psi))};
}

std::optional<physics::PurgeEstimate> left_by_purges(const PurgeKnown& known,
                                                     std::span<const Entry* const> purges) {
  std::vector<physics::PurgeAct> told;
  std::optional<physics::PurgeOutcome> left;
  for (const physics::PurgeAct& act : purge_acts(purges)) {
    const auto after = physics::purge_on(left, known.plain(), act);
    if (!after) continue;
    left = *after;
    told.push_back(act);
  }
  if (told.empty()) return std::nullopt;
  const auto estimate = known.by(told);
  return estimate ? std::optional(*estimate) : std::nullopt;
}

}  // namespace ullage::cellar
