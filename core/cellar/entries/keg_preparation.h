// SPDX-License-Identifier: GPL-3.0-or-later
//
// Making an empty keg fit to fill: inspected, cleaned, sanitised, held, purged.
#pragma once

#include "core/cellar/records_dispense.h"

namespace ullage::cellar {

// What did the cleaning. A rinse alone does not make a keg clean.
enum class CleaningMethod { rinse, caustic, percarbonate, acid, other };
ULLAGE_ENUM_WORDS(CleaningMethod, "rinse", "caustic", "percarbonate", "acid", "other");

enum class SanitisingMethod { acid_sanitiser, iodine, chlorine, quaternary, hot_water, other };
ULLAGE_ENUM_WORDS(SanitisingMethod, "acid_sanitiser", "iodine", "chlorine", "quaternary",
                  "hot_water", "other");

enum class PurgeMethod { cycles, pushed_liquid, swept };
ULLAGE_ENUM_WORDS(PurgeMethod, "cycles", "pushed_liquid", "swept");

struct Inspected {
  static constexpr std::string_view kind = "inspected";
  KegId keg;
  bool seals_renewed = false;
  bool seals_lubricated = false;
  bool lid_seated = false;
  bool fit_to_use = true;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("seals_renewed", self.seals_renewed);
    visit("seals_lubricated", self.seals_lubricated);
    visit("lid_seated", self.lid_seated);
    visit("fit_to_use", self.fit_to_use);
  }
};

struct Cleaned {
  static constexpr std::string_view kind = "cleaned";
  KegId keg;
  CleaningMethod method = CleaningMethod::caustic;
  std::string agent;
  std::optional<double> strength_percent;
  std::optional<units::Duration> contact;
  std::optional<Temperature> temperature;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("method", self.method);
    visit("agent", self.agent);
    visit("strength_percent", self.strength_percent);
    visit("contact_s", self.contact);
    visit("temperature_k", self.temperature);
  }
};

struct Sanitised {
  static constexpr std::string_view kind = "sanitised";
  KegId keg;
  SanitisingMethod method = SanitisingMethod::acid_sanitiser;
  std::string agent;
  std::optional<units::Duration> contact;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("method", self.method);
    visit("agent", self.agent);
    visit("contact_s", self.contact);
  }
};

// A pressure read on a closed keg, to see whether it holds.
struct HoldReading {
  static constexpr std::string_view kind = "hold_reading";
  KegId keg;
  GaugePressure pressure;
  std::optional<InstrumentId> instrument;  // the dial it was read on
  std::optional<Temperature> temperature;
  std::optional<InstrumentId> thermometer;
  bool starts_test = false;  // the first reading of a new test
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("pressure_pa", self.pressure);
    visit("instrument", self.instrument);
    visit("temperature_k", self.temperature);
    visit("thermometer", self.thermometer);
    visit("starts_test", self.starts_test);
  }
};

// Air driven out with CO2.
struct Purged {
  static constexpr std::string_view kind = "purged";
  KegId keg;
  PurgeMethod method = PurgeMethod::cycles;
  std::optional<std::int64_t> cycles;
  std::optional<GaugePressure> pressure;   // of each cycle
  std::optional<InstrumentId> instrument;  // the dial it was read on
  std::optional<double> vessel_volumes;    // of gas swept through
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("method", self.method);
    visit("cycles", self.cycles);
    visit("pressure_pa", self.pressure);
    visit("instrument", self.instrument);
    visit("vessel_volumes", self.vessel_volumes);
  }
};

}  // namespace ullage::cellar
