// SPDX-License-Identifier: GPL-3.0-or-later
//
// Lines: cleaned, locked while a cleaner may stand in them, released by a check.
#pragma once

#include "core/cellar/records_dispense.h"

namespace ullage::cellar {

enum class LineAgent { caustic, acid, chlorinated, other, water };
ULLAGE_ENUM_WORDS(LineAgent, "caustic", "acid", "chlorinated", "other", "water");

enum class SoakMethod { static_soak, recirculated, flushed };
ULLAGE_ENUM_WORDS(SoakMethod, "static_soak", "recirculated", "flushed");

enum class FlushCheck { litmus, ph, coloured_cleaner_clear, none };
ULLAGE_ENUM_WORDS(FlushCheck, "litmus", "ph", "coloured_cleaner_clear", "none");

// Do not serve: a cleaner is, or may be, in the line.
struct LineLocked {
  static constexpr std::string_view kind = "line_locked";
  LineId line;
  LineAgent agent = LineAgent::caustic;
  std::string agent_name;
  std::string reason;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("line", self.line);
    visit("agent_kind", self.agent);
    visit("agent", self.agent_name);
    visit("reason", self.reason);
  }
};

struct LineCleaned {
  static constexpr std::string_view kind = "line_cleaned";
  LineId line;
  LineAgent agent = LineAgent::caustic;
  std::string agent_name;
  std::optional<double> strength_percent;
  SoakMethod method = SoakMethod::static_soak;
  std::optional<units::Duration> contact;
  std::optional<Temperature> temperature;
  FlushCheck flush_check = FlushCheck::none;
  std::optional<bool> flush_passed;
  bool faucet = false;  // taken apart and cleaned
  bool coupler = false;
  bool foam_detector = false;
  std::optional<Volume> beer_lost;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("line", self.line);
    visit("agent_kind", self.agent);
    visit("agent", self.agent_name);
    visit("strength_percent", self.strength_percent);
    visit("method", self.method);
    visit("contact_s", self.contact);
    visit("temperature_k", self.temperature);
    visit("flush_check", self.flush_check);
    visit("flush_passed", self.flush_passed);
    visit("faucet", self.faucet);
    visit("coupler", self.coupler);
    visit("foam_detector", self.foam_detector);
    visit("beer_lost_m3", self.beer_lost);
  }
};

// The only thing that ends a lock: a check that no cleaner is left, and who made it.
struct LineReleased {
  static constexpr std::string_view kind = "line_released";
  LineId line;
  FlushCheck check = FlushCheck::litmus;
  bool passed = false;
  std::string checked_by;
  std::string countersigned_by;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("line", self.line);
    visit("flush_check", self.check);
    visit("passed", self.passed);
    visit("checked_by", self.checked_by);
    visit("countersigned_by", self.countersigned_by);
  }
};

struct TimedPour {
  static constexpr std::string_view kind = "timed_pour";
  LineId line;
  Volume volume = units::litres(0);
  units::Duration duration = units::seconds(0);
  std::optional<GaugePressure> pressure;
  std::optional<InstrumentId> instrument;  // the dial it was read on
  std::optional<Temperature> temperature;
  std::optional<InstrumentId> thermometer;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("line", self.line);
    visit("volume_m3", self.volume);
    visit("duration_s", self.duration);
    visit("pressure_pa", self.pressure);
    visit("instrument", self.instrument);
    visit("temperature_k", self.temperature);
    visit("thermometer", self.thermometer);
  }
};

}  // namespace ullage::cellar
