// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Log page: the whole journal, newest first; filters by thing, kind, dates
// and words; correcting, striking and restoring an entry with a reason; and the
// cellar as it stood on a past date.
#pragma once

#include <QWidget>
#include <memory>
#include <set>
#include <string_view>

#include "ui/context.h"
#include "ui/models/log_filter.h"

class QComboBox;
class QDateEdit;
class QLineEdit;
class QPushButton;
class QCheckBox;
class QStackedWidget;
class QTableView;

namespace ullage::ui {

class Chip;
class EmptyState;
class InkLabel;
class LogTable;

class LogPage : public QWidget {
  Q_OBJECT
 public:
  explicit LogPage(const Context& context, QWidget* parent = nullptr);
  ~LogPage() override;

  void show_entries_of(cellar::SubjectRef about);
  void select(cellar::EntryId entry);
  [[nodiscard]] LogTable& table() { return *table_; }
  void strike_selected();
  void restore_selected();
  void correct_selected();
  void show_as_of();

 private:
  QWidget* build_header();
  QWidget* build_filters();
  QWidget* build_table();
  QWidget* build_detail();
  void fill_subjects();
  void fill_kinds();
  void apply_filter();
  void clear_filter();
  void show_selection();
  void update_empty_state();
  [[nodiscard]] const cellar::Entry* selected() const;
  [[nodiscard]] std::optional<cellar::Instant> start_of(const QDateEdit& edit, int days_on) const;
  [[nodiscard]] QString recorded_words(const cellar::Entry&) const;
  [[nodiscard]] QString undone_words(const cellar::Entry&) const;
  void tell(const cellar::Outcome<cellar::ActId>& outcome, const QString& done);

  Context context_;
  std::unique_ptr<cellar::Subscription> listening_;
  std::set<std::string_view> kinds_;  // of the journal's first so many entries
  std::size_t kinds_of_ = 0;
  LogTable* table_ = nullptr;
  QTableView* view_ = nullptr;
  QStackedWidget* stack_ = nullptr;
  EmptyState* empty_ = nullptr;
  QLineEdit* words_ = nullptr;
  QComboBox* about_ = nullptr;
  QComboBox* kind_ = nullptr;
  QCheckBox* between_ = nullptr;
  QDateEdit* from_ = nullptr;
  QDateEdit* to_ = nullptr;
  QCheckBox* struck_ = nullptr;
  InkLabel* count_ = nullptr;
  InkLabel* detail_ = nullptr;
  QPushButton* correct_ = nullptr;
  QPushButton* strike_ = nullptr;
  QPushButton* restore_ = nullptr;
};

}  // namespace ullage::ui
