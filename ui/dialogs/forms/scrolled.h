// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QScrollArea>
#include <QScrollBar>

namespace ullage::ui {

// A form's rows in a frame that scrolls up and down only: never narrower than
// the rows, and passed over by Tab.
inline QScrollArea* scrolled(QWidget* rows = nullptr) {
  auto* scroll = new QScrollArea;
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  if (rows) {
    scroll->setWidget(rows);
    scroll->setMinimumWidth(rows->minimumSizeHint().width() +
                            scroll->verticalScrollBar()->sizeHint().width());
  }
  return scroll;
}

}  // namespace ullage::ui
