// SPDX-License-Identifier: GPL-3.0-or-later
//
// A box with a sentence, a detail, maybe one field, and its ways out as buttons.
// Esc takes none of them.
#pragma once

#include <QDialog>
#include <functional>

#include "ui/theme/style.h"

class QHBoxLayout;
class QPushButton;
class QVBoxLayout;

namespace ullage::ui {

class MessageBox : public QDialog {
  Q_OBJECT
 public:
  MessageBox(const QString& what, const QString& detail, QWidget* parent);

  void add_field(QWidget*);  // becomes the box's own
  void add_way(const QString& words, ButtonRole);
  void add_cancel();
  // In place of Cancel where the other ways lose something or could hurt: takes
  // none of them, and is the one that Enter presses.
  void add_harmless(const QString& words);
  // Asked before any way out but Cancel is taken.
  void set_ready(std::function<bool()> ready) { ready_ = std::move(ready); }
  // The index of the way taken; -1 for none.
  int ask();

 private:
  QPushButton* add_no_way(const QString& words);

  std::function<bool()> ready_;
  QVBoxLayout* column_;
  QHBoxLayout* ways_;
  int added_ = 0;
  int taken_ = -1;
};

}  // namespace ullage::ui
