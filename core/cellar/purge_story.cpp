// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/purge_story.h"

namespace ullage::cellar {

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

std::optional<physics::PurgeOutcome> left_by_purges(const physics::Vessel& vessel,
                                                    std::span<const Entry* const> purges) {
  std::optional<physics::PurgeOutcome> left;
  for (const physics::PurgeAct& act : purge_acts(purges)) {
    const auto after = physics::purge_on(left, vessel, act);
    if (after) left = *after;
  }
  return left;
}

}  // namespace ullage::cellar
