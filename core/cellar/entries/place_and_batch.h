// SPDX-License-Identifier: GPL-3.0-or-later
//
// Places, beers and batches over time.
#pragma once

#include "core/cellar/records_dispense.h"

namespace ullage::cellar {

enum class TemperatureOf { air, liquid, glass };
ULLAGE_ENUM_WORDS(TemperatureOf, "air", "liquid", "glass");

enum class GravityStage { original, in_progress, final };
ULLAGE_ENUM_WORDS(GravityStage, "original", "in_progress", "final");

struct TemperatureRead {
  static constexpr std::string_view kind = "temperature_read";
  PlaceId place;
  Temperature temperature = units::celsius(0);
  std::optional<InstrumentId> thermometer;
  TemperatureOf of = TemperatureOf::air;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("place", self.place);
    visit("temperature_k", self.temperature);
    visit("thermometer", self.thermometer);
    visit("of_what", self.of);
  }
};

// The gas alarm of a place tried.
struct AlarmChecked {
  static constexpr std::string_view kind = "alarm_checked";
  PlaceId place;
  bool passed = true;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("place", self.place);
    visit("passed", self.passed);
  }
};

struct GravityRead {
  static constexpr std::string_view kind = "gravity_read";
  BatchId batch;
  std::optional<KegId> keg;
  SpecificGravity gravity = SpecificGravity(1.0);
  GravityStage stage = GravityStage::in_progress;
  std::optional<InstrumentId> hydrometer;
  std::optional<Temperature> temperature;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("batch", self.batch);
    visit("keg", self.keg);
    visit("gravity_sg", self.gravity);
    visit("stage", self.stage);
    visit("hydrometer", self.hydrometer);
    visit("temperature_k", self.temperature);
  }
};

struct BestByChanged {
  static constexpr std::string_view kind = "best_by_changed";
  BatchId batch;
  Date best_by;
  std::string reason;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("batch", self.batch);
    visit("best_by_day", self.best_by);
    visit("reason", self.reason);
  }
};

struct BatchRecalled {
  static constexpr std::string_view kind = "batch_recalled";
  BatchId batch;
  std::string reason;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("batch", self.batch);
    visit("reason", self.reason);
  }
};

}  // namespace ullage::cellar
