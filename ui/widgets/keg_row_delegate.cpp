// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/keg_row_delegate.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPalette>

#include "ui/models/keg_table_model.h"
#include "ui/theme/theme.h"
#include "ui/widgets/co2_gauge.h"
#include "ui/widgets/level_cell.h"
#include "ui/widgets/state_cell.h"

namespace ullage::ui {

namespace {

void paint_contents_cell(QPainter& painter, const QRectF& cell, const KegRow& row,
                         const CellStyle& style) {
  const Theme& theme = *style.theme;
  const qreal left = cell.left() + cell_margin;
  const qreal room = cell.width() - (2 * cell_margin);
  QFont name_font = row.holds_beer ? style.strong : style.body;
  if (style.compact) name_font = row.holds_beer ? style.strong : style.small;
  const QColor name_colour = row.holds_beer ? theme.text : theme.text_secondary;
  const qreal first = first_baseline(cell, style);
  const qreal end = draw_elided(painter, left, first, room, name_font, name_colour, row.contents);
  if (!style.compact) {
    draw_elided(painter, left, second_baseline(cell, style), room, style.small,
                theme.text_secondary, row.whereabouts);
    return;
  }
  const qreal from = end + 8;
  const qreal enough = QFontMetricsF(style.small).averageCharWidth() * 8;
  if (cell.right() - from - cell_margin > enough) {
    draw_elided(painter, from, first, cell.right() - from - cell_margin, style.small,
                theme.text_secondary, row.whereabouts);
  }
}

}  // namespace

KegRowDelegate::KegRowDelegate(const KegTableModel& model, QObject* parent)
    : QStyledItemDelegate(parent), model_(model) {}

QColor KegRowDelegate::ground_of(const QStyleOptionViewItem& option, const QModelIndex& index,
                                 const Theme& theme) const {
  if (option.state.testFlag(QStyle::State_Selected)) return theme.surface;
  return hovered_row_ == index.row() ? theme.hover : theme.window;
}

void KegRowDelegate::paint_ground(QPainter& painter, const QStyleOptionViewItem& option,
                                  const QModelIndex& index, const CellStyle& style) const {
  const Theme& theme = *style.theme;
  const bool selected = option.state.testFlag(QStyle::State_Selected);
  const KegRow& row = model_.row_at(index.row());
  painter.fillRect(option.rect, style.ground);
  const QRectF cell(option.rect);
  painter.fillRect(QRectF(cell.left(), cell.bottom() - 1, cell.width(), 1), theme.line);
  if (index.column() == static_cast<int>(KegColumn::tag)) {
    if (selected) painter.fillRect(QRectF(cell.left(), cell.top(), 3, cell.height()), theme.accent);
    if (row.stopped) {
      const qreal at = cell.left() + (selected ? 3 : 0);
      painter.fillRect(QRectF(at, cell.top(), 3, cell.height()), theme.danger);
    }
  }
}

void KegRowDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const {
  const Theme& theme = theme_of(option.palette);
  CellStyle style = cell_style(theme, compact_);
  style.ground = ground_of(option, index, theme);
  painter->save();
  painter->setClipRect(option.rect);
  paint_ground(*painter, option, index, style);
  const KegRow& row = model_.row_at(index.row());
  const QRectF cell(option.rect);
  switch (static_cast<KegColumn>(index.column())) {
    case KegColumn::tag:
      draw_elided(*painter, cell.left() + cell_margin + 3, first_baseline(cell, style),
                  cell.width() - cell_margin - 3, style.strong, theme.text, row.tag);
      break;
    case KegColumn::contents:
      paint_contents_cell(*painter, cell, row, style);
      break;
    case KegColumn::left:
      paint_level_cell(*painter, cell, row.level, style);
      break;
    case KegColumn::co2:
      paint_co2_cell(*painter, cell, row.co2, model_.co2_scale().top_volumes, style);
      break;
    case KegColumn::life:
      paint_life_cell(*painter, cell, row.life, life_scale(cell, model_.now()), names_, style);
      break;
    case KegColumn::state:
      paint_state_cell(*painter, cell, row, style);
      break;
  }
  painter->restore();
}

}  // namespace ullage::ui
