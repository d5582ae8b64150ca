// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/due_sheet.h"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "core/report/log_rows.h"
#include "core/report/text_columns.h"

namespace ullage::report {

std::vector<DueLine> due_lines(const cellar::CellarStatus& status, const cellar::Journal& journal,
                               const Speaker& speaker, int within_days) {
  const cellar::Date today = speaker.calendar->date_of(status.now);
  std::vector<DueLine> lines;
  for (CalendarItem& item : calendar_items(status, journal, speaker)) {
    const cellar::Date due = item.due.value_or(item.day);
    // Put off, it is due all the same.
    if (std::min(due, item.day) > today + std::chrono::days(within_days)) continue;
    lines.push_back({std::move(item), due, due < today});
  }
  std::stable_sort(lines.begin(), lines.end(),
                   [](const DueLine& a, const DueLine& b) { return a.due < b.due; });
  return lines;
}

std::string text_of(const std::vector<DueLine>& lines) {
  if (lines.empty()) return "Nothing is due.\n";
  TextColumns columns;
  for (const DueLine& line : lines) {
    columns.add({iso_day(line.due), line.overdue ? "OVERDUE" : "", line.item.summary,
                 line.item.description},
                "");
  }
  return columns.text();
}

TableSheet due_list(const std::vector<DueLine>& lines, const cellar::CellarStatus& status,
                    const Speaker& speaker, int within_days, const std::string& by) {
  TableSheet sheet = sheet_titled("What is due", status, speaker, by);
  const cellar::Date today = speaker.calendar->date_of(status.now);
  sheet.period = "Up to " + iso_day(today + std::chrono::days(within_days));
  sheet.columns = {{"Due", 66}, {"What", 170}, {"Why", 220}, {"Done", 80, true}, {"By", 44, true}};
  sheet.keys = {"due", "overdue", "days_over", "what", "why", "planned_for", "uid"};
  sheet.when_empty = "Nothing is due.";
  for (const DueLine& line : lines) {
    TableRow row;
    row.marked = line.overdue;
    const std::string day = iso_day(line.due);
    // The day stands in a column of its own.
    const std::string& why = line.item.why.empty() ? line.item.description : line.item.why;
    row.cells = {line.overdue ? day + "\nOVERDUE" : day, line.item.summary, why, std::string(),
                 std::string()};
    const bool planned = line.item.day > std::max(line.due, today);
    row.data = {datum(day),
                Datum(line.overdue),
                line.overdue ? datum(static_cast<double>((today - line.due).count())) : Datum(),
                datum(line.item.summary),
                datum(why),
                planned ? datum(iso_day(line.item.day)) : Datum(),
                datum(line.item.uid)};
    sheet.rows.push_back(std::move(row));
  }
  sheet.footnote = "A bar at the left marks what is overdue.";
  return sheet;
}

std::string json_of(const std::vector<DueLine>& lines, const std::string& cellar,
                    cellar::Date today) {
  nlohmann::ordered_json items = nlohmann::ordered_json::array();
  for (const DueLine& line : lines) {
    items.push_back({{"day", iso_day(line.due)},
                     {"overdue", line.overdue},
                     {"what", line.item.summary},
                     {"why", line.item.description},
                     {"uid", line.item.uid}});
  }
  nlohmann::ordered_json all;
  all["cellar"] = cellar;
  all["today"] = iso_day(today);
  all["items"] = std::move(items);
  return all.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n";
}

}  // namespace ullage::report
