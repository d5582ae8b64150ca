// SPDX-License-Identifier: GPL-3.0-or-later
//
// Ctrl+L: type a few words ("fill k7"), see what they may mean, Enter. Arrow
// keys move in the list while the field keeps the typing.
#pragma once

#include <QDialog>
#include <optional>
#include <vector>

#include "ui/commands/task_search.h"
#include "ui/context.h"

class QLineEdit;
class QListWidget;

namespace ullage::ui {

class InkLabel;

class TaskPalette : public QDialog {
  Q_OBJECT
 public:
  TaskPalette(const Context&, const std::vector<TaskForm>& tasks, QWidget* parent = nullptr);

  // Shows it over `parent` with every task there is; nullopt when left with Esc.
  [[nodiscard]] static std::optional<cellar::SuggestedTask> ask(const Context&, QWidget* parent);

  [[nodiscard]] std::optional<cellar::SuggestedTask> chosen() const { return chosen_; }

 protected:
  bool eventFilter(QObject*, QEvent*) override;

 private:
  void search();
  void take(int row);
  void move(int rows);

  Context context_;
  const std::vector<TaskForm>& tasks_;
  std::vector<TaskMatch> matches_;
  std::optional<cellar::SuggestedTask> chosen_;
  QLineEdit* words_;
  QListWidget* list_;
  InkLabel* nothing_;
};

}  // namespace ullage::ui
