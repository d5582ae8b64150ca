// SPDX-License-Identifier: GPL-3.0-or-later
//
// "fill k7": which tasks, about which things, a few typed words may mean. Words
// match the start of a task's words or the name of a thing; "k7" finds K07.
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "core/cellar/status.h"
#include "ui/dialogs/forms/task_forms.h"

namespace ullage::ui {

struct TaskMatch {
  const TaskForm* task = nullptr;
  std::optional<cellar::SubjectRef> about;
  QString about_name;  // "K07"
  int score = 0;       // the higher the better
};

inline constexpr std::size_t most_task_matches = 12;

// Best first. Everything, in the order given, when nothing is typed.
[[nodiscard]] std::vector<TaskMatch> find_tasks(const QString& typed,
                                                const std::vector<TaskForm>& tasks,
                                                const cellar::CellarStatus&);

}  // namespace ullage::ui
