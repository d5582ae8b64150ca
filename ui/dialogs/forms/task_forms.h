// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every task there is a form for, and the opening of it. Guided acts (transfer,
// keg change, register kegs, stock-taking) come before single entries.
#pragma once

#include <QString>
#include <vector>

#include "ui/context.h"

class QDialog;
class QWidget;

namespace ullage::ui {

struct TaskForm {
  std::string kind;  // as in SuggestedTask
  QString title;     // "Log a transfer"
  QString keywords;  // further words to find it by
  // What a tag typed beside it is about ("fill k7"): the kind of thing.
  std::optional<cellar::SubjectKind> about;
};

[[nodiscard]] const std::vector<TaskForm>& task_forms();

// The dialog for a task, not yet shown; null when there is no such kind. A
// register kind without a prefill gets a fresh id: a new thing is registered.
[[nodiscard]] QDialog* make_task_dialog(const Context& context, const cellar::SuggestedTask& task,
                                        QWidget* parent);

}  // namespace ullage::ui
