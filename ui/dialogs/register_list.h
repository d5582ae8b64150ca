// SPDX-License-Identifier: GPL-3.0-or-later
//
// Everything registered, in one list: find a thing by typing, change it, take it
// out of use or back in. What it was stays in the log.
#pragma once

#include <QDialog>

#include "ui/context.h"
#include "ui/dialogs/forms/registered.h"

class QLineEdit;
class QPushButton;
class QTreeWidget;

namespace ullage::ui {

class InkLabel;

class RegisterList : public QDialog {
  Q_OBJECT
 public:
  explicit RegisterList(const Context& context, QWidget* parent = nullptr);
  [[nodiscard]] std::optional<RegisteredThing> chosen() const;
  void choose(const cellar::SubjectRef&);

 private:
  void build();
  QWidget* build_actions();
  void refresh();
  void narrow();
  void tell_chosen();
  void change();
  void switch_use();

  Context context_;
  QLineEdit* find_ = nullptr;
  QTreeWidget* table_ = nullptr;
  QPushButton *change_ = nullptr, *use_ = nullptr;
  InkLabel* outcome_ = nullptr;
  std::vector<RegisteredThing> things_;  // in the order of the rows
  std::unique_ptr<cellar::Subscription> listening_;
};

}  // namespace ullage::ui
