// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/presets.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <numbers>

namespace ullage::cellar {

namespace {

using units::bar;
using units::grams;
using units::kelvin_difference;
using units::kilograms;
using units::litres;
using units::psi;
using units::volumes_of_co2;

constexpr std::string_view us_legal =
    "volume: 27 CFR 25.156, fractions of a 31 gallon barrel (verified); tare and rating: "
    "retailer's "
    "keg sheet and typical stamps (from memory)";
constexpr std::string_view soda =
    "volume, tare and rating: consumer article on soda kegs (5 gallon verified, smaller from "
    "memory); room above the nominal volume from memory";
constexpr std::string_view european =
    "volume: DIN 6647 sizes (verified); tare, rating and room above the nominal volume from memory";

KegPreset soda_keg(KegKind kind, double nominal, double brimful, double tare,
                   std::string_view posts) {
  return {kind,           litres(nominal),       litres(brimful), litres(0.3), kilograms(tare),
          kilograms(0.5), units::gauge_psi(130), posts,           soda};
}
KegPreset large_keg(KegKind kind, double nominal, double brimful, double tare, GaugePressure rated,
                    std::string_view coupler, std::string_view source) {
  return {kind,
          litres(nominal),
          litres(brimful),
          litres(0.015 * nominal),
          kilograms(tare),
          kilograms(1.5),
          rated,
          coupler,
          source};
}

const std::array<KegPreset, 13>& kegs() {
  const auto us_rating = units::gauge_psi(60);
  const auto european_rating = units::gauge_bar(3);
  static const std::array<KegPreset, 13> table{{
      soda_keg(KegKind::ball_lock_9, 9.46, 9.9, 3.2, "ball lock"),
      soda_keg(KegKind::ball_lock_11, 11.36, 11.8, 3.6, "ball lock"),
      soda_keg(KegKind::ball_lock_19, 18.93, 19.6, 4.5, "ball lock"),
      soda_keg(KegKind::pin_lock_9, 9.46, 9.9, 3.2, "pin lock"),
      soda_keg(KegKind::pin_lock_11, 11.36, 11.8, 3.6, "pin lock"),
      soda_keg(KegKind::pin_lock_19, 18.93, 19.6, 4.5, "pin lock"),
      large_keg(KegKind::us_half_barrel, 58.674, 59.5, 13.47, us_rating, "D", us_legal),
      large_keg(KegKind::us_quarter_barrel, 29.337, 29.8, 10.0, us_rating, "D", us_legal),
      large_keg(KegKind::us_slim_quarter, 29.337, 29.8, 10.0, us_rating, "D", us_legal),
      large_keg(KegKind::us_sixth_barrel, 19.558, 19.9, 7.5, us_rating, "D", us_legal),
      large_keg(KegKind::keg_20, 20, 20.4, 7.5, european_rating, "S", european),
      large_keg(KegKind::keg_30, 30, 30.5, 9.5, european_rating, "S", european),
      large_keg(KegKind::keg_50, 50, 50.8, 12.5, european_rating, "S", european),
  }};
  return table;
}

constexpr std::string_view figures = "usual honest error of such an instrument (common practice)";

InstrumentPreset blank(InstrumentKind kind) {
  InstrumentPreset p;
  p.kind = kind;
  p.source = figures;
  return p;
}

const std::array<InstrumentPreset, 10>& instruments() {
  const auto pressure = [](InstrumentKind kind, double bias, double repeat) {
    InstrumentPreset p = blank(kind);
    p.pressure_bias = psi(bias);
    p.pressure_repeatability = psi(repeat);
    return p;
  };
  const auto temperature = [](InstrumentKind kind, double bias, double repeat) {
    InstrumentPreset p = blank(kind);
    p.temperature_bias = kelvin_difference(bias);
    p.temperature_repeatability = kelvin_difference(repeat);
    return p;
  };
  const auto mass = [](InstrumentKind kind, double bias, double repeat) {
    InstrumentPreset p = blank(kind);
    p.mass_bias = kilograms(bias);
    p.mass_repeatability = kilograms(repeat);
    return p;
  };
  const auto relative = [](InstrumentKind kind, double bias, double repeat) {
    InstrumentPreset p = blank(kind);
    p.relative_bias_percent = bias;
    p.relative_repeatability_percent = repeat;
    return p;
  };
  static const std::array<InstrumentPreset, 10> table{{
      pressure(InstrumentKind::regulator_dial, 2, 0.5),
      pressure(InstrumentKind::spunding_dial, 1, 0.3),
      pressure(InstrumentKind::pressure_gauge, 1, 0.3),
      temperature(InstrumentKind::fridge_display, 2, 0.5),
      temperature(InstrumentKind::thermometer, 0.5, 0.2),
      mass(InstrumentKind::bathroom_scale, 0.3, 0.1),
      mass(InstrumentKind::parcel_scale, 0.05, 0.02),
      relative(InstrumentKind::hydrometer, 0.1, 0.1),  // of the gravity: 0.001
      relative(InstrumentKind::co2_meter, 3, 2),
      relative(InstrumentKind::flow_meter, 2, 1),
  }};
  return table;
}

constexpr std::string_view two_lists =
    "home-brewing supplier's style list, else a widely reprinted one (both verified)";
constexpr std::string_view one_list = "widely reprinted style list (verified)";
constexpr std::string_view press = "trade press, rule of thumb";

StylePreset style(std::string_view name, double low, double high, std::string_view source) {
  return {name, volumes_of_co2(low), volumes_of_co2(high), source};
}

const std::array<StylePreset, 24>& styles() {
  static const std::array<StylePreset, 24> table{{
      style("American amber or pale ale", 2.3, 2.8, two_lists),
      style("American brown", 2.0, 2.6, two_lists),
      style("American lager", 2.5, 2.7, one_list),
      style("Altbier", 2.1, 3.1, two_lists),
      style("Barley wine", 1.8, 2.5, two_lists),
      style("Belgian dubbel", 2.3, 2.9, two_lists),
      style("Belgian tripel", 2.4, 3.0, two_lists),
      style("Berliner weisse", 2.4, 2.9, two_lists),
      style("British ale", 1.5, 2.0, press),
      style("Dunkelweizen", 2.5, 2.9, two_lists),
      style("English mild", 1.3, 2.3, two_lists),
      style("English ordinary bitter", 0.8, 2.2, two_lists),
      style("German pilsener", 2.4, 2.6, one_list),
      style("Imperial stout", 1.8, 2.6, two_lists),
      style("India pale ale", 2.2, 2.7, two_lists),
      style("Irish dry stout", 1.8, 2.5, two_lists),
      style("Kölsch", 2.4, 2.8, two_lists),
      style("Lambic, gueuze", 2.4, 3.1, two_lists),
      style("Munich helles", 2.3, 2.7, one_list),
      style("Nitro stout", 1.0, 1.4, press),
      style("Saison", 2.4, 3.2, press),
      style("Scottish light", 1.5, 2.3, two_lists),
      style("Weizenbock", 3.7, 4.7, one_list),
      style("Wheat beer", 3.3, 4.5, press),
  }};
  return table;
}

bool same_word(std::string_view a, std::string_view b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](char x, char y) {
    return std::tolower(static_cast<unsigned char>(x)) ==
           std::tolower(static_cast<unsigned char>(y));
  });
}

}  // namespace

