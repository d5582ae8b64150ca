// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a new thing starts with before anybody has measured it: keg sizes, the
// errors of instruments, CO2 ranges of beer styles. Every figure is a default
// to be edited; `source` says where it comes from and how sure it is.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/cellar/records.h"
#include "core/cellar/records_dispense.h"

namespace ullage::cellar {

struct KegPreset {
  KegKind kind = KegKind::custom;
  Volume nominal = units::litres(0);
  Volume brimful = units::litres(0);
  Volume brimful_half_width = units::litres(0);
  Mass tare = units::kilograms(0);
  Mass tare_half_width = units::kilograms(0);
  GaugePressure rated_pressure;  // the stamp on the keg decides
  std::string_view coupler;
  std::string_view source;
};

// Every kind but custom.
[[nodiscard]] std::span<const KegPreset> keg_presets();
[[nodiscard]] const KegPreset* keg_preset(KegKind);  // nullptr for custom
// A record with everything but id, tag, owner and place filled in.
[[nodiscard]] KegRecord keg_from_preset(KegKind);
// Soda kegs have two posts: gas and beer come off separately. The others have
// one coupler that carries both.
[[nodiscard]] bool has_two_posts(KegKind);

// The beer's free surface where the size alone does not tell it: a 20 L keg is as
// wide as the 30 L one (363 mm, DIN 6647, verified), not as slim as a soda keg.
[[nodiscard]] std::optional<units::Area> free_surface(KegKind);

enum class Reads { pressure, temperature, mass, gravity, co2, volume };
[[nodiscard]] Reads reads_of(InstrumentKind);

// Bias and repeatability as 95 % half-widths.
struct InstrumentPreset {
  InstrumentKind kind = InstrumentKind::regulator_dial;
  std::optional<PressureDifference> pressure_bias, pressure_repeatability;
  std::optional<TemperatureDifference> temperature_bias, temperature_repeatability;
  std::optional<Mass> mass_bias, mass_repeatability;
  std::optional<double> relative_bias_percent, relative_repeatability_percent;
  std::string_view source;
};
[[nodiscard]] const InstrumentPreset& instrument_preset(InstrumentKind);
[[nodiscard]] InstrumentRecord instrument_from_preset(InstrumentKind);

struct StylePreset {
  std::string_view style;
  units::Co2Volumes low, high;
  std::string_view source;
};
[[nodiscard]] std::span<const StylePreset> style_presets();
// By name, ignoring case; nullptr when there is no such style in the list.
[[nodiscard]] const StylePreset* style_preset(std::string_view style);

// CO2 range of a beer: its own where both ends are stated, else its style's.
struct Co2Range {
  units::Co2Volumes low, high;
  bool from_style = false;
};
[[nodiscard]] std::optional<Co2Range> co2_range_of(const BeerRecord&);

}  // namespace ullage::cellar
