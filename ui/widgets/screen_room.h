// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSize>

class QWidget;

namespace ullage::ui {

// Gives a dialog that size, or as much of it as its screen has room for beside
// the frame and title bar that the desktop puts around it.
void resize_within_screen(QWidget& dialog, QSize wanted);

}  // namespace ullage::ui
