// SPDX-License-Identifier: GPL-3.0-or-later
//
// A keg list from a CSV file: which column is what, a preview of every keg as it
// would be registered, and what stands in the way, line by line. Nothing is
// written until all of it can be; then it is one act, undone as one.
#pragma once

#include <QDialog>
#include <array>
#include <expected>
#include <vector>

#include "core/report/keg_import.h"
#include "ui/context.h"

class QComboBox;
class QFormLayout;
class QLabel;
class QPlainTextEdit;
class QPushButton;
class QTableWidget;

namespace ullage::ui {

class ImportKegs final : public QDialog {
  Q_OBJECT
 public:
  ImportKegs(const Context& context, const QString& path, QWidget* parent = nullptr);
  ~ImportKegs() override;

  [[nodiscard]] QStringList faults() const { return faults_; }
  [[nodiscard]] std::size_t kegs() const { return plan_.size(); }
  bool log();

 private:
  void build();
  void read(const QString& path);
  void add_columns(QFormLayout& form);
  void plan();
  void show_plan();
  [[nodiscard]] report::KegColumns columns() const;
  [[nodiscard]] cellar::Act act() const;

  Context context_;
  report::CsvFile file_;
  bool readable_ = false;
  std::array<QComboBox*, report::keg_fields.size()> columns_{};
  std::vector<report::PlannedKeg> plan_;
  QStringList faults_;
  QLabel* outcome_ = nullptr;
  QPlainTextEdit* problems_ = nullptr;
  QTableWidget* table_ = nullptr;
  QPushButton* import_ = nullptr;
};

}  // namespace ullage::ui
