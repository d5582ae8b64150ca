// SPDX-License-Identifier: GPL-3.0-or-later
//
// What can be done with one bottle of a supply: weigh it, read its gauge, edit it.
#pragma once

#include <QWidget>

#include "core/cellar/records_dispense.h"
#include "ui/context.h"

class QPushButton;

namespace ullage::ui {

class InkLabel;

class BottleTasks : public QWidget {
  Q_OBJECT
 public:
  explicit BottleTasks(const Context& context, QWidget* parent = nullptr);
  // `of_several`: then its name stands before the buttons, and is said with them.
  void show_bottle(const cellar::BottleRecord&, bool of_several);

 private:
  Context context_;
  cellar::BottleRecord bottle_;
  InkLabel* name_;
  std::vector<QPushButton*> buttons_;
};

}  // namespace ullage::ui
