// SPDX-License-Identifier: GPL-3.0-or-later
//
// One row of a page's section: what it is, what there is to say, a number or two
// with their reasons, and what can be done. Shown anew without losing the keyboard.
#pragma once

#include <QStringList>
#include <QWidget>
#include <functional>
#include <vector>

#include "ui/widgets/figure.h"

class QBoxLayout;
class QVBoxLayout;

namespace ullage::ui {

struct RowAction {
  QString text;
  QString name;  // of the button, for the journeys
  std::function<void()> act;
};

struct RowNumber {
  QString text;  // may be empty
  QString of;    // what it is of, spoken
  Figure::Reasons reasons;
};

struct RowSpec {
  QString title;
  QString words;
  Ink title_ink = Ink::text;
  QString number;     // may be empty
  QString number_of;  // what it is of, spoken
  Figure::Reasons reasons;
  RowNumber below;  // a second one, beneath
  std::vector<RowAction> actions;
};

class ListedRow final : public QWidget {
  Q_OBJECT
 public:
  explicit ListedRow(QWidget* parent = nullptr);
  void show_row(RowSpec);

 private:
  InkLabel* title_ = nullptr;
  InkLabel* words_ = nullptr;
  Figure* number_ = nullptr;
  Figure* below_ = nullptr;
  QBoxLayout* actions_ = nullptr;
  RowSpec spec_;
  QStringList shown_actions_;
};

// A heading over rows; hides itself when there are none.
class ListedSection final : public QWidget {
  Q_OBJECT
 public:
  explicit ListedSection(const QString& heading, const QString& hint = {},
                         QWidget* parent = nullptr);
  void show_rows(const std::vector<RowSpec>&);

 private:
  QVBoxLayout* rows_ = nullptr;
};

}  // namespace ullage::ui
