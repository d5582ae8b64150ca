// SPDX-License-Identifier: GPL-3.0-or-later
//
// How fresh the beer in a keg is. Once it is tapped every day takes its share of
// what beer keeps at the warmth it stood at on that day: six days in a warm cellar
// and the rest in the cold are counted as six warm days and cold ones. The clock
// runs from the first tapping on, whether the keg is still on its line or not. An
// untapped keg has its best-by day and nothing else that is known to end it.
#pragma once

#include <array>
#include <chrono>
#include <map>
#include <optional>

#include "core/cellar/beer_warmth.h"
#include "core/cellar/status.h"

namespace ullage::cellar {

// How long beer keeps depends on how cold it stands and whether it is tapped.
enum class Storage { unknown, cold, cool, cellar };
[[nodiscard]] Storage storage_at(std::optional<Temperature> beer);
// Days that a tapped keg keeps: 45 cold (a US trade body, for live beer), 7 at
// cellar temperature (UK practice), between them our own middle. From memory.
[[nodiscard]] std::chrono::days keeps_on_tap(Storage);

struct FreshClock {
  Storage storage = Storage::unknown;  // as it stands now
  bool tapped = false;
  Instant since{};  // first tapped, else filled or received
  std::optional<Date> best_by;
  // Tapped: the time it stood so since; how much of what it keeps is gone (1: all);
  // and until when it keeps where it stands now. The ends of the window are those of
  // a warmth off by its whole error to either side. Empty where no temperature is known.
  std::map<Storage, std::chrono::seconds> stood;
  std::optional<units::Fraction> used;
  std::optional<Window> keeps_until;
};

// What the journal tells of a tapped keg, whatever the time.
struct TappedPast {
  Instant since{};
  std::optional<BeerWarmth> warmth;  // of what is in it
};
// Nullopt for a keg without beer, and for beer that was never tapped.
[[nodiscard]] std::optional<TappedPast> tapped_past(KegId, const Journal&, const PlaceLookup&);

// Of a keg with beer.
[[nodiscard]] FreshClock fresh_clock(const KegStatus&, const std::optional<TappedPast>&,
                                     Instant now);

}  // namespace ullage::cellar
