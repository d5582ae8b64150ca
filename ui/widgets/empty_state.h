// SPDX-License-Identifier: GPL-3.0-or-later
//
// What stands where there is nothing to show yet: why, and the next step.
#pragma once

#include <QWidget>

#include "ui/theme/icons.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ullage::ui {

class EmptyState : public QWidget {
  Q_OBJECT
 public:
  EmptyState(Icon, const QString& title, const QString& sentence, QWidget* parent = nullptr);
  // The first is the filled one.
  QPushButton* add_action(const QString& text);
  void set_text(const QString& title, const QString& sentence);

 protected:
  void changeEvent(QEvent*) override;

 private:
  void give_room();
  Icon which_;
  QLabel* picture_;
  QLabel* title_;
  QLabel* sentence_;
  QVBoxLayout* actions_;
};

}  // namespace ullage::ui
