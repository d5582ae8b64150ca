// SPDX-License-Identifier: GPL-3.0-or-later
//
// Opening a large cellar against the plain reading of its rows, and what one
// logged entry costs until everything that shows it is right again. Targets are
// in docs/architecture.md. ULLAGE_BENCH_ENTRIES and ULLAGE_BENCH_KEGS change the size.
#include <benchmark/benchmark.h>

#include <QTemporaryDir>
#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <iostream>
#include <stdexcept>

#include "app/session.h"
#include "app/surroundings.h"
#include "tests/bench/big_cellar.h"
#include "tests/bench/plain_reading.h"

namespace ullage::bench {
namespace {

std::size_t size_from(const char* variable, std::size_t otherwise) {
  const char* value = std::getenv(variable);
  return value == nullptr ? otherwise : std::stoul(value);
}

double milliseconds_of(const auto& what) {
  const auto start = std::chrono::steady_clock::now();
  what();
  const std::chrono::duration<double, std::milli> taken = std::chrono::steady_clock::now() - start;
  return taken.count();
}

// One file for all benchmarks, made once.
class BigFile {
 public:
  static BigFile& the() {
    static BigFile file;
    return file;
  }
  [[nodiscard]] std::filesystem::path path() const {
    return (folder_.path() + "/big.ullage").toStdString();
  }
  [[nodiscard]] app::CellarSession::Tools tools() { return {clock_, ids_}; }
  [[nodiscard]] const std::vector<cellar::KegId>& kegs() const { return kegs_; }
  [[nodiscard]] double plain_ms() const { return plain_ms_; }
  [[nodiscard]] std::unique_ptr<app::CellarSession> open() {
    auto session = app::CellarSession::open(path(), tools());
    if (!session) throw std::runtime_error(store::describe(session.error()));
    return std::move(*session);
  }

 private:
  BigFile() {
    const CellarSize size{.kegs = size_from("ULLAGE_BENCH_KEGS", 200),
                          .entries = size_from("ULLAGE_BENCH_ENTRIES", 200000),
                          .until = clock_.now()};
    BigCellar big = big_cellar(size, ids_);
    kegs_ = big.kegs;
    auto file = store::JournalStore::create(path(), ids_.next(), clock_.now());
    if (!file) throw std::runtime_error(store::describe(file.error()));
    if (const auto kept = file->append(big.entries); !kept) {
      throw std::runtime_error(store::describe(kept.error()));
    }
    file->close();
    plain_ms_ = 1e9;
    PlainReading reading;
    for (int i = 0; i < 5; ++i) {
      plain_ms_ = std::min(plain_ms_, milliseconds_of([&] { reading = read_plainly(path()); }));
    }
    std::cerr << size.kegs << " kegs, " << big.entries.size() << " entries; plain reading of "
              << reading.rows << " rows: " << plain_ms_ << " ms\n";
  }

  app::SystemClock clock_;
  app::RandomIds ids_;
  QTemporaryDir folder_;
  std::vector<cellar::KegId> kegs_;
  double plain_ms_ = 0;
};

void against_plain(benchmark::State& state, double total_ms) {
  state.counters["times_plain_reading"] =
      total_ms / static_cast<double>(state.iterations()) / BigFile::the().plain_ms();
}

void plain_reading(benchmark::State& state) {
  const auto path = BigFile::the().path();
  for (auto _ : state) benchmark::DoNotOptimize(read_plainly(path));
}
BENCHMARK(plain_reading)->Unit(benchmark::kMillisecond);

void load_entries(benchmark::State& state) {
  BigFile& file = BigFile::the();
  double total = 0;
  for (auto _ : state) {
    total += milliseconds_of([&] {
      auto store = store::JournalStore::open(file.path());
      benchmark::DoNotOptimize(store->load());
    });
  }
  against_plain(state, total);
}
BENCHMARK(load_entries)->Unit(benchmark::kMillisecond);

void open_cellar(benchmark::State& state) {
  double total = 0;
  for (auto _ : state)
    total += milliseconds_of([&] { benchmark::DoNotOptimize(BigFile::the().open()); });
  against_plain(state, total);
}
BENCHMARK(open_cellar)->Unit(benchmark::kMillisecond);

void open_cellar_and_derive_everything(benchmark::State& state) {
  double total = 0;
  for (auto _ : state) {
    total += milliseconds_of([&] { benchmark::DoNotOptimize(BigFile::the().open()->status()); });
  }
  against_plain(state, total);
}
BENCHMARK(open_cellar_and_derive_everything)->Unit(benchmark::kMillisecond);

cellar::Act gas_on(const app::CellarSession& session, cellar::KegId keg) {
  return {.drafts = {{.payload = cellar::GasSet{.keg = keg, .pressure = units::gauge_psi(12)},
                      .happened_at = session.now()}},
          .by = "AB"};
}

// Written, durable, and the status of all kegs right again.
void log_one_entry_until_all_is_right(benchmark::State& state) {
  BigFile& file = BigFile::the();
  const auto session = file.open();
  benchmark::DoNotOptimize(session->status());
  std::size_t i = 0;
  for (auto _ : state) {
    const auto logged = session->log(gas_on(*session, file.kegs()[i++ % file.kegs().size()]));
    if (!logged) state.SkipWithError("refused");
    benchmark::DoNotOptimize(session->status());
  }
}
BENCHMARK(log_one_entry_until_all_is_right)->Unit(benchmark::kMillisecond);

void minute_passes(benchmark::State& state) {
  const auto session = BigFile::the().open();
  benchmark::DoNotOptimize(session->status());
  const cellar::Replay replay(session->journal(), session->calendar());
  cellar::Instant now = session->now();
  benchmark::DoNotOptimize(replay.status(now));
  for (auto _ : state) benchmark::DoNotOptimize(replay.status(now += std::chrono::minutes(1)));
}
BENCHMARK(minute_passes)->Unit(benchmark::kMillisecond);

// What a form asks at every key pressed.
void check_and_preview(benchmark::State& state) {
  BigFile& file = BigFile::the();
  const auto session = file.open();
  const cellar::KegId keg = file.kegs()[0];
  for (auto _ : state) {
    benchmark::DoNotOptimize(session->check(gas_on(*session, keg)));
    benchmark::DoNotOptimize(session->preview(gas_on(*session, keg), keg));
  }
}
BENCHMARK(check_and_preview)->Unit(benchmark::kMillisecond);

void look_back_a_year(benchmark::State& state) {
  const auto session = BigFile::the().open();
  int days = 365;
  for (auto _ : state) {
    benchmark::DoNotOptimize(
        session->status_as_of({.happened_by = session->now() - std::chrono::days(days++)}));
  }
}
BENCHMARK(look_back_a_year)->Unit(benchmark::kMillisecond)->Iterations(2);

}  // namespace
}  // namespace ullage::bench
