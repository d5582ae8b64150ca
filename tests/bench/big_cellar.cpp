// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/big_cellar.h"

#include <fmt/format.h>

#include <algorithm>
#include <functional>

#include "core/cellar/presets.h"

namespace ullage::bench {

namespace {

using namespace cellar;  // NOLINT(google-build-using-namespace): the whole file is about it
using units::celsius;
using units::gauge_psi;
using units::litres;

constexpr std::size_t places = 4;
constexpr std::size_t lines = 20;

class Writer {
 public:
  Writer(const CellarSize& size, IdSource& ids) : size_(size), ids_(ids) {}

  BigCellar write() {
    register_all();
    const std::size_t left = size_.entries - std::min(size_.entries, out_.entries.size());
    const Instant start = size_.until - std::chrono::days(size_.days);
    const auto step = std::chrono::seconds(std::chrono::days(size_.days)) /
                      static_cast<long>(std::max<std::size_t>(left, 1));
    for (Entry& e : out_.entries) e.header.happened_at = start - std::chrono::hours(1);
    for (std::size_t i = 0; i < left; ++i) {
      add(next(i), start + step * static_cast<long>(i));
    }
    return std::move(out_);
  }

 private:
  void add(Payload payload, Instant when) {
    Entry& e = out_.entries.emplace_back();
    ids_.fill(e.header.id);
    ids_.fill(e.header.act);
    e.header.happened_at = when;
    e.header.recorded_at = when;
    e.header.by = "AB";
    e.payload = std::move(payload);
  }
  template <class AnyId>
  AnyId fresh() {
    return AnyId{ids_.next()};
  }

  void register_all() {
    add(CellarDescribed{.name = "Big", .time_zone = "Europe/London"}, {});
    InstrumentRecord dial = instrument_from_preset(InstrumentKind::regulator_dial);
    dial.instrument = dial_ = fresh<InstrumentId>();
    dial.name = "Dial";
    add(dial, {});
    for (std::size_t i = 0; i < places; ++i) {
      places_.push_back(fresh<PlaceId>());
      add(PlaceRecord{.place = places_[i],
                      .name = fmt::format("Box {}", i + 1),
                      .set_temperature = celsius(4)},
          {});
    }
    beer_ = fresh<BeerId>();
    add(BeerRecord{.beer = beer_, .name = "House ale", .style = "American amber or pale ale"}, {});
    for (std::size_t i = 0; i < lines; ++i) {
      lines_.push_back(fresh<LineId>());
      add(LineRecord{.line = lines_[i], .name = fmt::format("Line {}", i + 1)}, {});
    }
    for (std::size_t i = 0; i < size_.kegs; ++i) {
      KegRecord keg = keg_from_preset(KegKind::ball_lock_19);
      keg.keg = fresh<KegId>();
      keg.tag = fmt::format("K{:03}", i + 1);
      keg.place = places_[i % places];
      out_.kegs.push_back(keg.keg);
      steps_.push_back(i % round_length);
      add(keg, {});
    }
  }

  // Mostly the next step of a keg's round; now and then a box is read, a line
  // cleaned, a batch started.
  Payload next(std::size_t i) {
    if (i % 500 == 0) {
      batch_ = fresh<BatchId>();
      return BatchRecord{.batch = batch_,
                         .beer = beer_,
                         .name = std::to_string(i / 500 + 1),
                         .original_gravity = units::specific_gravity(1.048),
                         .final_gravity = units::specific_gravity(1.010)};
    }
    if (i % 40 == 7) {
      return TemperatureRead{.place = places_[(i / 40) % places],
                             .temperature = celsius(3.5 + 0.1 * static_cast<double>(i % 11))};
    }
    if (i % 100 == 9) return LineCleaned{.line = lines_[(i / 100) % lines]};
    const std::size_t which = turn_++ % out_.kegs.size();
    return step_of(which, steps_[which]++ % round_length);
  }

  static constexpr std::size_t round_length = 16;
  Payload step_of(std::size_t which, std::size_t step) const {
    const KegId keg = out_.kegs[which];
    switch (step) {
      case 0:
        return Cleaned{.keg = keg};
      case 1:
        return Inspected{.keg = keg, .seals_lubricated = true, .lid_seated = true};
      case 2:
        return Sanitised{.keg = keg};
      case 3:
        return Purged{.keg = keg, .cycles = 5, .pressure = gauge_psi(30), .instrument = dial_};
      case 4:
        return Filled{
            .keg = keg, .batch = batch_, .volume = litres(18.5), .temperature = celsius(18)};
      case 5:
        return GasSet{.keg = keg,
                      .pressure = gauge_psi(30),
                      .purpose = GasPurpose::burst,
                      .instrument = dial_};
      case 6:
        return LeakTested{.keg = keg};
      case 7:
        return GasSet{.keg = keg, .pressure = gauge_psi(12), .instrument = dial_};
      case 8:
        return Vented{.keg = keg};
      case 9:
        return CarbonationReading{
            .keg = keg, .pressure = gauge_psi(11), .instrument = dial_, .temperature = celsius(4)};
      case 10:
        return Tapped{.keg = keg, .line = lines_[which % lines]};
      case 15:
        return Emptied{.keg = keg};
      default:
        return LevelReading{
            .keg = keg,
            .method = LevelMethod::heft,
            .fraction_left = units::fraction(0.9 - 0.2 * static_cast<double>(step - 11))};
    }
  }

  CellarSize size_;
  IdSource& ids_;
  BigCellar out_;
  std::vector<PlaceId> places_;
  std::vector<LineId> lines_;
  std::vector<std::size_t> steps_;
  InstrumentId dial_;
  BeerId beer_;
  BatchId batch_;
  std::size_t turn_ = 0;
};

}  // namespace

BigCellar big_cellar(const CellarSize& size, IdSource& ids) { return Writer(size, ids).write(); }

}  // namespace ullage::bench
