// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/quantity_edit.h"

#include <QEvent>
#include <QLineEdit>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/preferences.h"
#include "ui/widgets/child_edit.h"
#include "ui/widgets/field_message.h"

namespace ullage::ui {

namespace {
constexpr int quantity_field_width = 150;
constexpr int unit_margin = 10;
}  // namespace

QuantityEdit::QuantityEdit(const Preferences& preferences, QWidget* parent)
    : QWidget(parent),
      preferences_(preferences),
      edit_(new QLineEdit(this)),
      unit_(new InkLabel({}, TextRole::body, Ink::secondary, edit_)),
      below_(new FieldMessage(edit_, this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  edit_->setMinimumWidth(quantity_field_width);
  column->addWidget(edit_);
  column->addWidget(below_);
  setFocusProxy(edit_);
  unit_->setAttribute(Qt::WA_TransparentForMouseEvents);
  connect(edit_, &QLineEdit::textEdited, this, &QuantityEdit::on_typed);
  connect(edit_, &QLineEdit::editingFinished, this, &QuantityEdit::on_left);
  connect(&preferences, &Preferences::changed, this, &QuantityEdit::on_units);
}

QuantityEdit::~QuantityEdit() { stop_listening(edit_, this); }

QString QuantityEdit::fault() const {
  if (!refusal_.isEmpty()) return refusal_;
  if (!reading_fault_.isEmpty()) return reading_fault_;
  return required_ && is_empty() ? tr("Fill this in.") : QString();
}

bool QuantityEdit::is_empty() const { return edit_->text().trimmed().isEmpty(); }

void QuantityEdit::set_required(bool required) { required_ = required; }

void QuantityEdit::show_fault() {
  fault_on_show_ = true;
  say();
}

void QuantityEdit::set_refusal(const QString& sentence) {
  refusal_ = sentence;
  show_fault();
}

void QuantityEdit::set_text(const QString& text) {
  edit_->setText(text);
  on_typed();
}

QString QuantityEdit::text() const { return edit_->text(); }
void QuantityEdit::select_all() { edit_->selectAll(); }
void QuantityEdit::set_read_only(bool read_only) { edit_->setReadOnly(read_only); }

void QuantityEdit::on_typed() {
  refusal_.clear();
  reading_fault_.clear();
  if (is_empty()) {
    take_nothing();
  } else {
    reading_fault_ = take_text(edit_->text());
    if (!reading_fault_.isEmpty()) take_nothing();
  }
  place_unit();
  say();
  emit changed();
}

// A value is written anew in the new unit; text that could not be read stays.
void QuantityEdit::on_units() {
  refresh_last();
  if (has_value()) render();
}

void QuantityEdit::on_left() {
  fault_on_show_ = fault_on_show_ || !reading_fault_.isEmpty();
  say();
  emit committed();
}

void QuantityEdit::render() {
  reading_fault_.clear();
  refusal_.clear();
  edit_->setText(has_value() ? shown_value() : QString());
  edit_->setCursorPosition(0);
  refresh_last();
  say();
}

void QuantityEdit::refresh_last() {
  edit_->setPlaceholderText(last_text());
  place_unit();
}

// While something is being typed the sentence waits until the field is left:
// half a number is no mistake. Once shown, it goes as soon as the text reads.
void QuantityEdit::say() {
  const QString wrong = fault();
  if (wrong.isEmpty()) fault_on_show_ = false;
  if (fault_on_show_) {
    below_->fault(wrong);
  } else {
    below_->hint(has_value() ? other_reading(edit_->text()) : QString());
  }
}

// The field's own unit steps back when the text brings one: "500 g" in a field of kg.
void QuantityEdit::place_unit() {
  const QString typed = edit_->text();
  const bool brings_one =
      std::any_of(typed.begin(), typed.end(), [](QChar c) { return c.isLetter(); });
  unit_->setText(brings_one ? QString() : shown_unit());
  unit_->adjustSize();
  const QSize size = unit_->sizeHint();
  const int room = unit_->text().isEmpty() ? 0 : size.width() + unit_margin;
  edit_->setTextMargins(0, 0, room, 0);
  unit_->setGeometry(edit_->width() - size.width() - unit_margin, 0, size.width(), edit_->height());
  unit_->setAlignment(Qt::AlignVCenter | Qt::AlignRight);
}

void QuantityEdit::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) place_unit();
}

void QuantityEdit::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  layout()->activate();
  place_unit();
}

}  // namespace ullage::ui
