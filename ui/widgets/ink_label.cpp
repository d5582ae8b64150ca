// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/ink_label.h"

#include <QEvent>

namespace ullage::ui {

QColor ink_of(Ink ink, const Theme& theme) {
  switch (ink) {
    case Ink::secondary:
      return theme.text_secondary;
    case Ink::accent:
      return theme.accent_ink;
    case Ink::danger:
      return theme.danger_ink;
    case Ink::warning:
      return theme.warning_ink;
    case Ink::success:
      return theme.success_ink;
    case Ink::text:
      break;
  }
  return theme.text;
}

InkLabel::InkLabel(const QString& text, TextRole role, Ink ink, QWidget* parent)
    : QLabel(text, parent), ink_(ink) {
  setTextFormat(Qt::PlainText);
  setFont(font_of(role));
  colour();
}

void InkLabel::set_ink(Ink ink) {
  ink_ = ink;
  colour();
}

void InkLabel::set_role(TextRole role) { setFont(font_of(role)); }

void InkLabel::changeEvent(QEvent* event) {
  QLabel::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) colour();
}

void InkLabel::colour() {
  QPalette colours = palette();
  const QColor ink = ink_of(ink_, theme_of(this));
  if (colours.color(QPalette::WindowText) == ink) return;  // ends the change event we cause
  colours.setColor(QPalette::WindowText, ink);
  setPalette(colours);
}

}  // namespace ullage::ui
