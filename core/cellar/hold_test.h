// SPDX-License-Identifier: GPL-3.0-or-later
//
// A keg's hold test from its journal: the readings of one test, taken with the gas
// off, and the verdict on them. A reading without a temperature is taken at 15 °C
// within 3 °C either way, which widens the verdict as it should.
//
// A test ends when gas is put on, let out, or purged through. A reading with the
// gas still on tells how the regulator is set, not how the keg holds: refused.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/cellar/keg_timeline.h"
#include "core/physics/hold_beer.h"

namespace ullage::cellar {

// The test with all it was judged from: for the picture and the reasons.
struct HoldStudy {
  physics::HoldTest test;  // times since `origin`
  Instant origin{};
  std::vector<EntryId> entries;  // one for each reading
  std::optional<physics::BeerInside> beer;
  bool temperature_assumed = false;
  Mass limit_per_day;
  std::optional<physics::HoldOutcome> outcome;  // none when the readings can't be right

  [[nodiscard]] Instant time_of(units::Duration t) const { return after(origin, t); }
};

// The readings of one test, in order, as the keg's story gathers them.
struct HoldReadings {
  std::vector<const Entry*> entries;
  const Entry* with_gas_on = nullptr;  // the last one refused for that
  std::optional<Instant> closed_at;    // when the gas was turned off
};

// On an empty keg; untested without readings.
[[nodiscard]] HoldState hold_test(const HoldReadings&, const KegRecord&, Lookup&);
// On a keg with beer in it: nothing but a study, and that only of two or more
// readings and a known beer. `keg` is its timeline so far, with level and CO2.
[[nodiscard]] std::shared_ptr<const HoldStudy> hold_test_with_beer(const HoldReadings&,
                                                                   const KegTimeline& keg, Lookup&);

// The verdict in a sentence.
[[nodiscard]] Message hold_words(const HoldStudy&);

}  // namespace ullage::cellar
