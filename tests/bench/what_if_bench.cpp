// SPDX-License-Identifier: GPL-3.0-or-later
//
// A what-if control moved by the mouse: setting, outlook, advice, words and the
// redrawn page with 24 lines shown. Target: one frame, 16 ms.
// The floor is the outlook alone.
#include <benchmark/benchmark.h>

#include <QApplication>

#include "core/cellar/pour_advice.h"
#include "tests/cellar/pour_scene.h"
#include "tests/support/fake_facade.h"
#include "tests/support/fake_surroundings.h"
#include "tests/support/own_preferences.h"
#include "ui/pages/line_panel.h"
#include "ui/pages/lines_page.h"
#include "ui/widgets/quantity_slider.h"

namespace ullage::bench {
namespace {

using namespace testing;

CellarStatus twenty_four_lines() {
  PourScene s;
  for (int i = 2; i <= 24; ++i) {
    const KegId keg = s.Scenario::keg("K" + std::to_string(i), s.box);
    s.put_on(keg, s.register_line("Line " + std::to_string(i), s.figures), s.figures);
  }
  return s.cellar(day(22));
}

void outlook_alone(benchmark::State& state) {
  const PourScene s;
  const PourSetting now = s.pour_now().setting;
  double feet = 5;
  for (auto _ : state) {
    feet = feet > 10 ? 5 : feet + 0.1;
    benchmark::DoNotOptimize(pour_outlook(with(now, {.length = units::feet(feet)})));
  }
}
BENCHMARK(outlook_alone);

void what_if_moved_and_redrawn(benchmark::State& state) {
  static int argc = 1;
  static char name[] = "bench";
  static char* argv[] = {name, nullptr};
  if (qApp == nullptr) new QApplication(argc, argv);
  FakeFacade cellar(twenty_four_lines());
  OwnPreferences own;
  RecordingNavigator navigator;
  QueuedPrompts prompts;
  ui::Context context{cellar, own.preferences, prompts, navigator};
  ui::LinesPage page(context);
  page.resize(1240, 820);
  page.show();
  QApplication::processEvents();
  auto* slider = page.findChild<ui::QuantitySlider*>(QStringLiteral("try_length"));
  double metres = 1;
  for (auto _ : state) {
    metres = metres > 5 ? 1 : metres + 0.1;
    slider->set_value(metres);
    QApplication::processEvents();
  }
  state.SetLabel("24 lines");
}
BENCHMARK(what_if_moved_and_redrawn)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace ullage::bench
