// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/table_sheet_pages.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/context.h"
#include "ui/print/lettering.h"
#include "ui/print/sheet_frame.h"

namespace ullage::ui {
namespace {

constexpr double pad_pt = 3.5;
constexpr double gutter_pt = 8;      // between one column's text and the next
constexpr double least_row_pt = 20;  // room for a pen

}  // namespace

TableSheetPages::TableSheetPages(report::TableSheet sheet, Paper paper, const QFont& base)
    : sheet_(std::move(sheet)),
      base_(base),
      cell_(printed_font(base, 8.5, QFont::Normal)),
      first_cell_(printed_font(base, 8.5, QFont::DemiBold)),
      small_(printed_font(base, 7.5, QFont::Normal)),
      paper_(paper) {
  body_ = body_of(size());
  lay_out_columns();
  lay_out_rows();
  add_boxes();
  break_pages();
}

QPageLayout TableSheetPages::layout() const {
  return {page_size(paper_), QPageLayout::Landscape, QMarginsF(0, 0, 0, 0)};
}

void TableSheetPages::lay_out_columns() {
  double whole = 0;
  for (const report::SheetColumn& column : sheet_.columns) whole += column.share;
  const QFont names = printed_font(base_, 8, QFont::DemiBold);
  for (const report::SheetColumn& column : sheet_.columns) {
    columns_.push_back(body_.width() * column.share / whole);
    names_.push_back(broken_lines(q(column.heading), names, columns_.back() - points(gutter_pt)));
  }
}

double TableSheetPages::names_height() const {
  qsizetype lines = 1;
  for (const QStringList& name : names_) lines = std::max(lines, name.size());
  return static_cast<double>(lines) * line_height(printed_font(base_, 8, QFont::DemiBold)) +
         points(4);
}

double TableSheetPages::row_height(const Block& block) const {
  qsizetype lines = 0;
  for (const QStringList& cell : block.cells) lines = std::max(lines, cell.size());
  const double text = static_cast<double>(lines) * line_height(cell_) +
                      static_cast<double>(block.standing.size()) * line_height(small_);
  return std::max(points(least_row_pt), text + points(2 * pad_pt));
}

// Lines `from_line` and on of every cell; the sentence about its standing goes
// with the last part.
TableSheetPages::Block TableSheetPages::part_of(const Block& block, int from_line,
                                                int lines) const {
  Block part = block;
  bool more = false;
  for (QStringList& cell : part.cells) {
    more = more || cell.size() > from_line + lines;
    cell = cell.mid(from_line, lines);
  }
  if (more) part.standing.clear();
  part.goes_on = more;
  part.height = row_height(part);
  return part;
}

void TableSheetPages::add_row(const report::TableRow& row) {
  Block block;
  if (row.kind == report::RowKind::heading) {
    block.kind = Block::Kind::heading;
    block.cells = {broken_lines(row.cells.empty() ? QString() : q(row.cells.front()),
                                printed_font(base_, 10, QFont::Bold), body_.width())};
    block.height = points(20) + line_height(printed_font(base_, 10, QFont::Bold)) *
                                    static_cast<double>(block.cells.front().size() - 1);
    blocks_.push_back(std::move(block));
    return;
  }
  block.kind = Block::Kind::row;
  block.struck = row.struck;
  block.marked = row.marked;
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    const QString text = i < row.cells.size() ? q(row.cells[i]) : QString();
    block.cells.push_back(
        broken_lines(text, i == 0 ? first_cell_ : cell_, columns_[i] - points(gutter_pt)));
  }
  block.standing = broken_lines(q(row.standing), small_, body_.width() * 0.8);
  block.height = row_height(block);
  const double room = body_.height() - names_height();
  if (block.height <= room) {
    blocks_.push_back(std::move(block));
    return;
  }
  const double for_lines =
      room - points(2 * pad_pt) - static_cast<double>(block.standing.size()) * line_height(small_);
  const int lines = std::max(1, static_cast<int>(for_lines / line_height(cell_)));
  for (int from = 0;; from += lines) {
    blocks_.push_back(part_of(block, from, lines));
    if (!blocks_.back().goes_on) return;
  }
}

void TableSheetPages::lay_out_rows() {
  for (const report::TableRow& row : sheet_.rows) add_row(row);
  if (!sheet_.rows.empty()) return;
  Block words;
  words.cells = {broken_lines(q(sheet_.when_empty), cell_, body_.width())};
  words.height = points(24);
  blocks_.push_back(std::move(words));
}

