// SPDX-License-Identifier: GPL-3.0-or-later
#include <fmt/format.h>

#include "core/report/log_rows.h"
#include "core/report/period_logs.h"

namespace ullage::report {

using namespace cellar;

TableSheet entry_log(const Journal& journal, const CellarStatus& now, const Period& period,
                     const Speaker& speaker, const std::string& by) {
  const LogSource from{journal, now, speaker};
  TableSheet sheet = sheet_titled("Whole log", now, speaker, by);
  sheet.period = say_period(period);
  sheet.columns = {{"Happened", 84}, {"About", 130}, {"What", 270}, {"By", 34}, {"Remarks", 146}};
  sheet.keys = {"happened_at", "recorded_at", "kind", "about", "what",
                "by",          "remarks",     "act",  "entry"};
  sheet.when_empty = "Nothing was logged in this period.";
  for (const Entry* e : entries_within(period, from, [](const Payload&) { return true; })) {
    const EntryHeader& h = e->header;
    const std::string what = say_entry(e->payload, now, speaker);
    const std::string things = fmt::format("{}", fmt::join(things_named(e->payload, now), ", "));
    TableRow row;
    tell_standing(row, *e, from);
    row.cells = {from.clock(h.happened_at), things, what, h.by, h.note};
    row.data = {datum(stamp_of(h.happened_at, speaker)),
                datum(stamp_of(h.recorded_at, speaker)),
                datum(std::string(kind_of(e->payload))),
                datum(things),
                datum(what),
                datum(h.by),
                datum(h.note),
                datum(to_text(h.act.uuid)),
                datum(to_text(h.id.uuid))};
    sheet.rows.push_back(std::move(row));
  }
  sheet.signatures = {"Kept by", "Countersigned by"};
  sheet.footnote = "Crossed-through entries were struck or corrected and don’t count.";
  return sheet;
}

}  // namespace ullage::report
