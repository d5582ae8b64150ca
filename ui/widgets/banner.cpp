// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/banner.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/theme/theme.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/status_mark.h"

namespace ullage::ui {

Banner::Banner(cellar::Severity severity, const QString& headline, const QString& detail,
               QWidget* parent)
    : QFrame(parent), severity_(severity) {
  headline_ = new InkLabel(headline, TextRole::strong, Ink::text, this);
  headline_->setWordWrap(true);
  detail_ = new InkLabel(detail, TextRole::small, Ink::secondary, this);
  detail_->setWordWrap(true);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(space::m + icon_size + space::s, space::m, space::m, space::m);
  column->setSpacing(space::xs);
  column->addWidget(headline_);
  column->addWidget(detail_);
  actions_ = new QHBoxLayout;
  actions_->setContentsMargins(0, space::xs, 0, 0);
  actions_->setSpacing(space::s);
  actions_->addStretch(1);
  column->addLayout(actions_);
  set(severity, headline, detail);
}

void Banner::set(cellar::Severity severity, const QString& headline, const QString& detail) {
  severity_ = severity;
  headline_->setText(headline);
  detail_->setText(detail);
  detail_->setVisible(!detail.isEmpty());
  setAccessibleName(headline);
  setAccessibleDescription(detail);
  update();
}

QString Banner::headline() const { return headline_->text(); }

QAbstractButton* Banner::add_action(const QString& text) {
  auto* button = new QPushButton(text, this);
  button->setAutoDefault(false);
  actions_->insertWidget(actions_->count() - 1, button);
  return button;
}

void Banner::clear_actions() {
  while (actions_->count() > 1) {
    QLayoutItem* item = actions_->takeAt(0);
    item->widget()->deleteLater();
    delete item;
  }
}

void Banner::paintEvent(QPaintEvent*) {
  const Theme& theme = theme_of(this);
  struct Tint {
    QColor surface, edge;
  };
  const Tint tint = [&]() -> Tint {
    switch (severity_) {
      case cellar::Severity::danger:
        return {theme.danger_surface, theme.danger};
      case cellar::Severity::warning:
        return {theme.warning_surface, theme.warning};
      case cellar::Severity::advice:
      case cellar::Severity::info:
        break;
    }
    return {theme.surface, theme.line};
  }();
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  QColor edge = tint.edge;
  if (severity_ >= cellar::Severity::warning) edge.setAlphaF(0.45F);
  painter.setPen(edge);
  painter.setBrush(tint.surface);
  painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), radius::card,
                          radius::card);
  const double line = headline_->fontMetrics().height();
  constexpr double mark_side = 17;
  const double top = headline_->y() + (line - mark_side) / 2.0;
  paint_mark(painter, QRectF(space::m, top, mark_side, mark_side), mark_of(severity_), theme);
}

}  // namespace ullage::ui
