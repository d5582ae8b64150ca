// SPDX-License-Identifier: GPL-3.0-or-later
//
// The fold behind keg_timeline.h: takes a keg's entries in story order, one
// handler a kind. Nothing is refused: an entry that can't be true of the keg as
// it stood is marked and leaves the stage alone; bad practice that did happen
// raises a standing fault and goes on.
//
// What undoes what (a step "still counts" until then):
//   cleaned     by emptying, filling; a rinse alone is not cleaning
//   sanitised   by a later cleaning or rinse, renewed seals; does not count at
//               all before the keg is clean, and caustic is not sanitising
//   purged      by cleaning, sanitising, renewed seals: the keg was open
//   held        by renewed seals, a leak found; by emptying
// A leak found stands until a leak test finds none, an inspection says fit to use,
// or a hold test begun later holds.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "core/cellar/gas_given.h"
#include "core/cellar/hold_test.h"
#include "core/cellar/keg_timeline.h"

namespace ullage::cellar {

class KegStory {
 public:
  KegStory(KegId, const Journal&, Lookup&, KegTimeline& out, PlaceLookup places = {});
  // Of fillings that are over by this entry nobody asks what was in them: their level is
  // not worked out.
  void pass_over_to(const Entry& next_filling) { passes_to_ = &next_filling; }
  void take(const Entry&);
  void finish();

  // The filling that the next entry ends: record, level, warmth and CO2 as they
  // were, with nothing that was told after `end`. The story can go on.
  struct Past {
    KegTimeline keg;
    // A place told its first temperature only later, which then counts for before.
    bool reaches_later = false;
  };
  [[nodiscard]] Past until(Instant end);

 private:
  enum class Fault {
    over_rated,
    acid_and_chlorine,
    served_held_back,
    filled_not_empty,
    filled_under_pressure,
    filled_unprepared,
    filled_leaky,
    leak_found,
    inspect_after_pressure,
    near_rated,
    opened_unvented
  };
  enum class Chemical { none, acid, chlorine };
  struct Done {
    EntryId entry;
    Instant at{};
    bool counts = true;
    std::optional<Message> result;
  };

  template <class Other>
  void on(const Other&) {}
  // stock: keg_story_stock.cpp
  void on(const KegRecord&);
  void on(const Found&);
  void on(const Received&);
  void on(const Moved&);
  void on(const Quarantined&);
  void on(const Cleared&);
  void on(const Lent&);
  void on(const Returned&);
  // preparation: keg_story_preparation.cpp
  void on(const Inspected&);
  void on(const Cleaned&);
  void on(const Sanitised&);
  void on(const HoldReading&);
  void on(const Purged&);
  void on(const LeakTested&);
  void on(const WorkDone&);
  // beer: keg_story_beer.cpp
  void on(const Filled&);
  void on(const Primed&);
  void on(const HopsIn&);
  void on(const HopsOut&);
  void on(const LevelReading&);
  void on(const CarbonationReading&);
  void on(const Tapped&);
  void on(const Untapped&);
  void on(const Emptied&);
  void on(const Wasted&);
  // gas: keg_story_gas.cpp
  void on(const GasSet&);
  void on(const GasOff&);
  void on(const Vented&);
  void on(const Rocked&);

  [[nodiscard]] Instant at() const { return entry_->header.happened_at; }
  [[nodiscard]] EntryId id() const { return entry_->header.id; }
  [[nodiscard]] std::int64_t sequence() const { return entry_->header.sequence; }
  [[nodiscard]] bool holds_beer() const {
    return out_.stage == Stage::full || out_.stage == Stage::on_tap;
  }
  void set_stage(Stage, Instant from);
  void judge_empty_stage();
  void doesnt_fit(Message why);
  void raise(Fault, Severity, Message headline, std::optional<Message> detail,
             std::optional<SuggestedTask> action = {});
  void put_right(Fault f) { faults_.erase(f); }

  void begin_filling(FillingKind, Instant since, std::optional<BatchId>);
  void check_preparation(const Filled&);
  void forget_contents();
  void forget_preparation();
  void stands_in(std::optional<PlaceId>, Instant from);
  void put_on_line(LineId, Instant from);
  void seals_renewed();
  void opened();  // lid off: pressure should have been let out first
  void pressure_seen(GaugePressure, bool stays);
  void chemical(Chemical);
  void used(Chemical);
  void gas_set(GaugePressure, GasPurpose, std::optional<LineId>);
  void gas_comes(const GasComing&);
  [[nodiscard]] std::optional<Message> purge_result(const Purged&) const;
  void list_preparation();
  void resolve_contents();
  void judge_hold();
  void end_hold_test() { hold_over_ = true; }
  void tight(Instant since);
  [[nodiscard]] const PlaceHistory& history_of(PlaceId);
  [[nodiscard]] std::vector<Stay> stays();
  void derive_warmth_and_co2();

  const Journal& journal_;
  Lookup& lookup_;
  Readings readings_;
  KegTimeline& out_;
  const Entry* entry_ = nullptr;
  const Entry* passes_to_ = nullptr;

  std::optional<Done> inspected_, cleaned_, sanitised_, purged_, leak_tested_;
  std::vector<const Entry*> purges_;  // since it was last open, the last of them purged_
  HoldReadings hold_readings_, hold_with_beer_;
  std::optional<Instant> gas_off_at_, opened_at_;
  bool hold_over_ = false;  // gas came or went since: the next reading starts anew
  Chemical chemical_ = Chemical::none;
  std::map<Fault, Advice> faults_;
  PlaceLookup places_;
  struct PlaceStay {
    Instant from{};
    std::optional<PlaceId> place;
  };
  std::vector<PlaceStay> stays_;
  std::optional<PlaceId> home_;  // where it stood before it was lent
  bool too_much_pressure_ = false, pressure_lowered_ = false;
  std::optional<Instant> pressure_since_;
  std::vector<const Entry*> since_filling_;  // what moves its CO2
};

}  // namespace ullage::cellar
