// SPDX-License-Identifier: GPL-3.0-or-later
//
// The rules the cellar works by, and ready sets to start from. The program knows
// no law: every figure is shown with where it comes from.
#pragma once

#include <QDialog>
#include <memory>

#include "ui/context.h"

class QComboBox;
class QLayout;
class QPushButton;
class QTreeWidget;

namespace ullage::ui {

class InkLabel;

class RulesDialog : public QDialog {
  Q_OBJECT
 public:
  explicit RulesDialog(const Context& context, QWidget* parent = nullptr);

 private:
  void build();
  void build_table();
  [[nodiscard]] QLayout* build_sets();
  void refresh();
  void show_set();
  void take_set();
  void change();
  void switch_force();
  [[nodiscard]] std::optional<cellar::RuleRecord> chosen() const;
  void log(std::vector<cellar::RuleRecord> records);

  Context context_;
  std::unique_ptr<cellar::Subscription> listening_;
  QTreeWidget* table_ = nullptr;
  QPushButton* change_ = nullptr;
  QPushButton* force_ = nullptr;
  QComboBox* sets_ = nullptr;
  InkLabel* about_ = nullptr;
  InkLabel* outcome_ = nullptr;
};

}  // namespace ullage::ui