void TableSheetPages::add_boxes() {
  for (const report::SheetBox& box : sheet_.boxes) {
    blocks_.push_back({Block::Kind::gap, {}, {}, false, false, false, points(8)});
    blocks_.push_back({Block::Kind::box_title,
                       {broken_lines(q(box.title), first_cell_, body_.width())},
                       {},
                       false,
                       false,
                       false,
                       line_height(first_cell_) + points(2)});
    double widest = 1;
    for (const std::string& line : box.lines) {
      widest = std::max(widest, QFontMetricsF(cell_).horizontalAdvance(q(line)) + points(18));
    }
    const auto across =
        static_cast<std::size_t>(std::clamp(std::floor(body_.width() / widest), 1.0, 4.0));
    const double width = body_.width() / static_cast<double>(across) - points(12);
    for (std::size_t i = 0; i < box.lines.size(); i += across) {
      Block line{Block::Kind::box_line, {}, {}, false, false, false, 0};
      qsizetype tallest = 1;
      for (std::size_t j = i; j < std::min(i + across, box.lines.size()); ++j) {
        line.cells.push_back(broken_lines(q(box.lines[j]), cell_, width));
        tallest = std::max(tallest, line.cells.back().size());
      }
      while (line.cells.size() < across) line.cells.emplace_back();
      line.height = static_cast<double>(tallest) * line_height(cell_);
      blocks_.push_back(std::move(line));
    }
  }
  if (!sheet_.signatures.empty()) {
    blocks_.push_back({Block::Kind::signatures, {}, {}, false, false, false, signatures_height()});
  }
}

bool TableSheetPages::in_table(const Block& block) const {
  return block.kind == Block::Kind::row || block.kind == Block::Kind::heading;
}

void TableSheetPages::break_pages() {
  Page page;
  double y = 0;
  const auto begin = [&](std::size_t first) {
    page = Page{};
    page.column_names = in_table(blocks_[first]);
    y = page.column_names ? names_height() : 0;
    // Rows that go on overleaf do so under their heading, said once more.
    if (blocks_[first].kind != Block::Kind::row) return;
    std::size_t above = first;
    while (above > 0 && blocks_[above].kind == Block::Kind::row) --above;
    if (blocks_[above].kind != Block::Kind::heading) return;
    if (y + blocks_[above].height + blocks_[first].height > body_.height()) return;
    page.blocks.push_back({above, y});
    y += blocks_[above].height;
  };
  begin(0);
  for (std::size_t i = 0; i < blocks_.size(); ++i) {
    // A heading never stands at the foot without what it is about.
    double needed = blocks_[i].height;
    const bool leads = blocks_[i].kind == Block::Kind::heading ||
                       blocks_[i].kind == Block::Kind::box_title ||
                       blocks_[i].kind == Block::Kind::gap;
    if (leads && i + 1 < blocks_.size()) needed += blocks_[i + 1].height;
    if (!page.blocks.empty() && y + needed > body_.height()) {
      pages_.push_back(page);
      begin(i);
    }
    if (page.blocks.empty() && blocks_[i].kind == Block::Kind::gap) continue;
    page.blocks.push_back({i, y});
    y += blocks_[i].height;
  }
  if (!page.blocks.empty() || pages_.empty()) pages_.push_back(page);
  keep_the_last_row_company();
}

// A table whose last row stands alone overleaf gives it the one before.
void TableSheetPages::keep_the_last_row_company() {
  if (pages_.size() < 2) return;
  Page& last = pages_.back();
  Page& before = pages_[pages_.size() - 2];
  const auto is_row = [&](const Placed& placed) {
    return blocks_[placed.block].kind == Block::Kind::row;
  };
  if (std::count_if(last.blocks.begin(), last.blocks.end(), is_row) != 1 ||
      !is_row(last.blocks.front()) || before.blocks.size() < 3 || !is_row(before.blocks.back())) {
    return;
  }
  const std::size_t moved = before.blocks.back().block;
  const double height = blocks_[moved].height;
  const Placed& end = last.blocks.back();
  // Part of a broken row stays where it is, and so does what would no longer fit.
  if (blocks_[moved].goes_on || !is_row(before.blocks[before.blocks.size() - 2])) return;
  if (end.y + blocks_[end.block].height + height > body_.height()) return;
  before.blocks.pop_back();
  for (Placed& placed : last.blocks) placed.y += height;
  last.blocks.insert(last.blocks.begin(), {moved, names_height()});
}

