// SPDX-License-Identifier: GPL-3.0-or-later
//
// A what-if control moved by the mouse, with 24 lines shown: setting, outlook,
// advice, words, reasons and the redrawn page. Target: one frame, 16 ms, also for
// the slowest of a drag. The floor is the outlook alone.
//
// The handle is dragged with mouse events, a few pixels at a time. A move counts
// when the control has moved and the chart has been painted with it; moves that
// Qt would put together are not: each is waited for. The slowest and how many
// were painted stand beside the mean.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QEvent>
#include <QMouseEvent>
#include <QSlider>
#include <QStyleOptionSlider>
#include <QTableWidget>
#include <algorithm>

#include "core/cellar/pour_advice.h"
#include "tests/cellar/pour_scene.h"
#include "tests/support/fake_facade.h"
#include "tests/support/fake_surroundings.h"
#include "tests/support/own_preferences.h"
#include "ui/charts/profile_chart.h"
#include "ui/pages/line_panel.h"
#include "ui/pages/lines_page.h"
#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"
#include "ui/widgets/quantity_slider.h"

namespace ullage::bench {
namespace {

using testing::FakeFacade;
using testing::OwnPreferences;
using testing::PourScene;
using testing::QueuedPrompts;
using testing::RecordingNavigator;

cellar::CellarStatus twenty_four_lines() {
  PourScene s;
  for (int i = 2; i <= 24; ++i) {
    const cellar::KegId keg = s.Scenario::keg("K" + std::to_string(i), s.box);
    s.put_on(keg, s.register_line("Line " + std::to_string(i), s.figures), s.figures);
  }
  return s.cellar(testing::day(22));
}

class PaintCount final : public QObject {
 public:
  int painted = 0;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() == QEvent::Paint) ++painted;
    return QObject::eventFilter(watched, event);
  }
};

// The mouse over a slider's groove.
class Drag {
 public:
  explicit Drag(QSlider* slider) : slider_(slider) {
    QStyleOptionSlider option;
    option.initFrom(slider);
    option.minimum = slider->minimum();
    option.maximum = slider->maximum();
    option.sliderPosition = slider->sliderPosition();
    option.sliderValue = slider->value();
    option.orientation = Qt::Horizontal;
    at_ = slider->style()
              ->subControlRect(QStyle::CC_Slider, &option, QStyle::SC_SliderHandle, slider)
              .center();
    send(QEvent::MouseButtonPress, Qt::LeftButton);
  }
  ~Drag() { send(QEvent::MouseButtonRelease, Qt::NoButton); }
  Drag(const Drag&) = delete;
  Drag& operator=(const Drag&) = delete;

  // On to where the value is another: back and forth between the ends.
  void on() {
    const int before = slider_->value();
    for (int guard = 0; guard < 400 && slider_->value() == before; ++guard) {
      if (at_.x() >= slider_->width() - 8) step_ = -1;
      if (at_.x() <= 8) step_ = 1;
      at_.rx() += step_;
      send(QEvent::MouseMove, Qt::NoButton);
    }
  }

 private:
  void send(QEvent::Type type, Qt::MouseButton button) {
    const Qt::MouseButtons held =
        type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton;
    QMouseEvent event(type, at_, slider_->mapToGlobal(at_), button, held, Qt::NoModifier);
    QApplication::sendEvent(slider_, &event);
  }
  QSlider* slider_;
  QPoint at_;
  int step_ = 1;
};

void outlook_alone(benchmark::State& state) {
  const PourScene s;
  const cellar::PourSetting now = s.pour_now().setting;
  double feet = 5;
  for (auto _ : state) {
    feet = feet > 10 ? 5 : feet + 0.1;
    benchmark::DoNotOptimize(
        cellar::pour_outlook(cellar::with(now, {.length = units::feet(feet)})));
  }
}
BENCHMARK(outlook_alone);

void what_if_dragged_and_redrawn(benchmark::State& state, const char* control) {
  static int argc = 1;
  static char name[] = "bench";
  static char* argv[] = {name, nullptr};
  if (qApp == nullptr) new QApplication(argc, argv);
  ui::dress(ui::light_theme());
  FakeFacade cellar(twenty_four_lines());
  OwnPreferences own;
  RecordingNavigator navigator;
  QueuedPrompts prompts;
  ui::Context context{cellar, own.preferences, prompts, navigator};
  ui::LinesPage page(context);
  page.resize(1240, 820);
  page.show();
  QApplication::processEvents();
  if (page.findChild<QTableWidget*>(QStringLiteral("lines_table"))->rowCount() != 24) {
    state.SkipWithError("not 24 lines");
    return;
  }
  PaintCount paints;
  // The curves are drawn by the widget inside.
  page.findChild<ui::ProfileChart*>()->findChild<QWidget*>()->installEventFilter(&paints);
  auto* slider = page.findChild<ui::QuantitySlider*>(QLatin1String(control))->slider();
  page.panel()->ensureWidgetVisible(page.findChild<ui::ProfileChart*>());
  QApplication::processEvents();
  Drag drag(slider);
  double slowest = 0;
  int moves = 0;
  QElapsedTimer clock;
  for (auto _ : state) {
    clock.start();
    drag.on();
    QApplication::processEvents();
    slowest = std::max(slowest, static_cast<double>(clock.nsecsElapsed()) / 1e6);
    ++moves;
  }
  state.SetLabel("24 lines");
  state.counters["slowest_ms"] = slowest;
  state.counters["painted_share"] =
      moves > 0 ? static_cast<double>(paints.painted) / static_cast<double>(moves) : 0;
}
BENCHMARK_CAPTURE(what_if_dragged_and_redrawn, length, "try_length")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(what_if_dragged_and_redrawn, pressure, "try_pressure")
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace ullage::bench
