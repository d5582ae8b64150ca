// SPDX-License-Identifier: GPL-3.0-or-later
//
// A round through the cellar: its stations place by place and then its taps, what to read at each
// (at most three values), what it read last and on what, and the entries that what
// was read becomes. A station is one act.
#pragma once

#include <boost/variant2/variant.hpp>
#include <optional>
#include <string>
#include <vector>

#include "core/cellar/journal.h"
#include "core/cellar/status.h"
#include "core/units/estimate.h"

namespace ullage::cellar {

enum class RoundAsk {
  place_temperature,
  gas_pressure,   // on the dial that feeds the keg
  rest_pressure,  // of a keg with beer and its gas off
  hold_pressure,  // of an empty keg kept under gas
  share_left,     // by the heft of the keg
  keg_weight,
  bottle_weight,
  bottle_gauge,
  pour_time  // how long a measured glass takes at the tap
};

using RoundValue =
    boost::variant2::variant<Temperature, GaugePressure, units::Fraction, Mass, units::Duration>;
// The same with the errors of what it was read on.
using RoundReading =
    boost::variant2::variant<units::Estimate<Temperature>, units::Estimate<GaugePressure>,
                             units::Estimate<units::Fraction>, units::Estimate<Mass>,
                             units::Estimate<units::Duration>>;

// An instrument that a value may be read on, and within what it reads true (95 %,
// bias and repeatability together).
struct RoundInstrument {
  InstrumentId instrument;
  std::string name;
  boost::variant2::variant<TemperatureDifference, PressureDifference, Mass> within;
};

struct RoundQuestion {
  RoundAsk ask = RoundAsk::place_temperature;
  std::optional<RoundValue> last;
  std::optional<RoundReading> last_read;  // with the errors of what it was read on then
  std::optional<Instant> last_at;
  RoundValue least, greatest;  // refused outside
  // Where its steppers begin if it was never read; at the least where there is none.
  std::optional<RoundValue> begins;
  RoundValue step;  // of the steppers
  // What it is read on: as the last time at this station, else the dial that hangs
  // there. It is recorded with the reading; change it before round_drafts.
  std::optional<InstrumentId> instrument;
  std::vector<RoundInstrument> instruments;  // in use, of a fitting kind
  std::optional<Volume> glass;               // of a pour
  // Of a bottle's weight: left on while weighing, as the last time.
  std::optional<RegulatorId> with_regulator;
};

struct RoundStation {
  SubjectRef about;
  std::string name;   // "K07", "Cold box", "Bottle 2"
  std::string place;  // where it stands; empty: not known
  bool place_out_of_use = false;
  std::optional<LineId> line;            // a keg's on tap, or the tap's own
  bool do_not_serve = false;             // that line: no pour is asked for
  std::optional<Instant> last_pour;      // at a tap: when a glass was last timed
  std::vector<RoundQuestion> questions;  // none at a tap that is empty or locked
};

// A keg on tap is asked either how heavy it is or how full it feels, whichever was read
// last; how long a glass takes is asked once, where it is poured: at its tap. In walking order (the
// places’ own): each place with its temperature first, then its kegs (those on tap by tap, the
// others by tag), then its gas bottles; things in places taken out of use, and then those that
// stand nowhere known, come after them; then all taps, also those with nothing on and those that
// are locked.
[[nodiscard]] std::vector<RoundStation> round_stations(const CellarStatus&, const Journal&);

// What a value makes one look twice at, said before it is logged.
enum class RoundDoubt { none, below_range, above_range, much_higher, much_lower, fuller, heavier };
[[nodiscard]] RoundDoubt doubt_about(const RoundQuestion&, const RoundValue&);
[[nodiscard]] bool refuses(RoundDoubt);  // outside its range: not to be logged

// The entries for what was read; a question without a value makes none, nor does
// a gas pressure that still stands as it was set. A pour takes the gas pressure that
// stood on its keg. A remark becomes a note about the station.
[[nodiscard]] std::vector<Draft> round_drafts(const RoundStation&,
                                              const std::vector<std::optional<RoundValue>>& read,
                                              Instant when, const CellarStatus&,
                                              const std::string& remark = {});

// At a station that was logged on this round already: what is read again corrects the
// entry of the same reading and is not logged beside it; what reads as it did is left
// out. `before` are the station's entries of this round, struck or corrected since or
// not. A correction keeps the time of what it corrects unless `at_its_own_time`.
void correct_instead(std::vector<Draft>&, const std::vector<EntryId>& before, const Journal&,
                     bool at_its_own_time);

}  // namespace ullage::cellar