std::span<const KegPreset> keg_presets() { return kegs(); }

const KegPreset* keg_preset(KegKind kind) {
  const auto& table = kegs();
  const auto at =
      std::find_if(table.begin(), table.end(), [&](const KegPreset& p) { return p.kind == kind; });
  return at == table.end() ? nullptr : &*at;
}

KegRecord keg_from_preset(KegKind kind) {
  KegRecord record;
  record.keg_kind = kind;
  if (const KegPreset* p = keg_preset(kind)) {
    record.nominal = p->nominal;
    record.brimful = p->brimful;
    record.brimful_half_width = p->brimful_half_width;
    record.tare = p->tare;
    record.tare_half_width = p->tare_half_width;
    record.rated_pressure = p->rated_pressure;
    record.coupler = p->coupler;
  }
  return record;
}

bool has_two_posts(KegKind kind) {
  switch (kind) {
    case KegKind::ball_lock_9:
    case KegKind::ball_lock_11:
    case KegKind::ball_lock_19:
    case KegKind::pin_lock_9:
    case KegKind::pin_lock_11:
    case KegKind::pin_lock_19:
      return true;
    default:
      return false;
  }
}

std::optional<units::Area> free_surface(KegKind kind) {
  if (kind != KegKind::keg_20) return std::nullopt;
  const units::Length width = units::millimetres(363);
  return units::Area(std::numbers::pi / 4 * width * width);
}

Reads reads_of(InstrumentKind kind) {
  switch (kind) {
    case InstrumentKind::regulator_dial:
    case InstrumentKind::spunding_dial:
    case InstrumentKind::pressure_gauge:
      return Reads::pressure;
    case InstrumentKind::fridge_display:
    case InstrumentKind::thermometer:
      return Reads::temperature;
    case InstrumentKind::bathroom_scale:
    case InstrumentKind::parcel_scale:
      return Reads::mass;
    case InstrumentKind::hydrometer:
      return Reads::gravity;
    case InstrumentKind::co2_meter:
      return Reads::co2;
    case InstrumentKind::flow_meter:
      break;
  }
  return Reads::volume;
}

const InstrumentPreset& instrument_preset(InstrumentKind kind) {
  return instruments()[static_cast<std::size_t>(kind)];
}

InstrumentRecord instrument_from_preset(InstrumentKind kind) {
  const InstrumentPreset& p = instrument_preset(kind);
  InstrumentRecord record;
  record.instrument_kind = kind;
  record.pressure_bias = p.pressure_bias;
  record.pressure_repeatability = p.pressure_repeatability;
  record.temperature_bias = p.temperature_bias;
  record.temperature_repeatability = p.temperature_repeatability;
  record.mass_bias = p.mass_bias;
  record.mass_repeatability = p.mass_repeatability;
  record.relative_bias_percent = p.relative_bias_percent;
  record.relative_repeatability_percent = p.relative_repeatability_percent;
  return record;
}

std::span<const StylePreset> style_presets() { return styles(); }

const StylePreset* style_preset(std::string_view name) {
  const auto& table = styles();
  const auto at = std::find_if(table.begin(), table.end(),
                               [&](const StylePreset& s) { return same_word(s.style, name); });
  return at == table.end() ? nullptr : &*at;
}

std::optional<Co2Range> co2_range_of(const BeerRecord& beer) {
  if (beer.co2_low && beer.co2_high) {
    return Co2Range{units::to_volumes(*beer.co2_low), units::to_volumes(*beer.co2_high), false};
  }
  if (const StylePreset* s = style_preset(beer.style)) return Co2Range{s->low, s->high, true};
  return std::nullopt;
}

}  // namespace ullage::cellar
