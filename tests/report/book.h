// SPDX-License-Identifier: GPL-3.0-or-later
//
// A small cellar with something for every log: told once, printed many ways. The
// days are those of tests/cellar/scenario.h (day 0 is Monday 2 November 2026).
#pragma once

#include <map>
#include <string>

#include "core/report/say.h"
#include "core/units/present.h"
#include "tests/cellar/scenario.h"

namespace ullage::testing {

class Book {
 public:
  Book() {
    tell_register();
    tell_kegs();
    tell_lines();
    tell_places();
    tell_gas();
    tell_losses();
  }

  // Each entry was recorded when it happened, unless said otherwise.
  [[nodiscard]] Journal journal() const {
    Journal told;
    for (const Entry& e : s.journal.entries()) {
      Entry copy = e;
      copy.header.recorded_at = e.header.happened_at;
      if (const auto at = marks.find(e.header.id); at != marks.end()) {
        copy.header.by = at->second.by;
        copy.header.note = at->second.note;
        if (at->second.recorded_at) copy.header.recorded_at = present(at->second.recorded_at);
      }
      told.append(std::move(copy));
    }
    return told;
  }
  [[nodiscard]] static Instant now() { return day(22, 15); }  // Tuesday 24 November, 15:00
  [[nodiscard]] report::Speaker speaker(
      report::RegionalWords words = report::RegionalWords::british) const {
    return {{units::DisplayUnits::british(), {}}, &s.calendar, words, now()};
  }

  Scenario s;
  KegId k01, k02, k03, k04, p01;
  LineId one, two, three;
  BatchId bitter, lager;
  BeerId bitter_beer;
  PlaceId box, cellar_room;
  BottleId bottle, mixed;
  RegulatorId regulator;
  EntryId struck_cleaning;

 private:
  struct Mark {
    std::string by, note;
    std::optional<Instant> recorded_at;
  };
  std::map<EntryId, Mark> marks;

  EntryId did(Instant when, Payload payload, const std::string& by = "AB",
              const std::string& note = {}, std::optional<Instant> recorded = {}) {
    const EntryId id = s.log(when, std::move(payload));
    marks[id] = {by, note, recorded};
    return id;
  }

