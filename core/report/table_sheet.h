// SPDX-License-Identifier: GPL-3.0-or-later
//
// What every log and list on paper has in common: a heading, a table, boxes, a
// place to sign. Built by the header of each sheet (line_cleaning_log.h and so
// on), painted by ui/print, and written by text_of, csv_of and json_of here.
//
// The table is told twice: `cells` for people, in their units and words, several
// facts to a cell; `data` for programs, one fact to a key, in the unit that the
// key names ("beer_lost_l"), whatever the person reads.
#pragma once

#include <boost/variant2/variant.hpp>
#include <string>
#include <vector>

#include "core/cellar/journal.h"
#include "core/report/say.h"
#include "core/report/status_sheet.h"

namespace ullage::report {

// Days on the cellar's calendar, both of them included.
struct Period {
  cellar::Date first{}, last{};
  [[nodiscard]] bool holds(cellar::Date day) const { return first <= day && day <= last; }
};

struct SheetColumn {
  std::string heading;
  double share = 1;      // of the paper's width, against the others
  bool written = false;  // left blank, to be written in by hand
};

// A fact for programs: nothing stated, words, a number, yes or no.
using Datum = boost::variant2::variant<boost::variant2::monostate, std::string, double, bool>;

enum class RowKind { entry, heading };  // a heading spans the table

struct TableRow {
  std::vector<std::string> cells;  // under the columns; lines within one are parted by '\n'
  std::vector<Datum> data;         // under the keys
  RowKind kind = RowKind::entry;
  bool struck = false;   // no longer counts: crossed through, never left out
  std::string standing;  // "struck 2026-11-24 19:20 by MK: typed twice"
  bool marked = false;   // asks for attention
};

struct TableSheet {
  std::string title;  // "Line cleaning log"
  std::string cellar;
  std::string period;   // "2026-11-01 to 2026-11-24", or a moment
  std::string printed;  // "Printed 2026-11-24 14:05 by MK"
  std::vector<SheetColumn> columns;
  std::vector<std::string> keys;
  std::vector<TableRow> rows;
  std::string when_empty;  // said in place of a table without rows
  std::vector<SheetBox> boxes;
  std::vector<std::string> signatures;
  std::string footnote;
};

// A sheet with its heading filled in.
[[nodiscard]] TableSheet sheet_titled(std::string title, const cellar::CellarStatus&,
                                      const Speaker&, const std::string& by);
[[nodiscard]] std::string say_period(const Period&);  // "2026-11-01 to 2026-11-24"

// As plain text, columns under one another: for terminals.
[[nodiscard]] std::string text_of(const TableSheet&);
// One line for each row that is an entry, RFC 4180: the keys first, then
// "struck" and "standing". UTF-8, lines end with CR LF; no byte order mark.
[[nodiscard]] std::string csv_of(const TableSheet&);
// An object with title, cellar, period and rows; each row an object of its keys.
[[nodiscard]] std::string json_of(const TableSheet&);

// One field of a CSV line, quoted where RFC 4180 asks for it. A text that a
// spreadsheet would run as a formula gets an apostrophe in front.
[[nodiscard]] std::string csv_field(const std::string& text);

}  // namespace ullage::report
