// SPDX-License-Identifier: GPL-3.0-or-later
//
// Names on the left, what is known of them on the right, in small type; kept
// between showings so that the keyboard does not lose its place. TaskList is its
// sibling for things to do: a sentence and one button each.
#pragma once

#include <QWidget>
#include <functional>
#include <utility>
#include <vector>

class QGridLayout;
class QPushButton;

namespace ullage::ui {

class InkLabel;

class FactList : public QWidget {
  Q_OBJECT
 public:
  explicit FactList(QWidget* parent = nullptr);
  void show_facts(const std::vector<std::pair<QString, QString>>& name_and_value);

 private:
  QGridLayout* grid_;
  std::vector<std::pair<InkLabel*, InkLabel*>> rows_;
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
