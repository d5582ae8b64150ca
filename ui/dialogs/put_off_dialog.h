// SPDX-License-Identifier: GPL-3.0-or-later
//
// Moves due work to another day, and tells as one chooses it what will be overdue.
#pragma once

#include <QDialog>
#include <vector>

#include "core/cellar/due_work.h"
#include "ui/context.h"

class QLabel;

namespace ullage::ui {

class DateEdit;
class InkLabel;
class TextEdit;

class PutOffDialog : public QDialog {
  Q_OBJECT
 public:
  PutOffDialog(const Context& context, cellar::DueWork row, std::vector<cellar::DueWork> all,
               QWidget* parent = nullptr);

  void set_day(cellar::Date);
  [[nodiscard]] QString consequence() const;

 private:
  void build();
  void step(int days);
  void tell();
  void log();
  [[nodiscard]] cellar::Act act(cellar::Date day) const;

  Context context_;
  cellar::DueWork row_;
  std::vector<cellar::DueWork> all_;
  DateEdit* day_ = nullptr;
  TextEdit* why_ = nullptr;
  InkLabel* consequence_ = nullptr;
};

}  // namespace ullage::ui
