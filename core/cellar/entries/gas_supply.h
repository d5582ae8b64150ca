// SPDX-License-Identifier: GPL-3.0-or-later
//
// Gas bottles, gauges and leak checks.
#pragma once

#include "core/cellar/records_dispense.h"

namespace ullage::cellar {

enum class LeakMethod { soapy_water, under_water, listening, pressure_drop };
ULLAGE_ENUM_WORDS(LeakMethod, "soapy_water", "under_water", "listening", "pressure_drop");

struct BottleWeighed {
  static constexpr std::string_view kind = "bottle_weighed";
  BottleId bottle;
  Mass gross_mass = units::kilograms(0);
  std::optional<InstrumentId> scale;
  std::optional<RegulatorId> with_regulator;  // left on while weighing
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("bottle", self.bottle);
    visit("gross_mass_kg", self.gross_mass);
    visit("scale", self.scale);
    visit("with_regulator", self.with_regulator);
  }
};

// A regulator put on another bottle.
struct BottleChanged {
  static constexpr std::string_view kind = "bottle_changed";
  RegulatorId regulator;
  BottleId bottle;
  std::optional<MoleFraction> co2_on_tag;
  bool washer_renewed = false;
  bool secured = false;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("regulator", self.regulator);
    visit("bottle", self.bottle);
    visit("co2_on_tag_mole_fraction", self.co2_on_tag);
    visit("washer_renewed", self.washer_renewed);
    visit("secured", self.secured);
  }
};

// The high-pressure gauge of a bottle.
struct GaugeRead {
  static constexpr std::string_view kind = "gauge_read";
  BottleId bottle;
  GaugePressure pressure;
  std::optional<InstrumentId> instrument;  // the dial it was read on
  std::optional<Temperature> temperature;
  std::optional<InstrumentId> thermometer;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("bottle", self.bottle);
    visit("pressure_pa", self.pressure);
    visit("instrument", self.instrument);
    visit("temperature_k", self.temperature);
    visit("thermometer", self.thermometer);
  }
};

// Joints or a lid looked at for leaks.
struct LeakTested {
  static constexpr std::string_view kind = "leak_tested";
  std::optional<KegId> keg;
  std::optional<BottleId> bottle;
  std::optional<RegulatorId> regulator;
  std::optional<LineId> line;
  LeakMethod method = LeakMethod::soapy_water;
  bool leak_found = false;
  std::string where;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("bottle", self.bottle);
    visit("regulator", self.regulator);
    visit("line", self.line);
    visit("method", self.method);
    visit("leak_found", self.leak_found);
    visit("where", self.where);
  }
};

}  // namespace ullage::cellar
