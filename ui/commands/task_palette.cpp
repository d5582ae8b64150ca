// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/commands/task_palette.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/dialogs/forms/enum_words.h"
#include "ui/preferences.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/screen_room.h"

namespace ullage::ui {

namespace {
constexpr QSize palette_size(480, 420);
constexpr int palette_row_height = 34;
}  // namespace

TaskPalette::TaskPalette(const Context& context, const std::vector<TaskForm>& tasks,
                         QWidget* parent)
    : QDialog(parent),
      context_(context),
      tasks_(tasks),
      words_(new QLineEdit(this)),
      list_(new QListWidget(this)),
      nothing_(new InkLabel(tr("No task is called that. Try “fill”, “vent” or “clean”."),
                            TextRole::body, Ink::secondary, this)) {
  setObjectName(QStringLiteral("task_palette"));
  setWindowTitle(tr("What happened?"));
  words_->setObjectName(QStringLiteral("palette_words"));
  words_->setPlaceholderText(tr("fill k7"));
  words_->setAccessibleName(tr("Task, and what it is about"));
  words_->setClearButtonEnabled(true);
  words_->installEventFilter(this);
  list_->setObjectName(QStringLiteral("palette_list"));
  list_->setAccessibleName(tr("Tasks that fit"));
  list_->setFocusPolicy(Qt::NoFocus);
  list_->setFrameShape(QFrame::NoFrame);
  list_->setUniformItemSizes(true);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  nothing_->setWordWrap(true);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(space::l, space::l, space::l, space::l);
  column->setSpacing(space::m);
  column->addWidget(words_);
  column->addWidget(nothing_);
  column->addWidget(list_, 1);
  resize_within_screen(*this, palette_size);
  connect(words_, &QLineEdit::textChanged, this, &TaskPalette::search);
  connect(words_, &QLineEdit::returnPressed, this, [this] { take(list_->currentRow()); });
  connect(list_, &QListWidget::itemClicked, this,
          [this](QListWidgetItem* item) { take(list_->row(item)); });
  search();
  words_->setFocus();  // the first letter typed must not be lost
}

std::optional<cellar::SuggestedTask> TaskPalette::ask(const Context& context, QWidget* parent) {
  TaskPalette palette(context, task_forms(), parent);
  palette.exec();
  return palette.chosen();
}

void TaskPalette::search() {
  const auto status = context_.cellar.status();
  matches_ = find_tasks(words_->text(), tasks_, *status);
  list_->clear();
  for (const TaskMatch& match : matches_) {
    const QString title =
        regional(match.task->title.toUtf8().constData(), context_.preferences.words());
    // The register's form about a thing that is there changes it.
    const bool changes = match.about && match.task->kind.ends_with("_record");
    auto* item =
        new QListWidgetItem(changes ? tr("%1: Change what is registered").arg(match.about_name)
                            : match.about ? QStringLiteral("%1: %2").arg(match.about_name, title)
                                          : title,
                            list_);
    item->setSizeHint(QSize(0, palette_row_height));
  }
  list_->setCurrentRow(matches_.empty() ? -1 : 0);
  nothing_->setVisible(matches_.empty());
  list_->setVisible(!matches_.empty());
}

void TaskPalette::take(int row) {
  if (row < 0 || row >= static_cast<int>(matches_.size())) return;
  const TaskMatch& match = matches_.at(static_cast<std::size_t>(row));
  cellar::SuggestedTask task;
  task.kind = match.task->kind;
  task.about = match.about;
  chosen_ = std::move(task);
  accept();
}

void TaskPalette::move(int rows) {
  const int last = list_->count() - 1;
  list_->setCurrentRow(std::clamp(list_->currentRow() + rows, 0, std::max(0, last)));
}

bool TaskPalette::eventFilter(QObject* watched, QEvent* event) {
  if (watched == words_ && event->type() == QEvent::KeyPress) {
    switch (static_cast<QKeyEvent*>(event)->key()) {
      case Qt::Key_Down:
        move(1);
        return true;
      case Qt::Key_Up:
        move(-1);
        return true;
      default:
        break;
    }
  }
  return QDialog::eventFilter(watched, event);
}

}  // namespace ullage::ui
