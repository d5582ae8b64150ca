// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/card.h"

#include <QPainter>
#include <QVBoxLayout>

#include "ui/theme/theme.h"

namespace ullage::ui {

Card::Card(QWidget* parent) : QFrame(parent), column_(new QVBoxLayout(this)) {
  setFrameShape(QFrame::NoFrame);
  column_->setContentsMargins(space::m, space::m, space::m, space::m);
  column_->setSpacing(space::xs);
}

void Card::paintEvent(QPaintEvent*) {
  const Theme& theme = theme_of(this);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(theme.line, 1));
  painter.setBrush(theme.raised);
  painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), radius::card,
                          radius::card);
}

}  // namespace ullage::ui
