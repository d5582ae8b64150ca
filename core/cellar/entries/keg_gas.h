// SPDX-License-Identifier: GPL-3.0-or-later
//
// Gas on a keg.
#pragma once

#include "core/cellar/records_dispense.h"

namespace ullage::cellar {

// Why the gas is on: a short burst to carbonate, the final pressure from the start, serving, or
// seating the lid.
enum class GasPurpose { burst, set_and_wait, serving, seat_lid };
ULLAGE_ENUM_WORDS(GasPurpose, "burst", "set_and_wait", "serving", "seat_lid");

// Gas connected, or its pressure changed. Lowering it does not vent the keg.
struct GasSet {
  static constexpr std::string_view kind = "gas_set";
  KegId keg;
  GaugePressure pressure;
  GasPurpose purpose = GasPurpose::serving;
  std::optional<RegulatorId> regulator;
  std::optional<InstrumentId> instrument;  // the dial it was read on
  std::optional<MoleFraction> co2;         // pure CO2 when not stated
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("pressure_pa", self.pressure);
    visit("purpose", self.purpose);
    visit("regulator", self.regulator);
    visit("instrument", self.instrument);
    visit("co2_mole_fraction", self.co2);
  }
};

struct GasOff {
  static constexpr std::string_view kind = "gas_off";
  KegId keg;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
  }
};

// Headspace let down, to the air unless a pressure is stated.
struct Vented {
  static constexpr std::string_view kind = "vented";
  KegId keg;
  std::optional<GaugePressure> to_pressure;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("to_pressure_pa", self.to_pressure);
  }
};

struct Rocked {
  static constexpr std::string_view kind = "rocked";
  KegId keg;
  units::Duration duration = units::minutes(0);
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("duration_s", self.duration);
  }
};

}  // namespace ullage::cellar
