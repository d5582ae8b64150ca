// SPDX-License-Identifier: GPL-3.0-or-later
//
// The status sheet: what a cellar looks like now, on one piece of paper that is
// read at arm's length and written on. This is its content in words; the
// preview, the printer, the PDF and the command line only lay it out.
//
// Estimates are marked with "~" in front and carry their ±; what was measured
// is not. Rows come in the order in which somebody would look: on tap first (by
// tap), then by what to use next, then what is on its way, then empties.
#pragma once

#include <string>
#include <vector>

#include "core/cellar/status.h"
#include "core/report/say.h"

namespace ullage::report {

struct SheetRow {
  std::string keg;    // tag
  std::string place;  // "Tap 1" or where it stands
  std::string beer;   // beer, or what the empty keg is fit for
  std::string batch;
  std::string state;        // in words
  std::string left;         // "~11.6 ± 0.9 L"
  std::string glasses;      // "~20 pints"
  std::string level_read;   // "read 3 d ago"
  std::string use_by;       // "24 FEB 2027"
  std::string on_since;     // "since 12 Nov, 13 days on"
  std::string temperature;  // of its place: "set 3 °C", "read 3.5 °C, 4 h ago"
  std::string pressure;     // "set 12 psi", "should be ~11.5 ± 0.6 psi"
  std::string gas;          // that it is under: "CO₂ 30 % / N₂ 70 %"
  std::string next;         // next action and when
  bool needs_attention = false;
};

struct SheetBox {
  std::string title;
  std::vector<std::string> lines;
};

struct StatusSheet {
  std::string cellar;
  std::string printed;                // "Printed Wed 25 Nov 2026 14:05 by MK"
  std::vector<std::string> headings;  // one for each column of `cells`
  std::vector<SheetRow> rows;
  std::vector<SheetBox> boxes;          // lines due, gas, out of service
  std::vector<std::string> readings;    // to take today, each followed by a blank
  std::vector<std::string> signatures;  // "Checked by", "Countersigned by"
  std::string footnote;
};

[[nodiscard]] StatusSheet status_sheet(const cellar::CellarStatus&, const Speaker&,
                                       const std::string& by);

// A row as the cells under the headings, in their order: the last is the blank
// to write in. Lines within a cell are separated by '\n', the first one the
// most important.
[[nodiscard]] std::vector<std::string> cells(const SheetRow&);

}  // namespace ullage::report
