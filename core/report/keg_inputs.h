// SPDX-License-Identifier: GPL-3.0-or-later
//
// The inputs that many numbers about a keg stand on, each in the words it has
// everywhere. Those that a keg may lack answer nothing then.
#pragma once

#include <optional>

#include "core/report/keg_grounds.h"

namespace ullage::report {

[[nodiscard]] GroundsInput size_input(const KegSubject&);              // to the brim
[[nodiscard]] GroundsInput level_input(const KegSubject&);             // where it is known
[[nodiscard]] GroundsInput beer_temperature_input(const KegSubject&);  // where it is known
[[nodiscard]] GroundsInput air_input(const KegSubject&);               // by the altitude

[[nodiscard]] std::optional<GroundsInput> gas_input(const KegSubject&);    // set, where it is on
[[nodiscard]] std::optional<GroundsInput> place_input(const KegSubject&);  // and how cold it is
[[nodiscard]] std::optional<GroundsInput> filling_input(const KegSubject&);

// The registered dial that its gas was read on; null where there is none.
[[nodiscard]] const cellar::InstrumentRecord* gas_dial(const KegSubject&);

// With what was there already.
void add_input(Grounds&, std::optional<GroundsInput>);

}  // namespace ullage::report