  void tell_register() {
    box = s.place("Cold box", 3.0);
    cellar_room = s.place("Cellar, north", 12.0);
    bitter = batch_of("Tern Bitter", "Bitter", 450, bitter_beer);
    BeerId unused;
    lager = batch_of("Hillside Lager, \"new\"", "Lager", {}, unused);
    for (const auto& [id, name, tap] :
         {std::tuple(&one, "Line 1", "1"), {&two, "Line 2", "2"}, {&three, "Line 3", "3"}}) {
      LineRecord r;
      r.line = ids.make<LineId>();
      r.name = name;
      r.tap = tap;
      if (*tap != '3') r.clean_every_days = 14;
      if (*tap != '3') r.clean_source = "trade handbook";
      did(day(-60), r);
      *id = r.line;
    }
  }
  BatchId batch_of(const char* name, const char* style, std::optional<std::int64_t> price,
                   BeerId& beer) {
    BeerRecord b;
    b.beer = beer = ids.make<BeerId>();
    b.name = name;
    b.style = style;
    b.allergens = "barley";
    b.co2_low = units::to_concentration(units::volumes_of_co2(1.9));
    b.co2_high = units::to_concentration(units::volumes_of_co2(2.3));
    b.price_minor_per_litre = price;
    did(day(-60), b);
    BatchRecord r;
    r.batch = ids.make<BatchId>();
    r.beer = b.beer;
    r.name = std::string(style) == "Lager" ? "L2291" : "Brew 41";
    r.original_gravity = units::specific_gravity(1.040);
    r.final_gravity = units::specific_gravity(1.010);
    r.best_by = date(70);
    did(day(-59), r);
    return r.batch;
  }
  void tell_kegs() {
    k01 = s.keg("K01", box);
    k02 = s.keg("K02", box);
    k03 = s.keg("K03", cellar_room);
    k04 = s.keg("K04", cellar_room);
    KegRecord p = keg_from_preset(KegKind::keg_50);
    p.keg = p01 = ids.make<KegId>();
    p.tag = "P01";
    p.place = box;
    p.owner = Owner::supplier;
    p.deposit_minor = 4000;
    did(day(-50), p);
    Inspected seals{.keg = k01};
    seals.seals_renewed = true;
    did(day(-12), seals);
    s.prepare(k01, day(-11));
    s.fill(k01, bitter, day(-10), 18.6, 12.0);
    s.gas(k01, day(-10, 1), 7, GasPurpose::set_and_wait);
    did(day(1, 16), Tapped{.keg = k01, .line = one});
    s.prepare(k02, day(-11));
    s.fill(k02, bitter, day(-10, 2), 18.4, 12.0);
    Received in{.keg = p01, .batch = lager};
    in.supplier = "Hillside brewery";
    did(day(8, 10), in, "JB");
    did(day(8, 12), Tapped{.keg = p01, .line = two}, "JB");
    Lent lent{.keg = k04};
    lent.to = "Village hall";
    lent.deposit_minor = 3000;
    lent.due_back = date(18);
    did(day(12, 12), lent, "JB");
    did(day(20, 9), Quarantined{.keg = k03, .reason = "dented chime"}, "JB");
  }
  LineCleaned cleaning(LineId line) const {
    LineCleaned c{.line = line};
    c.agent_name = "caustic line cleaner";
    c.strength_percent = 2;
    c.contact = units::minutes(20);
    c.temperature = units::celsius(45);
    c.flush_check = FlushCheck::litmus;
    c.flush_passed = true;
    c.faucet = c.coupler = true;
    c.beer_lost = units::litres(0.4);
    return c;
  }
  void tell_lines() {
    did(day(-2, 9), cleaning(one));
    did(day(2, 9), LineLocked{.line = one, .agent_name = "caustic line cleaner"});
    did(day(2, 9.5), cleaning(one), "AB", "Nozzle worn, order one");
    did(day(2, 10.25), LineReleased{.line = one,
                                    .check = FlushCheck::litmus,
                                    .passed = true,
                                    .checked_by = "AB",
                                    .countersigned_by = "JB"});
    LineCleaned acid = cleaning(two);
    acid.agent = LineAgent::acid;
    acid.agent_name = "line acid";
    acid.method = SoakMethod::recirculated;
    acid.flush_check = FlushCheck::none;
    acid.flush_passed.reset();
    acid.beer_lost.reset();
    acid.foam_detector = true;
    did(day(9, 10), acid, "JB", {}, day(11, 8));
    struck_cleaning = did(day(10, 9), cleaning(three), "AB", "wrong line");
    did(day(10, 9.25), Struck{.target = struck_cleaning, .reason = "it was line 1"}, "JB");
    did(day(10, 9.5), cleaning(one));
    did(day(22, 14), LineLocked{.line = two, .agent_name = "caustic line cleaner"}, "JB");
  }
  void tell_places() {
    InstrumentRecord thermometer = instrument_from_preset(InstrumentKind::thermometer);
    thermometer.instrument = ids.make<InstrumentId>();
    thermometer.name = "Probe in water";
    did(day(-60), thermometer);
    for (const int d : {0, 1, 2, 5}) {
      TemperatureRead r{.place = box, .temperature = units::celsius(3.0 + 0.5 * d)};
      r.thermometer = thermometer.instrument;
      r.of = TemperatureOf::liquid;
      did(day(d, 8), r, "AB", d == 5 ? "Door stood open; shut it" : "");
    }
    const EntryId typed =
        did(day(6, 8), TemperatureRead{.place = box, .temperature = units::celsius(35)});
    did(day(6, 8.1), Struck{.target = typed, .reason = "meant 3.5"});
  }
  void tell_gas() {
    BottleRecord b;
    b.bottle = bottle = ids.make<BottleId>();
    b.name = "Bottle 1";
    b.tare = units::kilograms(8.2);
    b.content = units::kilograms(6.35);
    b.retest_due = Date(std::chrono::local_days(std::chrono::year(2029) / 5 / 1));
    b.place = cellar_room;
    did(day(-60), b);
    b.bottle = mixed = ids.make<BottleId>();
    b.name = "Stout gas";
    b.co2 = units::mole_fraction(0.3);
    did(day(-60), b);
    RegulatorRecord r;
    r.regulator = regulator = ids.make<RegulatorId>();
    r.name = "Serving regulator";
    r.bottle = bottle;
    did(day(-60), r);
    did(day(1, 18), BottleWeighed{.bottle = bottle, .gross_mass = units::kilograms(12.4)});
    BottleChanged change{.regulator = regulator, .bottle = mixed};
    change.co2_on_tag = units::mole_fraction(0.4);
    change.washer_renewed = true;
    did(day(4, 12), change, "JB", "tag says 40 %");
    did(day(4, 12.25),
        LeakTested{.regulator = regulator, .leak_found = true, .where = "at the nut"}, "JB");
    GaugeRead gauge{.bottle = mixed, .pressure = units::gauge_bar(140)};
    did(day(5, 12), gauge);
    did(day(7, 9), AlarmChecked{.place = cellar_room, .passed = true});
  }
  void tell_losses() {
    did(day(3, 22), Wasted{.keg = k01, .reason = WasteReason::foam, .volume = units::litres(1.5)},
        "AB", "first pours");
    did(day(9, 22), Wasted{.keg = p01, .reason = WasteReason::spill, .volume = units::litres(0.5)},
        "JB");
    const EntryId twice =
        did(day(9, 22.1),
            Wasted{.keg = p01, .reason = WasteReason::spill, .volume = units::litres(0.5)}, "JB");
    did(day(9, 22.2), Struck{.target = twice, .reason = "typed twice"}, "JB");
    did(day(21, 9), BatchRecalled{.batch = lager, .reason = "supplier’s notice, off flavour"},
        "JB");
  }

  CountingIds ids{7};
};

}  // namespace ullage::testing
