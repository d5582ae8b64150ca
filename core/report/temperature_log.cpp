// SPDX-License-Identifier: GPL-3.0-or-later
#include <fmt/format.h>

#include <map>
#include <set>

#include "core/report/entry_words.h"
#include "core/report/log_rows.h"
#include "core/report/period_logs.h"
#include "core/units/present.h"

namespace ullage::report {

namespace {

using namespace cellar;

// How far from what it is set to a place may be read. Trade guides give a cellar 11 to
// 13 °C, and a cold room 36 to 38 °F: one degree to either side of the middle.
const units::TemperatureDifference range_margin = units::kelvin_difference(1);
// So that 4.0 °C, kept in kelvin, is not above 4 °C.
constexpr double range_rounding_k = 1e-6;

struct TemperatureLimits {
  Temperature low, high;
};
// Beer in a glass is not what the place is set to hold.
std::optional<TemperatureLimits> temperature_limits(const TemperatureRead& r,
                                                    const PlaceRecord* place) {
  if (!place || !place->set_temperature || r.of == TemperatureOf::glass) return std::nullopt;
  return TemperatureLimits{*place->set_temperature - range_margin,
                           *place->set_temperature + range_margin};
}
enum class RangeVerdict { not_judged, within, below, above };
RangeVerdict range_verdict(const TemperatureRead& r,
                           const std::optional<TemperatureLimits>& limits) {
  if (!limits) return RangeVerdict::not_judged;
  const double at = units::in_kelvin(r.temperature);
  if (at > units::in_kelvin(limits->high) + range_rounding_k) return RangeVerdict::above;
  return at < units::in_kelvin(limits->low) - range_rounding_k ? RangeVerdict::below
                                                               : RangeVerdict::within;
}
bool is_out(RangeVerdict j) { return j == RangeVerdict::below || j == RangeVerdict::above; }

std::string range_words(RangeVerdict j, const std::optional<TemperatureLimits>& limits,
                        const LogSource& from) {
  const units::Printer& printer = from.speaker.printer;
  switch (j) {
    case RangeVerdict::not_judged:
      return "not judged";
    case RangeVerdict::within:
      return "within";
    case RangeVerdict::below:
      return "OUT: below " + printer.print(present(limits).low);
    case RangeVerdict::above:
      return "OUT: above " + printer.print(present(limits).high);
  }
  return {};
}

const PlaceRecord* place_then(const Entry& e, const TemperatureRead& r, const LogSource& from) {
  return record_at<PlaceRecord>(from.journal, subject(r.place), e.header.happened_at);
}

TableRow temperature_row(const Entry& e, const TemperatureRead& r, const LogSource& from) {
  TableRow row;
  tell_standing(row, e, from);
  const auto* place = place_then(e, r, from);
  const std::string where = place ? place->name : name_of(subject(r.place), from.names);
  const std::string thermometer =
      r.thermometer ? name_of(subject(*r.thermometer), from.names) : std::string();
  const std::optional<Temperature> set = place ? place->set_temperature : std::nullopt;
  const auto limits = temperature_limits(r, place);
  const RangeVerdict how = range_verdict(r, limits);
  row.marked = !row.struck && is_out(how);
  const auto celsius = [](Temperature t) { return units::in_celsius(t); };
  row.cells = {from.clock(e.header.happened_at),
               where,
               std::string(to_word(r.of)),
               from.speaker.printer.print(r.temperature),
               from.print(set),
               row.struck ? std::string() : range_words(how, limits, from),
               thermometer,
               e.header.by,
               e.header.note};
  row.data = {datum(stamp_of(e.header.happened_at, from.speaker)),
              datum(where),
              datum(std::string(to_word(r.of))),
              datum(units::in_celsius(r.temperature)),
              datum(set, celsius),
              datum(thermometer),
              datum(e.header.by),
              datum(e.header.note),
              limits ? datum(celsius(limits->low)) : Datum(),
              limits ? datum(celsius(limits->high)) : Datum(),
              limits && !row.struck ? Datum(is_out(how)) : Datum()};
  return row;
}

struct PlaceReadings {
  std::size_t count = 0;
  std::size_t out_of_range = 0;
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
    if (is_out(range_verdict(r, temperature_limits(r, place_then(*e, r, from)))))
      ++readings.out_of_range;
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
    box.lines.push_back(fmt::format(
        "{}: {}, {} reading{}, {} out of range, {} of {} days without one", place.record.name,
        from.speaker.printer.print_range(present(r.lowest), present(r.highest)), r.count,
        r.count == 1 ? "" : "s", r.out_of_range, std::max<std::int64_t>(0, missing), days));
  }
  if (box.lines.empty()) box.lines.emplace_back("no places registered");
  return box;
}

SheetBox range_explained(const LogSource& from) {
  const units::Printer& printer = from.speaker.printer;
  return {"Out of range",
          {fmt::format("More than {} from what the place was set to then: the width that trade "
                       "guides give a cellar ({}). Beer read in a glass, and a place that nobody "
                       "said what it is set to, are not judged.",
                       printer.print(range_margin),
                       printer.print_range(units::celsius(11), units::celsius(13))),
           "Your local rules and the beer’s label come first."}};
}

}  // namespace

TableSheet temperature_log(const Journal& journal, const CellarStatus& now, const Period& period,
                           const Speaker& speaker, const std::string& by) {
  const LogSource from{journal, now, speaker};
  TableSheet sheet = sheet_titled("Temperature log", now, speaker, by);
  sheet.period = say_period(period);
  sheet.columns = {{"Read", 80},        {"Place", 96},  {"Of", 42},
                   {"Temperature", 62}, {"Set to", 50}, {"In range", 78},
                   {"Thermometer", 94}, {"By", 30},     {"Remarks, what was done", 150}};
  sheet.keys = {"read_at", "place",   "of",    "temperature_c", "set_c",       "thermometer",
                "by",      "remarks", "low_c", "high_c",        "out_of_range"};
  sheet.when_empty = "No temperature was read in this period.";
  const auto entries = entries_within(
      period, from, [](const Payload& p) { return holds_alternative<TemperatureRead>(p); });
  for (const Entry* e : entries) {
    sheet.rows.push_back(temperature_row(*e, get<TemperatureRead>(e->payload), from));
  }
  sheet.boxes = {places_summed_up(entries, period, from), range_explained(from)};
  sheet.signatures = {"Checked by", "Countersigned by"};
  sheet.footnote =
      "Crossed-through entries were struck or corrected and don’t count. "
      "A bar at the left marks a reading out of range.";
  return sheet;
}

}  // namespace ullage::report
