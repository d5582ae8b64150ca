// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/listed_row.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/theme/theme.h"
#include "ui/widgets/keep_count.h"

namespace ullage::ui {
namespace {

// One width for all rows, so that the numbers of different sections stand in
// one column, and near enough to what they are numbers of.
constexpr int said_at_most = 520;
constexpr int number_wide = 150;
constexpr int actions_at_least = 170;  // two short buttons

}  // namespace

ListedRow::ListedRow(QWidget* parent) : QWidget(parent) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, space::s, 0, space::s);
  row->setSpacing(space::l);
  auto* words_place = new QWidget(this);
  words_place->setMaximumWidth(said_at_most);
  auto* said = new QVBoxLayout(words_place);
  said->setContentsMargins(0, 2, 0, 0);  // on one line with the number
  said->setSpacing(2);
  title_ = new InkLabel({}, TextRole::strong, Ink::text, this);
  title_->setWordWrap(true);
  words_ = new InkLabel({}, TextRole::small, Ink::secondary, this);
  words_->setWordWrap(true);
  said->addWidget(title_);
  said->addWidget(words_);
  auto* numbers = new QVBoxLayout;
  numbers->setSpacing(space::xs);
  for (Figure** number : {&number_, &below_}) {
    *number = new Figure(TextRole::strong, Ink::text, this);
    (*number)->setFixedWidth(number_wide);
    numbers->addWidget(*number);
  }
  numbers->addStretch(1);
  auto* actions_place = new QWidget(this);
  actions_place->setMinimumWidth(actions_at_least);
  actions_ = new QHBoxLayout(actions_place);
  actions_->setContentsMargins(0, 0, 0, 0);
  actions_->setSpacing(space::s);
  actions_->setAlignment(Qt::AlignRight | Qt::AlignTop);
  row->addWidget(words_place, 50, Qt::AlignTop);
  row->addLayout(numbers);
  row->addStretch(1);
  row->addWidget(actions_place, 0, Qt::AlignTop);
}

void ListedRow::show_row(RowSpec spec) {
  spec_ = std::move(spec);
  title_->setText(spec_.title);
  title_->set_ink(spec_.title_ink);
  words_->setText(spec_.words);
  words_->setVisible(!spec_.words.isEmpty());
  number_->show_number(spec_.number_of, spec_.number, spec_.reasons);
  number_->setVisible(!spec_.number.isEmpty());
  below_->show_number(spec_.below.of, spec_.below.text, spec_.below.reasons);
  below_->setVisible(!spec_.below.text.isEmpty());
  QStringList actions;
  for (const RowAction& action : spec_.actions)
    actions << action.text + QLatin1Char('\n') + action.name;
  if (actions == shown_actions_) return;
  shown_actions_ = actions;
  while (QLayoutItem* item = actions_->takeAt(0)) {
    item->widget()->hide();
    item->widget()->deleteLater();
    delete item;
  }
  for (std::size_t i = 0; const RowAction& action : spec_.actions) {
    auto* button = new QPushButton(action.text, this);
    button->setObjectName(action.name);
    button->setAccessibleName(tr("%1: %2").arg(action.text, spec_.title));
    connect(button, &QPushButton::clicked, this, [this, i] {
      const auto act = spec_.actions[i].act;  // the row may be shown anew meanwhile
      act();
    });
    actions_->addWidget(button, 0, Qt::AlignTop);
    ++i;
  }
}

ListedSection::ListedSection(const QString& heading, const QString& hint, QWidget* parent)
    : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  column->addWidget(new InkLabel(heading, TextRole::heading, Ink::text, this));
  if (!hint.isEmpty()) {
    auto* words = new InkLabel(hint, TextRole::small, Ink::secondary, this);
    words->setWordWrap(true);
    column->addWidget(words);
  }
  rows_ = new QVBoxLayout;
  rows_->setContentsMargins(0, 0, 0, 0);
  rows_->setSpacing(0);
  column->addLayout(rows_);
}

void ListedSection::show_rows(const std::vector<RowSpec>& specs) {
  const auto rows = keep_count<ListedRow>(*rows_, static_cast<qsizetype>(specs.size()),
                                          [this] { return new ListedRow(this); });
  for (std::size_t i = 0; i < rows.size(); ++i) rows[i]->show_row(specs[i]);
  setVisible(!specs.empty());
}

}  // namespace ullage::ui
