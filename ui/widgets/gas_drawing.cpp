// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/gas_drawing.h"

#include <QFontMetrics>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <array>

#include "ui/theme/icons.h"
#include "ui/theme/theme.h"

namespace ullage::ui {

namespace {

constexpr int supply_box_height = 28;
constexpr int supply_row_gap = 8;
constexpr int least_supply_column = 96;
constexpr int most_supply_column = 220;
constexpr int supply_gap = 24;
constexpr int supply_icon_room = 26;  // before the words; after them:
constexpr int supply_word_room = 6;
constexpr int secondary_set_in = 18;

// How many regulators stand before it.
int regulators_before(const DrawnSupply& supply, const DrawnBranch& branch) {
  int depth = 0;
  for (auto at = branch.fed_by; at && *at < supply.branches.size() && depth < 3;
       at = supply.branches[*at].fed_by) {
    ++depth;
  }
  return depth;
}

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
    const QRect words = r.adjusted(supply_icon_room, 0, -supply_word_room, 0);
    painter.setFont(font_of(TextRole::small));
    const QFontMetrics metrics(painter.font());
    const int right = more.isEmpty() ? 0 : metrics.horizontalAdvance(more) + 6;
    painter.setPen(theme.text);
    painter.drawText(words.adjusted(0, 0, -right, 0),
                     Qt::AlignVCenter | Qt::AlignLeft | Qt::TextWordWrap, text);
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
  // Down, then across: to one that is set in below.
  void drop(QPoint from, QPoint to) const {
    painter.setPen(QPen(theme.text_secondary, 1.6));
    painter.setBrush(Qt::NoBrush);
    QPainterPath path(from);
    path.lineTo(from.x(), to.y());
    path.lineTo(to);
    painter.drawPath(path);
  }
};

bool draws_from(const DrawnBranch& branch, std::size_t bottle) {
  return branch.bottle ? *branch.bottle == bottle : !branch.fed_by;
}

// How wide the words of each column want to be, boxes included.
std::array<int, 3> wanted_columns(const DrawnSupply& supply) {
  const QFontMetrics metrics(font_of(TextRole::small));
  const int around = supply_icon_room + supply_word_room + 2;
  std::array<int, 3> wide{least_supply_column, least_supply_column, least_supply_column};
  const auto want = [&](std::size_t column, const QString& text, int set_in = 0) {
    wide[column] = std::clamp(metrics.horizontalAdvance(text) + around + set_in, wide[column],
                              most_supply_column);
  };
  for (const QString& b : supply.bottles) want(0, b);
  for (const DrawnBranch& b : supply.branches) {
    want(1, b.regulator, secondary_set_in * regulators_before(supply, b));
    for (const DrawnKeg& k : b.kegs) want(2, k.tag + QStringLiteral("  ") + k.pressure);
  }
  return wide;
}

// As wide as wanted; where that does not fit, the widest give way first, and
// their words wrap.
std::array<int, 3> columns_within(const DrawnSupply& supply, int width) {
  std::array<int, 3> wide = wanted_columns(supply);
  const int room = width - 2 * supply_gap;
  int over = wide[0] + wide[1] + wide[2] - room;
  while (over > 0) {
    int& widest = *std::max_element(wide.begin(), wide.end() - 1);  // pressures stay whole
    if (widest <= least_supply_column) break;
    --widest;
    --over;
  }
  return wide;
}

// Of a box whose words may wrap; all are as tall as the tallest.
int box_height(const DrawnSupply& supply, const std::array<int, 3>& wide) {
  const QFontMetrics metrics(font_of(TextRole::small));
  int height = supply_box_height;
  const auto need = [&](std::size_t column, const QString& text, int set_in = 0) {
    const int within = wide[column] - supply_icon_room - supply_word_room - set_in;
    const QRect used = metrics.boundingRect(QRect(0, 0, within, 1000), Qt::TextWordWrap, text);
    height = std::max(height, used.height() + 8);
  };
  for (const QString& b : supply.bottles) need(0, b);
  for (const DrawnBranch& b : supply.branches)
    need(1, b.regulator, secondary_set_in * regulators_before(supply, b));
  return height;
}

}  // namespace

