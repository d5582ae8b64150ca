// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/register_lists.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/cellar/gas_account.h"
#include "core/report/entry_words.h"
#include "core/report/log_rows.h"
#include "core/report/names.h"

namespace ullage::report {

namespace {

using namespace cellar;

template <class AnyId>
std::string name_or_none(const std::optional<AnyId>& id, const CellarStatus& status) {
  return id ? name_of(subject(*id), status) : std::string();
}
template <class Quantity>
std::string printed(const std::optional<Quantity>& quantity, const Speaker& speaker) {
  return quantity ? speaker.printer.print(*quantity) : std::string();
}
double in_kilograms_of(Mass m) { return units::in_kilograms(m); }
double in_celsius_of(Temperature t) { return units::in_celsius(t); }
double in_metres_of(Length l) { return l.value(); }
double in_millimetres_of(Length l) { return l.value() * 1000; }

std::string yes_or_no(const std::optional<bool>& known) {
  return !known ? std::string("not told") : *known ? "yes" : "no";
}
Datum said(const std::optional<bool>& known) { return known ? Datum(*known) : Datum(); }

std::string fed_by(const BottleStatus& bottle, const CellarStatus& status) {
  std::string all;
  for (const RegulatorId id : bottle.feeds) {
    all += (all.empty() ? "" : ", ") + name_of(subject(id), status);
  }
  return all;
}

TableRow bottle_row(const BottleStatus& bottle, const CellarStatus& status,
                    const Speaker& speaker) {
  const BottleRecord& r = bottle.record;
  const std::string feeds = fed_by(bottle, status);
  const auto lasts = bottle.account ? bottle.account->runs_out : std::nullopt;
  const auto day = [&](const std::optional<Instant>& t) {
    return t ? datum(iso_day(speaker.calendar->date_of(*t))) : Datum();
  };
  const std::string left =
      bottle.gas_left ? "~" + speaker.printer.print(*bottle.gas_left) : std::string("not weighed");
  TableRow row;
  row.cells = {r.name,
               say_gas(r.co2, speaker),
               stacked({r.tare ? "tare " + printed(r.tare, speaker) : std::string("tare not known"),
                        r.content ? "holds " + printed(r.content, speaker) : std::string()}),
               stacked({left, bottle.weighed_at ? "weighed " + say_age(*bottle.weighed_at, speaker)
                                                : std::string()}),
               lasts ? "~" + say_day(lasts->likely, speaker) : std::string("not known"),
               bottle.test_due ? iso_day(*bottle.test_due) : std::string("not stated"),
               name_or_none(r.place, status),
               feeds};
  row.marked = cellar::retest_due(bottle.test_due, speaker.calendar->date_of(status.now)) ==
               RetestDue::overdue;
  row.data = {datum(r.name),
              datum(r.co2.count() * 100),
              datum(r.tare, in_kilograms_of),
              datum(r.content, in_kilograms_of),
              datum(r.water_capacity, [](Volume v) { return units::in_litres(v); }),
              bottle.gas_left ? datum(units::in_kilograms(bottle.gas_left->value())) : Datum(),
              bottle.gas_left ? datum(bottle.gas_left->half_width()) : Datum(),
              bottle.weighed_at ? datum(stamp_of(*bottle.weighed_at, speaker)) : Datum(),
              lasts ? day(lasts->likely) : Datum(),
              lasts ? day(lasts->earliest) : Datum(),
              lasts ? day(lasts->latest) : Datum(),
              bottle.test_due ? datum(iso_day(*bottle.test_due)) : Datum(),
              datum(name_or_none(r.place, status)),
              datum(feeds)};
  return row;
}

TableRow regulator_row(const RegulatorRecord& r, const CellarStatus& status,
                       const Speaker& speaker) {
  std::string from;
  for (const BottleStatus& bottle : status.bottles) {
    const auto& feeds = bottle.feeds;
    if (std::find(feeds.begin(), feeds.end(), r.regulator) == feeds.end()) continue;
    from += (from.empty() ? "" : ", ") + bottle.record.name;
  }
  const std::string before = name_or_none(r.fed_by, status);
  std::string kegs;
  for (const KegStatus& keg : status.kegs) {
    if (!keg.record.in_use || !keg.gas.on || keg.gas.regulator != r.regulator) continue;
    kegs += fmt::format("{}{}: {}", kegs.empty() ? "" : "\n", keg.record.tag,
                        printed(keg.gas.set, speaker));
  }
  std::string on_one_line = kegs;
  std::replace(on_one_line.begin(), on_one_line.end(), '\n', ';');
  TableRow row;
  row.cells = {r.name,
               stacked({from, before.empty() ? std::string() : "after " + before}),
               name_or_none(r.place, status),
               name_or_none(r.dial, status),
               yes_or_no(r.secured),
               kegs.empty() ? std::string("none") : kegs};
  row.marked = r.secured == false;
  row.data = {datum(r.name),
              datum(from),
              datum(before),
              datum(name_or_none(r.place, status)),
              datum(name_or_none(r.dial, status)),
              datum(r.mass, in_kilograms_of),
              said(r.secured),
              datum(on_one_line)};
  return row;
}

TableRow place_row(const PlaceStatus& place, const Speaker& speaker) {
  const PlaceRecord& r = place.record;
  const bool read = place.temperature && place.read_at;
  TableRow row;
  row.cells = {
      r.name,
      spaced(to_word(r.place_kind)),
      printed(r.set_temperature, speaker),
      read ? stacked({speaker.printer.print(*place.temperature), say_age(*place.read_at, speaker)})
           : std::string("not read"),
      fmt::format("{}", place.kegs),
      printed(r.net_air_volume, speaker),
      printed(r.sensor_height, speaker)};
  row.data = {datum(r.name),
              datum(std::string(to_word(r.place_kind))),
              datum(r.set_temperature, in_celsius_of),
              read ? datum(units::in_celsius(*place.temperature)) : Datum(),
              read ? datum(stamp_of(*place.read_at, speaker)) : Datum(),
              datum(static_cast<double>(place.kegs)),
              datum(r.net_air_volume, [](Volume v) { return v.value(); }),
              datum(r.air_changes_per_hour, [](double n) { return n; }),
              said(r.below_ground),
              datum(r.sensor_height, in_metres_of),
              datum(r.walk_order, [](std::int64_t n) { return static_cast<double>(n); })};
  return row;
}

// Of the pair that fits what it reads.
std::string off_by(const InstrumentRecord& r, bool bias, const Speaker& speaker) {
  const auto percent = bias ? r.relative_bias_percent : r.relative_repeatability_percent;
  return listed({printed(bias ? r.pressure_bias : r.pressure_repeatability, speaker),
                 printed(bias ? r.temperature_bias : r.temperature_repeatability, speaker),
                 printed(bias ? r.mass_bias : r.mass_repeatability, speaker),
                 percent ? speaker.printer.number(*percent, 1) + " %" : std::string()});
}

TableRow instrument_row(const InstrumentRecord& r, const Speaker& speaker) {
  const auto kilopascal = [](PressureDifference p) { return p.value() / 1000; };
  const auto kelvin = [](TemperatureDifference t) { return units::in_kelvin(t); };
  const auto itself = [](double n) { return n; };
  const std::string checked = r.checked_on ? iso_day(*r.checked_on) : std::string();
  TableRow row;
  row.cells = {r.name,
               spaced(to_word(r.instrument_kind)),
               off_by(r, true, speaker),
               off_by(r, false, speaker),
               checked.empty() ? std::string("not told") : checked,
               r.check_note};
  row.data = {datum(r.name),
              datum(std::string(to_word(r.instrument_kind))),
              datum(r.pressure_bias, kilopascal),
              datum(r.pressure_repeatability, kilopascal),
              datum(r.temperature_bias, kelvin),
              datum(r.temperature_repeatability, kelvin),
              datum(r.mass_bias, in_kilograms_of),
              datum(r.mass_repeatability, in_kilograms_of),
              datum(r.relative_bias_percent, itself),
              datum(r.relative_repeatability_percent, itself),
              datum(checked),
              datum(r.check_note)};
  return row;
}

struct HosePiece {
  std::int64_t position = 1;
  std::optional<Length> length, bore, rise;
  LineMaterial material = LineMaterial::vinyl;
  std::optional<PlaceId> place;
};
std::vector<HosePiece> pieces_of(const LineRecord& line, const CellarStatus& status) {
  std::vector<HosePiece> pieces;
  for (const SegmentRecord& s : status.segments) {
    if (s.line != line.line || !s.in_use) continue;
    pieces.push_back({s.position, s.length, s.bore, s.rise, s.material, s.place});
  }
  if (pieces.empty() && (line.length || line.bore)) {
    pieces.push_back({1, line.length, line.bore, line.rise, line.material, line.place});
  }
  return pieces;
}

TableRow hose_row(const LineRecord& line, const HosePiece& piece, const CellarStatus& status,
                  const Speaker& speaker) {
  TableRow row;
  row.cells = {stacked({line.tap, line.name}),
               fmt::format("{}", piece.position),
               printed(piece.length, speaker),
               piece.bore ? speaker.printer.print_bore(*piece.bore) : std::string(),
               spaced(to_word(piece.material)),
               printed(piece.rise, speaker),
               name_or_none(piece.place, status)};
  row.data = {datum(line.tap),
              datum(line.name),
              datum(static_cast<double>(piece.position)),
              datum(piece.length, in_metres_of),
              datum(piece.bore, in_millimetres_of),
              datum(std::string(to_word(piece.material))),
              datum(piece.rise, in_metres_of),
              datum(name_or_none(piece.place, status))};
  return row;
}

TableRow beer_row(const BeerRecord& beer, const Speaker& speaker) {
  const auto volumes = [](const std::optional<Co2Concentration>& c) {
    return c ? datum(units::to_volumes(*c).count()) : Datum();
  };
  const bool ranged = beer.co2_low && beer.co2_high;
  const auto& price = beer.price_minor_per_litre;
  TableRow row;
  row.cells = {beer.name, beer.style,
               ranged ? speaker.printer.print_range(units::to_volumes(*beer.co2_low),
                                                    units::to_volumes(*beer.co2_high))
                      : std::string(),
               beer.allergens, price ? say_money(*price, speaker) : std::string()};
  row.data = {datum(beer.name),
              datum(beer.style),
              volumes(beer.co2_low),
              volumes(beer.co2_high),
              datum(beer.allergens),
              datum(price, [](std::int64_t minor) { return static_cast<double>(minor) / 100; })};
  return row;
}

}  // namespace

TableSheet bottle_list(const CellarStatus& status, const Speaker& speaker, const std::string& by) {
  TableSheet sheet = sheet_of_now("Gas bottles", status, speaker, by);
  sheet.columns = {{"Bottle", 90},   {"Gas", 90},    {"Weights", 90}, {"Left", 90},
                   {"Lasts to", 66}, {"Retest", 66}, {"Place", 80},   {"Feeds", 110}};
  sheet.keys = {
      "bottle",          "co2_percent",        "tare_kg",    "content_kg", "water_l",
      "left_kg",         "left_half_width_kg", "weighed_at", "runs_out",   "runs_out_earliest",
      "runs_out_latest", "retest_due",         "place",      "feeds"};
  sheet.when_empty = "No bottles are registered.";
  for (const BottleStatus& bottle : status.bottles) {
    if (bottle.record.in_use) sheet.rows.push_back(bottle_row(bottle, status, speaker));
  }
  sheet.footnote = "~ marks an estimate. A bar at the left marks a bottle past its retest.";
  return sheet;
}

TableSheet regulator_list(const CellarStatus& status, const Speaker& speaker,
                          const std::string& by) {
  TableSheet sheet = sheet_of_now("Regulators", status, speaker, by);
  sheet.columns = {{"Regulator", 110}, {"Draws from", 120}, {"Place", 90},
                   {"Dial", 110},      {"Secured", 56},     {"Kegs on it, set to", 140}};
  sheet.keys = {"regulator", "bottle", "after", "place", "dial", "mass_kg", "secured", "kegs"};
  sheet.when_empty = "No regulators are registered.";
  for (const RegulatorRecord& r : status.regulators) {
    if (r.in_use) sheet.rows.push_back(regulator_row(r, status, speaker));
  }
  sheet.footnote = "A bar at the left marks a regulator whose bottle is not secured.";
  return sheet;
}

TableSheet place_list(const CellarStatus& status, const Speaker& speaker, const std::string& by) {
  TableSheet sheet = sheet_of_now("Places", status, speaker, by);
  sheet.columns = {{"Place", 120}, {"Kind", 80}, {"Set to", 60},        {"Last read", 90},
                   {"Kegs", 46},   {"Air", 80},  {"Alarm’s height", 80}};
  sheet.keys = {"place",        "kind",
                "set_c",        "read_c",
                "read_at",      "kegs",
                "air_m3",       "air_changes_per_hour",
                "below_ground", "sensor_height_m",
                "walk_order"};
  sheet.when_empty = "No places are registered.";
  for (const PlaceStatus& place : status.places) {
    if (place.record.in_use) sheet.rows.push_back(place_row(place, speaker));
  }
  return sheet;
}

TableSheet instrument_list(const CellarStatus& status, const Speaker& speaker,
                           const std::string& by) {
  TableSheet sheet = sheet_of_now("Instruments", status, speaker, by);
  sheet.columns = {{"Instrument", 120},    {"Kind", 100},      {"Off by up to", 90},
                   {"Repeats within", 90}, {"Checked on", 70}, {"How", 150}};
  sheet.keys = {"instrument",         "kind",
                "pressure_bias_kpa",  "pressure_repeatability_kpa",
                "temperature_bias_k", "temperature_repeatability_k",
                "mass_bias_kg",       "mass_repeatability_kg",
                "bias_percent",       "repeatability_percent",
                "checked_on",         "check_note"};
  sheet.when_empty = "No instruments are registered.";
  for (const InstrumentRecord& r : status.instruments) {
    if (r.in_use) sheet.rows.push_back(instrument_row(r, speaker));
  }
  sheet.footnote = "Off by and repeats within: 95 % of readings.";
  return sheet;
}

TableSheet hose_list(const CellarStatus& status, const Speaker& speaker, const std::string& by) {
  TableSheet sheet = sheet_of_now("Hose", status, speaker, by);
  const bool us = speaker.words == RegionalWords::us;
  sheet.columns = {{us ? "Faucet, line" : "Tap, line", 110},
                   {"Piece from keg", 70},
                   {"Length", 70},
                   {"Bore", 70},
                   {"Material", 90},
                   {"Rises", 70},
                   {"Runs through", 110}};
  sheet.keys = {"tap", "line", "position", "length_m", "bore_mm", "material", "rise_m", "place"};
  sheet.when_empty = "Nothing is known of any line’s hose.";
  for (const LineStatus& line : status.lines) {
    if (!line.record.in_use) continue;
    for (const HosePiece& piece : pieces_of(line.record, status)) {
      sheet.rows.push_back(hose_row(line.record, piece, status, speaker));
    }
  }
  return sheet;
}

TableSheet beer_list(const CellarStatus& status, const Speaker& speaker, const std::string& by) {
  TableSheet sheet = sheet_of_now("Beers", status, speaker, by);
  sheet.columns = {
      {"Beer", 140}, {"Style", 110}, {"CO₂", 100}, {"Allergens", 120}, {"Price of a litre", 80}};
  sheet.keys = {"beer", "style", "co2_low_vol", "co2_high_vol", "allergens", "price_per_litre"};
  sheet.when_empty = "No beers are registered.";
  for (const BeerRecord& beer : status.beers) sheet.rows.push_back(beer_row(beer, speaker));
  return sheet;
}

}  // namespace ullage::report
