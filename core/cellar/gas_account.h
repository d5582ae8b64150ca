// SPDX-License-Identifier: GPL-3.0-or-later
//
// The account of one gas supply: a bottle, or the bottles of a manifold. What it
// feeds, what the weighings say was used, what the kegs on it should have used,
// what is left unexplained, where to look first, how long it lasts.
//
// An account runs from the first weighing after the last refill: a weighing
// heavier than the one before by more than the errors is a refill. The bottles
// of a manifold count as weighed when all were within 12 hours.
//
// A pure function of journal, kegs' timelines and now. Tests/cellar/gas_months
// measures how often its alarm is wrong.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/cellar/gas_branches.h"
#include "core/cellar/gas_draws.h"
#include "core/cellar/keg_timeline.h"
#include "core/cellar/place_history.h"
#include "core/physics/gas_ledger.h"
#include "core/physics/gas_use.h"

namespace ullage::cellar {

struct BranchKeg {
  KegId keg;
  std::string tag;
  GaugePressure set;
  Instant since{};
  HoldKind hold = HoldKind::untested;
};
struct GasBranch {
  RegulatorRecord regulator;
  std::vector<BranchKeg> kegs;             // with the gas on, by tag
  std::optional<BottleId> stands_on = {};  // now; a secondary has none of its own
};

struct AccountWeighing {
  Instant at{};
  MassEstimate gas;       // of all its bottles; gross where no tare is known
  MassEstimate expected;  // used by then, since the first of them
};
// What should be left at a time, from the first weighing down by expected use.
struct ExpectedLeft {
  Instant at{};
  Mass low, likely, high;
};

struct GasSuspect {
  SubjectRef about;
  Message why;
  std::optional<Instant> touched;
  SuggestedTask check;
};
struct IsolationStep {
  Message what;
  SuggestedTask task;
};

// What is known of one bottle beside its weight.
struct ToldBottle {
  std::optional<Message> gauge;  // what the last reading of its gauge tells
  std::optional<Instant> gauge_read;
  std::optional<Temperature> liquid_full_at;  // pure CO2
  std::optional<TemperatureEstimate> place;   // as warm as its place is now, where that is known
  bool place_read = false;                    // else as set
  std::optional<Date> test_due;
  bool too_warm = false;  // the place may be as warm as liquid_full_at
};

struct GasAccount {
  std::vector<BottleRecord> bottles;
  std::string name;  // of the bottles, "A + B"
  std::vector<GasBranch> branches;
  std::vector<BranchKeg> unassigned;  // gas on, nobody said from which regulator

  std::vector<AccountWeighing> weighings;
  std::vector<ExpectedLeft> expected;
  std::optional<physics::UnexplainedLoss> loss;
  std::optional<Message> cant_tell;  // why there is no loss to tell of
  bool alarm = false;
  // The stretch between two weighings where most went unexplained.
  std::optional<Instant> loss_from, loss_to;
  std::optional<std::int64_t> cost_minor_per_30_days;  // of the loss, where a price is known

  bool tare_known = false;
  std::optional<MassEstimate> gas_now;      // the last weighing, less expected use and loss since
  std::optional<MassEstimate> use_per_day;  // expected, over the account
  MassEstimate planned;                     // to pour and carbonate what is in the kegs on it
  std::optional<units::Fraction> planned_enough;  // how sure that it is enough
  std::optional<Window> runs_out;
  std::optional<physics::SupplyState> next_keg;  // how a further keg would be served

  // Most likely first; without an alarm only leaks that were found and not put right.
  std::vector<GasSuspect> suspects;
  std::vector<GasSuspect> leaks;  // of them, those found on anything but a keg
  std::vector<IsolationStep> isolation;
  std::optional<units::Duration> isolation_wait;  // for a loss of this size to show on the scale

  std::vector<ToldBottle> told;  // one for each of the bottles, in their order
};

// A branch stays shut until the loss makes this many times what a difference of two
// weighings may be off, and half a day at least (common practice, no source).
inline constexpr double isolation_shows_at = 3;
inline const units::Duration isolation_least = units::days(0.5);

// Each keg with the gas on, branch by branch, those of no named regulator last.
template <class Visit>
void for_each_keg(const GasAccount& account, Visit&& visit) {
  for (const GasBranch& b : account.branches) {
    for (const BranchKeg& k : b.kegs) visit(k);
  }
  for (const BranchKeg& k : account.unassigned) visit(k);
}

// Entries later than `now` count as having happened, as everywhere in replay.
struct GasAccountInput {
  const GasSupply& supply;
  const Journal& journal;
  Instant now{};
  std::function<const KegTimeline&(KegId)> timeline;
  // Draws of a keg along a grid and on to a time, which the caller keeps: they are
  // most of the work. Their sources are those of the table.
  std::function<const KegDraws&(KegId, const std::vector<Instant>& grid, Instant to)> draws;
  const SourceTable& sources;
  PlaceLookup places;
  std::vector<KegId> all_kegs;
  std::vector<RegulatorId> all_regulators;
};
[[nodiscard]] GasAccount gas_account(const GasAccountInput&, Reliance& relies_on);

void advise_gas(const GasAccount&, std::vector<Advice>&);

// What the bottle weighs without itself, as far as is known: gross without a tare.
[[nodiscard]] MassEstimate weighed_gas(const BottleRecord&, const BottleWeighed&,
                                       std::int64_t sequence, Lookup&);
// When a bottle's test is due: as certified when it was last tested, else as stamped.
[[nodiscard]] std::optional<Date> test_due(const BottleRecord&, Lookup&);
// Soon is within a month.
enum class RetestDue { not_yet, soon, overdue };
[[nodiscard]] RetestDue retest_due(std::optional<Date> due, Date today);
[[nodiscard]] Message retest_words(const std::string& bottle, Date due, RetestDue);  // not not_yet
[[nodiscard]] Message warm_words(const BottleRecord&, const ToldBottle&);            // one too_warm
// What it holds in water: as stated, else by content and fill ratio.
[[nodiscard]] std::optional<Volume> bottle_water_capacity(const BottleRecord&);

// Steps of gas_account, in files of their own.
void tell_bottles(GasAccount&, const GasAccountInput&, Lookup&);    // gas_gauge.cpp
void advise_warm_bottles(const GasAccount&, std::vector<Advice>&);  // gas_gauge.cpp
void tell_suspects(GasAccount&, const GasAccountInput&, Lookup&);   // gas_suspects.cpp
void advise_leaks(const GasAccount&, std::vector<Advice>&);         // gas_suspects.cpp
void plan_isolation(GasAccount&, Lookup&);                          // gas_isolation.cpp
void tell_days_left(GasAccount&, const GasAccountInput&, Lookup&);  // gas_days.cpp

}  // namespace ullage::cellar
