// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/cards/purge_words.h"

#include <fmt/format.h>

#include <cmath>

#include "core/cellar/purge_story.h"

namespace ullage::report::cards {

using physics::PurgePlan;
using physics::PurgeWay;
using units::Printer;

std::string purge_times(int n) {
  return n == 1 ? "once" : n == 2 ? "twice" : fmt::format("{} times", n);
}

std::string purge_way_words(const PurgePlan& p, const Printer& print, units::GaugePressure push) {
  switch (p.way) {
    case PurgeWay::cycles:
      return fmt::format("fill to {} and vent, {}", print.print(p.cycles.high),
                         purge_times(p.cycles.cycles));
    case PurgeWay::sweep:
      return fmt::format(
          "sweep {} keg volumes of gas through",
          print.number(p.vessel_volumes, p.vessel_volumes == std::floor(p.vessel_volumes) ? 0 : 1));
    case PurgeWay::push_then_cycles:
      return fmt::format(
          "fill it to the brim with sanitiser, push that out with {}, then fill to {} and vent, {}",
          print.print(push), print.print(p.cycles.high), purge_times(p.cycles.cycles));
    default:
      return fmt::format("fill it to the brim with sanitiser and push that out with {}",
                         print.print(push));
  }
}

std::string purge_short_name(const PurgePlan& p, const Printer& print) {
  switch (p.way) {
    case PurgeWay::cycles:
      return fmt::format("Or {} × {}", p.cycles.cycles, print.print(p.cycles.high));
    case PurgeWay::sweep:
      return "Or a sweep";
    case PurgeWay::push_then_cycles:
      return fmt::format("Or push liquid out, then {} × {}", p.cycles.cycles,
                         print.print(p.cycles.high));
    default:
      return "Or push liquid out";
  }
}

std::string purge_done_words(const cellar::Entry& e, const Printer& print) {
  const auto act = cellar::purge_act(get<cellar::Purged>(e.payload));
  if (!act) return "Purged, not said how much: passed over";
  if (const auto* c = get_if<physics::PressureCycles>(&*act))
    return fmt::format("Filled to {} and vented, {}", print.print(c->high), purge_times(c->cycles));
  if (const auto* sweep = get_if<physics::Sweep>(&*act))
    return fmt::format("{} keg volumes of gas swept through",
                       print.number(sweep->vessel_volumes, 1));
  return fmt::format("Sanitiser pushed out with {}",
                     print.print(get<physics::LiquidPush>(*act).pressure));
}

}  // namespace ullage::report::cards
