// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/fresh_grounds.h"

#include <fmt/format.h>

namespace ullage::report {
namespace {

using cellar::FreshClock;
using cellar::Storage;

std::string_view warmth_words(Storage storage) {
  switch (storage) {
    case Storage::cold:
      return "cold";
    case Storage::cool:
      return "cool";
    case Storage::cellar:
      return "at cellar temperature";
    case Storage::unknown:
      break;
  }
  return "at a temperature not known";
}

std::string until_words(const cellar::Window& until, const Speaker& speaker) {
  const std::string likely = "until about " + say_day(until.likely, speaker);
  const std::string from = say_day(until.earliest, speaker);
  const std::string to = say_day(until.latest.value_or(until.likely), speaker);
  return from == to ? likely : fmt::format("{} ({} to {})", likely, from, to);
}

Grounds best_by_grounds(const FreshClock& clock, const Speaker& speaker) {
  if (!clock.best_by) return {};
  Grounds g = grounds_by(laws::as_logged, "Keeps", "best by " + say_date(*clock.best_by, speaker));
  g.inputs.push_back({"Best by " + say_date(*clock.best_by, speaker), InputOrigin::typed, {}});
  g.notes.emplace_back("Not tapped. How warm it stood is not counted: no source says by how much.");
  return g;
}

}  // namespace

Grounds freshness_grounds(const FreshClock& clock, const Speaker& speaker) {
  if (!clock.tapped) return best_by_grounds(clock, speaker);
  if (!clock.keeps_until) return {};
  Grounds g = grounds_by(laws::freshness, "Keeps", until_words(*clock.keeps_until, speaker));
  g.inputs.push_back({"Tapped", InputOrigin::typed, say_age(clock.since, speaker)});
  for (const auto& [storage, time] : clock.stood) {
    const units::Duration stood = units::seconds(static_cast<double>(time.count()));
    g.inputs.push_back(
        {fmt::format("{} {}, where it keeps about {} days", speaker.printer.print(stood),
                     warmth_words(storage), cellar::keeps_on_tap(storage).count()),
         InputOrigin::worked_out,
         {}});
  }
  if (clock.used) {
    g.notes.push_back(speaker.printer.print(*clock.used) +
                      " of what it keeps is used; the rest as it stands now.");
  }
  g.notes.emplace_back(
      "The range is that of the temperatures alone. Sources say 45 to 60 days in the cold, 4 to 7 "
      "in a cellar. Taste it.");
  g.narrow.emplace_back("Read the temperature of its place, and log when the keg is moved.");
  return g;
}

}  // namespace ullage::report
