// SPDX-License-Identifier: GPL-3.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "core/cellar/round.h"
#include "core/report/cellar_lists.h"
#include "core/report/log_rows.h"
#include "core/units/present.h"

namespace ullage::report {

namespace {

using namespace cellar;

TableRow place_heading(const std::string& name) {
  TableRow row;
  row.kind = RowKind::heading;
  row.cells = {name};
  return row;
}

// The columns to write in, and what of a station is written there.
constexpr std::size_t first_blank = 3;
constexpr std::size_t blanks = 4;  // and the remarks
constexpr const char* nothing_to_write = "–";

std::size_t column_of(RoundAsk ask) {
  switch (ask) {
    case RoundAsk::place_temperature:
      return first_blank;
    case RoundAsk::gas_pressure:
    case RoundAsk::rest_pressure:
    case RoundAsk::hold_pressure:
    case RoundAsk::bottle_gauge:
      return first_blank + 1;
    case RoundAsk::share_left:
    case RoundAsk::keg_weight:
    case RoundAsk::bottle_weight:
      return first_blank + 2;
    case RoundAsk::pour_time:
      return first_blank + 3;
  }
  return first_blank;
}

// With room for what is asked, and a dash where nothing is.
TableRow row_of(const std::string& name, const std::string& what, const std::string& last,
                const std::vector<RoundQuestion>& asked = {}) {
  TableRow row;
  row.cells = {name, what, last};
  row.cells.resize(first_blank + blanks, nothing_to_write);
  for (const RoundQuestion& q : asked) row.cells.at(column_of(q.ask)).clear();
  row.cells.emplace_back();
  row.data = {datum(name), datum(what), datum(last)};
  return row;
}

std::string keg_last(const KegStatus& keg, const Speaker& speaker) {
  const std::string gas =
      keg.gas.on && keg.gas.set ? "set " + speaker.printer.print(*keg.gas.set) : "";
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

std::string bottle_last(const BottleStatus& bottle, const Speaker& speaker) {
  if (!bottle.gas_left || !bottle.weighed_at) return "not weighed";
  return fmt::format("~{} left, {}", speaker.printer.print(*bottle.gas_left),
                     say_age(*bottle.weighed_at, speaker));
}

// Writes the stations of the round in its order.
class RoundRows {
 public:
  RoundRows(const CellarStatus& status, const Speaker& speaker, TableSheet& sheet)
      : status_(status), speaker_(speaker), sheet_(sheet) {}

  void write(const std::vector<RoundStation>& stations) {
    for (const RoundStation& station : stations) {
      if (station.about.kind == SubjectKind::keg) asked_.insert(station.about);
    }
    for (const RoundStation& station : stations) add(station);
    if (!headed_.empty()) add_the_rest();
    for (const PlaceStatus& place : status_.places) {
      here_ = place.record.place;
      if (!place.record.in_use) add_the_rest();
    }
    here_.reset();
    add_the_rest();
  }

 private:
  void add(const RoundStation& station) {
    if (station.about.kind == SubjectKind::line) return;  // after all places
    if (station.about.kind == SubjectKind::place) return add_place(station);
    if (const KegStatus* keg = status_.find(KegId{station.about.uuid})) {
      go_to(keg->place ? std::optional(keg->place->place) : std::nullopt);
      TableRow row = row_of(station.name, keg_what(*keg, speaker_), keg_last(*keg, speaker_),
                            station.questions);
      row.marked = keg->out_of_service() || keg->lock;
      sheet_.rows.push_back(std::move(row));
    } else if (const BottleStatus* bottle = status_.find(BottleId{station.about.uuid})) {
      go_to(bottle->record.place);
      sheet_.rows.push_back(row_of(station.name, say_gas(bottle->record.co2, speaker_),
                                   bottle_last(*bottle, speaker_), station.questions));
    }
  }
  void add_place(const RoundStation& station) {
    go_to(PlaceId{station.about.uuid});
    const PlaceStatus* place = status_.find(present(here_));
    if (place == nullptr) return;
    std::string set;
    if (place->record.set_temperature) {
      set = "set to " + speaker_.printer.print(*place->record.set_temperature);
    }
    sheet_.rows.push_back(row_of("Temperature", stacked({"air or water at keg height", set}),
                                 place_last(*place, speaker_), station.questions));
  }
  void go_to(const std::optional<PlaceId>& place) {
    if (headed_.contains(place)) return;
    if (!headed_.empty()) add_the_rest();
    here_ = place;
    head_here();
  }
  void head_here() {
    if (!headed_.insert(here_).second) return;
    const PlaceStatus* place = here_ ? status_.find(*here_) : nullptr;
    const std::string name = place == nullptr ? "Place not known" : place->record.name;
    const bool left = place != nullptr && !place->record.in_use;
    sheet_.rows.push_back(place_heading(left ? "Place out of use: " + name : name));
  }
  // Kegs of the place that the round passes by: nothing is to be read on them.
  void add_the_rest() {
    std::string kegs;
    bool marked = false;
    for (const KegStatus& keg : status_.kegs) {
      if (!keg.record.in_use || keg.lent_to || asked_.contains(subject(keg.record.keg))) continue;
      const bool here = here_ ? keg.place && keg.place->place == *here_ : !keg.place.has_value();
      if (!here || !told_.insert(keg.record.keg).second) continue;
      kegs += (kegs.empty() ? "" : ", ") + keg.record.tag + ": " + say(keg.state, speaker_);
      marked = marked || keg.out_of_service();
    }
    if (kegs.empty()) return;
    head_here();
    sheet_.rows.push_back(row_of("Also here", kegs, "nothing to read"));
    sheet_.rows.back().marked = marked;
  }

  const CellarStatus& status_;
  const Speaker& speaker_;
  TableSheet& sheet_;
  std::optional<PlaceId> here_;
  std::set<SubjectRef> asked_;
  std::set<KegId> told_;
  std::set<std::optional<PlaceId>> headed_;
};

std::string tap_last(const LineStatus& line, const RoundStation& station, const Speaker& speaker) {
  const std::string cleaned = line.last_cleaned ? "cleaned " + say_age(*line.last_cleaned, speaker)
                                                : std::string("not cleaned yet");
  std::string due;
  if (line.clean_due) {
    due = (line.overdue ? "was due " : "due ") + say_date(*line.clean_due, speaker);
  }
  std::string glass;
  for (const RoundQuestion& q : station.questions) {
    if (!q.last || !q.last_at) continue;
    glass = fmt::format("glass {}, {}",
                        visit([&](const auto& v) { return speaker.printer.print(v); }, *q.last),
                        say_age(*q.last_at, speaker));
  }
  return stacked({listed({cleaned, due}), glass});
}

void add_taps(TableSheet& sheet, const std::vector<RoundStation>& stations,
              const CellarStatus& status, const Speaker& speaker) {
  bool headed = false;
  const bool us = speaker.words == RegionalWords::us;
  for (const RoundStation& station : stations) {
    if (station.about.kind != SubjectKind::line) continue;
    const LineStatus* told = status.find(LineId{station.about.uuid});
    if (told == nullptr) continue;
    const LineStatus& line = *told;
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
    TableRow row = row_of(name, beer, tap_last(line, station, speaker), station.questions);
    row.marked = line.do_not_serve() || line.overdue;
    sheet.rows.push_back(std::move(row));
  }
}

}  // namespace

TableSheet round_sheet(const Journal& journal, const CellarStatus& status, const Speaker& speaker,
                       const std::string& by) {
  TableSheet sheet = sheet_titled("Round", status, speaker, by);
  sheet.period = "As of " + say_clock(status.now, speaker);
  sheet.columns = {{"Station", 86},
                   {"What is there", 128},
                   {"Last", 118},
                   {"Temperature", 62, true},
                   {"Pressure", 62, true},
                   {"Left, weight", 62, true},
                   {"Glass, seconds", 62, true},
                   {"Remarks", 108, true}};
  sheet.keys = {"station", "what", "last"};
  sheet.when_empty = "No places or kegs are registered.";
  const std::vector<RoundStation> stations = round_stations(status, journal);
  RoundRows(status, speaker, sheet).write(stations);
  add_taps(sheet, stations, status, speaker);
  sheet.signatures = {"Walked by", "Date and time"};
  sheet.footnote =
      "In the order in which the round asks. Mind the gas alarm before going in. ~ marks an "
      "estimate. A bar at the left marks what is out of service or overdue.";
  return sheet;
}

}  // namespace ullage::report
