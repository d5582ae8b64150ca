// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/demo_register.h"

#include <fmt/format.h>

#include "core/cellar/presets.h"
#include "core/cellar/work_rules.h"

namespace ullage::app {
namespace {

using namespace ullage::cellar;
using units::celsius;
using units::grams_per_litre;
using units::kilograms;
using units::metres;
using units::millimetres;
using units::specific_gravity;

constexpr int registered_days_ago = 40;
constexpr std::int64_t price_minor_per_litre = 700;

DemoPlaces register_places(DemoStory& story, Instant at) {
  const auto place = [&](const char* name, PlaceKind kind, const std::optional<Temperature>& set,
                         const std::optional<Volume>& air) {
    PlaceRecord p{.place = story.fresh<PlaceId>(), .name = name, .place_kind = kind};
    p.set_temperature = set;
    p.net_air_volume = air;
    story.did(at, p);
    return p.place;
  };
  return {
      .cold_box = place("Cold box", PlaceKind::cold_box, celsius(3.5), units::cubic_metres(2.4)),
      .conditioning =
          place("Conditioning fridge", PlaceKind::cold_box, celsius(1.0), units::cubic_metres(0.6)),
      .cellar_room = place("Cellar", PlaceKind::cellar_room, celsius(12), units::cubic_metres(38)),
      .bar = place("Bar", PlaceKind::bar, std::nullopt, std::nullopt)};
}

InstrumentId register_instrument(DemoStory& story, Instant at, const std::string& name,
                                 InstrumentKind kind) {
  InstrumentRecord i = instrument_from_preset(kind);
  i.instrument = story.fresh<InstrumentId>();
  i.name = name;
  story.did(at, i);
  return i.instrument;
}

DemoInstruments register_instruments(DemoStory& story, Instant at) {
  const auto instrument = [&](const char* name, InstrumentKind kind) {
    return register_instrument(story, at, name, kind);
  };
  return {.dial_a = instrument("Serving dial", InstrumentKind::regulator_dial),
          .dial_b = instrument("Burst dial", InstrumentKind::regulator_dial),
          .fridge = instrument("Fridge displays", InstrumentKind::fridge_display),
          .bottle_thermometer = instrument("Probe in water", InstrumentKind::thermometer),
          .parcel_scale = instrument("Parcel scale", InstrumentKind::parcel_scale),
          .bathroom_scale = instrument("Bathroom scale", InstrumentKind::bathroom_scale)};
}

DemoGas register_gas(DemoStory& story, Instant at, const DemoPlaces& places,
                     const DemoInstruments& instruments) {
  const auto bottle = [&](const char* name, int retest_in_days) {
    BottleRecord b{.bottle = story.fresh<BottleId>(), .name = name};
    b.tare = kilograms(9.4);
    b.content = kilograms(6.35);
    b.retest_due = story.date(retest_in_days);
    b.fill_ratio = units::fraction(0.75);
    b.price_minor = 2600;
    b.place = places.cellar_room;
    story.did(at, b);
    return b.bottle;
  };
  DemoGas gas;
  gas.one = bottle("CO₂ bottle 1", 700);
  gas.two = bottle("CO₂ bottle 2", 1400);
  const auto log = [&](RegulatorRecord r, const std::string& name, InstrumentId dial) {
    r.regulator = story.fresh<RegulatorId>();
    r.name = name;
    r.place = places.cellar_room;
    r.dial = dial;
    story.did(at, r);
    return r.regulator;
  };
  const auto regulator = [&](const char* name, InstrumentId dial) {
    return log({.bottle = gas.one, .mass = kilograms(1.1)}, name, dial);
  };
  gas.serving = regulator("Serving regulator", instruments.dial_a);
  gas.burst = regulator("Burst regulator", instruments.dial_b);
  const auto outlet = [&](int number) {
    const std::string name = fmt::format("Secondary {}", number);
    const InstrumentId dial =
        register_instrument(story, at, name + " dial", InstrumentKind::regulator_dial);
    return DemoOutlet{log({.fed_by = gas.burst}, name, dial), dial};
  };
  gas.lager = outlet(1);
  gas.saison = outlet(2);
  gas.ginger = outlet(3);
  gas.porter = outlet(4);
  return gas;
}

DemoLines register_lines(DemoStory& story, Instant at, const DemoPlaces& places,
                         const DemoGas& gas) {
  const auto line = [&](const char* name, const char* tap, RegulatorId regulator, double length_m,
                        double bore_mm) {
    LineRecord l{.line = story.fresh<LineId>(), .name = name, .tap = tap};
    l.place = places.bar;
    l.regulator = regulator;
    l.length = metres(length_m);
    l.bore = millimetres(bore_mm);
    l.rise = metres(1.1);
    l.clean_every_days = 14;
    l.clean_reason = "own rule";
    l.clean_source = "trade handbook";
    story.did(at, l);
    return l.line;
  };
  return {.one = line("Line 1", "1", gas.serving, 3.2, 4.8),
          .two = line("Line 2", "2", gas.lager.regulator, 4.0, 4.8),
          .three = line("Line 3", "3", gas.serving, 3.2, 4.8)};
}

// The trade handbook's set, what is usual apart from the lines, and one rule of
// their own.
void register_rules(DemoStory& story, Instant at, const DemoPlaces& places) {
  std::vector<RuleRecord> rules;
  for (const std::size_t set : {1UZ, 3UZ}) {
    for (RuleRecord& r : rules_to_add(ready_rule_sets()[set], rules, story.ids())) {
      rules.push_back(std::move(r));
    }
  }
  RuleRecord own{.rule = story.fresh<RuleId>(), .scope = RuleScope::place};
  own.work = WorkKind::place_clean;
  own.place = places.bar;
  own.interval_days = 3;
  own.reason = "drip trays smell on the fourth day";
  own.source = "own rule";
  rules.push_back(own);
  for (const RuleRecord& r : rules) story.did(at, r);
}

struct BeerIn {
  const char* beer;
  const char* style;
  double low_volumes, high_volumes;
  const char* batch;
  double og, fg;
  int packaged_days_ago;
};

BatchRecord brew(DemoStory& story, const BeerIn& in, BeerId beer, double warmest_c) {
  BatchRecord batch{.batch = story.fresh<BatchId>(), .beer = beer, .name = in.batch};
  batch.original_gravity = specific_gravity(in.og);
  batch.final_gravity = specific_gravity(in.fg);
  batch.packaged_on = story.date(-in.packaged_days_ago);
  batch.best_by = story.date(90 - in.packaged_days_ago);
  batch.warmest_after_fermentation = celsius(warmest_c);
  return batch;
}

BeerRecord beer_of(DemoStory& story, const BeerIn& in) {
  BeerRecord beer{.beer = story.fresh<BeerId>(), .name = in.beer, .style = in.style};
  beer.co2_low = units::to_concentration(units::volumes_of_co2(in.low_volumes));
  beer.co2_high = units::to_concentration(units::volumes_of_co2(in.high_volumes));
  beer.price_minor_per_litre = price_minor_per_litre;
  return beer;
}

BatchId brewed(DemoStory& story, const BeerIn& in, double warmest_c) {
  BeerRecord beer = beer_of(story, in);
  beer.allergens = "barley";
  const BatchRecord batch = brew(story, in, beer.beer, warmest_c);
  story.did(story.ago(in.packaged_days_ago + 2, 12), beer, batch);
  return batch.batch;
}

BatchId bought(DemoStory& story, const BeerIn& in, double abv) {
  const BeerRecord beer = beer_of(story, in);
  BatchRecord batch{.batch = story.fresh<BatchId>(), .beer = beer.beer, .name = in.batch};
  batch.origin = BatchOrigin::delivered;
  batch.abv = units::percent_abv(abv);
  batch.supplier = "Hillside brewery";
  story.did(story.ago(in.packaged_days_ago, 9), beer, batch);
  return batch.batch;
}

DemoBatches register_batches(DemoStory& story) {
  DemoBatches b;
  const BeerIn old_bitter{"Tern Bitter", "Bitter", 1.9, 2.3, "Brew 38", 1.040, 1.010, 30};
  const BeerIn new_bitter{"Tern Bitter", "Bitter", 1.9, 2.3, "Brew 41", 1.040, 1.010, 25};
  const BeerRecord bitter = beer_of(story, old_bitter);
  const BatchRecord first = brew(story, old_bitter, bitter.beer, 19);
  const BatchRecord second = brew(story, new_bitter, bitter.beer, 19);
  story.did(story.ago(32, 12), bitter, first);
  story.did(story.ago(27, 12), second);
  b.old_bitter = first.batch;
  b.bitter = second.batch;
  b.saison = brewed(story, {"Saison No. 4", "Saison", 2.5, 2.9, "Brew 44", 1.052, 1.006, 13}, 24);
  b.rye = brewed(story, {"Red Rye", "Rye ale", 2.3, 2.6, "Brew 46", 1.054, 1.012, 1}, 19);
  b.ginger =
      brewed(story, {"Ginger Beer", "Ginger beer", 2.7, 3.2, "Brew 45", 1.038, 1.008, 4}, 20);
  b.porter = brewed(story, {"Ebb Porter", "Porter", 2.1, 2.5, "Brew 39", 1.058, 1.016, 33}, 19);
  b.amber = brewed(story, {"Amber Ale", "Amber ale", 2.2, 2.6, "Brew 42", 1.048, 1.011, 21}, 19);
  b.lager = bought(story, {"Hillside Lager", "Lager", 2.4, 2.7, "L2291", 0, 0, 6}, 4.4);
  b.pils = bought(story, {"Hillside Pils", "Pils", 2.5, 2.8, "L2305", 0, 0, 2}, 4.8);
  b.pale = bought(story, {"Quarry Pale", "Pale ale", 2.2, 2.6, "G118", 0, 0, 3}, 4.1);
  return b;
}

DemoKegs register_kegs(DemoStory& story, Instant at, const DemoPlaces& places) {
  const auto keg = [&](const char* tag, KegKind kind, PlaceId place, Owner owner = Owner::ours) {
    KegRecord k = keg_from_preset(kind);
    k.keg = story.fresh<KegId>();
    k.tag = tag;
    k.place = place;
    k.owner = owner;
    if (owner == Owner::supplier) k.deposit_minor = 4000;
    story.did(at, k);
    return k.keg;
  };
  constexpr KegKind soda = KegKind::ball_lock_19;
  return {.k01 = keg("K01", soda, places.cold_box),
          .k02 = keg("K02", KegKind::ball_lock_9, places.cold_box),
          .k03 = keg("K03", soda, places.cold_box),
          .k04 = keg("K04", soda, places.cold_box),
          .k05 = keg("K05", soda, places.cellar_room),
          .k06 = keg("K06", soda, places.cellar_room),
          .k07 = keg("K07", soda, places.cellar_room),
          .k08 = keg("K08", soda, places.cellar_room),
          .k09 = keg("K09", soda, places.cellar_room),
          .k10 = keg("K10", soda, places.cold_box),
          .k11 = keg("K11", KegKind::pin_lock_19, places.cellar_room),
          .k12 = keg("K12", soda, places.cellar_room),
          .p01 = keg("P01", KegKind::keg_50, places.cold_box, Owner::supplier),
          .p02 = keg("P02", KegKind::keg_30, places.cold_box, Owner::supplier),
          .p03 = keg("P03", KegKind::us_sixth_barrel, places.cold_box, Owner::supplier)};
}

}  // namespace

CellarDescribed demo_description() {
  CellarDescribed c;
  c.name = "Low Water brewery tap";
  c.altitude = metres(12);
  c.time_zone = "Europe/London";
  c.units = UnitsPreset::british;
  return c;
}

DemoRegister register_demo(DemoStory& story) {
  const Instant at = story.ago(registered_days_ago, 10);
  DemoRegister r;
  r.places = register_places(story, at);
  r.instruments = register_instruments(story, at);
  r.gas = register_gas(story, at, r.places, r.instruments);
  r.lines = register_lines(story, at, r.places, r.gas);
  register_rules(story, at, r.places);
  r.kegs = register_kegs(story, at, r.places);
  r.batches = register_batches(story);
  return r;
}

}  // namespace ullage::app
