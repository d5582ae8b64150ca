// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/tag_pages.h"

#include <QPainter>
#include <QPen>

#include "ui/print/lettering.h"

namespace ullage::ui {

TagPages::TagPages(std::vector<report::KegTag> tags, const TagPaper& paper, const QFont& base)
    : kegs_(std::move(tags)), paper_(paper), base_(base) {}

TagPages::TagPages(std::vector<report::WarningTag> tags, const TagPaper& paper, const QFont& base)
    : warnings_(std::move(tags)), paper_(paper), base_(base) {
  paper_.backs = false;
}

QPageLayout TagPages::layout() const {
  const QPageSize size =
      paper_.sheet == TagSheet::single ? QPageSize(QPageSize::A6) : page_size(paper_.paper);
  return {size, QPageLayout::Portrait, QMarginsF(0, 0, 0, 0)};
}

int TagPages::count() const {
  const std::size_t fronts = (tags() + per_page() - 1) / per_page();
  return static_cast<int>(fronts * (paper_.backs ? 2 : 1));
}

QRectF TagPages::slot(std::size_t which, bool back) const {
  const QSizeF paper = size();
  if (paper_.sheet == TagSheet::single) return {QPointF(0, 0), paper};
  const QSizeF quarter = paper / 2;
  const std::size_t column = back ? 1 - which % 2 : which % 2;
  const std::size_t row = which / 2;
  return {QPointF(quarter.width() * static_cast<double>(column),
                  quarter.height() * static_cast<double>(row)),
          quarter};
}

void TagPages::paint_cuts(QPainter& painter) const {
  if (paper_.sheet == TagSheet::single) return;
  QPen pen = printed_line(0.4);
  pen.setStyle(Qt::DashLine);
  painter.setPen(pen);
  const QSizeF paper = size();
  painter.drawLine(QPointF(paper.width() / 2, 0), QPointF(paper.width() / 2, paper.height()));
  painter.drawLine(QPointF(0, paper.height() / 2), QPointF(paper.width(), paper.height() / 2));
  painter.setPen(Qt::black);
}

void TagPages::paint(QPainter& painter, int page) const {
  const auto index = static_cast<std::size_t>(page);
  const bool back = paper_.backs && index % 2 == 1;
  const std::size_t first = (paper_.backs ? index / 2 : index) * per_page();
  painter.save();
  painter.setPen(Qt::black);
  paint_cuts(painter);
  for (std::size_t i = 0; i < per_page() && first + i < tags(); ++i) {
    const QRectF area = slot(i, back);
    if (!warnings_.empty()) {
      paint_warning(painter, area, warnings_[first + i], base_);
    } else if (back) {
      paint_keg_back(painter, area, kegs_[first + i], base_);
    } else {
      paint_keg_front(painter, area, kegs_[first + i], base_);
    }
  }
  painter.restore();
}

}  // namespace ullage::ui
