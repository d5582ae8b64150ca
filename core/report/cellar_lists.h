// SPDX-License-Identifier: GPL-3.0-or-later
//
// Lists of the cellar as it stands: a sheet to walk round with, and who has
// whose kegs.
#pragma once

#include <string>

#include "core/report/status_sheet.h"
#include "core/report/table_sheet.h"

namespace ullage::report {

// Blanks to write in, station by station as the round asks (cellar/round.h), so that
// what was written is typed in the same order; with what was read last and how long
// ago. At the end of each place the kegs with nothing to read, and last the taps.
[[nodiscard]] TableSheet round_sheet(const cellar::Journal&, const cellar::CellarStatus&,
                                     const Speaker&, const std::string& by);

// Kegs lent out, rented, or owed to a supplier: to or from whom, since when, days
// out, due back, deposit. Overdue ones are marked.
[[nodiscard]] TableSheet custody_list(const cellar::Journal&, const cellar::CellarStatus&,
                                      const Speaker&, const std::string& by);

// The kegs of the cellar, one a row, as the status sheet tells them.
[[nodiscard]] TableSheet keg_list(const cellar::CellarStatus&, const Speaker&,
                                  const std::string& by);

// The status sheet for programs: its kegs as `keg_list` tells them, and what stands
// in its boxes, by title.
[[nodiscard]] std::string json_of(const StatusSheet&, const TableSheet& kegs);

}  // namespace ullage::report
