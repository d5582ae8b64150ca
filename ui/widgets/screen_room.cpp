// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/screen_room.h"

#include <QEvent>
#include <QLayout>
#include <QScreen>
#include <QWidget>
#include <algorithm>

namespace ullage::ui {

namespace {
constexpr QSize frame_around(8, 40);

// Sentences that wrap need a height for their width, which a window's least size
// does not know.
class Growing : public QObject {
 public:
  using QObject::QObject;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() == QEvent::LayoutRequest || event->type() == QEvent::Show) {
      grow(*static_cast<QWidget*>(watched));
    }
    return false;
  }

 private:
  static void grow(QWidget& dialog) {
    const QLayout* layout = dialog.layout();
    if (!layout || !layout->hasHeightForWidth()) return;
    int needed = layout->totalHeightForWidth(dialog.width());
    if (const QScreen* screen = dialog.screen()) {
      needed = std::min(needed, screen->availableSize().height() - frame_around.height());
    }
    if (needed > dialog.height()) dialog.resize(dialog.width(), needed);
  }
};

class Unsqueezed : public QObject {
 public:
  using QObject::QObject;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() == QEvent::LayoutRequest || event->type() == QEvent::Resize) {
      auto& rows = *static_cast<QWidget*>(watched);
      const QLayout* layout = rows.layout();
      if (layout && layout->hasHeightForWidth()) {
        rows.setMinimumHeight(layout->totalHeightForWidth(rows.width()));
      }
    }
    return false;
  }
};

}  // namespace

void resize_within_screen(QWidget& dialog, QSize wanted) {
  const QScreen* screen = dialog.parentWidget() ? dialog.parentWidget()->screen() : dialog.screen();
  if (screen) wanted = wanted.boundedTo(screen->availableSize() - frame_around);
  dialog.resize(wanted);
}

void never_squeeze(QWidget& rows) { rows.installEventFilter(new Unsqueezed(&rows)); }

void grow_with_contents(QWidget& dialog) { dialog.installEventFilter(new Growing(&dialog)); }

}  // namespace ullage::ui
