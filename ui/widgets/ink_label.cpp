// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/ink_label.h"

#include <QEvent>
#include <QPainter>
#include <QStyle>
#include <algorithm>

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

bool InkLabel::breaks_lines() const {
  const auto selects = Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard | Qt::TextEditable;
  return wordWrap() && !text().isEmpty() && textFormat() == Qt::PlainText && !buddy() &&
         !(textInteractionFlags() & selects) && frameWidth() == 0 && indent() <= 0;
}

QSize InkLabel::around() const {
  const QMargins edges = contentsMargins();
  return {edges.left() + edges.right() + 2 * margin(), edges.top() + edges.bottom() + 2 * margin()};
}

const WrappedText::Lines& InkLabel::lines_in(int width) const {
  wrapped_.set(text(), font());
  return wrapped_.in(width);
}

QStringList InkLabel::lines() const {
  return breaks_lines() ? lines_in(width() - around().width()).lines
                        : text().split(QLatin1Char('\n'));
}

// As wide as QLabel would be: lines of eighty letters, but of forty or twenty where
// these do for the text.
QSize InkLabel::sizeHint() const {
  if (!breaks_lines()) return QLabel::sizeHint();
  ensurePolished();
  const QFontMetrics letters = fontMetrics();
  const int room = std::min(letters.averageCharWidth() * 80, maximumWidth()) - around().width();
  WrappedText::Lines lines = lines_in(room);
  for (const int part : {2, 4}) {
    const bool few = lines.height < 8 / part * letters.lineSpacing();
    if (few && lines.width > room / part) lines = lines_in(room / part);
  }
  return (QSize(lines.width, lines.height) + around()).expandedTo(minimumSize());
}

QSize InkLabel::minimumSizeHint() const {
  if (!breaks_lines()) return QLabel::minimumSizeHint();
  ensurePolished();
  const QSize least(lines_in(0).width, lines_in(QWIDGETSIZE_MAX).height);
  return (least + around()).expandedTo(minimumSize());
}

int InkLabel::heightForWidth(int width) const {
  // Painted at two device pixels a point, letters are a hair wider than here: a line that
  // just fits may still break, and the second would be cut off.
  constexpr int hair = 2;
  if (!breaks_lines()) return QLabel::heightForWidth(wordWrap() ? width - hair : width);
  return lines_in(width - around().width()).height + around().height();
}

void InkLabel::paintEvent(QPaintEvent* event) {
  if (!breaks_lines()) return QLabel::paintEvent(event);
  QPainter painter(this);
  const QRect room = contentsRect().adjusted(margin(), margin(), -margin(), -margin());
  style()->drawItemText(&painter, room,
                        static_cast<int>(QStyle::visualAlignment(layoutDirection(), alignment())),
                        palette(), isEnabled(),
                        lines_in(room.width()).lines.join(QLatin1Char('\n')), foregroundRole());
}

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
