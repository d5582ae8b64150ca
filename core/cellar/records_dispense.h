// SPDX-License-Identifier: GPL-3.0-or-later
//
// The register's other half: lines, gas and instruments. See records.h.
#pragma once

#include "core/cellar/records.h"

namespace ullage::cellar {

enum class LineMaterial { vinyl, barrier, polyethylene, stainless, other };
ULLAGE_ENUM_WORDS(LineMaterial, "vinyl", "barrier", "polyethylene", "stainless", "other");

// A line: one tap and the hose from the keg up to it. A hose of several pieces
// is told by its SegmentRecords, which then count instead of length, bore, rise
// and material here.
struct LineRecord {
  static constexpr std::string_view kind = "line_record";
  LineId line;
  std::string name;  // "Line 3"
  std::string tap;   // what the tap is called: "3", "Bar left"
  std::optional<PlaceId> place;
  std::optional<RegulatorId> regulator;  // the outlet that drives it
  std::optional<Length> length;
  std::optional<Length> bore;
  std::optional<Length> rise;  // of the tap above the keg's middle
  LineMaterial material = LineMaterial::vinyl;
  std::optional<std::int64_t> clean_every_days;
  std::string clean_reason;  // why this interval: "own rule", "beer and food law here"
  std::string clean_source;  // where the figure comes from: "trade handbook, 14 days"
  bool second_initials_to_release = false;
  bool in_use = true;
  // What each fitting takes of the pressure at the line's usual flow, where known.
  std::optional<PressureDifference> coupler_loss, shank_loss, faucet_loss;
  std::optional<Length> restrictor_length;  // a narrow piece that is there to slow the beer
  std::optional<Length> restrictor_bore;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("line", self.line);
    visit("name", self.name);
    visit("tap", self.tap);
    visit("place", self.place);
    visit("regulator", self.regulator);
    visit("length_m", self.length);
    visit("bore_m", self.bore);
    visit("rise_m", self.rise);
    visit("material", self.material);
    visit("clean_every_days", self.clean_every_days);
    visit("clean_reason", self.clean_reason);
    visit("clean_source", self.clean_source);
    visit("second_initials_to_release", self.second_initials_to_release);
    visit("in_use", self.in_use);
    visit("coupler_loss_pa", self.coupler_loss);
    visit("shank_loss_pa", self.shank_loss);
    visit("faucet_loss_pa", self.faucet_loss);
    visit("restrictor_length_m", self.restrictor_length);
    visit("restrictor_bore_m", self.restrictor_bore);
  }
};

// One piece of a line's hose. Pieces are counted from the keg to the tap.
struct SegmentRecord {
  static constexpr std::string_view kind = "segment_record";
  SegmentId segment;
  LineId line;
  std::int64_t position = 1;  // 1 is next to the keg
  Length length = units::metres(0);
  Length bore = units::metres(0);
  LineMaterial material = LineMaterial::vinyl;
  std::optional<PlaceId> place;  // what it runs through, and so how warm its beer is
  std::optional<Length> rise;    // of its end above its beginning
  bool in_use = true;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("segment", self.segment);
    visit("line", self.line);
    visit("position", self.position);
    visit("length_m", self.length);
    visit("bore_m", self.bore);
    visit("material", self.material);
    visit("place", self.place);
    visit("rise_m", self.rise);
    visit("in_use", self.in_use);
  }
};

struct BottleRecord {
  static constexpr std::string_view kind = "bottle_record";
  BottleId bottle;
  std::string name;
  MoleFraction co2 = units::mole_fraction(1);  // the rest is nitrogen
  std::optional<Mass> tare;
  std::optional<Mass> content;  // of gas when full
  std::optional<Volume> water_capacity;
  std::optional<Date> retest_due;
  std::optional<PlaceId> place;
  bool in_use = true;
  // Mass of gas per mass of water that fits, as filled: "0.75" on a CO2 bottle's label.
  std::optional<units::Fraction> fill_ratio;
  std::optional<std::int64_t> price_minor;  // of a full one, in the smallest unit of money
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("bottle", self.bottle);
    visit("name", self.name);
    visit("co2_mole_fraction", self.co2);
    visit("tare_kg", self.tare);
    visit("content_kg", self.content);
    visit("water_capacity_m3", self.water_capacity);
    visit("retest_due_day", self.retest_due);
    visit("place", self.place);
    visit("in_use", self.in_use);
    visit("fill_ratio", self.fill_ratio);
    visit("price_minor", self.price_minor);
  }
};

struct RegulatorRecord {
  static constexpr std::string_view kind = "regulator_record";
  RegulatorId regulator;
  std::string name;
  std::optional<BottleId> bottle;  // what it draws from when registered
  std::optional<PlaceId> place;
  std::optional<InstrumentId> dial;  // its low-pressure gauge
  std::optional<Mass> mass;          // what it adds on a scale
  bool in_use = true;
  std::optional<RegulatorId> fed_by;  // a secondary: the regulator before it
  std::optional<bool> secured;        // it and its bottle are held against falling
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("regulator", self.regulator);
    visit("name", self.name);
    visit("bottle", self.bottle);
    visit("place", self.place);
    visit("dial", self.dial);
    visit("mass_kg", self.mass);
    visit("in_use", self.in_use);
    visit("fed_by", self.fed_by);
    visit("secured", self.secured);
  }
};

enum class InstrumentKind {
  regulator_dial,
  spunding_dial,
  pressure_gauge,
  fridge_display,
  thermometer,
  bathroom_scale,
  parcel_scale,
  hydrometer,
  co2_meter,
  flow_meter
};
ULLAGE_ENUM_WORDS(InstrumentKind, "regulator_dial", "spunding_dial", "pressure_gauge",
                  "fridge_display", "thermometer", "bathroom_scale", "parcel_scale", "hydrometer",
                  "co2_meter", "flow_meter");

// Bias and repeatability are 95 % half-widths; only the pair that fits the
// instrument's dimension is set.
struct InstrumentRecord {
  static constexpr std::string_view kind = "instrument_record";
  InstrumentId instrument;
  std::string name;
  InstrumentKind instrument_kind = InstrumentKind::regulator_dial;
  std::optional<PressureDifference> pressure_bias, pressure_repeatability;
  std::optional<TemperatureDifference> temperature_bias, temperature_repeatability;
  std::optional<Mass> mass_bias, mass_repeatability;
  std::optional<double> relative_bias_percent, relative_repeatability_percent;
  std::optional<Date> checked_on;
  std::string check_note;  // "read 0.3 °C in ice slush"
  bool in_use = true;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("instrument", self.instrument);
    visit("name", self.name);
    visit("instrument_kind", self.instrument_kind);
    visit("pressure_bias_pa", self.pressure_bias);
    visit("pressure_repeatability_pa", self.pressure_repeatability);
    visit("temperature_bias_k", self.temperature_bias);
    visit("temperature_repeatability_k", self.temperature_repeatability);
    visit("mass_bias_kg", self.mass_bias);
    visit("mass_repeatability_kg", self.mass_repeatability);
    visit("relative_bias_percent", self.relative_bias_percent);
    visit("relative_repeatability_percent", self.relative_repeatability_percent);
    visit("checked_on_day", self.checked_on);
    visit("check_note", self.check_note);
    visit("in_use", self.in_use);
  }
};

}  // namespace ullage::cellar
