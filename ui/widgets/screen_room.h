// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSize>

class QWidget;

namespace ullage::ui {

// Gives a dialog that size, or as much of it as its screen has room for beside
// the frame and title bar that the desktop puts around it.
void resize_within_screen(QWidget& dialog, QSize wanted);

// From now on the dialog grows when what is in it needs more height: a sentence
// below a field would else squeeze the field. For dialogs that do not scroll.
void grow_with_contents(QWidget& dialog);
// The same for rows that scroll: they keep the height that they need for their
// width, and scroll instead.
void never_squeeze(QWidget& rows);

}  // namespace ullage::ui
