// SPDX-License-Identifier: GPL-3.0-or-later
//
// Names on the left, what is known of them on the right, in small type; kept
// between showings so that the keyboard does not lose its place. A value that was
// worked out opens its reasons (figure.h). TaskList is its sibling for things to
// do: a sentence and one button each.
#pragma once

#include <QWidget>
#include <functional>
#include <utility>
#include <vector>

#include "core/report/grounds.h"

class QGridLayout;
class QPushButton;

namespace ullage::ui {

class Figure;
class InkLabel;

struct ListedFact {
  QString name;
  QString value;
  std::function<report::Grounds()> reasons = {};  // empty for what was stated
};

class FactList : public QWidget {
  Q_OBJECT
 public:
  explicit FactList(QWidget* parent = nullptr);
  void show_facts(const std::vector<ListedFact>&);
  void show_facts(const std::vector<std::pair<QString, QString>>& name_and_value);
  // The value on show under that name, where it has reasons; else nullptr.
  [[nodiscard]] Figure* figure(const QString& name) const;

 private:
  struct Row {
    InkLabel* name;
    InkLabel* words;
    Figure* number;
  };
  QGridLayout* grid_;
  std::vector<Row> rows_;
};

struct ListedTask {
  QString sentence;
  QString action;  // the button's words; empty for none
};
class TaskList : public QWidget {
  Q_OBJECT
 public:
  explicit TaskList(QWidget* parent = nullptr);
  void show_tasks(const std::vector<ListedTask>&);

 signals:
  void chosen(int index);

 private:
  struct Row {
    InkLabel* number;
    InkLabel* sentence;
    QPushButton* button;
  };
  QGridLayout* grid_;
  std::vector<Row> rows_;
};

}  // namespace ullage::ui
