// SPDX-License-Identifier: GPL-3.0-or-later
//
// How a line pours: everything a pour depends on, out of the journal at a moment
// (PourSetting), what follows from it (PourOutlook), and what to do about it.
//
// Outlook and what-if are pure functions of a setting: they can be asked with
// any change and write nothing. What is decided on becomes entries by
// `entries_for`.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/cellar/line_set_up.h"
#include "core/cellar/status.h"
#include "core/physics/break_out.h"
#include "core/physics/line_calibration.h"

namespace ullage::cellar {

struct PourSetting {
  LineId line_id;
  std::string line_name;
  KegId keg;
  std::string keg_tag;
  LineSetUp line;
  // True over stated bore: by timed pours, or between handbook and friction.
  physics::KnownBores bores;
  std::int64_t timed_pours = 0;      // that count: pressure and temperature known
  std::optional<Instant> last_pour;  // timed, whether it counts or not
  bool pour_contradicts = false;     // a timed pour no bore near the stated one explains
  units::Estimate<GaugePressure> pressure;
  MoleFraction co2_share = units::mole_fraction(1);
  units::Estimate<Temperature> beer;
  std::vector<units::Estimate<Temperature>> standing;  // of each part's beer at rest
  std::vector<std::string> place_names;                // of each part; empty: with the keg
  // Parts in a place whose temperature nobody ever read or set: they stand as the
  // keg does, only to compute with.
  std::vector<bool> untold;
  [[nodiscard]] bool told(std::size_t part) const { return part >= untold.size() || !untold[part]; }
  std::optional<units::Estimate<Temperature>> keg_place;  // the air about the keg
  std::optional<Instant> gas_since, place_read;           // how old pressure and temperature are
  std::optional<Instant> last_drawn;                      // beer went, by level or glasses counted
  units::Estimate<units::AbsolutePressure> ambient;
  Length altitude = units::metres(0);
  SpecificGravity gravity = units::specific_gravity(1.010);
  std::optional<units::Estimate<units::Co2Volumes>> co2;
  std::optional<units::Co2Volumes> target_low, target_high;
  std::optional<GaugePressure> rated;
  Volume glass = units::litres(0.5);
  bool in_feet = false;  // hose is sold by the foot here
};

// Each control of a what-if; what is empty stays as it is.
struct WhatIf {
  std::optional<GaugePressure> pressure;
  std::optional<Length> length;  // of the main hose
  std::optional<Length> bore;
  std::optional<Temperature> temperature;   // of keg and what stands with it
  std::optional<units::Co2Volumes> target;  // middle of the range; the beer holds that
  [[nodiscard]] bool empty() const {
    return !pressure && !length && !bore && !temperature && !target;
  }
};
[[nodiscard]] PourSetting with(PourSetting, const WhatIf&);

struct PourOutlook {
  // Empty where nothing runs, and then `cant_tell` says why.
  std::optional<units::Estimate<units::VolumeFlow>> flow;
  std::optional<physics::PourTime> glass_time;
  std::optional<Message> cant_tell;
  PressureDifference lift = units::pascals(0);
  std::vector<physics::ProfilePoint> at_rest, pouring;
  std::vector<physics::StandingPlace> places;  // empty where CO2 is not known
  std::optional<physics::PourJourney> journey;
  std::optional<GaugePressure> should_be;                         // for the middle of the range
  std::optional<units::Estimate<GaugePressure>> should_be_known;  // the same with its error
  std::optional<units::Estimate<units::Co2Volumes>> settles;      // at the pressure set
  // What would give a nominal pour, everything else as it is.
  std::optional<Length> right_length, right_bore;
  std::optional<Length> shortest_right, longest_right;  // as wide as its true bore may be
  std::optional<GaugePressure> right_pressure;
  std::optional<Length> at_hand;  // the hose length sold that is nearest
  std::optional<units::Duration> at_hand_time;
  std::optional<units::Estimate<MoleFraction>> right_blend;  // at the pressure set
  std::optional<physics::RestrictionCompared> handbook;      // of the main hose
  units::Estimate<Volume> contents, standing_warm;           // by the bores and lengths as stated
  std::optional<Temperature> warmest;
  std::string warmest_place;
  units::Estimate<Volume> standing_untold;  // nobody knows how warm
  std::string untold_places;
};
[[nodiscard]] PourOutlook pour_outlook(const PourSetting&);

// Lengths a hose is sold in or cut to, by the reader's habit.
[[nodiscard]] std::vector<Length> hose_lengths(bool feet);

struct PourState {
  PourSetting setting;
  PourOutlook outlook;
  // All of it, most severe first. LineStatus::advice has what no keg says itself.
  std::vector<Advice> advice;
};

// The entries that make a what-if true: gas, hose, place, beer; in that order. A
// regulator gives all its kegs one pressure, so gas is set on each of them.
[[nodiscard]] std::vector<Payload> entries_for(const WhatIf&, const LineStatus&,
                                               const CellarStatus&);
// Kegs with gas on by the same regulator as this one.
[[nodiscard]] std::vector<const KegStatus*> fed_with(const KegStatus&, const CellarStatus&);

}  // namespace ullage::cellar
