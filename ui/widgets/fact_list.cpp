// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/fact_list.h"

#include <QGridLayout>
#include <QPushButton>

#include "ui/theme/theme.h"
#include "ui/widgets/figure.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

FactList::FactList(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setHorizontalSpacing(space::m);
  grid_->setVerticalSpacing(6);
  grid_->setColumnMinimumWidth(0, 110);
  grid_->setColumnStretch(1, 1);
}

void FactList::show_facts(const std::vector<ListedFact>& facts) {
  while (rows_.size() < facts.size()) {
    const Row made{new InkLabel({}, TextRole::small, Ink::secondary, this),
                   new InkLabel({}, TextRole::small, Ink::text, this),
                   new Figure(TextRole::small, Ink::text, this)};
    made.name->setWordWrap(true);
    made.words->setWordWrap(true);
    const int row = static_cast<int>(rows_.size());
    grid_->addWidget(made.name, row, 0, Qt::AlignTop);
    grid_->addWidget(made.words, row, 1, Qt::AlignTop);
    grid_->addWidget(made.number, row, 1, Qt::AlignTop);
    rows_.push_back(made);
  }
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const Row& row = rows_[i];
    const bool used = i < facts.size();
    const bool reasoned = used && facts[i].reasons;
    row.name->setText(used ? facts[i].name : QString());
    row.words->setText(used && !reasoned ? facts[i].value : QString());
    if (reasoned) row.number->show_number(facts[i].name, facts[i].value, facts[i].reasons);
    row.name->setVisible(used);
    row.words->setVisible(used && !reasoned);
    row.number->setVisible(reasoned);
  }
}

void FactList::show_facts(const std::vector<std::pair<QString, QString>>& facts) {
  std::vector<ListedFact> plain;
  plain.reserve(facts.size());
  for (const auto& [name, value] : facts) plain.push_back({name, value});
  show_facts(plain);
}

Figure* FactList::figure(const QString& name) const {
  for (const Row& row : rows_)
    if (!row.number->isHidden() && row.name->text() == name) return row.number;
  return nullptr;
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
