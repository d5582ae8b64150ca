// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/field_message.h"

#include <QAccessible>
#include <QPainter>

#include "ui/theme/icons.h"

namespace ullage::ui {

namespace {
constexpr int fault_mark_side = 13;
constexpr int fault_mark_room = 18;
constexpr int above_message = 3;
}  // namespace

FieldMessage::FieldMessage(QWidget* field, QWidget* parent)
    : InkLabel({}, TextRole::small, Ink::secondary, parent), field_(field) {
  setWordWrap(true);
  setVisible(false);
}

void FieldMessage::hint(const QString& words) { put(words, false); }
void FieldMessage::fault(const QString& words) { put(words, true); }

void FieldMessage::put(const QString& words, bool is_fault) {
  const bool news = is_fault && !words.isEmpty() && words != text();
  is_fault_ = is_fault && !words.isEmpty();
  set_ink(is_fault_ ? Ink::danger : Ink::secondary);
  setContentsMargins(is_fault_ ? fault_mark_room : 0, above_message, 0, 0);
  setText(words);
  setVisible(!words.isEmpty());
  field_->setAccessibleDescription(words);
  field_->setProperty(fault_property, is_fault_);
  field_->update();
  if (news) {
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
  }
}

void FieldMessage::paintEvent(QPaintEvent* event) {
  InkLabel::paintEvent(event);
  if (!is_fault_) return;
  QPainter painter(this);
  const double top = above_message + (fontMetrics().height() - fault_mark_side) / 2.0;
  paint_icon(painter, QRectF(0, top, fault_mark_side, fault_mark_side), Icon::danger,
             theme_of(this).danger);
}

}  // namespace ullage::ui
