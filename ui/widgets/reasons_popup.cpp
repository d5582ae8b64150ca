// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/reasons_popup.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/context.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {
namespace {

constexpr int reasons_width = 430;
constexpr double most_of_screen = 0.8;

InkLabel* wrapped(const QString& text, TextRole role, Ink ink) {
  auto* label = new InkLabel(text, role, ink);
  label->setWordWrap(true);
  return label;
}

QStringList words_of(const std::vector<std::string>& lines) {
  QStringList words;
  for (const std::string& line : lines) words << q(line);
  return words;
}

}  // namespace

ReasonsPopup::ReasonsPopup(const report::Grounds& grounds, QWidget* parent)
    : QFrame(parent, Qt::Popup) {
  setObjectName(QStringLiteral("reasons"));
  setAttribute(Qt::WA_DeleteOnClose);
  setWindowTitle(tr("Reasons"));
  setAccessibleName(tr("Reasons for %1").arg(q(grounds.name)));
  setAccessibleDescription(words_of(report::lines_of(grounds)).join(QLatin1Char('\n')));
  build(grounds);
}

ReasonsPopup* ReasonsPopup::open(QWidget* number, const report::Grounds& grounds, QRect part) {
  auto* popup = new ReasonsPopup(grounds, number);
  popup->place_at(*number, part.isNull() ? number->rect() : part);
  popup->show();
  if (auto* close = popup->findChild<QPushButton*>()) close->setFocus();
  return popup;
}

void ReasonsPopup::add_part(QVBoxLayout& column, const QString& heading, const QStringList& lines) {
  if (lines.isEmpty()) return;
  column.addSpacing(space::s);
  column.addWidget(new InkLabel(heading, TextRole::strong));
  for (const QString& line : lines) column.addWidget(wrapped(line, TextRole::small, Ink::text));
}

void ReasonsPopup::build(const report::Grounds& g) {
  inside_ = new QWidget;
  auto* column = new QVBoxLayout(inside_);
  column->setContentsMargins(space::l, space::m, space::l, space::m);
  column->setSpacing(3);
  column->addWidget(wrapped(q(g.name), TextRole::small, Ink::secondary));
  column->addWidget(wrapped(q(g.answer), TextRole::heading, Ink::text));
  QStringList inputs;
  for (const report::GroundsInput& input : g.inputs) inputs << q(report::line_of(input));
  add_part(*column, tr("Worked out from"), inputs);
  add_part(*column, tr("How"), QStringList{q(g.equation)} + words_of(g.notes));
  add_part(*column, tr("What would narrow it"), words_of(g.narrow));
  add_part(*column, tr("Source"),
           {tr("%1 (%2). Written out in %3, “%4”.")
                .arg(q(g.source), q(g.certainty), q(g.document), q(g.section))});
  auto* close = new QPushButton(tr("Close"));
  close->setObjectName(QStringLiteral("close_reasons"));
  connect(close, &QPushButton::clicked, this, &QWidget::close);
  auto* foot = new QHBoxLayout;
  foot->setContentsMargins(space::l, space::s, space::l, space::m);
  foot->addStretch(1);
  foot->addWidget(close);

  auto* scroll = new QScrollArea;
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->viewport()->setAutoFillBackground(false);
  scroll->setWidget(inside_);
  inside_->setAutoFillBackground(false);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(1, 1, 1, 1);
  all->setSpacing(0);
  all->addWidget(scroll, 1);
  all->addLayout(foot);
}

void ReasonsPopup::place_at(const QWidget& number, const QRect& part) {
  const QRect screen = number.screen()->availableGeometry();
  const int width = std::min(reasons_width, screen.width());
  ensurePolished();
  const int foot = control_height + space::s + space::m + 4;
  const int wanted = inside_->layout()->heightForWidth(width - 2) + foot;
  const int height = std::min(wanted, static_cast<int>(screen.height() * most_of_screen));
  resize(width, height);
  QPoint at = number.mapToGlobal(QPoint(part.left(), part.top() + part.height() + space::xs));
  if (at.y() + height > screen.bottom()) at.setY(number.mapToGlobal(part.topLeft()).y() - height);
  at.setX(std::clamp(at.x(), screen.left(), std::max(screen.left(), screen.right() - width)));
  at.setY(std::clamp(at.y(), screen.top(), std::max(screen.top(), screen.bottom() - height)));
  move(at);
}

void ReasonsPopup::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    close();
    return;
  }
  QFrame::keyPressEvent(event);
}

void ReasonsPopup::paintEvent(QPaintEvent*) {
  const Theme& theme = theme_of(this);
  QPainter painter(this);
  painter.fillRect(rect(), theme.raised);
  painter.setPen(theme.control_line);
  painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

}  // namespace ullage::ui
