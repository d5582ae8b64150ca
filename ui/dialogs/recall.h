// SPDX-License-Identifier: GPL-3.0-or-later
//
// Recalls a batch: says which kegs have it and where they are, asks why, and
// holds every one of them in one act (undone as one). Kegs that had it are
// listed too: what was served cannot be held. The list prints from here, before
// (a drill) and after.
#pragma once

#include <QDialog>

#include "ui/context.h"

class QPushButton;
class QVBoxLayout;

namespace ullage::ui {

class Banner;
class TextEdit;

class RecallDialog final : public QDialog {
  Q_OBJECT
 public:
  RecallDialog(const Context& context, cellar::BatchId batch, QWidget* parent = nullptr);
  // Logs it; false when something was refused.
  bool recall();
  // Shows the recall list of this batch as it is printed.
  void print_list();

 private:
  void build();
  [[nodiscard]] QStringList where_it_is() const;
  void add_buttons(QVBoxLayout& all);
  void say_recalled(const QString& words);

  Context context_;
  cellar::BatchId batch_;
  TextEdit* reason_ = nullptr;
  TextEdit* by_ = nullptr;
  Banner* outcome_ = nullptr;
  QPushButton* hold_ = nullptr;
  QPushButton* print_ = nullptr;
  QPushButton* close_ = nullptr;
};

}  // namespace ullage::ui
