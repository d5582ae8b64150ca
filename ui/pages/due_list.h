// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is due, the overdue first, with why; and the ways on from a row: log it,
// put it off to another day. By key that is Enter; by mouse the row is dragged to
// one of the next days, or the day is clicked. What would become overdue there is
// told while the mouse is over the day, and asked about before anything is moved.
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "core/cellar/due_work.h"
#include "ui/context.h"

class QPushButton;
class QTreeWidget;

namespace ullage::ui {

class DueDays;
class InkLabel;

class DueList : public QWidget {
  Q_OBJECT
 public:
  explicit DueList(const Context& context, QWidget* parent = nullptr);

  void show_rows(std::vector<cellar::DueWork> rows, const cellar::CellarStatus& names);
  // The row chosen; null when none is.
  [[nodiscard]] const cellar::DueWork* chosen() const;
  // The day that moving was asked to; none when it is still to be chosen.
  [[nodiscard]] std::optional<cellar::Date> asked_day() const { return asked_day_; }

 signals:
  void put_off_asked();  // of the chosen row
  void log_asked();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void fill(const cellar::CellarStatus& names);
  void show_why();
  void show_moved(std::optional<cellar::Date> to);  // what it would make overdue
  void ask_to_move(std::optional<cellar::Date> to);

  Context context_;
  std::vector<cellar::DueWork> rows_;
  std::optional<cellar::Date> asked_day_;
  DueDays* days_;
  QTreeWidget* tree_;
  InkLabel* why_;
  QPushButton* put_off_;
  QPushButton* log_;
};

// The form in which a piece of due work is logged, filled in as far as is known.
[[nodiscard]] cellar::SuggestedTask task_of(const cellar::DueWork&);

}  // namespace ullage::ui
