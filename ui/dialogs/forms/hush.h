// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QWidget>

namespace ullage::ui {

// For the first line of a destructor: an editor that is deleted with the focus
// still says "changed", and would say it to a form that is half gone.
inline void hush(QWidget& going) {
  const QList<QWidget*> inside = going.findChildren<QWidget*>();
  for (QWidget* widget : inside) widget->disconnect(&going);
}

}  // namespace ullage::ui
