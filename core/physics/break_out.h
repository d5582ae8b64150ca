// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where gas leaves the beer in a line.
//
// At rest, beer keeps its CO2 as long as the pressure on it is at least the
// equilibrium pressure of what it holds at the temperature of the place it
// stands in (equilibrium.h, absolute pressure of CO2). Beer higher up stands
// under less pressure and, in a warm tower, needs more. That is judged, with its
// error.
//
// While it pours every line ends at the pressure of the air, so every line is
// supersaturated from somewhere on, and most pour well: bubbles need time. How
// far above equilibrium the beer is and for how long is told, never judged: no
// published limit was found for either.
#pragma once

#include <optional>
#include <vector>

#include "core/physics/draught_line.h"
#include "core/physics/equilibrium.h"

namespace ullage::physics {

enum class AtRest { stays, breaks_out, cant_tell };

// What a beer holds and where.
struct CarbonatedBeer {
  units::Estimate<units::Co2Volumes> co2;
  units::Estimate<units::AbsolutePressure> ambient;
  units::ErrorSource equation;  // of the equilibrium: its half-width goes under this
};

// The worst spot of one part: its top, or its bottom for one that falls.
struct StandingPlace {
  std::size_t part = 0;
  units::Length along = units::metres(0);
  units::Temperature temperature;
  units::GaugePressure pressure;                 // on the beer there
  units::Estimate<units::GaugePressure> needed;  // to keep its CO2 in
  // Pressure above what is needed, with its error: what both share (the dial by
  // which the beer was carbonated and is now served) cancels.
  units::Estimate<units::PressureDifference> margin;
  AtRest verdict = AtRest::cant_tell;
};

// `standing` has the temperature that each part's beer takes when it stands, one
// for each part. Refuses another number of them (`parts`) and what
// equilibrium.h refuses.
[[nodiscard]] Result<std::vector<StandingPlace>> break_out_at_rest(
    const LineFlow&, const units::Estimate<units::GaugePressure>& applied,
    const std::vector<units::Estimate<units::Temperature>>& standing, const CarbonatedBeer&);

// Equilibrium pressure over pressure, both absolute: 1 at equilibrium.
using Supersaturation = units::OnScale<struct SupersaturationTag>;

struct PouringPlace {
  std::size_t part = 0;
  Supersaturation at_end;
  units::Duration residence = units::seconds(0);  // in this part; 0 in a fitting
};
struct PourJourney {
  std::vector<PouringPlace> places;
  // Where the pressure falls below equilibrium; empty: nowhere before the faucet.
  std::optional<units::Length> supersaturated_from;
  units::Duration supersaturated = units::seconds(0);  // how long inside the line
  units::Duration whole = units::seconds(0);           // keg to faucet
};

// Pouring freely; the beer runs through too fast to warm, so `beer` is the keg's.
[[nodiscard]] Result<PourJourney> break_out_pouring(const LineFlow&, units::GaugePressure applied,
                                                    units::Co2Volumes, units::Temperature beer,
                                                    units::AbsolutePressure ambient);

// How much beer stands warmer than `limit`: about what foams in the first pour.
[[nodiscard]] Result<units::Volume> standing_warm(
    const LineParts&, const std::vector<units::Estimate<units::Temperature>>& standing,
    units::Temperature limit);

}  // namespace ullage::physics
