// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/status_sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <string_view>
#include <tuple>

#include "core/cellar/due_work.h"
#include "core/cellar/gas_account.h"
#include "core/report/cleaning_words.h"
#include "core/report/log_rows.h"
#include "core/report/tags.h"

namespace ullage::report {
namespace {

using cellar::CellarStatus;
using cellar::KegStatus;
using cellar::Phase;

// Paper has no room for a sentence that was written for a screen's width, but
// nothing is dropped: cells wrap.
std::string join(std::string_view first, std::string_view second, std::string_view between) {
  if (first.empty()) return std::string(second);
  if (second.empty()) return std::string(first);
  return fmt::format("{}{}{}", first, between, second);
}

bool has_warning(const KegStatus& keg) {
  return std::any_of(keg.advice.begin(), keg.advice.end(), [](const cellar::Advice& a) {
    return a.severity >= cellar::Severity::warning;
  });
}

std::string where(const KegStatus& keg, const Speaker& speaker) {
  if (keg.lent_to) return fmt::format("Lent: {}", *keg.lent_to);
  std::string place = keg.place ? keg.place->name : std::string("place not known");
  if (!keg.line) return place;
  const std::string_view tap = speaker.words == RegionalWords::us ? "Faucet" : "Tap";
  return fmt::format("{} {}\n{}", tap, keg.line->tap, place);
}

// Why the keg's line may not be served from, where the keg itself is the reason.
const cellar::KegLock* held_back(const KegStatus& keg, const CellarStatus& status) {
  const cellar::LineStatus* line = keg.line ? status.find(keg.line->line) : nullptr;
  const bool by_it = line && line->keg_lock && line->keg_lock->keg == keg.record.keg;
  return by_it ? &*line->keg_lock : nullptr;
}

// The strongest words first; the state only where it says more than they do.
std::string state_words(const KegStatus& keg, const CellarStatus& status, const Speaker& speaker) {
  using Key = cellar::MessageKey;
  std::string warning;
  if (keg.lock) {
    warning = fmt::format("DO NOT SERVE: {} in {} since {}, {}", keg.lock->agent,
                          keg.lock->line_name, say_time(keg.lock->since, speaker), keg.lock->by);
  }
  if (keg.quarantined) {
    const std::string held = join("HELD BACK, do not use", held_back_because(keg), ": ");
    warning = join(held, warning, "\n");
  } else if (const cellar::KegLock* lock = held_back(keg, status)) {
    warning = join(fmt::format("DO NOT SERVE: {}", say(lock->why, speaker)), warning, "\n");
  }
  const bool said = !warning.empty() && (keg.state.key == Key::state_do_not_serve ||
                                         keg.state.key == Key::state_held_back);
  return said ? warning : join(warning, say(keg.state, speaker), "\n");
}

std::string pressure_words(const KegStatus& keg, const Speaker& speaker) {
  std::string set = "no gas";
  if (keg.gas.on && keg.gas.set) set = fmt::format("set {}", speaker.printer.print(*keg.gas.set));
  if (!keg.contents) return keg.gas.on ? set : std::string();
  const std::string should = say_should_be(keg, speaker);
  return join(set, should.empty() ? should : "should be " + should, "\n");
}

// The days are those of the calendar: put on yesterday evening is one day.
std::string on_since(const KegStatus& keg, const Speaker& speaker) {
  if (keg.phase != Phase::on_tap || !keg.phase_since) return {};
  const auto day = [&](cellar::Instant t) { return speaker.calendar->date_of(t); };
  const std::int64_t days = (day(speaker.now) - day(*keg.phase_since)).count();
  if (days <= 0) return "since today";
  return fmt::format("since {},\n{} on", say_date(day(*keg.phase_since), speaker), say_days(days));
}

// What its place is set to, and what was read there: not what was set stands for read.
std::string temperature_words(const KegStatus& keg, const CellarStatus& status,
                              const Speaker& speaker) {
  if (!keg.place || keg.lent_to) return {};
  std::string set;
  if (keg.place->set_temperature) {
    set = fmt::format("set {}", speaker.printer.print(*keg.place->set_temperature));
  }
  const cellar::PlaceStatus* place = status.find(keg.place->place);
  const bool read = place && place->temperature && place->read_at;
  return join(set,
              read ? fmt::format("read {},\n{}", speaker.printer.print(*place->temperature),
                                 say_age(*place->read_at, speaker))
                   : "not read",
              "\n");
}

SheetRow row_of(const KegStatus& keg, const CellarStatus& status, const Speaker& speaker) {
  SheetRow row;
  row.keg = keg.record.tag;
  row.place = where(keg, speaker);
  row.state = state_words(keg, status, speaker);
  if (keg.contents) {
    row.beer = keg.contents->beer.name;
    row.batch = keg.contents->batch_record.name;
    if (keg.contents->best_by) row.use_by = use_by_words(*keg.contents->best_by);
    if (keg.level.left) {
      row.left = "~" + speaker.printer.print(*keg.level.left);
      row.glasses = "~" + speaker.printer.print_glasses(*keg.level.left);
      if (keg.level.measured_at) {
        row.level_read = fmt::format("read {}", say_age(*keg.level.measured_at, speaker));
      }
    } else {
      row.left = "not known";
    }
  } else {
    row.beer = say(keg.phase, speaker);
  }
  row.on_since = on_since(keg, speaker);
  row.temperature = temperature_words(keg, status, speaker);
  row.pressure = pressure_words(keg, speaker);
  if (keg.gas.on) row.gas = say_gas(keg.gas.co2, speaker);
  if (keg.next_step) row.next = say(*keg.next_step, speaker);
  row.needs_attention =
      keg.lock || keg.out_of_service() || has_warning(keg) || held_back(keg, status) != nullptr;
  return row;
}

// On tap, to use next, on the way, empty; within each by tap, rank or tag.
auto reading_order(const KegStatus& keg) {
  const int group = keg.phase == Phase::on_tap      ? 0
                    : keg.use_next_rank.has_value() ? 1
                    : keg.contents.has_value()      ? 2
                                                    : 3;
  const std::string tap = keg.line ? keg.line->tap : std::string();
  return std::make_tuple(group, tap,
                         keg.use_next_rank.value_or(std::numeric_limits<std::int64_t>::max()));
}

std::vector<SheetRow> rows_of(const CellarStatus& status, const Speaker& speaker) {
  std::vector<const KegStatus*> kegs;
  for (const KegStatus& keg : status.kegs) {
    if (keg.record.in_use) kegs.push_back(&keg);
  }
  std::stable_sort(kegs.begin(), kegs.end(), [](const KegStatus* a, const KegStatus* b) {
    return reading_order(*a) < reading_order(*b);
  });
  std::vector<SheetRow> rows;
  rows.reserve(kegs.size());
  for (const KegStatus* keg : kegs) rows.push_back(row_of(*keg, status, speaker));
  return rows;
}

SheetBox lines_box(const CellarStatus& status, const Speaker& speaker) {
  SheetBox box{"Lines", {}};
  for (const cellar::LineStatus& line : status.lines) {
    if (!line.record.in_use) continue;
    std::string words = say(line.state, speaker);
    if (line.clean_due) {
      const bool said = line.state.key == cellar::MessageKey::line_overdue;
      std::string due = said ? std::string()
                             : fmt::format("{} {}", line.overdue ? "cleaning was due" : "clean by",
                                           say_date(*line.clean_due, speaker));
      if (const auto rule = cellar::line_cleaning_rule(line.record.line, status))
        due =
            said ? say_rule(*rule, speaker) : fmt::format("{} ({})", due, say_rule(*rule, speaker));
      words = join(words, due, "; ");
    }
    box.lines.push_back(fmt::format("{}: {}", line.record.name, words));
  }
  if (box.lines.empty()) box.lines.emplace_back("none registered");
  return box;
}

// Until its supply is empty: of all bottles of a manifold together.
std::string gas_days(const cellar::BottleStatus& bottle, const Speaker& speaker) {
  if (!bottle.account || !bottle.account->runs_out) return "; days left not known";
  const cellar::Window& w = *bottle.account->runs_out;
  const auto days = [&](cellar::Instant t) {
    return std::max<std::int64_t>(0, std::llround(units::in_days(cellar::between(speaker.now, t))));
  };
  std::string words = fmt::format("; lasts ~{}", say_days(days(w.likely)));
  words += w.latest ? fmt::format(" ({} to {})", days(w.earliest), days(*w.latest))
                    : fmt::format(" ({} or more)", days(w.earliest));
  if (bottle.account->bottles.size() > 1) {
    words += fmt::format(", {} together", bottle.account->name);
  }
  return words;
}

SheetBox gas_box(const CellarStatus& status, const Speaker& speaker) {
  SheetBox box{"Gas", {}};
  for (const cellar::BottleStatus& bottle : status.bottles) {
    if (!bottle.record.in_use) continue;
    std::string words =
        fmt::format("{}, {}", bottle.record.name, say_gas(bottle.record.co2, speaker));
    if (bottle.gas_left && bottle.weighed_at) {
      words += fmt::format(": ~{} left, weighed {}", speaker.printer.print(*bottle.gas_left),
                           say_age(*bottle.weighed_at, speaker));
    } else {
      words += ": not weighed";
    }
    words += gas_days(bottle, speaker);
    box.lines.push_back(std::move(words));
  }
  if (box.lines.empty()) box.lines.emplace_back("none registered");
  return box;
}

SheetBox out_of_service_box(const CellarStatus& status, const Speaker& speaker) {
  SheetBox box{"Out of service", {}};
  for (const KegStatus& keg : status.kegs) {
    if (!keg.record.in_use) continue;
    if (keg.quarantined) {
      box.lines.push_back(fmt::format("{}: {}", keg.record.tag, say(*keg.quarantined, speaker)));
    } else if (keg.hold_failed && keg.hold_result) {
      box.lines.push_back(fmt::format("{}: {}", keg.record.tag, say(*keg.hold_result, speaker)));
    } else if (keg.leaks) {
      box.lines.push_back(fmt::format("{}: {}", keg.record.tag, say(*keg.leaks, speaker)));
    }
  }
  for (const cellar::LineStatus& line : status.lines) {
    if (line.lock) {
      box.lines.push_back(fmt::format("{}: DO NOT SERVE, {} since {}, {}", line.record.name,
                                      line.lock->agent, say_time(line.lock->since, speaker),
                                      line.lock->by));
    }
    if (line.keg_lock) {
      box.lines.push_back(fmt::format("{}: DO NOT SERVE, {}: {}", line.record.name,
                                      line.keg_lock->tag, say(line.keg_lock->why, speaker)));
    }
  }
  if (box.lines.empty()) box.lines.emplace_back("nothing");
  return box;
}

std::vector<std::string> readings_of(const CellarStatus& status, const Speaker& speaker) {
  std::vector<std::string> readings;
  for (const cellar::PlaceStatus& place : status.places) {
    if (!place.record.in_use || place.kegs == 0) continue;
    std::string last = "not read yet";
    if (place.temperature && place.read_at) {
      last = fmt::format("last {}, {}", speaker.printer.print(*place.temperature),
                         say_age(*place.read_at, speaker));
    }
    readings.push_back(fmt::format("{} ({})", place.record.name, last));
  }
  return readings;
}

}  // namespace

StatusSheet status_sheet(const CellarStatus& status, const Speaker& speaker,
                         const std::string& by) {
  StatusSheet sheet;
  sheet.cellar = status.cellar ? status.cellar->name : std::string("Cellar");
  sheet.printed = fmt::format("Printed {}", say_clock(status.now, speaker));
  if (!by.empty()) sheet.printed += fmt::format(" by {}", by);
  sheet.headings = {"Keg",           "Where",       "Beer, batch",   "State", "Left, read",
                    "Use by, since", "Temperature", "Pressure, gas", "Next",  "Done"};
  sheet.rows = rows_of(status, speaker);
  sheet.boxes = {lines_box(status, speaker), gas_box(status, speaker),
                 out_of_service_box(status, speaker)};
  sheet.readings = readings_of(status, speaker);
  sheet.signatures = {"Checked by", "Countersigned by"};
  sheet.footnote =
      "~ marks an estimate; ± is its 95 % range. Vent a keg before opening it. "
      "Never serve from a line marked do not serve.";
  return sheet;
}

std::vector<std::string> cells(const SheetRow& row) {
  return {row.keg,
          row.place,
          join(row.beer, row.batch, "\n"),
          row.state,
          join(join(row.left, row.glasses, "\n"), row.level_read, "\n"),
          join(row.use_by, row.on_since, "\n"),
          row.temperature,
          join(row.pressure, row.gas, "\n"),
          row.next,
          std::string()};
}

}  // namespace ullage::report
