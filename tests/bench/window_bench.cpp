// SPDX-License-Identifier: GPL-3.0-or-later
//
// From the shell to a window that can be used, against a bare window of Qt's; and
// one frame of scrolling through 200 kegs.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QProcess>
#include <QScrollBar>
#include <QSettings>
#include <QTableView>
#include <QTemporaryDir>
#include <algorithm>
#include <chrono>
#include <memory>
#include <stdexcept>
#include <vector>

#include "app/demo_cellar.h"
#include "app/session.h"
#include "app/surroundings.h"
#include "tests/bench/big_cellar.h"
#include "tests/support/fake_surroundings.h"
#include "ui/main_window.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"

namespace ullage::bench {
namespace {

using WindowClock = std::chrono::steady_clock;

double ms_since(WindowClock::time_point start) {
  return std::chrono::duration<double, std::milli>(WindowClock::now() - start).count();
}

double start_of(const QString& what) {
  QProcess process;
  const auto start = WindowClock::now();
  process.start(QStringLiteral("/proc/self/exe"), {QStringLiteral("--window"), what});
  if (!process.waitForFinished() || process.exitCode() != 0) {
    throw std::runtime_error("the window did not come");
  }
  return ms_since(start);
}

// Each beside an empty one, so that both meet the machine in the same mood.
void start_against_an_empty_window(benchmark::State& state, const QString& what) {
  double ours = 0;
  double empty = 0;
  for (auto _ : state) {
    empty += start_of(QStringLiteral("empty"));
    ours += start_of(what);
  }
  const auto runs = static_cast<double>(state.iterations());
  state.counters["empty_ms"] = empty / runs;
  state.counters["ours_ms"] = ours / runs;
  state.counters["ratio"] = ours / empty;
}

void demo_window(benchmark::State& state) {
  start_against_an_empty_window(state, QStringLiteral("demo"));
}
BENCHMARK(demo_window)->Unit(benchmark::kMillisecond)->Iterations(10);

void window_of_a_file(benchmark::State& state) {
  const QTemporaryDir folder;
  const QString file = folder.filePath(QStringLiteral("demo.cellar"));
  const app::SystemClock clock;
  app::RandomIds ids;
  if (!app::make_demo(file.toStdString(), {clock, ids})) throw std::runtime_error("no demo");
  start_against_an_empty_window(state, file);
}
BENCHMARK(window_of_a_file)->Unit(benchmark::kMillisecond)->Iterations(10);

void scroll_frame_of_200_kegs(benchmark::State& state) {
  int argc = 1;
  char name[] = "bench";
  char* argv[] = {name, nullptr};
  const QApplication application(argc, argv);
  ui::dress(ui::light_theme());
  const QTemporaryDir folder;
  const std::filesystem::path file = folder.filePath("kegs.cellar").toStdString();
  const app::SystemClock clock;
  app::RandomIds ids;
  {
    auto made = store::JournalStore::create(file, ids.next(), clock.now());
    auto entries = big_cellar({.kegs = 200, .entries = 8000, .until = clock.now()}, ids).entries;
    if (!made || !made->append(entries)) throw std::runtime_error("no cellar");
  }
  auto session = app::CellarSession::open(file, {clock, ids});
  QSettings settings(folder.filePath("settings.ini"), QSettings::IniFormat);
  ui::Preferences preferences(settings);
  testing::QueuedPrompts prompts;
  ui::MainWindow window(**session, preferences, prompts, {});
  window.show();
  QApplication::processEvents();
  auto* table = window.findChild<QTableView*>(QStringLiteral("keg_table"));
  QScrollBar* bar = table->verticalScrollBar();
  std::vector<double> frames;
  int at = 0;
  for (auto _ : state) {
    at = (at + 40) % std::max(1, bar->maximum());
    const auto start = WindowClock::now();
    bar->setValue(at);
    table->viewport()->repaint();
    frames.push_back(ms_since(start));
  }
  std::sort(frames.begin(), frames.end());
  state.counters["median_ms"] = frames[frames.size() / 2];
  state.counters["worst_of_20_ms"] = frames[frames.size() * 19 / 20];
}
BENCHMARK(scroll_frame_of_200_kegs)->Unit(benchmark::kMillisecond)->Iterations(200);

}  // namespace
}  // namespace ullage::bench
