// SPDX-License-Identifier: GPL-3.0-or-later
//
// Beer into, in and out of a keg.
#pragma once

#include "core/cellar/records_dispense.h"

namespace ullage::cellar {

enum class Transfer { open, closed };
ULLAGE_ENUM_WORDS(Transfer, "open", "closed");

// How much CO2 the beer held when it was filled: still after fermentation, under a spunding valve,
// or measured.
enum class Co2AtFill { still, spunded, measured };
ULLAGE_ENUM_WORDS(Co2AtFill, "still", "spunded", "measured");

enum class SugarKind { sucrose, glucose, glucose_monohydrate, dry_malt_extract };
ULLAGE_ENUM_WORDS(SugarKind, "sucrose", "glucose", "glucose_monohydrate", "dry_malt_extract");

enum class LevelMethod { weight, heft, condensation_line, glasses, metered };
ULLAGE_ENUM_WORDS(LevelMethod, "weight", "heft", "condensation_line", "glasses", "metered");

// Beer transferred into a keg: by volume, or by weighing the full keg.
struct Filled {
  static constexpr std::string_view kind = "filled";
  KegId keg;
  BatchId batch;
  std::optional<Volume> volume;
  std::optional<Mass> gross_mass;  // keg and beer on the scale
  std::optional<InstrumentId> scale;
  Transfer transfer = Transfer::closed;
  std::optional<Temperature> temperature;
  std::optional<InstrumentId> thermometer;
  std::optional<SpecificGravity> gravity;
  Co2AtFill co2_at_fill = Co2AtFill::still;
  std::optional<Co2Concentration> co2;  // when measured
  std::optional<GaugePressure> spund_pressure;
  std::optional<InstrumentId> spund_dial;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("batch", self.batch);
    visit("beer_volume_m3", self.volume);
    visit("gross_mass_kg", self.gross_mass);
    visit("scale", self.scale);
    visit("transfer", self.transfer);
    visit("temperature_k", self.temperature);
    visit("thermometer", self.thermometer);
    visit("gravity_sg", self.gravity);
    visit("co2_at_fill", self.co2_at_fill);
    visit("co2_g_per_l", self.co2);
    visit("spund_pressure_pa", self.spund_pressure);
    visit("spund_dial", self.spund_dial);
  }
};

struct Primed {
  static constexpr std::string_view kind = "primed";
  KegId keg;
  SugarKind sugar = SugarKind::sucrose;
  Mass mass = units::grams(0);
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("sugar", self.sugar);
    visit("mass_kg", self.mass);
  }
};

struct HopsIn {
  static constexpr std::string_view kind = "hops_in";
  KegId keg;
  std::string hops;
  std::optional<Mass> mass;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("hops", self.hops);
    visit("mass_kg", self.mass);
  }
};

struct HopsOut {
  static constexpr std::string_view kind = "hops_out";
  KegId keg;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
  }
};

// How much is left, by whatever evidence there is. The method says which fields count.
struct LevelReading {
  static constexpr std::string_view kind = "level_reading";
  KegId keg;
  LevelMethod method = LevelMethod::heft;
  std::optional<Mass> gross_mass;  // weight
  std::optional<InstrumentId> scale;
  std::optional<units::Fraction> fraction_left;  // heft, condensation line: of the brimful keg
  std::optional<double> glasses;                 // poured since the last reading or fill
  std::optional<Volume> glass_volume;
  std::optional<Volume> metered;  // poured since the last reading or fill
  std::optional<InstrumentId> meter;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("method", self.method);
    visit("gross_mass_kg", self.gross_mass);
    visit("scale", self.scale);
    visit("fraction_left", self.fraction_left);
    visit("glasses", self.glasses);
    visit("glass_volume_m3", self.glass_volume);
    visit("metered_m3", self.metered);
    visit("meter", self.meter);
  }
};

// CO2 in the beer: pressure at rest with its temperature, or measured.
struct CarbonationReading {
  static constexpr std::string_view kind = "carbonation_reading";
  KegId keg;
  std::optional<GaugePressure> pressure;   // at rest, gas off
  std::optional<InstrumentId> instrument;  // the dial it was read on
  std::optional<Temperature> temperature;
  std::optional<InstrumentId> thermometer;
  std::optional<Co2Concentration> co2;
  std::optional<Co2Concentration> co2_half_width;
  std::optional<InstrumentId> meter;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("pressure_pa", self.pressure);
    visit("instrument", self.instrument);
    visit("temperature_k", self.temperature);
    visit("thermometer", self.thermometer);
    visit("co2_g_per_l", self.co2);
    visit("co2_half_width_g_per_l", self.co2_half_width);
    visit("meter", self.meter);
  }
};

struct Tapped {
  static constexpr std::string_view kind = "tapped";
  KegId keg;
  LineId line;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("line", self.line);
  }
};

struct Untapped {
  static constexpr std::string_view kind = "untapped";
  KegId keg;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
  }
};

// Ran empty, or what was left was poured away (then logged as wasted too).
struct Emptied {
  static constexpr std::string_view kind = "emptied";
  KegId keg;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
  }
};

}  // namespace ullage::cellar
