// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/demo_cellar.h"

#include <fmt/format.h>

#include <algorithm>
#include <stdexcept>

#include "app/demo_register.h"
#include "app/zone_calendar.h"

namespace ullage::app {
namespace {

using namespace ullage::cellar;
using namespace std::chrono_literals;
using units::celsius;
using units::gauge_psi;
using units::grams_per_litre;
using units::kilograms;
using units::litres;
using units::minutes;
using units::specific_gravity;

// --- building blocks

Cleaned caustic_wash(KegId keg) {
  Cleaned c{.keg = keg};
  c.agent = "caustic cleaner";
  c.strength_percent = 2.0;
  c.contact = minutes(15);
  c.temperature = celsius(45);
  return c;
}

Sanitised acid_rinse(KegId keg) {
  Sanitised s{.keg = keg};
  s.agent = "acid sanitiser";
  s.contact = minutes(3);
  return s;
}

Purged cycles(KegId keg, std::int64_t n, double psi, InstrumentId dial) {
  Purged p{.keg = keg};
  p.cycles = n;
  p.pressure = gauge_psi(psi);
  p.instrument = dial;
  return p;
}

HoldReading hold(KegId keg, double psi, InstrumentId dial, double deg_c, InstrumentId thermometer,
                 bool starts) {
  HoldReading h{.keg = keg, .pressure = gauge_psi(psi)};
  h.instrument = dial;
  h.temperature = celsius(deg_c);
  h.thermometer = thermometer;
  h.starts_test = starts;
  return h;
}

GasSet gas(KegId keg, double psi, GasPurpose why, RegulatorId regulator, InstrumentId dial) {
  GasSet g{.keg = keg, .pressure = gauge_psi(psi), .purpose = why};
  g.regulator = regulator;
  g.instrument = dial;
  return g;
}

Filled fill(KegId keg, BatchId batch, double volume_l, double deg_c, double sg,
            InstrumentId thermometer) {
  Filled f{.keg = keg, .batch = batch};
  f.volume = litres(volume_l);
  f.temperature = celsius(deg_c);
  f.thermometer = thermometer;
  f.gravity = specific_gravity(sg);
  return f;
}

LeakTested lid_dry(KegId keg) {
  LeakTested t;
  t.keg = keg;
  t.where = "lid and posts";
  return t;
}

LevelReading glasses(KegId keg, double n) {
  LevelReading r{.keg = keg, .method = LevelMethod::glasses};
  r.glasses = n;
  r.glass_volume = units::imperial_pints(1);
  return r;
}

TemperatureRead temperature(PlaceId place, double deg_c, InstrumentId thermometer) {
  TemperatureRead t{.place = place, .temperature = celsius(deg_c)};
  t.thermometer = thermometer;
  return t;
}

LineCleaned line_clean(LineId line) {
  LineCleaned c{.line = line};
  c.agent_name = "caustic line cleaner";
  c.strength_percent = 2.0;
  c.contact = minutes(20);
  c.flush_check = FlushCheck::litmus;
  c.flush_passed = true;
  c.faucet = true;
  c.coupler = true;
  c.beer_lost = litres(0.4);
  return c;
}

// A keg made ready and filled in one evening, as our own kegs are.
void prepared_and_filled(DemoStory& story, const DemoRegister& r, int days_ago, Filled filled) {
  const KegId keg = filled.keg;
  story.did(story.ago(days_ago + 2, 18, 10), caustic_wash(keg));
  Inspected seals{.keg = keg};
  seals.seals_lubricated = true;
  seals.lid_seated = true;
  story.did(story.ago(days_ago + 2, 18, 50), seals);
  story.did(story.ago(days_ago + 2, 19, 5),
            hold(keg, 30, r.instruments.dial_b, 18.0, r.instruments.bottle_thermometer, true));
  story.did(story.ago(days_ago, 17, 40),
            hold(keg, 30, r.instruments.dial_b, 18.2, r.instruments.bottle_thermometer, false));
  story.did(story.ago(days_ago, 17, 50), Vented{.keg = keg, .to_pressure = {}});
  story.did(story.ago(days_ago, 18, 20), acid_rinse(keg));
  story.did(story.ago(days_ago, 18, 50), cycles(keg, 5, 30, r.instruments.dial_b));
  story.did(story.ago(days_ago, 19, 20), std::move(filled));
}

// --- the story, keg by keg

// Stock-taking on the first day: one keg stays unknown, as one always does.
void stock_taking(DemoStory& story, const DemoRegister& r) {
  const DemoKegs& k = r.kegs;
  for (const KegId keg :
       {k.k01, k.k02, k.k03, k.k04, k.k05, k.k06, k.k07, k.k08, k.k09, k.k10, k.k12}) {
    story.did(story.ago(39, 15), Found{.keg = keg, .contents = FoundContents::empty_dirty});
  }
}

void on_tap_bitter(DemoStory& story, const DemoRegister& r) {
  const KegId keg = r.kegs.k03;
  prepared_and_filled(
      story, r, 25,
      fill(keg, r.batches.bitter, 18.6, 12.0, 1.010, r.instruments.bottle_thermometer));
  story.did(story.ago(25, 19, 40),
            gas(keg, 7, GasPurpose::set_and_wait, r.gas.serving, r.instruments.dial_a),
            lid_dry(keg));
  story.did(story.ago(9, 16, 30), Tapped{.keg = keg, .line = r.lines.one});
  story.by("JB");
  story.did(story.ago(7, 23, 10), glasses(keg, 6));
  story.did(story.ago(4, 23, 20), glasses(keg, 5));
  story.did(story.ago(1, 23, 5), glasses(keg, 4));
  story.by("MK");
}

void ready_saison(DemoStory& story, const DemoRegister& r) {
  const KegId keg = r.kegs.k04;
  prepared_and_filled(
      story, r, 13,
      fill(keg, r.batches.saison, 18.4, 6.0, 1.006, r.instruments.bottle_thermometer));
  story.did(story.ago(13, 19, 35),
            gas(keg, 30, GasPurpose::burst, r.gas.burst, r.instruments.dial_b), lid_dry(keg));
  story.did(story.ago(11, 17, 0), Vented{.keg = keg, .to_pressure = gauge_psi(14)},
            gas(keg, 14, GasPurpose::serving, r.gas.saison.regulator, r.gas.saison.dial));
  CarbonationReading rest{.keg = keg};
  rest.pressure = gauge_psi(13.5);
  rest.instrument = r.gas.saison.dial;
  rest.temperature = celsius(3.4);
  rest.thermometer = r.instruments.bottle_thermometer;
  story.did(story.ago(3, 10, 15), rest);
}

void carbonating_rye(DemoStory& story, const DemoRegister& r) {
  const KegId keg = r.kegs.k01;
  prepared_and_filled(story, r, 1,
                      fill(keg, r.batches.rye, 18.6, 4.0, 1.012, r.instruments.bottle_thermometer));
  story.did(story.ago(1, 19, 25), Moved{.keg = keg, .place = r.places.conditioning});
  story.did(story.ago(1, 19, 40),
            gas(keg, 30, GasPurpose::burst, r.gas.burst, r.instruments.dial_b), lid_dry(keg));
}

void carbonating_ginger(DemoStory& story, const DemoRegister& r) {
  const KegId keg = r.kegs.k02;
  prepared_and_filled(
      story, r, 4, fill(keg, r.batches.ginger, 9.2, 8.0, 1.008, r.instruments.bottle_thermometer));
  story.did(story.ago(4, 19, 40),
            gas(keg, 20, GasPurpose::set_and_wait, r.gas.ginger.regulator, r.gas.ginger.dial),
            lid_dry(keg));
}

void porter_that_never_gets_there(DemoStory& story, const DemoRegister& r) {
  const KegId keg = r.kegs.k10;
  prepared_and_filled(
      story, r, 33,
      fill(keg, r.batches.porter, 18.2, 12.0, 1.016, r.instruments.bottle_thermometer));
  story.did(story.ago(33, 19, 45),
            gas(keg, 4, GasPurpose::set_and_wait, r.gas.porter.regulator, r.gas.porter.dial),
            lid_dry(keg));
}

void quarantined_amber(DemoStory& story, const DemoRegister& r) {
  const KegId keg = r.kegs.k09;
  // Filled in a hurry: no sanitising was logged.
  story.did(story.ago(21, 18, 0), caustic_wash(keg));
  story.did(story.ago(21, 19, 0),
            fill(keg, r.batches.amber, 18.0, 10.0, 1.011, r.instruments.bottle_thermometer));
  story.did(story.ago(21, 19, 30),
            gas(keg, 12, GasPurpose::set_and_wait, r.gas.lager.regulator, r.gas.lager.dial));
  story.did(story.ago(2, 11, 0), Quarantined{.keg = keg, .reason = "smells of vinegar"},
            GasOff{keg});
}

void empties(DemoStory& story, const DemoRegister& r) {
  const InstrumentId dial = r.instruments.dial_b;
  const InstrumentId thermometer = r.instruments.bottle_thermometer;
  // K05: waiting for the next brew, purged and holding.
  story.did(story.ago(8, 18, 0), caustic_wash(r.kegs.k05));
  story.did(story.ago(8, 18, 40), acid_rinse(r.kegs.k05));
  story.did(story.ago(8, 19, 0), cycles(r.kegs.k05, 6, 30, dial));
  story.did(story.ago(8, 19, 15), hold(r.kegs.k05, 12, dial, 12.1, thermometer, true));
  story.did(story.ago(1, 18, 30), hold(r.kegs.k05, 12, dial, 11.9, thermometer, false));
  // K06: washed, nothing more.
  story.did(story.ago(2, 18, 20), caustic_wash(r.kegs.k06));
  // K07: washed, and does not hold.
  story.did(story.ago(5, 18, 30), caustic_wash(r.kegs.k07));
  story.did(story.ago(2, 19, 0), hold(r.kegs.k07, 30, dial, 18.0, thermometer, true));
  story.noted(story.ago(1, 19, 0), "Hiss at the lid.",
              hold(r.kegs.k07, 22, dial, 18.1, thermometer, false));
  // K08: ran out on tap 3 the night before last.
  story.did(story.ago(30, 19, 0),
            fill(r.kegs.k08, r.batches.old_bitter, 18.5, 12.0, 1.010, thermometer));
  story.did(story.ago(30, 19, 20),
            gas(r.kegs.k08, 7, GasPurpose::set_and_wait, r.gas.serving, r.instruments.dial_a));
  story.did(story.ago(16, 16, 0), Tapped{.keg = r.kegs.k08, .line = r.lines.three});
  story.did(story.ago(2, 22, 40), Untapped{r.kegs.k08}, Emptied{r.kegs.k08}, GasOff{r.kegs.k08});
  // K12: at a friend's wedding.
  Lent lent{.keg = r.kegs.k12};
  lent.to = "Village hall";
  lent.due_back = story.date(4);
  story.did(story.ago(6, 12, 0), lent);
}

Received delivery(KegId keg, BatchId batch, Date best_by, double deg_c, double volumes,
                  InstrumentId thermometer) {
  Received d{.keg = keg, .batch = batch};
  d.supplier = "Hillside brewery";
  d.best_by = best_by;
  d.temperature = celsius(deg_c);
  d.thermometer = thermometer;
  d.co2 = units::to_concentration(units::volumes_of_co2(volumes));
  d.co2_half_width = grams_per_litre(0.3);
  d.seal_intact = true;
  return d;
}

void delivered(DemoStory& story, const DemoRegister& r) {
  const InstrumentId thermometer = r.instruments.bottle_thermometer;
  story.by("JB");
  story.did(story.ago(6, 10, 30),
            delivery(r.kegs.p01, r.batches.lager, story.date(47), 6.0, 2.5, thermometer));
  story.did(story.ago(3, 10, 20),
            delivery(r.kegs.p03, r.batches.pale, story.date(9), 5.0, 2.4, thermometer));
  story.did(story.hours_ago(16),
            delivery(r.kegs.p02, r.batches.pils, story.date(61), 13.0, 2.6, thermometer));
  story.did(story.ago(3, 16, 0), Tapped{.keg = r.kegs.p01, .line = r.lines.two},
            gas(r.kegs.p01, 12, GasPurpose::serving, r.gas.lager.regulator, r.gas.lager.dial));
  LevelReading heft{.keg = r.kegs.p01, .method = LevelMethod::heft};
  heft.fraction_left = units::fraction(0.7);
  story.did(story.ago(1, 11, 0), heft);
  story.by("MK");
}

void lines(DemoStory& story, const DemoRegister& r) {
  for (const int day : {38, 24, 10}) story.did(story.ago(day, 9, 30), line_clean(r.lines.one));
  for (const int day : {38, 24}) story.did(story.ago(day, 10, 0), line_clean(r.lines.two));
  for (const int day : {33, 17}) story.did(story.ago(day, 10, 30), line_clean(r.lines.three));
  LineLocked lock{.line = r.lines.two};
  lock.agent_name = "caustic line cleaner";
  lock.reason = "fortnightly clean";
  story.by("JB");
  story.did(story.hours_ago(0.7), lock);
  story.by("MK");
}

void floors(DemoStory& story, const DemoRegister& r) {
  const auto cleaned = [&](PlaceId place) {
    WorkDone w;
    w.work = WorkKind::place_clean;
    w.place = place;
    return w;
  };
  story.by("JB");
  for (const int day : {33, 26, 19, 12, 5}) {
    story.did(story.ago(day, 22, 30), cleaned(r.places.cold_box), cleaned(r.places.conditioning),
              cleaned(r.places.cellar_room));
  }
  for (int day = 38; day > 0; day -= 3) story.did(story.ago(day, 23, 40), cleaned(r.places.bar));
  story.by("MK");
}

void readings(DemoStory& story, const DemoRegister& r) {
  for (int day = 35; day >= 0; --day) {
    // A cold box breathes by a few tenths of a degree.
    const double swing = 0.2 * static_cast<double>(day % 4) - 0.3;
    story.did(story.ago(day, 8, 5),
              temperature(r.places.cold_box, 3.5 + swing, r.instruments.fridge),
              temperature(r.places.conditioning, 1.1 + swing / 2, r.instruments.fridge),
              temperature(r.places.cellar_room, 11.8 + swing, r.instruments.bottle_thermometer));
  }
  double gross = 14.95;
  for (const int day : {36, 29, 22, 15, 8, 1}) {
    BottleWeighed w{.bottle = r.gas.one, .gross_mass = kilograms(gross)};
    w.scale = r.instruments.parcel_scale;
    story.did(story.ago(day, 18, 0), w);
    gross -= 0.27;
  }
  GaugeRead gauge{.bottle = r.gas.one, .pressure = units::gauge_bar(46)};
  gauge.temperature = units::celsius(12);
  story.did(story.ago(1, 18, 5), gauge);
}

}  // namespace

std::vector<Act> demo_acts(Instant now, const LocalCalendar& calendar, IdSource& ids) {
  DemoStory story(now, calendar, ids);
  const DemoRegister r = register_demo(story);
  stock_taking(story, r);
  on_tap_bitter(story, r);
  ready_saison(story, r);
  carbonating_rye(story, r);
  carbonating_ginger(story, r);
  porter_that_never_gets_there(story, r);
  quarantined_amber(story, r);
  empties(story, r);
  delivered(story, r);
  lines(story, r);
  floors(story, r);
  readings(story, r);
  return story.take();
}

namespace {

void tell(CellarSession& cellar, const std::vector<Act>& acts) {
  for (const Act& act : acts) {
    if (const Outcome<ActId> told = cellar.log(act); !told) {
      const Fault& fault = told.error().faults.front();
      const Draft& draft = act.drafts.at(fault.draft);
      throw std::logic_error(fmt::format("the demo tells something impossible: {} in {} ({})",
                                         fault.field, kind_of(draft.payload),
                                         static_cast<int>(fault.why.key)));
    }
  }
}

Instant first_moment(const std::vector<Act>& acts) {
  Instant first = acts.front().drafts.front().happened_at;
  for (const Act& act : acts) {
    for (const Draft& draft : act.drafts) first = std::min(first, draft.happened_at);
  }
  return first;
}

}  // namespace

CellarSession::Made make_demo(const std::filesystem::path& file, CellarSession::Tools tools,
                              const store::OpenOptions& options) {
  const CellarDescribed described = demo_description();
  const ZoneCalendar calendar(described.time_zone);
  const std::vector<Act> acts = demo_acts(tools.clock.now(), calendar, tools.ids);
  auto made = CellarSession::create(file, described, tools, options, first_moment(acts) - 1h);
  if (!made) return made;
  CellarSession& cellar = **made;
  if (const auto told = cellar.as_one([&] { tell(cellar, acts); }); !told) {
    return std::unexpected(told.error());
  }
  return made;
}

}  // namespace ullage::app
