// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/window_start.h"

#include <QApplication>
#include <QEvent>
#include <QMainWindow>
#include <QSettings>
#include <QTemporaryDir>

#include "app/desk.h"
#include "app/surroundings.h"
#include "ui/dialogs/box_prompts.h"

namespace ullage::bench {

namespace {

class SeenPaint : public QObject {
 public:
  bool seen = false;
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() == QEvent::Paint) seen = true;
    return QObject::eventFilter(watched, event);
  }
};

void until_painted(QWidget& window) {
  SeenPaint paint;
  window.installEventFilter(&paint);
  window.update();
  while (!paint.seen) QApplication::processEvents(QEventLoop::WaitForMoreEvents);
  QApplication::processEvents();
  window.removeEventFilter(&paint);
}

}  // namespace

int show_a_window_and_leave(const std::string& what, int& argc, char** argv) {
  QApplication application(argc, argv);
  if (what == "empty") {
    QMainWindow window;
    window.resize(1440, 860);
    window.show();
    until_painted(window);
    return 0;
  }
  const QTemporaryDir folder;
  QSettings settings(folder.filePath("settings.ini"), QSettings::IniFormat);
  const app::SystemClock clock;
  app::RandomIds ids;
  ui::BoxPrompts prompts;
  app::Desk desk({clock, ids, settings, prompts});
  const bool open = what == "demo" ? desk.open_demo() : desk.open(what);
  if (!open) return 1;
  until_painted(*desk.windows().front());
  return 0;
}

}  // namespace ullage::bench
