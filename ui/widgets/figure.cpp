// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/figure.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "ui/context.h"
#include "ui/theme/theme.h"
#include "ui/widgets/reasons_popup.h"

namespace ullage::ui {
namespace {

constexpr int figure_room = 2;  // above and below the text, for ring and dots

}  // namespace

Figure::Figure(TextRole role, Ink ink, QWidget* parent) : QAbstractButton(parent), ink_(ink) {
  setFont(font_of(role));
  QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  setFocusPolicy(Qt::NoFocus);
  connect(this, &QAbstractButton::clicked, this, &Figure::open_reasons);
}

void Figure::show_number(const QString& name, const QString& text, Reasons reasons) {
  const bool as_before = text == this->text() && static_cast<bool>(reasons) == has_reasons();
  reasons_ = std::move(reasons);
  setAccessibleName(name.isEmpty() ? text : name + QStringLiteral(": ") + text);
  // A drag tells ten numbers anew where three change: only those are laid out.
  if (as_before) return;
  const bool opens = has_reasons();
  setFocusPolicy(opens ? Qt::StrongFocus : Qt::NoFocus);
  setCursor(opens ? Qt::PointingHandCursor : Qt::ArrowCursor);
  setText(text);
  setAccessibleDescription(opens ? tr("Opens the reasons for this number") : QString());
  updateGeometry();
  update();
}

report::Grounds Figure::grounds() const { return reasons_ ? reasons_() : report::Grounds{}; }

void Figure::set_ink(Ink ink) {
  ink_ = ink;
  update();
}

void Figure::open_reasons() {
  const report::Grounds known = grounds();
  if (!known.empty()) ReasonsPopup::open(this, known);
}

WrappedText& Figure::wrapped() const {
  wrapped_.set(text(), font());
  return wrapped_;
}

QStringList Figure::lines_at(int width) const { return wrapped().in(width).lines; }

QSize Figure::sizeHint() const {
  const WrappedText::Lines& whole = wrapped().in(QWIDGETSIZE_MAX);
  return {whole.width + 2 * figure_room, fontMetrics().height() + 2 * figure_room};
}

QSize Figure::minimumSizeHint() const {
  return {wrapped().longest_word() + 2 * figure_room, fontMetrics().height() + 2 * figure_room};
}

int Figure::heightForWidth(int width) const {
  return wrapped().in(width - 2 * figure_room).height + 2 * figure_room;
}

void Figure::paintEvent(QPaintEvent*) {
  const Theme& theme = theme_of(this);
  QPainter painter(this);
  const QRect inside = rect().adjusted(figure_room, figure_room, -figure_room, -figure_room);
  painter.setPen(ink_of(ink_, theme));
  const WrappedText::Lines& laid_out = wrapped().in(inside.width());
  painter.drawText(inside, Qt::AlignLeft | Qt::AlignTop, laid_out.lines.join(QLatin1Char('\n')));
  if (!reasons_) return;
  // The dotted line runs under the last line of the text.
  QPen dots(hasFocus() || underMouse() ? theme.accent_ink : theme.text_secondary, 1.2);
  dots.setDashPattern({1.5, 2});
  painter.setPen(dots);
  const int y = std::min(height() - 1, figure_room + laid_out.height);
  const int reach =
      std::min(fontMetrics().horizontalAdvance(laid_out.lines.back()), inside.width());
  painter.drawLine(figure_room, y, figure_room + reach, y);
  if (!hasFocus()) return;
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(theme.focus, 2));
  painter.setBrush(Qt::NoBrush);
  painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), radius::small, radius::small);
}

void Figure::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    if (reasons_) open_reasons();
    return;
  }
  QAbstractButton::keyPressEvent(event);
}

bool Figure::event(QEvent* event) {
  if (event->type() == QEvent::Enter || event->type() == QEvent::Leave) update();
  return QAbstractButton::event(event);
}

}  // namespace ullage::ui
