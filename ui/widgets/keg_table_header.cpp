// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/keg_table_header.h"

#include <QFontMetricsF>
#include <QPainter>
#include <array>

#include "ui/theme/theme.h"

namespace ullage::ui {

KegTableHeader::KegTableHeader(const KegTableModel& model, QWidget* parent)
    : QHeaderView(Qt::Horizontal, parent), model_(model) {
  setSectionsClickable(true);
  setHighlightSections(false);
  setDefaultAlignment(Qt::AlignLeft | Qt::AlignBottom);
  setMinimumSectionSize(48);
  setAccessibleName(tr("Columns of the keg table"));
}

void KegTableHeader::set_compact(bool on) {
  compact_ = on;
  updateGeometry();
  viewport()->update();
}

void KegTableHeader::set_dates(std::vector<LifeTick> dates) {
  dates_ = std::move(dates);
  viewport()->update();
}

void KegTableHeader::set_co2_name(const QString& name) {
  co2_name_ = name;
  viewport()->update();
}

void KegTableHeader::set_ordered_by(std::optional<KegColumn> column) {
  ordered_by_ = column;
  viewport()->update();
}

QSize KegTableHeader::sizeHint() const {
  const QFontMetricsF metrics(font_of(TextRole::small));
  return {QHeaderView::sizeHint().width(),
          static_cast<int>(metrics.height() + (compact_ ? 9 : 14))};
}

void KegTableHeader::paint_name(QPainter& painter, const QRectF& section, int index,
                                const CellStyle& style) const {
  const Theme& theme = *style.theme;
  const auto column = static_cast<KegColumn>(index);
  const bool ordered = ordered_by_ == column;
  const qreal left = section.left() + cell_margin + (column == KegColumn::tag ? 3 : 0);
  const QString name = column == KegColumn::co2
                           ? co2_name_
                           : model_.headerData(index, Qt::Horizontal, Qt::DisplayRole).toString();
  const qreal baseline = section.bottom() - 9;
  const qreal end =
      draw_elided(painter, left, baseline, section.right() - left - (ordered ? 12 : 2), style.small,
                  ordered ? theme.text : theme.text_secondary, name);
  if (ordered) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(theme.text, 1.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(
        std::array{QPointF(end + 4, baseline - 5.5), QPointF(end + 7, baseline - 2.5),
                   QPointF(end + 10, baseline - 5.5)}
            .data(),
        3);
  }
}

void KegTableHeader::paintSection(QPainter* painter, const QRect& rect, int section) const {
  const Theme& theme = theme_of(this);
  const CellStyle style = cell_style(theme, compact_);
  const QRectF box(rect);
  painter->save();
  painter->fillRect(box, theme.window);
  painter->fillRect(QRectF(box.left(), box.bottom() - 1, box.width(), 1), theme.control_line);
  if (section == static_cast<int>(KegColumn::life)) {
    paint_life_axis(*painter, box, dates_, life_scale(box, model_.now()), style);
  } else {
    paint_name(*painter, box, section, style);
  }
  painter->restore();
}

}  // namespace ullage::ui
