// SPDX-License-Identifier: GPL-3.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <limits>

#include "core/report/cellar_lists.h"
#include "core/report/log_rows.h"

namespace ullage::report {

namespace {

using namespace cellar;

TableRow place_heading(const std::string& name) {
  TableRow row;
  row.kind = RowKind::heading;
  row.cells = {name};
  return row;
}

TableRow station(std::string name, const std::string& what, const std::string& last) {
  TableRow row;
  row.cells = {name, what, last, "", "", "", ""};
  row.data = {datum(name), datum(what), datum(last)};
  return row;
}

std::string keg_last(const KegStatus& keg, const Speaker& speaker) {
  std::string gas = keg.gas.on && keg.gas.set ? "set " + speaker.printer.print(*keg.gas.set) : "";
  std::string level;
  if (keg.level.left) {
    level = "~" + speaker.printer.print(*keg.level.left);
    if (keg.level.measured_at) level += ", " + say_age(*keg.level.measured_at, speaker);
  } else if (keg.contents) {
    level = "left not known";
  }
  return stacked({gas, level});
}

std::string keg_what(const KegStatus& keg, const Speaker& speaker) {
  const std::string state = say(keg.state, speaker);
  return keg.contents ? stacked({keg.contents->beer.name, state}) : state;
}

std::string place_last(const PlaceStatus& place, const Speaker& speaker) {
  if (!place.temperature || !place.read_at) return "not read yet";
  return fmt::format("{}, {}", speaker.printer.print(*place.temperature),
                     say_age(*place.read_at, speaker));
}

void add_place(TableSheet& sheet, const PlaceStatus& place, const CellarStatus& status,
               const Speaker& speaker) {
  sheet.rows.push_back(place_heading(place.record.name));
  std::string set;
  if (place.record.set_temperature) {
    set = "set to " + speaker.printer.print(*place.record.set_temperature);
  }
  sheet.rows.push_back(station("Temperature", stacked({"air or water at keg height", set}),
                               place_last(place, speaker)));
  for (const KegStatus& keg : status.kegs) {
    if (!keg.record.in_use || keg.lent_to || !keg.place) continue;
    if (keg.place->place != place.record.place) continue;
    TableRow row = station(keg.record.tag, keg_what(keg, speaker), keg_last(keg, speaker));
    row.marked = keg.quarantined || keg.hold_failed || keg.lock;
    sheet.rows.push_back(std::move(row));
  }
  for (const BottleStatus& bottle : status.bottles) {
    if (!bottle.record.in_use || bottle.record.place != place.record.place) continue;
    const std::string last =
        bottle.gas_left && bottle.weighed_at
            ? fmt::format("~{} left, {}", speaker.printer.print(*bottle.gas_left),
                          say_age(*bottle.weighed_at, speaker))
            : std::string("not weighed");
    sheet.rows.push_back(station(bottle.record.name, say_gas(bottle.record.co2, speaker), last));
  }
}

// Places whose turn is stated first, by it; the others as they are registered.
std::vector<const PlaceStatus*> in_walking_order(const CellarStatus& status) {
  std::vector<const PlaceStatus*> places;
  for (const PlaceStatus& place : status.places) {
    if (place.record.in_use) places.push_back(&place);
  }
  const auto turn = [](const PlaceStatus* p) {
    return p->record.walk_order.value_or(std::numeric_limits<std::int64_t>::max());
  };
  std::stable_sort(places.begin(), places.end(),
                   [&](const auto* a, const auto* b) { return turn(a) < turn(b); });
  return places;
}

void add_unplaced(TableSheet& sheet, const CellarStatus& status, const Speaker& speaker) {
  bool headed = false;
  for (const KegStatus& keg : status.kegs) {
    if (!keg.record.in_use || keg.lent_to || keg.place) continue;
    if (!headed) sheet.rows.push_back(place_heading("Place not known"));
    headed = true;
    sheet.rows.push_back(station(keg.record.tag, keg_what(keg, speaker), keg_last(keg, speaker)));
  }
}

void add_taps(TableSheet& sheet, const CellarStatus& status, const Speaker& speaker) {
  bool headed = false;
  const bool us = speaker.words == RegionalWords::us;
  for (const LineStatus& line : status.lines) {
    if (!line.record.in_use) continue;
    if (!headed) sheet.rows.push_back(place_heading(us ? "Faucets" : "Taps"));
    headed = true;
    std::string beer = "nothing on";
    if (line.keg) {
      if (const KegStatus* keg = status.find(*line.keg); keg && keg->contents) {
        beer = listed({keg->contents->beer.name, keg->record.tag});
      }
    }
    if (line.lock) {
      beer = "DO NOT SERVE: " + line.lock->agent;
    } else if (line.keg_lock) {
      beer =
          fmt::format("DO NOT SERVE: {}, {}", line.keg_lock->tag, say(line.keg_lock->why, speaker));
    }
    const std::string name =
        line.record.tap.empty() ? line.record.name : (us ? "Faucet " : "Tap ") + line.record.tap;
    TableRow row = station(name, beer,
                           line.last_cleaned ? "cleaned " + say_age(*line.last_cleaned, speaker)
                                             : std::string("not cleaned yet"));
    row.marked = line.do_not_serve() || line.overdue;
    sheet.rows.push_back(std::move(row));
  }
}

}  // namespace

TableSheet round_sheet(const CellarStatus& status, const Speaker& speaker, const std::string& by) {
  TableSheet sheet = sheet_titled("Round", status, speaker, by);
  sheet.period = "As of " + say_clock(status.now, speaker);
  sheet.columns = {{"Station", 86},           {"What is there", 128}, {"Last", 118},
                   {"Temperature", 62, true}, {"Pressure", 62, true}, {"Left, weight", 62, true},
                   {"Remarks", 150, true}};
  sheet.keys = {"station", "what", "last"};
  sheet.when_empty = "No places or kegs are registered.";
  for (const PlaceStatus* place : in_walking_order(status)) {
    add_place(sheet, *place, status, speaker);
  }
  add_unplaced(sheet, status, speaker);
  add_taps(sheet, status, speaker);
  sheet.signatures = {"Walked by", "Date and time"};
  sheet.footnote =
      "Mind the gas alarm before going in. ~ marks an estimate. A bar at the left marks what is "
      "out "
      "of service or overdue.";
  return sheet;
}

}  // namespace ullage::report
