// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/chip.h"

#include <QPainter>
#include <algorithm>

#include "ui/theme/style.h"
#include "ui/theme/theme.h"

namespace ullage::ui {

namespace {

constexpr int chip_height = 28;
constexpr int pill_height = 20;

QString count_text(int count) { return count < 0 ? QString() : QString::number(count); }

}  // namespace

Chip::Chip(const QString& word, QWidget* parent) : QAbstractButton(parent) {
  setText(word);
  setCheckable(true);
  setFocusPolicy(Qt::StrongFocus);
  setAttribute(Qt::WA_Hover);
  setFont(font_of(TextRole::small));
  set_count(-1);
}

void Chip::set_count(int count) {
  count_ = count;
  setAccessibleName(count < 0 ? text() : QStringLiteral("%1, %2").arg(text()).arg(count));
  updateGeometry();
  update();
}

QSize Chip::sizeHint() const {
  QFont strong = font();
  strong.setWeight(QFont::DemiBold);
  const int number =
      count_ < 0 ? 0 : QFontMetrics(strong).horizontalAdvance(count_text(count_)) + space::xs;
  return {number + fontMetrics().horizontalAdvance(text()) + 2 * space::m, chip_height};
}

void Chip::paintEvent(QPaintEvent*) {
  const Theme& theme = theme_of(this);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QRectF body = QRectF(rect()).adjusted(1, 1, -1, -1);
  painter.setPen(QPen(isChecked() ? theme.accent : theme.control_line, 1));
  painter.setBrush(isChecked() ? theme.accent : underMouse() ? theme.hover : theme.surface);
  painter.drawRoundedRect(body, body.height() / 2, body.height() / 2);
  if (hasFocus()) paint_focus_ring(painter, body, body.height() / 2, theme, isChecked());
  painter.setPen(isChecked() ? theme.accent_text : theme.text);
  QRect words = rect().adjusted(space::m, 0, -space::m, 0);
  if (count_ >= 0) {
    QFont strong = font();
    strong.setWeight(QFont::DemiBold);
    painter.setFont(strong);
    painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeft, count_text(count_));
    words.setLeft(words.left() + QFontMetrics(strong).horizontalAdvance(count_text(count_)) +
                  space::xs);
    painter.setFont(font());
  }
  painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeft, text());
}

Pill::Pill(const QString& text, Tone tone, QWidget* parent) : QLabel(text, parent), tone_(tone) {
  setFont(font_of(TextRole::small));
  setTextFormat(Qt::PlainText);
}

QSize Pill::sizeHint() const {
  const int width = fontMetrics().horizontalAdvance(text()) + 2 * space::s;
  return {std::max(width, pill_height), pill_height};
}

void Pill::paintEvent(QPaintEvent*) {
  if (text().isEmpty()) return;
  const Theme& theme = theme_of(this);
  struct Tint {
    QColor fill, ink;
  };
  const Tint tint = [&]() -> Tint {
    switch (tone_) {
      case Tone::accent:
        return {theme.selected, theme.accent_ink};
      case Tone::warning:
        return {theme.warning_surface, theme.warning_ink};
      case Tone::danger:
        return {theme.danger_surface, theme.danger_ink};
      case Tone::plain:
        break;
    }
    return {theme.hover, theme.text_secondary};
  }();
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QRectF body((width() - sizeHint().width()) / 2.0, (height() - pill_height) / 2.0,
                    sizeHint().width(), pill_height);
  painter.setPen(Qt::NoPen);
  painter.setBrush(tint.fill);
  painter.drawRoundedRect(body, pill_height / 2.0, pill_height / 2.0);
  painter.setPen(tint.ink);
  painter.drawText(body, Qt::AlignCenter, text());
}

}  // namespace ullage::ui
