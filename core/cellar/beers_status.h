// SPDX-License-Identifier: GPL-3.0-or-later
//
// Stock and dates by batch, for the Beers page: where each batch is and how much
// of it, what to tap next, what is cooling, how fresh things are, hops to take
// out, what was wasted and what it cost, and who has which keg. Derived from
// the cellar's status and the journal; nothing is stored.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/cellar/freshness.h"
#include "core/cellar/journal.h"
#include "core/cellar/readings.h"
#include "core/cellar/status.h"
#include "core/cellar/trace.h"

namespace ullage::cellar {

struct BatchInKeg {
  KegId keg;
  std::string tag;
  std::string place;
  std::optional<VolumeEstimate> left;
  FreshClock fresh;
  Phase phase = Phase::unknown;
  std::optional<std::string> tap;
  bool held_back = false;
};

struct BatchStatus {
  BatchRecord record;
  BeerRecord beer;
  std::optional<Date> best_by;
  std::vector<BatchInKeg> kegs;        // that have it now, by tag
  std::size_t kegs_before = 0;         // that had it
  std::optional<VolumeEstimate> left;  // summed over those that can tell
  bool some_cant_tell = false;
  std::optional<Recall> recall;
  [[nodiscard]] bool gone() const { return kegs.empty(); }
};

struct TapNext {
  KegId keg;
  std::int64_t rank = 0;  // 1 first
};

struct CoolingKeg {
  KegId keg;
  units::Estimate<Temperature> now;
  Temperature to;  // within a degree of its place
  Window there;
};

struct HopsWait {
  KegId keg;
  std::string hops;
  Instant since{};
  Instant look_at{};  // the first of the reminders still ahead, else the last
  bool overdue = false;
};
// Sources disagree between two and ten days: a look at five, out by ten.
inline constexpr std::chrono::days hops_look{5};
inline constexpr std::chrono::days hops_out_by{10};
// Of a keg with hops in its beer that were never taken out.
[[nodiscard]] std::optional<HopsWait> hops_in(const KegStatus&, Instant now, const Journal&);

struct WasteLine {
  WasteReason reason = WasteReason::other;
  Volume volume = units::litres(0);
  int times = 0;
  std::optional<std::int64_t> cost_minor;  // of what has a price
  bool some_without_price = false;
};

struct KegAway {  // lent out, or not ours
  KegId keg;
  Owner owner = Owner::ours;
  std::optional<std::string> lent_to;
  Instant since{};
  std::optional<Date> due_back;
  std::optional<std::int64_t> deposit_minor;
  std::int64_t days = 0;
  bool overdue = false;
};

struct BeersStatus {
  std::vector<BatchStatus> batches;  // in kegs now first, soonest best by first
  std::vector<TapNext> tap_next;
  std::vector<CoolingKeg> cooling;
  std::vector<HopsWait> hops;
  std::vector<WasteLine> wasted;  // most first
  std::vector<KegAway> away;      // longest out first
};

// What the journal alone tells, whatever the time: gathered once, good for as long
// as the journal stays at this revision.
struct WasteFact {
  Instant at{};
  WasteReason reason = WasteReason::other;
  Volume volume = units::litres(0);
  std::optional<std::int64_t> cost_minor;
};
struct BatchPast {
  std::size_t kegs_before = 0;
  std::optional<Recall> recall;
};
struct BeersPast {
  std::uint64_t revision = 0;
  std::vector<WasteFact> wasted;
  std::map<BatchId, BatchPast> batches;
  std::map<KegId, TappedPast> tapped;  // kegs whose beer was tapped
};
[[nodiscard]] BeersPast beers_past(const CellarStatus&, const Journal&);

// `wasted_since` bounds the wastage.
[[nodiscard]] BeersStatus beers_status(const CellarStatus&, const Journal&, const LocalCalendar&,
                                       Instant wasted_since, const BeersPast&);

}  // namespace ullage::cellar
