// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/empty_state.h"

#include <QEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/theme/style.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

namespace {
constexpr int empty_picture_side = 44;
constexpr int empty_measure = 380;  // a comfortable line of text
}  // namespace

EmptyState::EmptyState(Icon which, const QString& title, const QString& sentence, QWidget* parent)
    : QWidget(parent), which_(which) {
  picture_ = new QLabel(this);
  title_ = new InkLabel(title, TextRole::heading, Ink::text, this);
  sentence_ = new InkLabel(sentence, TextRole::body, Ink::secondary, this);
  sentence_->setWordWrap(true);
  // A fixed measure: an aligned label of changing width is given the height of
  // another width than its own, and loses lines.
  sentence_->setFixedWidth(empty_measure);
  give_room();
  for (QLabel* label : {picture_, title_, sentence_}) label->setAlignment(Qt::AlignHCenter);
  auto* column = new QVBoxLayout(this);
  column->setSpacing(space::s);
  column->addStretch(2);
  column->addWidget(picture_, 0, Qt::AlignHCenter);
  column->addSpacing(space::s);
  column->addWidget(title_, 0, Qt::AlignHCenter);
  column->addWidget(sentence_, 0, Qt::AlignHCenter);
  actions_ = new QVBoxLayout;
  actions_->setContentsMargins(0, space::m, 0, 0);
  actions_->setSpacing(space::s);
  column->addLayout(actions_);
  column->addStretch(3);
  picture_->setPixmap(icon(which_, theme_of(this).control_line)
                          .pixmap(QSize(empty_picture_side, empty_picture_side)));
}

QPushButton* EmptyState::add_action(const QString& text) {
  auto* button = new QPushButton(text, this);
  if (actions_->count() == 0) set_role(button, ButtonRole::primary);
  actions_->addWidget(button, 0, Qt::AlignHCenter);
  return button;
}

void EmptyState::set_text(const QString& title, const QString& sentence) {
  title_->setText(title);
  sentence_->setText(sentence);
  give_room();
}

// A layout asks a wrapped label how tall it would like to be, not how tall it
// must be at the width it has been given.
void EmptyState::give_room() {
  sentence_->setMinimumHeight(std::max(0, sentence_->heightForWidth(empty_measure)));
}

void EmptyState::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) give_room();
  if (event->type() != QEvent::PaletteChange) return;
  picture_->setPixmap(icon(which_, theme_of(this).control_line)
                          .pixmap(QSize(empty_picture_side, empty_picture_side)));
}

}  // namespace ullage::ui