GasDrawing::GasDrawing(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("gas_drawing"));
  setAccessibleName(tr("What feeds what"));
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
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
  const std::array<int, 3> wide = wanted_columns(supply_);
  const int width = wide[0] + wide[1] + wide[2] + 2 * supply_gap;
  return {width, heightForWidth(width)};
}
QSize GasDrawing::minimumSizeHint() const {
  return {3 * least_supply_column + 2 * supply_gap, rows() * (supply_box_height + supply_row_gap)};
}
int GasDrawing::heightForWidth(int width) const {
  return rows() * (box_height(supply_, columns_within(supply_, width)) + supply_row_gap);
}

void GasDrawing::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const SupplyPen pen{painter, theme_of(this)};
  const std::array<int, 3> wide = columns_within(supply_, width());
  const int tall = box_height(supply_, wide);
  const auto box_at = [&](std::size_t column, int row) {
    int x = 0;
    for (std::size_t before = 0; before < column; ++before) x += wide[before] + supply_gap;
    return QRect(x, row * (tall + supply_row_gap) + supply_row_gap / 2, wide[column], tall);
  };
  std::vector<QRect> regulators;
  int row = 0;
  for (const DrawnBranch& b : supply_.branches) {
    const QRect regulator =
        box_at(1, row).adjusted(secondary_set_in * regulators_before(supply_, b), 0, 0, 0);
    regulators.push_back(regulator);
    for (std::size_t i = 0; i < b.kegs.size(); ++i) {
      const QRect keg = box_at(2, row + static_cast<int>(i));
      pen.hose({regulator.right(), regulator.center().y()}, {keg.left(), keg.center().y()});
      pen.box(keg, Icon::keg, b.kegs[i].tag, b.kegs[i].pressure);
    }
    row += std::max(1, static_cast<int>(b.kegs.size()));
  }
  for (std::size_t i = 0; i < supply_.branches.size(); ++i) {
    const DrawnBranch& b = supply_.branches[i];
    const QPoint to(regulators[i].left(), regulators[i].center().y());
    if (b.fed_by) {
      const QRect& before = regulators.at(*b.fed_by);
      pen.drop({before.left() + secondary_set_in / 2, before.bottom()}, to);
    }
    for (std::size_t n = 0; n < supply_.bottles.size(); ++n) {
      if (!draws_from(b, n)) continue;
      const QRect bottle = box_at(0, static_cast<int>(n));
      pen.hose({bottle.right(), bottle.center().y()}, to);
    }
    pen.box(regulators[i], Icon::line, b.regulator);
  }
  for (std::size_t n = 0; n < supply_.bottles.size(); ++n)
    pen.box(box_at(0, static_cast<int>(n)), Icon::gas, supply_.bottles[n]);
}

QString GasDrawing::in_words() const {
  QStringList words;
  for (const DrawnBranch& b : supply_.branches) {
    QStringList before, kegs;
    for (std::size_t n = 0; n < supply_.bottles.size(); ++n) {
      if (draws_from(b, n)) before << supply_.bottles[n];
    }
    if (b.fed_by) before << supply_.branches.at(*b.fed_by).regulator;
    for (const DrawnKeg& k : b.kegs) kegs << tr("%1 at %2").arg(k.tag, k.pressure);
    words << (kegs.isEmpty()
                  ? tr("%1 feeds %2, which has no keg on it.")
                        .arg(before.join(tr(" and ")), b.regulator)
                  : tr("%1 feeds %2, which feeds %3.")
                        .arg(before.join(tr(" and ")), b.regulator, kegs.join(tr(", "))));
  }
  if (words.isEmpty())
    words << tr("%1 feeds nothing.")
                 .arg(
                     QStringList(supply_.bottles.begin(), supply_.bottles.end()).join(tr(" and ")));
  return words.join(QLatin1Char(' '));
}

}  // namespace ullage::ui
