// SPDX-License-Identifier: GPL-3.0-or-later
//
// A cellar told entry by entry, for tests of what is derived from it. Times are
// days and hours since Monday 2 November 2026, 00:00: `scene.log(day(3, 19.5),
// Vented{keg})`. Nothing here knows what should come out.
#pragma once

#include <string>

#include "core/cellar/presets.h"
#include "core/cellar/replay.h"
#include "tests/support/entry_maker.h"

namespace ullage::testing {

using namespace cellar;

// London's: an hour ahead from 29 March to 25 October 2026, 01:00 UTC.
class LondonCalendar final : public LocalCalendar {
 public:
  [[nodiscard]] std::string zone_name() const override { return "Europe/London"; }
  [[nodiscard]] UtcOffset offset_at(Instant t) const override {
    using namespace std::chrono;
    const Instant forward = sys_days(year(2026) / 3 / 29) + 1h;
    const Instant back = sys_days(year(2026) / 10 / 25) + 1h;
    return t >= forward && t < back ? 60min : 0min;
  }
  [[nodiscard]] std::optional<Instant> to_instant(LocalTime local) const override {
    const Instant as_utc(local.time_since_epoch());
    for (const auto offset : {std::chrono::minutes(60), std::chrono::minutes(0)}) {
      if (offset_at(as_utc - offset) == offset) return as_utc - offset;
    }
    return std::nullopt;
  }
};

[[nodiscard]] inline Instant day(int days, double hour = 0) {
  return Instant(std::chrono::sys_days(std::chrono::year(2026) / 11 / 2)) +
         std::chrono::days(days) + std::chrono::seconds(static_cast<long long>(hour * 3600));
}
[[nodiscard]] inline Date date(int days) {
  return Date(std::chrono::local_days(std::chrono::year(2026) / 11 / 2)) + std::chrono::days(days);
}

class Scenario {
 public:
  Scenario() {
    CellarDescribed cellar;
    cellar.name = "Test cellar";
    cellar.time_zone = "Europe/London";
    log(day(-100), cellar);
  }

  EntryId log(Instant when, Payload payload) {
    Entry e = maker_.make(when, std::move(payload));
    const EntryId id = e.header.id;
    journal.append(std::move(e));
    return id;
  }
  void strike(EntryId target) {
    journal.append(maker_.make(day(0), Struck{target, "typed twice"}));
  }

  KegId keg(const std::string& tag, std::optional<PlaceId> place = {},
            KegKind kind = KegKind::ball_lock_19, Instant when = day(-50)) {
    KegRecord r = keg_from_preset(kind);
    r.keg = maker_.ids.make<KegId>();
    r.tag = tag;
    r.place = place;
    log(when, r);
    return r.keg;
  }
  PlaceId place(const std::string& name, std::optional<double> set_celsius = {}) {
    PlaceRecord r;
    r.place = maker_.ids.make<PlaceId>();
    r.name = name;
    if (set_celsius) r.set_temperature = units::celsius(*set_celsius);
    log(day(-60), r);
    return r.place;
  }
  void read(PlaceId place, Instant when, double celsius) {
    log(when, TemperatureRead{place, units::celsius(celsius), {}, TemperatureOf::liquid});
  }
  // A beer with its range in volumes, and a batch of it.
  BatchId batch(const std::string& beer_name, double low = 2.4, double high = 2.6,
                std::optional<double> warmest_celsius = 20) {
    BeerRecord beer;
    beer.beer = maker_.ids.make<BeerId>();
    beer.name = beer_name;
    beer.co2_low = units::to_concentration(units::volumes_of_co2(low));
    beer.co2_high = units::to_concentration(units::volumes_of_co2(high));
    log(day(-60), beer);
    BatchRecord b;
    b.batch = maker_.ids.make<BatchId>();
    b.beer = beer.beer;
    b.name = beer_name + " 1";
    if (warmest_celsius) b.warmest_after_fermentation = units::celsius(*warmest_celsius);
    log(day(-60), b);
    return b.batch;
  }
  LineId line(const std::string& name, const std::string& tap,
              std::optional<std::int64_t> clean_every_days = {}) {
    LineRecord r;
    r.line = maker_.ids.make<LineId>();
    r.name = name;
    r.tap = tap;
    r.clean_every_days = clean_every_days;
    r.clean_source = "own rule";
    log(day(-60), r);
    return r.line;
  }
  void prepare(KegId keg, Instant when) {
    log(when, Cleaned{keg, CleaningMethod::caustic, "caustic", {}, {}, {}});
    log(when + std::chrono::minutes(30), Sanitised{keg, SanitisingMethod::iodine, "", {}});
    Purged purge{keg, PurgeMethod::cycles, 5, units::gauge_psi(30), {}, {}};
    log(when + std::chrono::minutes(60), purge);
  }
  EntryId fill(KegId keg, BatchId batch, Instant when, double litres = 18.6,
               std::optional<double> celsius = {}) {
    Filled f;
    f.keg = keg;
    f.batch = batch;
    f.volume = units::litres(litres);
    if (celsius) f.temperature = units::celsius(*celsius);
    return log(when, f);
  }
  EntryId gas(KegId keg, Instant when, double psi, GasPurpose purpose = GasPurpose::serving) {
    return log(when, GasSet{keg, units::gauge_psi(psi), purpose, {}, {}, {}});
  }
  Received receive(KegId keg, BatchId batch, std::optional<double> celsius,
                   std::optional<Date> best_by) {
    Received r;
    r.keg = keg;
    r.batch = batch;
    r.best_by = best_by;
    r.seal_intact = true;
    if (celsius) r.temperature = units::celsius(*celsius);
    return r;
  }

  [[nodiscard]] KegStatus status(KegId keg, Instant now) const {
    return Replay(journal, calendar).keg_status(keg, now);
  }
  [[nodiscard]] CellarStatus cellar(Instant now) const {
    return Replay(journal, calendar).status(now);
  }

  Journal journal;
  LondonCalendar calendar;

 private:
  EntryMaker maker_;
};

[[nodiscard]] inline bool says(const std::vector<Advice>& advice, MessageKey key) {
  for (const Advice& a : advice) {
    if (a.headline.key == key) return true;
  }
  return false;
}
[[nodiscard]] inline bool misfits(const KegStatus& keg, MessageKey key) {
  for (const DoesntFit& d : keg.doesnt_fit) {
    if (d.why.key == key) return true;
  }
  return false;
}

}  // namespace ullage::testing
