// SPDX-License-Identifier: GPL-3.0-or-later
//
// One keg's story folded up, without a clock: what is in it, how it was
// prepared, what gas it is under, where it stands, and what is wrong until put
// right. What depends on the moment (CO2 now, readiness, age) is worked out of
// this in keg_status.h.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/cellar/beer_warmth.h"
#include "core/cellar/carbonation_track.h"
#include "core/cellar/level_track.h"
#include "core/cellar/line_timeline.h"
#include "core/cellar/place_history.h"
#include "core/cellar/presets.h"
#include "core/cellar/readings.h"
#include "core/cellar/status.h"

namespace ullage::cellar {

// Where the fold stands. What is in a full keg (carbonating, ready ...) depends
// on the clock.
enum class Stage { unknown, dirty, clean, sanitised, purged, full, on_tap };

struct StageSpan {
  Instant from{};
  Stage stage = Stage::unknown;
};

enum class FillingKind { filled, received, found };

// How the beer came into it.
struct Filling {
  FillingKind kind = FillingKind::filled;
  EntryId entry;
  Instant at{};  // found: since when, where that is known
  std::optional<BatchId> batch;
  std::optional<Date> best_by;  // as delivered
  std::optional<Temperature> arrival;
  std::optional<bool> seal_intact;
  std::string supplier;
};

// The gas as last set. A keg keeps its pressure after the gas is taken off.
struct GasLine {
  GasOnKeg now;
  EntryId entry;  // of the last setting
  GasPurpose purpose = GasPurpose::serving;
  std::string dial;
};

struct HoldStudy;  // hold_test.h
enum class HoldKind { untested, holds, falls, cant_tell };
struct HoldState {
  HoldKind kind = HoldKind::untested;
  std::optional<Message> result;
  std::optional<EntryId> entry;
  Instant first{}, last{};
  GaugePressure pressure;  // of the last reading
  std::shared_ptr<const HoldStudy> study;
};

struct FoundLeak {
  Instant at{};
  std::string where;
};

struct Custody {
  std::optional<std::string> quarantine_reason;
  Instant quarantined_since{};
  std::optional<std::string> lent_to;
  Instant lent_since{};
  std::optional<Date> due_back;
};

struct OnLine {
  LineId line;
  Instant since{};
  EntryId entry;
  // Another keg was put on the same line later.
  std::optional<KegId> displaced_by;
};

struct KegTimeline {
  Reliance relies_on;
  KegRecord record;
  bool registered = false;
  std::optional<Instant> first_heard_of, last_heard_of;

  Stage stage = Stage::unknown;
  std::optional<Instant> stage_since;
  std::vector<StageSpan> spans;
  std::optional<Filling> filling;
  std::optional<Contents> contents;  // when batch and beer are known
  std::optional<Co2Range> range;
  std::optional<EntryId> recalled;  // the batch was recalled, and why
  std::string recall_reason;

  std::vector<PreparationStep> preparation;
  LastChemicals chemicals;
  bool only_rinsed = false;
  bool unfit = false;  // looked at and found not fit to use
  std::optional<EntryId> unfit_entry;
  HoldState hold;
  // A leak that somebody found on it and nobody has put right since; and when it
  // was last shown to be tight or put right.
  std::optional<FoundLeak> leak;
  std::optional<Instant> tight_since;
  std::shared_ptr<const HoldStudy> hold_with_beer;  // read since it was filled
  GasLine gas;
  Custody custody;
  std::optional<OnLine> on_line;
  std::optional<LineTimeline> line;
  std::optional<Instant> hops_since;
  std::optional<Mass> primed;
  std::optional<Instant> last_level_reading;

  std::optional<PlaceId> place;
  std::optional<PlaceHistory> place_history;
  std::optional<Instant> in_place_since;
  std::optional<BeerWarmth> warmth;   // of what is in it
  std::optional<Instant> cold_since;  // in a place at cellar temperature or below
  std::optional<units::Estimate<units::AbsolutePressure>> ambient;
  std::optional<SpecificGravity> fill_gravity;
  LevelTrack level;
  CarbonationTrack co2;

  std::vector<Advice> faults;  // bad practice that stands until put right
  std::vector<DoesntFit> doesnt_fit;
};

// `places`: histories that are kept already; by default they are worked out.
[[nodiscard]] KegTimeline keg_timeline(KegId, const Journal&, const PlaceLookup& places = {});

}  // namespace ullage::cellar
