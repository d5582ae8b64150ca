// SPDX-License-Identifier: GPL-3.0-or-later
//
// Ten digits, the decimal mark and a key to take the last one back, each at
// least `side` wide and high. It never takes the keyboard: a real keyboard
// types into the same field.
#pragma once

#include <QWidget>

namespace ullage::ui {

class NumberPad final : public QWidget {
  Q_OBJECT
 public:
  NumberPad(int side, char decimal_mark, QWidget* parent = nullptr);

 signals:
  void typed(const QString& character);
  void taken_back();
};

}  // namespace ullage::ui
