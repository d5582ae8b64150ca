// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/form_section.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>
#include <map>

#include "ui/theme/icons.h"
#include "ui/theme/theme.h"
#include "ui/widgets/enum_picker.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {

namespace {
constexpr int label_column_width = 150;
constexpr int caution_bar = 3;
constexpr int value_share = 3;  // of the row's width, beside its error
constexpr int error_share = 2;

// Level with the first line of a field, also when a sentence opens below it.
void level_with_field(QLabel* words) {
  words->setContentsMargins(0, (control_height - words->fontMetrics().height()) / 2, 0, 0);
}
}  // namespace

Caution::Caution(const QString& sentence, Weight weight, QWidget* parent)
    : QFrame(parent), weight_(weight) {
  words_ = new InkLabel(sentence, TextRole::body, Ink::text, this);
  words_->setWordWrap(true);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(space::m + icon_size + space::s, space::s, space::m, space::s);
  row->addWidget(words_);
  setAccessibleName(weight == Weight::danger ? tr("Danger") : tr("Caution"));
  setAccessibleDescription(sentence);
}

void Caution::set_sentence(const QString& sentence) {
  words_->setText(sentence);
  setAccessibleDescription(sentence);
}

QString Caution::sentence() const { return words_->text(); }

void Caution::paintEvent(QPaintEvent*) {
  const Theme& theme = theme_of(this);
  const bool grave = weight_ == Weight::danger;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  painter.setBrush(grave ? theme.danger_surface : theme.warning_surface);
  painter.drawRoundedRect(rect(), radius::small, radius::small);
  const QColor mark = grave ? theme.danger : theme.warning;
  painter.fillRect(QRect(0, 0, caution_bar, height()), mark);
  const double line = words_->fontMetrics().height();
  const double top = words_->y() + (line - icon_size) / 2.0;
  paint_icon(painter, QRectF(space::m, top, icon_size, icon_size),
             grave ? Icon::danger : Icon::warning, mark);
}

FormSection::FormSection(const QString& heading, QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::s);
  auto* above = new InkLabel(heading, TextRole::heading, Ink::text, this);
  above->setVisible(!heading.isEmpty());
  column->addWidget(above);
  grid_ = new QGridLayout;
  grid_->setHorizontalSpacing(space::l);
  grid_->setVerticalSpacing(space::s);
  grid_->setColumnMinimumWidth(0, label_column_width);
  grid_->setColumnStretch(1, 1);
  column->addLayout(grid_);
  column->addStretch(1);  // spare height goes below the rows, not between them
}

QWidget* with_error(QWidget* value, QWidget* error, const QString& error_name) {
  auto* pair = new QWidget;
  auto* row = new QHBoxLayout(pair);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(space::s);
  auto* between = new InkLabel(QStringLiteral("±"), TextRole::body, Ink::secondary, pair);
  level_with_field(between);
  focus_target(error)->setAccessibleName(error_name);
  row->addWidget(value, value_share, Qt::AlignTop);
  row->addWidget(between, 0, Qt::AlignTop);
  row->addWidget(error, error_share, Qt::AlignTop);
  pair->setFocusProxy(value);
  return pair;
}

void drop_shared_mnemonics(QWidget& dialog) {
  std::map<QChar, QString> taken;
  const auto letter_of = [](const QString& text) {
    const auto at = text.indexOf(QLatin1Char('&'));
    return at < 0 || at + 1 >= text.size() ? QChar() : text.at(at + 1).toLower();
  };
  for (const QPushButton* button : dialog.findChildren<QPushButton*>()) {
    const QChar letter = letter_of(button->text());
    if (!letter.isNull()) taken.emplace(letter, button->text());
  }
  for (QLabel* label : dialog.findChildren<QLabel*>()) {
    const QChar letter = label->buddy() ? letter_of(label->text()) : QChar();
    if (letter.isNull()) continue;
    // Rows that take turns (a bias of pressure, of weight) may say the same.
    const auto [first, fresh] = taken.emplace(letter, label->text());
    if (!fresh && first->second != label->text()) {
      label->setText(label->text().remove(QLatin1Char('&')));
    }
  }
}

QWidget* focus_target(QWidget* field) {
  QWidget* target = field;
  while (target->focusProxy()) target = target->focusProxy();
  return target;
}

void lead_to(QWidget* field) {
  focus_target(field)->setFocus();
  // The sentence beneath it takes room first.
  QTimer::singleShot(0, field, [field] {
    for (QWidget* around = field->parentWidget(); around; around = around->parentWidget()) {
      if (auto* scroll = qobject_cast<QScrollArea*>(around)) scroll->ensureWidgetVisible(field);
    }
  });
}

QLabel* FormSection::add(const QString& label, QWidget* field, const QString& hint) {
  const int row = grid_->rowCount();
  auto* words = new InkLabel(label, TextRole::body, Ink::text, this);
  words->setBuddy(focus_target(field));
  words->setWordWrap(true);
  level_with_field(words);
  if (focus_target(field)->accessibleName().isEmpty() || qobject_cast<ChoiceBar*>(field)) {
    name_field(field, label);
  }
  grid_->addWidget(words, row, 0, Qt::AlignTop);
  // A lone tick is lower than the fields its label is set for.
  if (qobject_cast<QCheckBox*>(field) != nullptr) field->setMinimumHeight(control_height);
  if (hint.isEmpty()) {
    grid_->addWidget(field, row, 1);
    words_.push_back({field, words, nullptr});
    return words;
  }
  auto* cell = new QWidget(this);
  auto* column = new QVBoxLayout(cell);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(space::xs);
  column->addWidget(field);
  auto* below = new InkLabel(hint, TextRole::small, Ink::secondary, cell);
  below->setWordWrap(true);
  column->addWidget(below);
  grid_->addWidget(cell, row, 1);
  words_.push_back({field, words, below});
  return words;
}

void FormSection::name_field(QWidget* field, const QString& label) {
  const QString name = QString(label).remove('&');
  if (auto* bar = qobject_cast<ChoiceBar*>(field)) {
    bar->set_name(name);
  } else {
    focus_target(field)->setAccessibleName(name);
  }
}

void FormSection::set_row_words(QWidget* field, const QString& label, const QString& hint) {
  const auto at = std::find_if(words_.begin(), words_.end(),
                               [&](const Words& each) { return each.field == field; });
  if (at == words_.end()) return;
  at->label->setText(label);
  if (at->hint != nullptr) at->hint->setText(hint);
  name_field(field, label);
}

void FormSection::add_wide(QWidget* widget) {
  grid_->addWidget(widget, grid_->rowCount(), 0, 1, 2);
}

Caution* FormSection::add_caution(const QString& sentence, Caution::Weight weight) {
  auto* caution = new Caution(sentence, weight, this);
  add_wide(caution);
  return caution;
}

QLabel* FormSection::add_text(const QString& sentence) {
  auto* text = new InkLabel(sentence, TextRole::body, Ink::secondary, this);
  text->setWordWrap(true);
  add_wide(text);
  return text;
}

void FormSection::set_row_visible(QWidget* field, bool visible) {
  for (int i = 0; i < grid_->count(); ++i) {
    QWidget* cell = grid_->itemAt(i)->widget();
    if (cell != field && !cell->isAncestorOf(field)) continue;
    int row = 0;
    int column = 0;
    int rows = 0;
    int columns = 0;
    grid_->getItemPosition(i, &row, &column, &rows, &columns);
    if (auto* label = grid_->itemAtPosition(row, 0)) label->widget()->setVisible(visible);
    cell->setVisible(visible);
    return;
  }
}

}  // namespace ullage::ui
