// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/gas_drawing.h"

#include <QFontMetrics>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "ui/theme/icons.h"
#include "ui/theme/theme.h"

namespace ullage::ui {

namespace {

constexpr int supply_row_height = 36;
constexpr int supply_box_height = 28;
constexpr int least_supply_column = 92;
constexpr int supply_gap = 28;

struct SupplyPen {
  QPainter& painter;
  const Theme& theme;

  void box(const QRect& r, Icon which, const QString& text, const QString& more = {}) const {
    painter.setPen(QPen(theme.control_line, 1));
    painter.setBrush(theme.surface);
    painter.drawRoundedRect(QRectF(r).adjusted(0.5, 0.5, -0.5, -0.5), radius::control,
                            radius::control);
    paint_icon(painter, QRectF(r.left() + 6, r.center().y() - 7, 15, 15), which,
               theme.text_secondary);
    const QRect words = r.adjusted(26, 0, -6, 0);
    painter.setFont(font_of(TextRole::small));
    const QFontMetrics metrics(painter.font());
    const int right = more.isEmpty() ? 0 : metrics.horizontalAdvance(more) + 6;
    painter.setPen(theme.text);
    painter.drawText(words.adjusted(0, 0, -right, 0), Qt::AlignVCenter | Qt::AlignLeft,
                     metrics.elidedText(text, Qt::ElideRight, words.width() - right));
    painter.setPen(theme.text_secondary);
    painter.drawText(words, Qt::AlignVCenter | Qt::AlignRight, more);
  }
  void hose(QPoint from, QPoint to) const {
    painter.setPen(QPen(theme.text_secondary, 1.6));
    painter.setBrush(Qt::NoBrush);
    const int middle = (from.x() + to.x()) / 2;
    QPainterPath path(from);
    path.lineTo(middle, from.y());
    path.lineTo(middle, to.y());
    path.lineTo(to);
    painter.drawPath(path);
  }
};

QRect supply_row_box(int x, int width, int row) {
  return {x, row * supply_row_height + (supply_row_height - supply_box_height) / 2, width,
          supply_box_height};
}

}  // namespace

GasDrawing::GasDrawing(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("gas_drawing"));
  setAccessibleName(tr("What feeds what"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void GasDrawing::show_supply(DrawnSupply supply) {
  supply_ = std::move(supply);
  setAccessibleDescription(in_words());
  updateGeometry();
  update();
}

int GasDrawing::rows() const {
  int kegs = 0;
  for (const DrawnBranch& b : supply_.branches)
    kegs += std::max(1, static_cast<int>(b.kegs.size()));
  return std::max({1, kegs, static_cast<int>(supply_.bottles.size())});
}

QSize GasDrawing::sizeHint() const {
  return {3 * 130 + 2 * supply_gap, rows() * supply_row_height};
}
QSize GasDrawing::minimumSizeHint() const {
  return {3 * least_supply_column + 2 * supply_gap, rows() * supply_row_height};
}

void GasDrawing::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const SupplyPen pen{painter, theme_of(this)};
  const int column = std::clamp((width() - 2 * supply_gap) / 3, least_supply_column, 180);
  const int x2 = column + supply_gap, x3 = 2 * (column + supply_gap);
  std::vector<QPoint> regulators;
  int row = 0;
  for (const DrawnBranch& b : supply_.branches) {
    const QRect regulator = supply_row_box(x2, column, row);
    regulators.emplace_back(regulator.left(), regulator.center().y());
    for (std::size_t i = 0; i < b.kegs.size(); ++i) {
      const QRect keg = supply_row_box(x3, column, row + static_cast<int>(i));
      pen.hose({regulator.right(), regulator.center().y()}, {keg.left(), keg.center().y()});
      pen.box(keg, Icon::keg, b.kegs[i].tag, b.kegs[i].pressure);
    }
    pen.box(regulator, Icon::line, b.regulator);
    row += std::max(1, static_cast<int>(b.kegs.size()));
  }
  for (std::size_t i = 0; i < supply_.bottles.size(); ++i) {
    const QRect bottle = supply_row_box(0, column, static_cast<int>(i));
    for (const QPoint& to : regulators) pen.hose({bottle.right(), bottle.center().y()}, to);
    pen.box(bottle, Icon::gas, supply_.bottles[i]);
  }
}

QString GasDrawing::in_words() const {
  QStringList bottles;
  for (const QString& b : supply_.bottles) bottles << b;
  QStringList words;
  for (const DrawnBranch& b : supply_.branches) {
    QStringList kegs;
    for (const DrawnKeg& k : b.kegs) kegs << tr("%1 at %2").arg(k.tag, k.pressure);
    words << (kegs.isEmpty()
                  ? tr("%1 feeds %2, which has no keg on it.")
                        .arg(bottles.join(tr(" and ")), b.regulator)
                  : tr("%1 feeds %2, which feeds %3.")
                        .arg(bottles.join(tr(" and ")), b.regulator, kegs.join(tr(", "))));
  }
  if (words.isEmpty()) words << tr("%1 feeds nothing.").arg(bottles.join(tr(" and ")));
  return words.join(QLatin1Char(' '));
}

}  // namespace ullage::ui
