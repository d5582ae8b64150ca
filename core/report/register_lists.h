// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a cellar owns, besides its kegs and lines, as lists for paper and CSV: one row
// for each thing in use, as it was registered, and what is known of it now.
#pragma once

#include <string>

#include "core/report/table_sheet.h"

namespace ullage::report {

// Gas bottles: what gas, tare and content, what is left, how long it lasts, retest,
// what each feeds.
[[nodiscard]] TableSheet bottle_list(const cellar::CellarStatus&, const Speaker&,
                                     const std::string& by);
// Regulators: from which bottle or regulator, whether secured, the kegs on each and
// their pressure.
[[nodiscard]] TableSheet regulator_list(const cellar::CellarStatus&, const Speaker&,
                                        const std::string& by);
// Places: what each is set to and was last read, kegs in it, air and alarm.
[[nodiscard]] TableSheet place_list(const cellar::CellarStatus&, const Speaker&,
                                    const std::string& by);
// Instruments: how far each may be off, and when it was checked.
[[nodiscard]] TableSheet instrument_list(const cellar::CellarStatus&, const Speaker&,
                                         const std::string& by);
// The hose of each line in use, piece by piece from the keg on; of a line without
// pieces, its one hose.
[[nodiscard]] TableSheet hose_list(const cellar::CellarStatus&, const Speaker&,
                                   const std::string& by);
// Beers: style, CO2 range, allergens, price.
[[nodiscard]] TableSheet beer_list(const cellar::CellarStatus&, const Speaker&,
                                   const std::string& by);

}  // namespace ullage::report
