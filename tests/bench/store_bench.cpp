// SPDX-License-Identifier: GPL-3.0-or-later
//
// Opening a cellar of 200,000 entries against reading the same rows through the
// plain SQLite C API; and logging one act.
#include <benchmark/benchmark.h>
#include <sqlite3.h>
#include <unistd.h>

#include <chrono>
#include <filesystem>
#include <string>

#include "core/store/check.h"
#include "core/store/journal_store.h"
#include "tests/support/payload_generator.h"

namespace {

using namespace ullage;
using StoreClock = std::chrono::steady_clock;

constexpr std::size_t entries_in_large_cellar = 200'000;

double seconds_since(StoreClock::time_point start) {
  return std::chrono::duration<double>(StoreClock::now() - start).count();
}

// Made once, removed when the program ends.
class LargeCellar {
 public:
  LargeCellar() {
    file_ = std::filesystem::temp_directory_path() /
            ("ullage-bench-" + std::to_string(::getpid()) + ".ullage");
    auto store = store::JournalStore::create(file_, {}, {});
    if (!store) std::abort();
    testing::SeededSource source(1);
    auto entries = testing::PayloadMaker(source).entries(entries_in_large_cellar);
    if (!store->append(entries)) std::abort();
  }
  LargeCellar(const LargeCellar&) = delete;
  LargeCellar& operator=(const LargeCellar&) = delete;
  ~LargeCellar() {
    for (const char* tail : {"", "-wal", "-shm"}) std::filesystem::remove(file_.string() + tail);
  }
  [[nodiscard]] const std::filesystem::path& file() const { return file_; }

 private:
  std::filesystem::path file_;
};

const LargeCellar& large_cellar() {
  static const LargeCellar cellar;
  return cellar;
}

// Every column of every row of one table, fetched by its type and looked at.
double plain_read_of(sqlite3* db, const std::string& table) {
  sqlite3_stmt* rows = nullptr;
  const std::string sql = "SELECT * FROM \"" + table + "\" ORDER BY sequence";
  if (sqlite3_prepare_v2(db, sql.c_str(), -1, &rows, nullptr) != SQLITE_OK) std::abort();
  double sum = 0;
  while (sqlite3_step(rows) == SQLITE_ROW) {
    const int columns = sqlite3_column_count(rows);
    for (int c = 0; c < columns; ++c) {
      switch (sqlite3_column_type(rows, c)) {
        case SQLITE_INTEGER:
          sum += static_cast<double>(sqlite3_column_int64(rows, c));
          break;
        case SQLITE_FLOAT:
          sum += sqlite3_column_double(rows, c);
          break;
        case SQLITE_TEXT:
          sum += *sqlite3_column_text(rows, c) + sqlite3_column_bytes(rows, c);
          break;
        case SQLITE_BLOB:
          sum += *static_cast<const unsigned char*>(sqlite3_column_blob(rows, c));
          break;
        default:
          break;
      }
    }
  }
  sqlite3_finalize(rows);
  return sum;
}

double plain_read(const std::filesystem::path& file) {
  const auto start = StoreClock::now();
  sqlite3* db = nullptr;
  if (sqlite3_open_v2(file.c_str(), &db, SQLITE_OPEN_READONLY, nullptr) != SQLITE_OK) std::abort();
  sqlite3_exec(db, "PRAGMA cache_size = -16000; BEGIN", nullptr, nullptr, nullptr);
  double sum = plain_read_of(db, "entry");
  for (const cellar::Payload& blank : cellar::blank_payloads())
    sum += plain_read_of(db, std::string(cellar::kind_of(blank)));
  sqlite3_close(db);
  benchmark::DoNotOptimize(sum);
  return seconds_since(start);
}

void open_large_cellar(benchmark::State& state) {
  const auto& file = large_cellar().file();
  double plain = 0;
  double ours = 0;
  for (auto _ : state) {
    plain += plain_read(file);
    const auto start = StoreClock::now();
    auto store = store::JournalStore::open(file);
    auto entries = store->load();
    ours += seconds_since(start);
    if (entries->size() != entries_in_large_cellar) std::abort();
  }
  const auto runs = static_cast<double>(state.iterations());
  state.counters["plain_ms"] = plain / runs * 1e3;
  state.counters["open_and_load_ms"] = ours / runs * 1e3;
  state.counters["ratio"] = ours / plain;
}
BENCHMARK(open_large_cellar)->Unit(benchmark::kMillisecond)->Iterations(7);

void quick_check_large_cellar(benchmark::State& state) {
  const auto& file = large_cellar().file();
  for (auto _ : state) {
    if (!store::check_file(file, store::CheckDepth::quick)) std::abort();
  }
}
BENCHMARK(quick_check_large_cellar)->Unit(benchmark::kMillisecond)->Iterations(3);

void append_an_act_of_three(benchmark::State& state) {
  const auto file = std::filesystem::temp_directory_path() /
                    ("ullage-bench-append-" + std::to_string(::getpid()) + ".ullage");
  {
    auto store = store::JournalStore::create(file, {}, {});
    testing::SeededSource source(2);
    for (auto _ : state) {
      state.PauseTiming();
      auto act = testing::PayloadMaker(source).entries(3, 3);
      state.ResumeTiming();
      if (!store->append(act)) std::abort();
    }
  }
  std::filesystem::remove(file);
}
BENCHMARK(append_an_act_of_three)->Unit(benchmark::kMicrosecond)->Iterations(500);

}  // namespace
