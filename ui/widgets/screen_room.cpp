// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/screen_room.h"

#include <QScreen>
#include <QWidget>

namespace ullage::ui {

namespace {
constexpr QSize frame_around(8, 40);
}

void resize_within_screen(QWidget& dialog, QSize wanted) {
  const QScreen* screen = dialog.parentWidget() ? dialog.parentWidget()->screen() : dialog.screen();
  if (screen) wanted = wanted.boundedTo(screen->availableSize() - frame_around);
  dialog.resize(wanted);
}

}  // namespace ullage::ui
