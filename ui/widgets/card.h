// SPDX-License-Identifier: GPL-3.0-or-later
//
// A quiet box with rounded corners that keeps things together.
#pragma once

#include <QFrame>

class QVBoxLayout;

namespace ullage::ui {

class Card : public QFrame {
  Q_OBJECT
 public:
  explicit Card(QWidget* parent = nullptr);
  [[nodiscard]] QVBoxLayout* column() const { return column_; }

 protected:
  void paintEvent(QPaintEvent*) override;

 private:
  QVBoxLayout* column_;
};

}  // namespace ullage::ui
