// SPDX-License-Identifier: GPL-3.0-or-later
#include <fmt/format.h>

#include "core/report/cellar_lists.h"
#include "core/report/log_rows.h"
#include "core/units/present.h"

namespace ullage::report {

namespace {

using namespace cellar;

// How a keg came to be with somebody else, or somebody else's with us.
struct Custody {
  std::string how;  // "lent", "rented", "the supplier's"
  std::string whom;
  std::optional<Instant> since;
  std::optional<Date> due_back;
  std::optional<std::int64_t> deposit_minor;
};

Custody lent_of(const KegStatus& keg, const LogSource& from) {
  Custody c;
  c.how = "lent";
  c.whom = present(keg.lent_to);
  for (const Entry* e : from.journal.story(subject(keg.record.keg))) {
    if (e->header.happened_at > from.names.now) break;
    if (const auto* lent = get_if<Lent>(&e->payload)) {
      c.since = e->header.happened_at;
      c.due_back = lent->due_back;
      c.deposit_minor = lent->deposit_minor;
    }
  }
  return c;
}

// Somebody's keg in our cellar: since it last came in, else since registered.
Custody held_of(const KegStatus& keg, const LogSource& from) {
  Custody c;
  c.how = keg.record.owner == Owner::rented ? "rented" : "the supplier’s";
  c.deposit_minor = keg.record.deposit_minor;
  for (const Entry* e : from.journal.story(subject(keg.record.keg))) {
    if (e->header.happened_at > from.names.now) break;
    const auto* received = get_if<Received>(&e->payload);
    if (received || !c.since) c.since = e->header.happened_at;
    if (received && !received->supplier.empty()) c.whom = received->supplier;
  }
  return c;
}

TableRow custody_row(const KegStatus& keg, const Custody& c, const LogSource& from) {
  const Date today = from.speaker.calendar->date_of(from.names.now);
  std::optional<std::int64_t> days;
  if (c.since) days = (today - from.day_of(*c.since)).count();
  TableRow row;
  row.marked = c.due_back && *c.due_back < today;
  const std::string kind = say(keg.record.keg_kind, from.speaker);
  const std::string holds = keg.contents ? keg.contents->beer.name : std::string("empty");
  row.cells = {keg.record.tag,
               stacked({kind, holds}),
               c.how,
               c.whom,
               c.since ? iso_day(from.day_of(*c.since)) : std::string(),
               days ? fmt::format("{}", *days) : std::string(),
               c.due_back ? iso_day(*c.due_back) + (row.marked ? "\nOVERDUE" : "") : std::string(),
               c.deposit_minor ? say_money(*c.deposit_minor, from.speaker) : std::string(),
               std::string()};
  row.data = {datum(keg.record.tag),
              datum(kind),
              datum(c.how),
              datum(c.whom),
              c.since ? datum(iso_day(from.day_of(*c.since))) : Datum(),
              days ? datum(static_cast<double>(*days)) : Datum(),
              c.due_back ? datum(iso_day(*c.due_back)) : Datum(),
              c.deposit_minor ? datum(static_cast<double>(*c.deposit_minor) / 100) : Datum()};
  return row;
}

// None was told: no sum, rather than a sum of nothing.
void add_deposit(std::optional<std::int64_t>& sum, const Custody& c) {
  if (c.deposit_minor) sum = sum.value_or(0) + *c.deposit_minor;
}

std::string deposits(const std::optional<std::int64_t>& sum, const Speaker& speaker) {
  return sum ? say_money(*sum, speaker) : std::string("none noted");
}

}  // namespace

TableSheet custody_list(const Journal& journal, const CellarStatus& status, const Speaker& speaker,
                        const std::string& by) {
  const LogSource from{journal, status, speaker};
  TableSheet sheet = sheet_titled("Kegs in other hands, and others’ kegs", status, speaker, by);
  sheet.period = "As of " + say_clock(status.now, speaker);
  sheet.columns = {{"Keg", 50},
                   {"Kind, contents", 130},
                   {"How", 70},
                   {"To or from whom", 120},
                   {"Since", 62},
                   {"Days", 34},
                   {"Due back", 66},
                   {"Deposit", 52},
                   {"Came back, by", 84, true}};
  sheet.keys = {"keg", "kind", "how", "whom", "since", "days", "due_back", "deposit"};
  sheet.when_empty = "No keg is lent, rented or a supplier’s.";
  std::optional<std::int64_t> out;
  std::optional<std::int64_t> held;
  for (const KegStatus& keg : status.kegs) {
    if (!keg.record.in_use) continue;
    if (keg.lent_to) {
      const Custody c = lent_of(keg, from);
      add_deposit(out, c);
      sheet.rows.push_back(custody_row(keg, c, from));
    } else if (keg.record.owner != Owner::ours) {
      const Custody c = held_of(keg, from);
      add_deposit(held, c);
      sheet.rows.push_back(custody_row(keg, c, from));
    }
  }
  sheet.boxes = {{"Deposits",
                  {"taken for kegs lent: " + deposits(out, speaker),
                   "left for others’ kegs: " + deposits(held, speaker)}}};
  sheet.signatures = {"Checked by", "Countersigned by"};
  sheet.footnote = "A bar at the left marks a keg that is overdue.";
  return sheet;
}

namespace {

// What the status sheet tells of temperature, pressure, gas and time on tap.
std::vector<std::string> condition_keys() {
  return {"level_read_at", "on_since",      "days_on",
          "place_set_c",   "place_read_c",  "place_read_at",
          "set_kpa",       "should_be_kpa", "should_be_half_width_kpa",
          "co2_percent"};
}
std::vector<Datum> condition_of(const KegStatus& keg, const CellarStatus& status,
                                const Speaker& speaker) {
  const auto celsius = [](Temperature t) { return units::in_celsius(t); };
  const auto stamp = [&](const std::optional<Instant>& t) {
    return t ? datum(stamp_of(*t, speaker)) : Datum();
  };
  const auto day = [&](Instant t) { return speaker.calendar->date_of(t); };
  const auto since = keg.phase == Phase::on_tap ? keg.phase_since : std::nullopt;
  const PlaceStatus* place = keg.place && !keg.lent_to ? status.find(keg.place->place) : nullptr;
  const bool read = place && place->read_at;
  return {keg.level.left ? stamp(keg.level.measured_at) : Datum(),
          since ? datum(iso_day(day(*since))) : Datum(),
          since ? datum(static_cast<double>((day(speaker.now) - day(*since)).count())) : Datum(),
          place ? datum(place->record.set_temperature, celsius) : Datum(),
          read ? datum(place->temperature, celsius) : Datum(),
          read ? stamp(place->read_at) : Datum(),
          keg.gas.on ? kilopascals(keg.gas.set) : Datum(),
          kilopascals(keg.gas.should_be),
          datum(keg.gas.should_be_half_width(),
                [](units::PressureDifference p) { return p.value() / 1000; }),
          keg.gas.on ? datum(keg.gas.co2.count() * 100) : Datum()};
}

}  // namespace

TableSheet keg_list(const CellarStatus& status, const Speaker& speaker, const std::string& by) {
  TableSheet sheet = sheet_of_now("Kegs", status, speaker, by);
  sheet.columns = {{"Keg", 50},    {"Kind", 110}, {"Place", 80}, {"Beer, batch", 120},
                   {"State", 110}, {"Left", 70},  {"Use by", 60}};
  sheet.keys = {
      "tag",  "kind",  "brimful_l", "tare_kg", "rated_kpa", "coupler",           "owner",  "place",
      "beer", "batch", "phase",     "state",   "left_l",    "left_half_width_l", "use_by", "next"};
  const std::vector<std::string> more = condition_keys();
  sheet.keys.insert(sheet.keys.end(), more.begin(), more.end());
  for (const KegStatus& keg : status.kegs) {
    if (!keg.record.in_use) continue;
    const KegRecord& r = keg.record;
    TableRow row;
    const std::string place = keg.place ? keg.place->name : std::string();
    const std::string beer = keg.contents ? keg.contents->beer.name : std::string();
    const std::string batch = keg.contents ? keg.contents->batch_record.name : std::string();
    const std::optional<Date> best_by = keg.contents ? keg.contents->best_by : std::nullopt;
    const std::string use_by = best_by ? iso_day(*best_by) : std::string();
    row.cells = {r.tag,
                 say(r.keg_kind, speaker),
                 place,
                 stacked({beer, batch}),
                 say(keg.state, speaker),
                 keg.level.left ? "~" + speaker.printer.print(*keg.level.left) : std::string(),
                 use_by};
    row.data = {datum(r.tag),
                datum(std::string(to_word(r.keg_kind))),
                datum(units::in_litres(r.brimful)),
                datum(r.tare, [](Mass m) { return units::in_kilograms(m); }),
                kilopascals(r.rated_pressure),
                datum(r.coupler),
                datum(std::string(to_word(r.owner))),
                datum(place),
                datum(beer),
                datum(batch),
                datum(say(keg.phase, speaker)),
                datum(say(keg.state, speaker)),
                keg.level.left ? datum(units::in_litres(keg.level.left->value())) : Datum(),
                keg.level.left ? datum(keg.level.left->half_width() * 1000) : Datum(),
                datum(use_by),
                keg.next_step ? datum(say(*keg.next_step, speaker)) : Datum()};
    const std::vector<Datum> condition = condition_of(keg, status, speaker);
    row.data.insert(row.data.end(), condition.begin(), condition.end());
    sheet.rows.push_back(std::move(row));
  }
  return sheet;
}

}  // namespace ullage::report
