// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/fact_list.h"

#include <QGridLayout>
#include <QPushButton>

#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

FactList::FactList(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setHorizontalSpacing(space::m);
  grid_->setVerticalSpacing(6);
  grid_->setColumnMinimumWidth(0, 110);
  grid_->setColumnStretch(1, 1);
}

void FactList::show_facts(const std::vector<std::pair<QString, QString>>& facts) {
  while (rows_.size() < facts.size()) {
    auto* name = new InkLabel({}, TextRole::small, Ink::secondary, this);
    auto* value = new InkLabel({}, TextRole::small, Ink::text, this);
    value->setWordWrap(true);
    const int row = static_cast<int>(rows_.size());
    grid_->addWidget(name, row, 0, Qt::AlignTop);
    grid_->addWidget(value, row, 1, Qt::AlignTop);
    rows_.emplace_back(name, value);
  }
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const auto& [name, value] = rows_[i];
    const bool used = i < facts.size();
    name->setText(used ? facts[i].first : QString());
    value->setText(used ? facts[i].second : QString());
    name->setVisible(used);
    value->setVisible(used);
  }
}

TaskList::TaskList(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setHorizontalSpacing(space::s);
  grid_->setVerticalSpacing(space::xs);
  grid_->setColumnStretch(1, 1);
}

void TaskList::show_tasks(const std::vector<ListedTask>& tasks) {
  while (rows_.size() < tasks.size()) {
    const int row = static_cast<int>(rows_.size());
    Row made{new InkLabel(QString::number(row + 1), TextRole::small, Ink::secondary, this),
             new InkLabel({}, TextRole::small, Ink::text, this), new QPushButton(this)};
    made.sentence->setWordWrap(true);
    grid_->addWidget(made.number, row, 0, Qt::AlignTop);
    grid_->addWidget(made.sentence, row, 1);
    grid_->addWidget(made.button, row, 2, Qt::AlignTop);
    connect(made.button, &QPushButton::clicked, this, [this, row] { emit chosen(row); });
    rows_.push_back(made);
  }
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const Row& row = rows_[i];
    const bool used = i < tasks.size();
    row.number->setVisible(used);
    row.sentence->setVisible(used);
    const bool acts = used && !tasks[i].action.isEmpty();
    row.button->setVisible(acts);
    // The number stands with the first line, or with the one line beside a button.
    grid_->setAlignment(row.number, acts ? Qt::AlignVCenter : Qt::AlignTop);
    if (!used) continue;
    row.sentence->setText(tasks[i].sentence);
    row.button->setText(tasks[i].action);
    row.button->setAccessibleName(tasks[i].action + QStringLiteral(" ") + tasks[i].sentence);
  }
}

}  // namespace ullage::ui
