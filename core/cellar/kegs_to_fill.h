// SPDX-License-Identifier: GPL-3.0-or-later
//
// Whether a supply carries kegs that are still to be filled: a question somebody
// asks, which writes nothing.
//
// Each keg is taken to be filled with still, unpurged beer, carbonated by the gas and
// pushed out by it, under the pressure and at the temperature of the kegs that hang
// on the supply now, else at 12 psi and 8 °C (both taken wide). A loss goes on as long
// as the work takes, but only where there is enough to call it one.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/cellar/gas_account.h"
#include "core/cellar/journal.h"
#include "core/cellar/status.h"

namespace ullage::cellar {

struct KegsToFill {
  std::int64_t count = 0;
  Volume each = units::litres(19);
};

// What the journal knows of it: our kegs that stand empty and in service, and the
// batches brewed here that went into no keg yet. Where such a batch waits the question
// starts with all of these kegs, since nobody logs how large a brew is; else with none.
struct KegsWaiting {
  KegsToFill kegs;
  std::vector<std::string> empty;    // their tags
  std::vector<std::string> batches;  // their names
};
[[nodiscard]] KegsWaiting kegs_waiting(const CellarStatus&, const Journal&);

struct GasForKegs {
  MassEstimate for_them;
  MassEstimate in_all;                    // with what the kegs on it now still take
  std::optional<units::Fraction> enough;  // how sure that it is enough for all of it
  // How long all of it takes at the use so far: 2.5, 50 and 97.5 %.
  std::optional<physics::DaysLeft> work_for;
};
// Nothing where there is no keg to fill, or its volume makes no sense.
[[nodiscard]] std::optional<GasForKegs> gas_for(const KegsToFill&, const GasAccount&);

}  // namespace ullage::cellar
