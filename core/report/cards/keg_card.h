// SPDX-License-Identifier: GPL-3.0-or-later
//
// Cards of a keg's panel: a question that this keg raises as it stands, answered
// from its journal, with the act that the answer leads to. Pure functions of
// status, journal and the speaker's clock; each answers nothing where the keg does
// not raise the question, and says which reading is wanted where it can't be told.
//
//   purge   an empty keg, clean: the cheapest way to so much oxygen
//   rescue  more CO2 than its range: how many vents, how long between, and then
//   sugar   filled still and no gas since, or primed: grams for the range
//   drift   where the CO2 goes at the gas and temperature as they are
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/cellar/curve_points.h"
#include "core/cellar/journal.h"
#include "core/physics/purge.h"
#include "core/report/keg_grounds.h"
#include "core/report/slate/computation.h"

namespace ullage::report {

// A button: the form it opens, filled in.
struct CardAct {
  std::string label;  // "Log the vent…"
  cellar::SuggestedTask task;
};

struct CardFigure {
  std::string name;   // "Wait between"
  std::string value;  // "3 h (2 to 6 h)"
  Grounds grounds;    // never empty
  std::optional<CardAct> act;
};

struct KegCard {
  std::string verdict;  // a sentence without its full stop
  bool can_tell = true;
  std::vector<CardFigure> figures;
  std::vector<std::string> notes;
  std::vector<std::string> cautions;  // what can hurt somebody
  slate::Chart chart;
  std::vector<CardAct> acts;
};

// What people purge to where nobody says otherwise (common practice, no source).
[[nodiscard]] inline units::MoleFraction usual_purge_target() { return physics::ppm(1000); }

[[nodiscard]] std::optional<KegCard> purge_card(const KegSubject&, const cellar::Journal&,
                                                units::MoleFraction target = usual_purge_target());
[[nodiscard]] std::optional<KegCard> rescue_card(const KegSubject&, const cellar::Journal&);
[[nodiscard]] std::optional<KegCard> sugar_card(const KegSubject&, const cellar::Journal&);
// `ahead` is the keg's curve from now on.
[[nodiscard]] std::optional<KegCard> drift_card(const KegSubject&,
                                                const cellar::CarbonationCurveData& ahead);

// How far `ahead` should go.
[[nodiscard]] inline units::Duration drift_horizon() { return units::days(30); }

}  // namespace ullage::report
