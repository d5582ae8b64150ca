// SPDX-License-Identifier: GPL-3.0-or-later
#include <fmt/format.h>

#include <map>
#include <set>

#include "core/report/entry_words.h"
#include "core/report/log_rows.h"
#include "core/report/period_logs.h"

namespace ullage::report {

namespace {

using namespace cellar;

TableRow temperature_row(const Entry& e, const TemperatureRead& r, const LogSource& from) {
  TableRow row;
  tell_standing(row, e, from);
  const auto* place = record_at<PlaceRecord>(from.journal, subject(r.place), e.header.happened_at);
  const std::string where = place ? place->name : name_of(subject(r.place), from.names);
  const std::string thermometer =
      r.thermometer ? name_of(subject(*r.thermometer), from.names) : std::string();
  const std::optional<Temperature> set = place ? place->set_temperature : std::nullopt;
  row.cells = {from.clock(e.header.happened_at),
               where,
               std::string(to_word(r.of)),
               from.speaker.printer.print(r.temperature),
               from.print(set),
               thermometer,
               e.header.by,
               e.header.note};
  row.data = {datum(stamp_of(e.header.happened_at, from.speaker)),
              datum(where),
              datum(std::string(to_word(r.of))),
              datum(units::in_celsius(r.temperature)),
              datum(set, [](Temperature t) { return units::in_celsius(t); }),
              datum(thermometer),
              datum(e.header.by),
              datum(e.header.note)};
  return row;
}

struct PlaceReadings {
  std::size_t count = 0;
  std::optional<Temperature> lowest, highest;
  std::set<Date> days;
};

SheetBox places_summed_up(const std::vector<const Entry*>& entries, const Period& period,
                          const LogSource& from) {
  std::map<PlaceId, PlaceReadings> places;
  for (const Entry* e : entries) {
    if (from.journal.standing(e->header.id) != Standing::in_force) continue;
    const auto& r = get<TemperatureRead>(e->payload);
    PlaceReadings& readings = places[r.place];
    ++readings.count;
    readings.days.insert(from.day(*e));
    if (!readings.lowest || r.temperature < *readings.lowest) readings.lowest = r.temperature;
    if (!readings.highest || r.temperature > *readings.highest) readings.highest = r.temperature;
  }
  // Days that have not come yet can't lack a reading.
  const Date last = std::min(period.last, from.speaker.calendar->date_of(from.speaker.now));
  const std::int64_t days = std::max<std::int64_t>(0, (last - period.first).count() + 1);
  SheetBox box{"Each place in this period", {}};
  for (const PlaceStatus& place : from.names.places) {
    const auto at = places.find(place.record.place);
    if (at == places.end()) {
      if (place.record.in_use) box.lines.push_back(place.record.name + ": not read");
      continue;
    }
    const PlaceReadings& r = at->second;
    const auto missing = days - static_cast<std::int64_t>(r.days.size());
    box.lines.push_back(
        fmt::format("{}: {}, {} reading{}, {} of {} days without one", place.record.name,
                    from.speaker.printer.print_range(*r.lowest, *r.highest), r.count,
                    r.count == 1 ? "" : "s", std::max<std::int64_t>(0, missing), days));
  }
  if (box.lines.empty()) box.lines.emplace_back("no places registered");
  return box;
}

}  // namespace

TableSheet temperature_log(const Journal& journal, const CellarStatus& now, const Period& period,
                           const Speaker& speaker, const std::string& by) {
  const LogSource from{journal, now, speaker};
  TableSheet sheet = sheet_titled("Temperature log", now, speaker, by);
  sheet.period = say_period(period);
  sheet.columns = {
      {"Read", 80},   {"Place", 100},       {"Of", 44}, {"Temperature", 62},
      {"Set to", 52}, {"Thermometer", 100}, {"By", 30}, {"Remarks, what was done", 180}};
  sheet.keys = {"read_at", "place", "of", "temperature_c", "set_c", "thermometer", "by", "remarks"};
  sheet.when_empty = "No temperature was read in this period.";
  const auto entries = entries_within(
      period, from, [](const Payload& p) { return holds_alternative<TemperatureRead>(p); });
  for (const Entry* e : entries) {
    sheet.rows.push_back(temperature_row(*e, get<TemperatureRead>(e->payload), from));
  }
  sheet.boxes = {places_summed_up(entries, period, from)};
  sheet.signatures = {"Checked by", "Countersigned by"};
  sheet.footnote = "Crossed-through entries were struck or corrected and don’t count.";
  return sheet;
}

}  // namespace ullage::report
