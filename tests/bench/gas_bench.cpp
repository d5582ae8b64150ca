// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the account of a gas supply adds to the status of a cellar: 200 kegs with a
// year of history, all on one bottle that is weighed each week, beside the same
// cellar without a bottle. From nothing, a minute later, an hour later (when the
// account is kept anew) and after one more entry about a keg on it.
#include <benchmark/benchmark.h>

#include "app/surroundings.h"
#include "core/cellar/replay.h"
#include "tests/bench/big_cellar.h"
#include "tests/cellar/gas_cellar.h"

namespace ullage::bench {
namespace {

struct Supplied {
  testing::GasCellar told;
  app::RandomIds ids;
  cellar::Instant now = testing::day(365);
  cellar::Journal journal;
  std::vector<cellar::KegId> kegs;
  std::int64_t sequence = 0;

  explicit Supplied(bool bottle) {
    if (bottle) {
      for (int week = 0; week < 52; ++week) told.weigh(testing::day(7 * week), 20 - 0.3 * week);
      for (const cellar::Entry& e : told.journal.entries()) put(e);
    }
    BigCellar big = big_cellar({.kegs = 200, .entries = 50000, .until = now, .days = 365}, ids);
    kegs = big.kegs;
    for (cellar::Entry& e : big.entries) put(std::move(e));
  }
  void put(cellar::Entry e) {
    e.header.sequence = ++sequence;
    journal.append(std::move(e));
  }
  void put_gas_on(std::size_t keg) {
    cellar::Entry e;
    e.header.id = cellar::EntryId{ids.next()};
    e.header.act = cellar::ActId{ids.next()};
    e.header.happened_at = e.header.recorded_at = now;
    e.payload = cellar::GasSet{.keg = kegs[keg % kegs.size()], .pressure = units::gauge_psi(12)};
    put(std::move(e));
  }
  static Supplied& with(bool bottle) {
    static Supplied without(false), supplied(true);
    return bottle ? supplied : without;
  }
};

void from_nothing(benchmark::State& state) {
  const Supplied& s = Supplied::with(state.range(0) != 0);
  for (auto _ : state) {
    const cellar::Replay replay(s.journal, s.told.calendar);
    benchmark::DoNotOptimize(replay.status(s.now));
  }
}
void each_later(benchmark::State& state, std::chrono::minutes step) {
  const Supplied& s = Supplied::with(state.range(0) != 0);
  const cellar::Replay replay(s.journal, s.told.calendar);
  cellar::Instant now = s.now;
  benchmark::DoNotOptimize(replay.status(now));
  for (auto _ : state) benchmark::DoNotOptimize(replay.status(now += step));
}
void next_minute(benchmark::State& state) { each_later(state, std::chrono::minutes(1)); }
void next_hour(benchmark::State& state) { each_later(state, std::chrono::minutes(60)); }
void after_one_entry(benchmark::State& state) {
  Supplied& s = Supplied::with(state.range(0) != 0);
  const cellar::Replay replay(s.journal, s.told.calendar);
  benchmark::DoNotOptimize(replay.status(s.now));
  std::size_t i = 0;
  for (auto _ : state) {
    s.put_gas_on(i++);
    benchmark::DoNotOptimize(replay.status(s.now));
  }
}

// 0: no bottle, the floor; 1: all kegs on one.
BENCHMARK(from_nothing)->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);
BENCHMARK(next_minute)->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);
BENCHMARK(next_hour)->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond)->Iterations(5);
BENCHMARK(after_one_entry)->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond)->Iterations(20);

}  // namespace
}  // namespace ullage::bench
