// SPDX-License-Identifier: GPL-3.0-or-later
//
// Ten digits, the decimal mark, a key to take the last one back, and where a number
// may be below zero one to change its sign; each at least `side` wide and high. It never takes the
// keyboard: a real keyboard types into the same field.
#pragma once

#include <QWidget>

class QPushButton;

namespace ullage::ui {

class NumberPad final : public QWidget {
  Q_OBJECT
 public:
  NumberPad(int side, char decimal_mark, QWidget* parent = nullptr);

  // Shown left of the others, which stay where they are on the screen.
  void offer_sign(bool);

 signals:
  void typed(const QString& character);
  void taken_back();
  void sign_changed();

 private:
  QPushButton* sign_ = nullptr;
};

}  // namespace ullage::ui
