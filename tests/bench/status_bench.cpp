// SPDX-License-Identifier: GPL-3.0-or-later
//
// The whole status of a pub's cellar, 60 kegs with a year of history, in memory:
// from nothing, with everything kept, a minute later, and after one more entry. A
// frame of a screen is 16 ms.
#include <benchmark/benchmark.h>

#include "core/cellar/replay.h"
#include "tests/bench/big_cellar.h"
#include "tests/bench/floor.h"

namespace ullage::bench {
namespace {

class Utc final : public cellar::LocalCalendar {
 public:
  [[nodiscard]] std::string zone_name() const override { return "Etc/UTC"; }
  [[nodiscard]] cellar::UtcOffset offset_at(cellar::Instant) const override { return {}; }
  [[nodiscard]] std::optional<cellar::Instant> to_instant(cellar::LocalTime t) const override {
    return cellar::Instant(t.time_since_epoch());
  }
};

class CountedIds final : public cellar::IdSource {
 public:
  cellar::Uuid next() override {
    cellar::Uuid id{};
    ++count_;
    for (std::size_t i = 0; i < 4; ++i)
      id.bytes[15 - i] = static_cast<std::uint8_t>(count_ >> (8 * i));
    return id;
  }

 private:
  std::uint32_t count_ = 0;
};

// About 250 entries a keg and year: a fill every three weeks with what belongs to it.
struct Pub {
  Utc calendar;
  CountedIds ids;
  cellar::Instant now{std::chrono::sys_days{std::chrono::June / 1 / 2026}};
  cellar::Journal journal;
  std::vector<cellar::KegId> kegs;
  std::int64_t sequence = 0;

  Pub() {
    BigCellar big = big_cellar({.kegs = 60, .entries = 15000, .until = now, .days = 365}, ids);
    kegs = big.kegs;
    for (cellar::Entry& e : big.entries) {
      e.header.sequence = ++sequence;
      journal.append(std::move(e));
    }
  }
  static Pub& the() {
    static Pub pub;
    return pub;
  }
};

void sixty_kegs_from_nothing(benchmark::State& state) {
  Pub& pub = Pub::the();
  const AgainstFloor ratio(state);
  for (auto _ : state) {
    const cellar::Replay replay(pub.journal, pub.calendar);
    benchmark::DoNotOptimize(replay.status(pub.now));
  }
}
BENCHMARK(sixty_kegs_from_nothing)->Unit(benchmark::kMillisecond);

void sixty_kegs_same_minute(benchmark::State& state) {
  Pub& pub = Pub::the();
  const cellar::Replay replay(pub.journal, pub.calendar);
  benchmark::DoNotOptimize(replay.status(pub.now));
  const AgainstFloor ratio(state);
  for (auto _ : state) benchmark::DoNotOptimize(replay.status(pub.now));
}
BENCHMARK(sixty_kegs_same_minute)->Unit(benchmark::kMillisecond);

void sixty_kegs_next_minute(benchmark::State& state) {
  Pub& pub = Pub::the();
  const cellar::Replay replay(pub.journal, pub.calendar);
  cellar::Instant now = pub.now;
  benchmark::DoNotOptimize(replay.status(now));
  const AgainstFloor ratio(state);
  for (auto _ : state) benchmark::DoNotOptimize(replay.status(now += std::chrono::minutes(1)));
}
BENCHMARK(sixty_kegs_next_minute)->Unit(benchmark::kMillisecond);

void sixty_kegs_after_one_entry(benchmark::State& state) {
  Pub& pub = Pub::the();
  const cellar::Replay replay(pub.journal, pub.calendar);
  benchmark::DoNotOptimize(replay.status(pub.now));
  std::size_t i = 0;
  const AgainstFloor ratio(state);
  for (auto _ : state) {
    cellar::Entry e;
    e.header.id = cellar::EntryId{pub.ids.next()};
    e.header.act = cellar::ActId{pub.ids.next()};
    e.header.happened_at = e.header.recorded_at = pub.now;
    e.header.sequence = ++pub.sequence;
    e.payload =
        cellar::GasSet{.keg = pub.kegs[i++ % pub.kegs.size()], .pressure = units::gauge_psi(12)};
    pub.journal.append(std::move(e));
    benchmark::DoNotOptimize(replay.status(pub.now));
  }
}
BENCHMARK(sixty_kegs_after_one_entry)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace ullage::bench
