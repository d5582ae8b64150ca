// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/table_sheet.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/report/log_rows.h"
#include "core/report/text_columns.h"

namespace ullage::report {

TableSheet sheet_titled(std::string title, const cellar::CellarStatus& status,
                        const Speaker& speaker, const std::string& by) {
  TableSheet sheet;
  sheet.title = std::move(title);
  sheet.cellar = status.cellar ? status.cellar->name : std::string("Cellar");
  sheet.printed = "Printed " + say_clock(speaker.now, speaker);
  if (!by.empty()) sheet.printed += " by " + by;
  sheet.when_empty = "Nothing was logged.";
  return sheet;
}

std::string say_period(const Period& period) {
  const std::string last = iso_day(period.last);
  return period.first == period.last ? last : fmt::format("{} to {}", iso_day(period.first), last);
}

namespace {

void add_table(std::string& out, const TableSheet& sheet) {
  TextColumns columns;
  std::vector<std::string> headings;
  headings.reserve(sheet.columns.size());
  for (const SheetColumn& column : sheet.columns) headings.push_back(column.heading);
  columns.add(headings);
  columns.add_rule();
  for (const TableRow& row : sheet.rows) {
    if (row.kind == RowKind::heading) {
      columns.add_line("[" + (row.cells.empty() ? std::string() : row.cells.front()) + "]");
      continue;
    }
    columns.add(row.cells, row.struck ? "x " : row.marked ? "! " : "  ");
    if (!row.standing.empty()) columns.add_line("    (" + row.standing + ")");
  }
  out += columns.text();
}

}  // namespace

std::string text_of(const TableSheet& sheet) {
  std::string out = fmt::format("{} - {}\n", sheet.cellar, sheet.title);
  if (!sheet.period.empty()) out += sheet.period + "\n";
  out += sheet.printed + "\n\n";
  if (sheet.rows.empty()) {
    out += sheet.when_empty + "\n";
  } else {
    add_table(out, sheet);
  }
  for (const SheetBox& box : sheet.boxes) {
    out += fmt::format("\n{}\n", box.title);
    for (const std::string& line : box.lines) out += "  " + line + "\n";
  }
  if (!sheet.footnote.empty()) out += "\n" + sheet.footnote + "\n";
  for (const std::string& signature : sheet.signatures) {
    out += fmt::format("\n{}: ____________________\n", signature);
  }
  return out;
}

}  // namespace ullage::report
