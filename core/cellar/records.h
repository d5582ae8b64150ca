// SPDX-License-Identifier: GPL-3.0-or-later
//
// The register: what the cellar consists of. A record is itself a journal
// payload; the first one of an id registers the thing, a later one changes it
// from its happened_at on. Records state the whole thing each time, so the
// register as of a date is the last record before it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/cellar/fields.h"
#include "core/cellar/ids.h"
#include "core/cellar/time.h"
#include "core/units/gauge_pressure.h"
#include "core/units/quantities.h"
#include "core/units/scales.h"

namespace ullage::cellar {

using units::Co2Concentration;
using units::GaugePressure;
using units::Length;
using units::Mass;
using units::MoleFraction;
using units::PressureDifference;
using units::SpecificGravity;
using units::Temperature;
using units::TemperatureDifference;
using units::Volume;

enum class UnitsPreset { metric, us, british };
ULLAGE_ENUM_WORDS(UnitsPreset, "metric", "us", "british");

// One per cellar file; later ones change it.
struct CellarDescribed {
  static constexpr std::string_view kind = "cellar_described";
  std::string name;
  Length altitude = units::metres(0);
  std::string time_zone;  // IANA name
  UnitsPreset units = UnitsPreset::metric;
  // CO2 that a keg on hold may lose in a day and still pass as tight here.
  std::optional<Mass> leak_limit_per_day;
  std::optional<std::string> country;  // two capital letters: "DE"; sets whose alarm rule is shown
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("name", self.name);
    visit("altitude_m", self.altitude);
    visit("time_zone", self.time_zone);
    visit("units_preset", self.units);
    visit("leak_limit_kg_per_day", self.leak_limit_per_day);
    visit("country", self.country);
  }
};

enum class KegKind {
  ball_lock_9,
  ball_lock_11,
  ball_lock_19,
  pin_lock_9,
  pin_lock_11,
  pin_lock_19,
  us_half_barrel,
  us_quarter_barrel,
  us_slim_quarter,
  us_sixth_barrel,
  keg_20,
  keg_30,
  keg_50,
  custom
};
ULLAGE_ENUM_WORDS(KegKind, "ball_lock_9", "ball_lock_11", "ball_lock_19", "pin_lock_9",
                  "pin_lock_11", "pin_lock_19", "us_half_barrel", "us_quarter_barrel",
                  "us_slim_quarter", "us_sixth_barrel", "keg_20", "keg_30", "keg_50", "custom");
enum class Owner { ours, rented, supplier };
ULLAGE_ENUM_WORDS(Owner, "ours", "rented", "supplier");

struct KegRecord {
  static constexpr std::string_view kind = "keg_record";
  KegId keg;
  std::string tag;  // unique among kegs in use, short: "K07"
  KegKind keg_kind = KegKind::custom;
  Volume nominal = units::litres(0);  // what it is sold as holding
  Volume brimful = units::litres(0);  // to the brim: liquid and gas
  Volume brimful_half_width = units::litres(0);
  std::optional<Mass> tare;
  std::optional<Mass> tare_half_width;
  std::optional<GaugePressure> rated_pressure;
  std::string coupler;  // post or coupler kind, in trade words: "ball lock", "S", "A", "G"
  Owner owner = Owner::ours;
  std::optional<std::int64_t> deposit_minor;  // in the smallest unit of money
  std::optional<PlaceId> place;               // where it stands from then on
  bool in_use = true;                         // false: scrapped, sold, gone back for good

  // To the brim; what it is sold as holding where nobody stated that.
  [[nodiscard]] Volume holds() const { return brimful.value() > 0 ? brimful : nominal; }
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("keg", self.keg);
    visit("tag", self.tag);
    visit("keg_kind", self.keg_kind);
    visit("nominal_m3", self.nominal);
    visit("brimful_m3", self.brimful);
    visit("brimful_half_width_m3", self.brimful_half_width);
    visit("tare_kg", self.tare);
    visit("tare_half_width_kg", self.tare_half_width);
    visit("rated_pressure_pa", self.rated_pressure);
    visit("coupler", self.coupler);
    visit("owner", self.owner);
    visit("deposit_minor", self.deposit_minor);
    visit("place", self.place);
    visit("in_use", self.in_use);
  }
};

struct BeerRecord {
  static constexpr std::string_view kind = "beer_record";
  BeerId beer;
  std::string name;
  std::string style;
  std::optional<Co2Concentration> co2_low;  // the range it should be served in
  std::optional<Co2Concentration> co2_high;
  std::string allergens;
  std::optional<std::int64_t> price_minor_per_litre;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("beer", self.beer);
    visit("name", self.name);
    visit("style", self.style);
    visit("co2_low_g_per_l", self.co2_low);
    visit("co2_high_g_per_l", self.co2_high);
    visit("allergens", self.allergens);
    visit("price_minor_per_litre", self.price_minor_per_litre);
  }
};

enum class BatchOrigin { brewed_here, delivered };
ULLAGE_ENUM_WORDS(BatchOrigin, "brewed_here", "delivered");

struct BatchRecord {
  static constexpr std::string_view kind = "batch_record";
  BatchId batch;
  BeerId beer;
  std::string name;  // lot, gyle or brew number
  BatchOrigin origin = BatchOrigin::brewed_here;
  std::optional<SpecificGravity> original_gravity;
  std::optional<SpecificGravity> final_gravity;
  std::optional<units::Abv> abv;  // as declared; else computed from the gravities
  std::optional<Date> packaged_on;
  std::optional<Date> best_by;
  std::string supplier;
  // Warmest the beer has been since fermentation ended: sets the CO2 it kept.
  std::optional<Temperature> warmest_after_fermentation;
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("batch", self.batch);
    visit("beer", self.beer);
    visit("name", self.name);
    visit("origin", self.origin);
    visit("original_gravity_sg", self.original_gravity);
    visit("final_gravity_sg", self.final_gravity);
    visit("abv_percent", self.abv);
    visit("packaged_on_day", self.packaged_on);
    visit("best_by_day", self.best_by);
    visit("supplier", self.supplier);
    visit("warmest_after_fermentation_k", self.warmest_after_fermentation);
  }
};

enum class PlaceKind { cold_box, cellar_room, room, bar };
ULLAGE_ENUM_WORDS(PlaceKind, "cold_box", "cellar_room", "room", "bar");

struct PlaceRecord {
  static constexpr std::string_view kind = "place_record";
  PlaceId place;
  std::string name;
  PlaceKind place_kind = PlaceKind::cold_box;
  std::optional<Temperature> set_temperature;  // what it is set to hold
  std::optional<Volume> net_air_volume;        // without kegs and stock
  bool in_use = true;
  std::optional<double> air_changes_per_hour;  // of its ventilation, outside air
  std::optional<bool> below_ground;
  std::optional<std::int64_t> walk_order;  // where it comes in a round through the cellar
  std::optional<Length> sensor_height;     // of the gas alarm's sensor above the floor
  template <class Self, class Visit>
  static void fields(Self& self, Visit&& visit) {
    visit("place", self.place);
    visit("name", self.name);
    visit("place_kind", self.place_kind);
    visit("set_temperature_k", self.set_temperature);
    visit("net_air_volume_m3", self.net_air_volume);
    visit("in_use", self.in_use);
    visit("air_changes_per_hour", self.air_changes_per_hour);
    visit("below_ground", self.below_ground);
    visit("walk_order", self.walk_order);
    visit("sensor_height_m", self.sensor_height);
  }
};

}  // namespace ullage::cellar
