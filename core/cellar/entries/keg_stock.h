// SPDX-License-Identifier: GPL-3.0-or-later
//
// Kegs as stock: found, received, moved, lent, held back, wasted.
#pragma once

#include "core/cellar/records_dispense.h"

namespace ullage::cellar {

enum class FoundContents { unknown, empty_dirty, empty_clean, empty_sanitised, empty_purged, beer };
ULLAGE_ENUM_WORDS(FoundContents, "unknown", "empty_dirty", "empty_clean", "empty_sanitised",
                  "empty_purged", "beer");

enum class WasteReason { foam, line_cleaning, spoiled, short_fill, spill, given_away, other };
ULLAGE_ENUM_WORDS(WasteReason, "foam", "line_cleaning", "spoiled", "short_fill", "spill",
                  "given_away", "other");

// Stock-taking: what is in a keg now. Everything but the contents may be unknown.
struct Found {
  static constexpr std::string_view kind = "found";
  KegId keg;
  FoundContents contents = FoundContents::unknown;
  std::optional<BatchId> batch;
  std::optional<Volume> volume;
  std::optional<Volume> volume_half_width;
  std::optional<GaugePressure> pressure;
  std::optional<InstrumentId> instrument;  // the dial it was read on
  std::optional<Temperature> temperature;
  std::optional<InstrumentId> thermometer;
  std::optional<Co2Concentration> co2;
  std::optional<Co2Concentration> co2_half_width;
  bool gas_on = false;  // connected to gas at the pressure above
  std::optional<RegulatorId> regulator;
  std::optional<LineId> line;    // already on this line
  std::optional<Instant> since;  // since when it has held this
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("contents", self.contents);
    visit("batch", self.batch);
    visit("beer_volume_m3", self.volume);
    visit("beer_volume_half_width_m3", self.volume_half_width);
    visit("pressure_pa", self.pressure);
    visit("instrument", self.instrument);
    visit("temperature_k", self.temperature);
    visit("thermometer", self.thermometer);
    visit("co2_g_per_l", self.co2);
    visit("co2_half_width_g_per_l", self.co2_half_width);
    visit("gas_on", self.gas_on);
    visit("regulator", self.regulator);
    visit("line", self.line);
    visit("since_utc_s", self.since);
  }
};

// A full keg delivered by a brewery or supplier.
struct Received {
  static constexpr std::string_view kind = "received";
  KegId keg;
  BatchId batch;
  std::string supplier;
  std::optional<Date> best_by;
  std::optional<Volume> volume;            // nominal when not stated
  std::optional<Temperature> temperature;  // on arrival
  std::optional<InstrumentId> thermometer;
  std::optional<Co2Concentration> co2;  // as supplied
  std::optional<Co2Concentration> co2_half_width;
  std::optional<bool> seal_intact;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("batch", self.batch);
    visit("supplier", self.supplier);
    visit("best_by_day", self.best_by);
    visit("beer_volume_m3", self.volume);
    visit("temperature_k", self.temperature);
    visit("thermometer", self.thermometer);
    visit("co2_g_per_l", self.co2);
    visit("co2_half_width_g_per_l", self.co2_half_width);
    visit("seal_intact", self.seal_intact);
  }
};

struct Moved {
  static constexpr std::string_view kind = "moved";
  KegId keg;
  PlaceId place;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("place", self.place);
  }
};

// Not to be served or filled until cleared.
struct Quarantined {
  static constexpr std::string_view kind = "quarantined";
  KegId keg;
  std::string reason;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("reason", self.reason);
  }
};

struct Cleared {
  static constexpr std::string_view kind = "cleared";
  KegId keg;
  std::string reason;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("reason", self.reason);
  }
};

struct Lent {
  static constexpr std::string_view kind = "lent";
  KegId keg;
  std::string to;
  std::optional<std::int64_t> deposit_minor;
  std::optional<Date> due_back;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("to", self.to);
    visit("deposit_minor", self.deposit_minor);
    visit("due_back_day", self.due_back);
  }
};

struct Returned {
  static constexpr std::string_view kind = "returned";
  KegId keg;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
  }
};

// Beer lost: from a keg, or of a batch at large.
struct Wasted {
  static constexpr std::string_view kind = "wasted";
  std::optional<KegId> keg;
  std::optional<BatchId> batch;
  WasteReason reason = WasteReason::other;
  Volume volume = units::litres(0);
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("batch", self.batch);
    visit("reason", self.reason);
    visit("volume_m3", self.volume);
  }
};

}  // namespace ullage::cellar
