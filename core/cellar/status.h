// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the program derives from the journal at a moment: the state of every
// keg, line, place and bottle. Nothing here is stored; all of it is a pure
// function of (journal, clock, calendar). Screens and sheets only show it.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/cellar/beer_state.h"
#include "core/cellar/entry.h"
#include "core/cellar/last_chemicals.h"
#include "core/cellar/message.h"

namespace ullage::cellar {

// Where a keg stands in its life. Overlays (quarantined, lent, line locked) are
// separate facts: a quarantined keg still has a phase.
enum class Phase {
  unknown,  // registered, nothing known yet
  dirty,    // emptied or found dirty
  clean,
  sanitised,
  purged,
  carbonating,   // filled, CO2 below its range and on the way
  conditioning,  // filled, waiting for something else: cooling, settling, hops, a decision
  ready,
  on_tap
};

enum class Severity { info, advice, warning, danger };

struct LifeSpan {
  Instant from{};
  Instant to{};
  Phase phase = Phase::unknown;
  bool forecast = false;
};

// The form an advice or next step opens, prefilled.
struct SuggestedTask {
  std::string kind;  // payload kind, or "transfer", "keg_change"
  std::optional<SubjectRef> about;
  std::optional<Payload> prefill;
  std::optional<EntryId> corrects;  // the form then logs a correction of this entry
  // Of "gas_set": the keg holds more than that, so it is let down to it in the same
  // act. A regulator turned down lets no gas out.
  bool vent_to_it = false;
};

// One input a number stands on.
struct InputUsed {
  Message what;                 // "dial R1: 12 psi"
  std::optional<Instant> read;  // its age is told from this
};

struct Advice {
  Severity severity = Severity::info;
  SubjectRef about;
  Message headline;               // one plain sentence
  std::optional<Message> detail;  // numbers, and what to do
  std::vector<InputUsed> inputs;
  std::optional<SuggestedTask> action;
  std::vector<EntryId> because_of;
};

// An entry that no longer fits the story around it. It is kept and said.
struct DoesntFit {
  EntryId entry;
  Message why;
};

enum class ReadinessKind { nothing_in_it, ready_now, ready_at, blocked, cant_tell };

struct Readiness {
  ReadinessKind kind = ReadinessKind::nothing_in_it;
  std::optional<Window> when;  // ready_at; also since when for ready_now (likely)
  Message headline;            // "Ready Fri 27 Nov (1 to 3 days)"
  std::vector<Message> reasons;
  std::optional<Message> to_do;  // what would make it ready, or let us tell
};

// A step of preparation, found in the journal or not.
struct PreparationStep {
  std::string kind;  // "hold_reading", "cleaned", "sanitised", "inspected", "purged", "leak_tested"
  std::optional<EntryId> entry;
  std::optional<Instant> done_at;
  bool still_counts = false;          // nothing since then has undone it
  std::optional<Message> result;      // "5 cycles at 30 psi, 0.08 % oxygen left"
  std::vector<EntryId> goes_on_from;  // purges before this one that it goes on from
};

struct GasOnKeg {
  bool on = false;
  std::optional<GaugePressure> set;
  std::optional<Instant> since;
  std::optional<RegulatorId> regulator;
  MoleFraction co2 = units::mole_fraction(1);
  std::optional<InstrumentId> dial;        // it was read on
  std::optional<GaugePressure> should_be;  // equilibrium for the middle of the range
  // Of the temperature where it stands, the air and the equation; empty: not known.
  std::vector<units::Contribution> should_be_errors;
  [[nodiscard]] std::optional<units::PressureDifference> should_be_half_width() const {
    if (!should_be || should_be_errors.empty()) return std::nullopt;
    return units::Estimate<GaugePressure>(*should_be, should_be_errors).error();
  }
  std::optional<GaugePressure> unvented;  // put in and not let out since, gas on or off
};

struct LineLock {
  LineId line;
  std::string line_name;
  std::string agent;
  LineAgent agent_kind = LineAgent::other;
  Instant since{};
  std::string by;
  EntryId entry;
};

struct HoldStudy;  // hold_test.h

struct KegStatus {
  KegRecord record;
  bool registered_now = true;
  std::optional<PlaceRecord> place;
  Phase phase = Phase::unknown;
  std::optional<Instant> phase_since;
  std::optional<Contents> contents;
  Level level;
  Co2State co2;
  std::optional<units::Estimate<units::Temperature>> beer_temperature;
  GasOnKeg gas;
  std::optional<LineRecord> line;      // it is on this line
  std::optional<LineLock> lock;        // and the line is locked
  std::optional<Message> quarantined;  // the reason
  std::optional<Instant> quarantined_since;
  std::optional<std::string> lent_to;
  std::optional<Instant> cold_since;  // in its place below serving temperature
  std::vector<PreparationStep> preparation;
  // Of the keg by itself, empty: the last verdict, and what it was judged from.
  std::optional<Message> hold_result;  // "held 30 psi for 2 days", "failed: fell 4 psi ..."
  std::shared_ptr<const HoldStudy> hold_result_from;
  bool hold_failed = false;
  std::optional<Message> leaks;  // a leak found, or a failed hold test, and not put right since
  LastChemicals chemicals;
  [[nodiscard]] bool out_of_service() const { return quarantined || hold_failed || leaks; }
  // Its hold test in full, where it has one: of the beer in it, else of the keg.
  std::shared_ptr<const HoldStudy> hold_study;
  Readiness readiness;
  Message state;                     // "On tap 1", "Ready since Mon", "Clean, not purged"
  std::optional<Message> next_step;  // "drop to 11 psi Thu 14:00 and vent"
  std::vector<Advice> advice;        // most severe first
  std::vector<LifeSpan> life;
  std::vector<DoesntFit> doesnt_fit;
  std::optional<std::int64_t> use_next_rank;  // 1 is the one to use next; empty when not usable
};

// What is on the line must not be served: held back, recalled, or leaking.
struct KegLock {
  KegId keg;
  std::string tag;
  Message why;
  bool leaks = false;  // over with a leak test that finds none
};

struct PourState;  // pour_state.h

struct LineStatus {
  LineRecord record;
  std::optional<KegId> keg;
  std::optional<LineLock> lock;
  std::optional<KegLock> keg_lock;
  std::optional<Instant> last_cleaned;
  std::optional<Date> clean_due;
  bool overdue = false;
  LastChemicals chemicals;
  Message state;
  std::vector<Advice> advice;
  // How it pours, and what to do about it; else `no_pour` says what is missing.
  std::shared_ptr<const PourState> pour;
  std::optional<Message> no_pour;
  [[nodiscard]] bool do_not_serve() const { return lock || keg_lock; }
};

struct PlaceStatus {
  PlaceRecord record;
  std::optional<units::Temperature> temperature;  // last read, else as set
  std::optional<Instant> read_at;
  std::int64_t kegs = 0;
};

struct GasAccount;  // gas_account.h

struct BottleStatus {
  BottleRecord record;
  std::optional<units::Estimate<units::Mass>> gas_left;
  std::optional<Instant> weighed_at;
  std::vector<RegulatorId> feeds;
  std::optional<Date> test_due;  // as certified at its last test, else as stamped
  // Of the supply it belongs to: the same for all bottles of a manifold. Empty for
  // one out of use.
  std::shared_ptr<const GasAccount> account;
};

struct CellarStatus {
  Instant now{};
  std::optional<CellarDescribed> cellar;
  std::vector<KegStatus> kegs;  // by tag, natural order ("K2" before "K10")
  std::vector<LineStatus> lines;
  std::vector<PlaceStatus> places;
  std::vector<BottleStatus> bottles;
  std::vector<BeerRecord> beers;
  std::vector<BatchRecord> batches;
  std::vector<RegulatorRecord> regulators;
  std::vector<InstrumentRecord> instruments;
  std::vector<SegmentRecord> segments;  // by position in their line
  std::vector<RuleRecord> rules;        // in force or not
  std::vector<Advice> attention;        // of the whole cellar, most severe first

  [[nodiscard]] const KegStatus* find(KegId) const;
  [[nodiscard]] const KegStatus* keg_by_tag(std::string_view tag) const;  // ignoring case
  [[nodiscard]] const LineStatus* find(LineId) const;
  [[nodiscard]] const PlaceStatus* find(PlaceId) const;
  [[nodiscard]] const BottleStatus* find(BottleId) const;
};

}  // namespace ullage::cellar