void TableSheetPages::paint(QPainter& painter, int index) const {
  const Page& page = pages_.at(static_cast<std::size_t>(index));
  painter.save();
  painter.setPen(Qt::black);
  paint_frame(
      painter,
      {q(sheet_.title), q(sheet_.period), q(sheet_.cellar), q(sheet_.printed), q(sheet_.footnote)},
      body_, base_, index, count());
  if (page.column_names) paint_names(painter);
  for (const Placed& placed : page.blocks) {
    paint_block(painter, blocks_[placed.block], body_.top() + placed.y);
  }
  painter.restore();
}

void TableSheetPages::paint_names(QPainter& painter) const {
  const QFont font = printed_font(base_, 8, QFont::DemiBold);
  double x = body_.left();
  for (std::size_t i = 0; i < names_.size(); ++i) {
    paint_lines(painter, names_[i], font, x, body_.top());
    x += columns_[i];
  }
  const double y = body_.top() + names_height() - points(1.5);
  painter.setPen(printed_line(1.2));
  painter.drawLine(QPointF(body_.left(), y), QPointF(body_.right(), y));
  painter.setPen(Qt::black);
}

void TableSheetPages::paint_block(QPainter& painter, const Block& block, double y) const {
  switch (block.kind) {
    case Block::Kind::row:
      return paint_row(painter, block, y);
    case Block::Kind::heading:
      paint_lines(painter, block.cells.front(), printed_font(base_, 10, QFont::Bold), body_.left(),
                  y + points(6));
      painter.setPen(printed_line(0.8));
      painter.drawLine(QPointF(body_.left(), y + block.height),
                       QPointF(body_.right(), y + block.height));
      painter.setPen(Qt::black);
      return;
    case Block::Kind::words:
      paint_lines(painter, block.cells.front(), cell_, body_.left(), y + points(4));
      return;
    case Block::Kind::box_title:
      paint_lines(painter, block.cells.front(), first_cell_, body_.left(), y);
      return;
    case Block::Kind::box_line:
      for (std::size_t i = 0; i < block.cells.size(); ++i) {
        const double step = body_.width() / static_cast<double>(block.cells.size());
        paint_lines(painter, block.cells[i], cell_,
                    body_.left() + points(8) + step * static_cast<double>(i), y);
      }
      return;
    case Block::Kind::gap:
      return;
    case Block::Kind::signatures:
      return paint_signatures(painter, sheet_.signatures, cell_, body_, y);
  }
}

void TableSheetPages::paint_row(QPainter& painter, const Block& block, double y) const {
  double x = body_.left();
  double lowest = y;
  for (std::size_t i = 0; i < block.cells.size(); ++i) {
    QFont font = i == 0 ? first_cell_ : cell_;
    font.setStrikeOut(block.struck);
    // What is said in a column to be written in keeps off its rule.
    const double inset = sheet_.columns[i].written ? points(pad_pt) : 0;
    lowest =
        std::max(lowest, paint_lines(painter, block.cells[i], font, x + inset, y + points(pad_pt)));
    x += columns_[i];
  }
  if (!block.standing.isEmpty()) {
    const double left = columns_.empty() ? 0 : columns_.front();
    paint_lines(painter, block.standing, small_, body_.left() + left, lowest);
  }
  if (block.marked) {
    painter.fillRect(
        QRectF(body_.left() - points(6), y + points(3), points(3), block.height - points(6)),
        Qt::black);
  }
  rule_off_blanks(painter, block, y);
  if (block.goes_on) return;
  painter.setPen(printed_line(0.5));
  painter.drawLine(QPointF(body_.left(), y + block.height),
                   QPointF(body_.right(), y + block.height));
  painter.setPen(Qt::black);
}

// A column to be written in stands between two fine lines.
void TableSheetPages::rule_off_blanks(QPainter& painter, const Block& block, double y) const {
  painter.setPen(printed_line(0.4));
  double x = body_.left();
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    if (sheet_.columns[i].written) {
      painter.drawLine(QPointF(x - points(2), y + points(2)),
                       QPointF(x - points(2), y + block.height - points(2)));
    }
    x += columns_[i];
  }
  painter.setPen(Qt::black);
}

}  // namespace ullage::ui
