// SPDX-License-Identifier: GPL-3.0-or-later
//
// Temperatures of a place from a logger's text file. What was found out about
// the file (delimiter, decimal mark, columns, unit, day and month) is shown and
// can be put right; readings and bad lines are shown; nothing is logged until
// that is accepted, and then as one act, undone as one. Readings that say nothing
// new are left out (logger_file.h, thinned).
#pragma once

#include <QDialog>
#include <optional>
#include <string>

#include "core/cellar/logger_file.h"
#include "ui/context.h"
#include "ui/widgets/entity_picker.h"

class QComboBox;
class QPlainTextEdit;
class QPushButton;
class QTableWidget;

namespace ullage::ui {

class Banner;
class ChoiceBar;
class FormSection;
class InkLabel;
class TextEdit;

class LoggerImport : public QDialog {
  Q_OBJECT
 public:
  LoggerImport(const Context& context, std::optional<cellar::PlaceId> place,
               QWidget* parent = nullptr);
  ~LoggerImport() override;

  // Asks for a file; the button does the same.
  void choose_file();
  void read_file(const QString& path);
  [[nodiscard]] cellar::Act act() const;
  bool log();
  [[nodiscard]] QString in_words() const;  // what would be taken over
  [[nodiscard]] QString problem() const;

 private:
  void build();
  QWidget* build_layout();
  QWidget* build_preview();
  void read_again();
  void offer_columns(cellar::LoggerFault);
  void list_columns(char delimiter, const std::vector<std::string>& names);
  void show_layout();
  void show_preview();
  void leave_out_what_is_known();
  void say_problem(const QString& headline, const QString& detail);
  [[nodiscard]] cellar::LoggerChoices choices() const;

  Context context_;
  std::string bytes_;
  QString name_;
  std::optional<cellar::LoggerFile> file_;
  cellar::Thinned thinned_;
  std::size_t readings_ = 0, skipped_ = 0, future_ = 0, known_ = 0;
  // What the person put right; the rest is found out anew.
  std::optional<cellar::LoggerColumns> columns_;  // to choose from where it was not
  bool fields_filled_ = false;
  bool filling_ = false;

  QPushButton* choose_ = nullptr;
  InkLabel* path_ = nullptr;
  PlacePicker* place_ = nullptr;
  InstrumentPicker* thermometer_ = nullptr;
  ChoiceBar* of_ = nullptr;
  QWidget* found_ = nullptr;
  QComboBox* delimiter_ = nullptr;
  QComboBox* decimal_ = nullptr;
  QComboBox* time_ = nullptr;
  QComboBox* clock_ = nullptr;
  QComboBox* temperature_ = nullptr;
  QComboBox* degrees_ = nullptr;
  QComboBox* order_ = nullptr;
  InkLabel* certainty_ = nullptr;
  QTableWidget* preview_ = nullptr;
  InkLabel* words_ = nullptr;
  InkLabel* bad_title_ = nullptr;
  QPlainTextEdit* bad_ = nullptr;
  TextEdit* by_ = nullptr;
  Banner* problem_ = nullptr;
  QPushButton* accept_ = nullptr;
};

}  // namespace ullage::ui
