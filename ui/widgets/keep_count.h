// SPDX-License-Identifier: GPL-3.0-or-later
//
// Makes a layout hold exactly `count` widgets of one kind, keeping those that
// are there: what is shown is told anew once a minute, and a widget that was
// replaced would lose the keyboard focus each time.
#pragma once

#include <QBoxLayout>
#include <QLayoutItem>
#include <QWidget>
#include <vector>

namespace ullage::ui {

template <class Widget, class Make>
std::vector<Widget*> keep_count(QBoxLayout& layout, qsizetype count, Make&& make) {
  while (layout.count() > count) {
    QLayoutItem* item = layout.takeAt(layout.count() - 1);
    item->widget()->hide();
    item->widget()->deleteLater();
    delete item;
  }
  while (layout.count() < count) layout.addWidget(make());
  std::vector<Widget*> all;
  all.reserve(static_cast<std::size_t>(layout.count()));
  for (int i = 0; i < layout.count(); ++i) {
    all.push_back(static_cast<Widget*>(layout.itemAt(i)->widget()));
  }
  return all;
}

}  // namespace ullage::ui
