// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/status_sheet_pages.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <array>
#include <numeric>

#include "ui/context.h"
#include "ui/print/lettering.h"

namespace ullage::ui {
namespace {

constexpr double margin_mm = 11;
constexpr double heading_pt = 40;
constexpr double foot_pt = 16;
constexpr double cell_padding_pt = 4;
constexpr double cell_gutter_pt = 7;  // between one column's text and the next
// Between boxes, blanks to read into and signatures; the last ends at the margin.
constexpr double box_gap_pt = 8;
constexpr double reading_gap_pt = 16;
constexpr double signature_gap_pt = 30;
// Down the page: above the boxes, over and between their lines and under them; a row of
// blanks and their heading; the signatures.
constexpr double above_boxes_pt = 10, box_title_pt = 21, box_line_gap_pt = 2, below_boxes_pt = 10;
constexpr double reading_row_pt = 18, signatures_pt = 38;
constexpr int wrapped = Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop;
constexpr double least_writing_pt = 30;
constexpr double least_slack_pt = 0.5;  // a word as wide as its column would be broken
constexpr std::size_t readings_abreast = 3;
constexpr std::size_t keg_column = 0;
constexpr std::size_t left_column = 4;
// Shares of the width, in the order of the sheet's columns; the last is for
// writing in.
constexpr auto column_shares = std::to_array<double>({50, 68, 92, 104, 104, 84, 80, 104, 92, 44});

}  // namespace

StatusSheetPages::StatusSheetPages(report::StatusSheet sheet, Paper paper, const QFont& base)
    : sheet_(std::move(sheet)), base_(base), paper_(paper) {
  const double margin = millimetres_on_paper(margin_mm);
  body_ = QRectF(QPointF(0, 0), size())
              .adjusted(margin, margin + points(heading_pt), -margin, -margin - points(foot_pt));
  for (const report::SheetRow& row : sheet_.rows) {
    QStringList& texts = cells_.emplace_back();
    for (const std::string& text : report::cells(row)) texts << q(text);
  }
  lay_out_columns();
  lay_out_rows();
  break_pages();
}

QPageLayout StatusSheetPages::layout() const {
  return {page_size(paper_), QPageLayout::Landscape, QMarginsF(0, 0, 0, 0)};
}

QFont StatusSheetPages::cell_font(std::size_t column) const {
  if (column == 0) return printed_font(base_, 15, QFont::Bold);
  if (column == 2) return printed_font(base_, 10, QFont::DemiBold);
  return printed_font(base_, 9.5, QFont::Normal);
}

QStringList StatusSheetPages::box_lines(const std::string& text, const QFont& font) const {
  return broken_lines(q(text), font, box_step() - points(20 + 3));
}

double StatusSheetPages::box_step() const {
  return (body_.width() + points(box_gap_pt)) /
         static_cast<double>(std::max<std::size_t>(1, sheet_.boxes.size()));
}

// A long tag must not break in two, nor a number from its unit, nor any word.
double StatusSheetPages::needed_width(std::size_t column) const {
  if (column + 1 == columns_.size()) return points(least_writing_pt);
  const bool whole_lines = column == keg_column || column == left_column;
  const QFontMetricsF letters(cell_font(column));
  double widest = 0;
  for (const QStringList& row : cells_) {
    for (const QString& line : row.at(static_cast<qsizetype>(column)).split(QLatin1Char('\n'))) {
      const QStringList pieces = whole_lines ? QStringList{line} : line.split(QLatin1Char(' '));
      for (const QString& piece : pieces)
        widest = std::max(widest, letters.horizontalAdvance(piece));
    }
  }
  return widest + points(whole_lines ? 3 * cell_padding_pt : cell_gutter_pt + least_slack_pt);
}

// A column too narrow for its words takes what it needs from those that have most to
// spare, from the blank one first.
void StatusSheetPages::lay_out_columns() {
  const double whole = std::accumulate(column_shares.begin(), column_shares.end(), 0.0);
  columns_.reserve(column_shares.size());
  for (const double share : column_shares) columns_.push_back(body_.width() * share / whole);
  std::vector<double> spare;
  spare.reserve(columns_.size());
  for (std::size_t i = 0; i < columns_.size(); ++i)
    spare.push_back(columns_.at(i) - needed_width(i));
  for (std::size_t i = 0; i + 1 < columns_.size(); ++i) {
    while (spare.at(i) < 0) {
      const auto most = spare.back() > 0 ? std::prev(spare.end()) : std::ranges::max_element(spare);
      if (*most <= 0) return;  // a page of long words: some will break
      const double given = std::min(*most, -spare.at(i));
      columns_.at(static_cast<std::size_t>(most - spare.begin())) -= given;
      columns_.at(i) += given;
      *most -= given;
      spare.at(i) += given;
    }
  }
}

void StatusSheetPages::lay_out_rows() {
  const double pad = points(cell_padding_pt);
  for (std::size_t r = 0; r < cells_.size(); ++r) {
    Row row;
    row.marked = sheet_.rows.at(r).needs_attention;
    const QStringList& texts = cells_.at(r);
    for (std::size_t i = 0; i < static_cast<std::size_t>(texts.size()); ++i) {
      const QFont font = cell_font(i);
      // Beside the column to be written in stands its rule, no text.
      const double gutter = i + 2 < columns_.size() ? points(cell_gutter_pt) : pad;
      row.cells.push_back(
          broken_lines(texts.at(static_cast<qsizetype>(i)), font, columns_.at(i) - gutter));
      const double height = static_cast<double>(row.cells.back().size()) * line_height(font);
      row.height = std::max(row.height, height + 2 * pad);
    }
    row.height = std::max(row.height, points(26));
    rows_.push_back(std::move(row));
  }
}

void StatusSheetPages::break_pages() {
  const double names = points(18);
  Page page{0, 0, !rows_.empty(), false};
  double y = names;
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    if (page.row_count > 0 && y + rows_[i].height > body_.height()) {
      pages_.push_back(page);
      page = Page{i, 0, true, false};
      y = names;
    }
    ++page.row_count;
    y += rows_[i].height;
  }
  if (page.table && y + foot_matter_height() > body_.height()) {
    pages_.push_back(page);
    page = Page{rows_.size(), 0, false, false};
  }
  page.foot_matter = true;
  pages_.push_back(page);
}

double StatusSheetPages::foot_matter_height() const {
  const QFont body = printed_font(base_, 9.5, QFont::Normal);
  double boxes = 0;
  for (const report::SheetBox& box : sheet_.boxes) {
    double height = points(box_title_pt);
    for (const std::string& line : box.lines) {
      height += static_cast<double>(box_lines(line, body).size()) * line_height(body) +
                points(box_line_gap_pt);
    }
    boxes = std::max(boxes, height);
  }
  const double reading_rows = rows_of_readings();
  const double readings = sheet_.readings.empty() ? 0 : points(reading_row_pt) * (1 + reading_rows);
  return points(above_boxes_pt) + boxes + points(below_boxes_pt) + readings + points(signatures_pt);
}

double StatusSheetPages::rows_of_readings() const {
  const std::size_t rows = (sheet_.readings.size() + readings_abreast - 1) / readings_abreast;
  return static_cast<double>(rows);
}

void StatusSheetPages::paint(QPainter& painter, int index) const {
  const Page& page = pages_.at(static_cast<std::size_t>(index));
  painter.save();
  painter.setPen(Qt::black);
  paint_heading(painter, index);
  double y = body_.top();
  if (page.table) {
    y = paint_column_names(painter, y);
    for (std::size_t i = page.first_row; i < page.first_row + page.row_count; ++i) {
      paint_row(painter, rows_[i], y);
      y += rows_[i].height;
    }
  } else if (rows_.empty()) {
    painter.setFont(printed_font(base_, 11, QFont::Normal));
    painter.drawText(QRectF(body_.left(), y, body_.width(), points(20)), wrapped,
                     QStringLiteral("No kegs registered yet."));
    y += points(24);
  }
  if (page.foot_matter) paint_foot_matter(painter, y);
  painter.restore();
}

void StatusSheetPages::paint_heading(QPainter& painter, int index) const {
  const double top = body_.top() - points(heading_pt);
  const QRectF area(body_.left(), top, body_.width(), points(heading_pt));
  painter.setFont(printed_font(base_, 20, QFont::Bold));
  painter.drawText(area, Qt::AlignLeft | Qt::AlignTop, q(sheet_.cellar));
  painter.setFont(printed_font(base_, 10, QFont::Normal));
  painter.drawText(area, Qt::AlignRight | Qt::AlignTop,
                   QStringLiteral("Status sheet\n%1").arg(q(sheet_.printed)));
  const QRectF foot(body_.left(), body_.bottom() + points(4), body_.width(), points(foot_pt));
  painter.setFont(printed_font(base_, 8.5, QFont::Normal));
  painter.drawText(foot, Qt::AlignLeft | Qt::AlignVCenter, q(sheet_.footnote));
  painter.drawText(foot, Qt::AlignRight | Qt::AlignVCenter,
                   QStringLiteral("page %1 of %2").arg(index + 1).arg(count()));
}

double StatusSheetPages::paint_column_names(QPainter& painter, double y) const {
  painter.setFont(printed_font(base_, 8.5, QFont::DemiBold));
  double x = body_.left();
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    painter.drawText(QRectF(x, y, columns_[i], points(14)), Qt::AlignLeft | Qt::AlignVCenter,
                     q(sheet_.headings.at(i)));
    x += columns_[i];
  }
  painter.setPen(printed_line(1.2));
  painter.drawLine(QPointF(body_.left(), y + points(16)), QPointF(body_.right(), y + points(16)));
  painter.setPen(Qt::black);
  return y + points(18);
}

void StatusSheetPages::paint_row(QPainter& painter, const Row& row, double y) const {
  double x = body_.left();
  for (std::size_t i = 0; i < row.cells.size(); ++i) {
    paint_lines(painter, row.cells[i], cell_font(i), x, y + points(cell_padding_pt));
    x += columns_[i];
  }
  if (row.marked) {
    painter.fillRect(
        QRectF(body_.left() - points(6), y + points(3), points(3), row.height - points(6)),
        Qt::black);
  }
  painter.setPen(printed_line(0.5));
  painter.drawLine(QPointF(body_.left(), y + row.height), QPointF(body_.right(), y + row.height));
  const double writing = body_.right() - columns_.back() + points(2);
  painter.drawLine(QPointF(writing, y + points(4)), QPointF(writing, y + row.height - points(4)));
  painter.setPen(Qt::black);
}

void StatusSheetPages::paint_foot_matter(QPainter& painter, double y) const {
  y = paint_boxes(painter, y + points(above_boxes_pt));
  y = paint_readings(painter, y);
  paint_signatures(painter, y);
}

double StatusSheetPages::paint_boxes(QPainter& painter, double y) const {
  const QFont body = printed_font(base_, 9.5, QFont::Normal);
  const double width = box_step() - points(20);
  double tallest = 0;
  for (std::size_t i = 0; i < sheet_.boxes.size(); ++i) {
    const double x = body_.left() + box_step() * static_cast<double>(i) + points(6);
    double line_y = y + points(6);
    painter.setFont(printed_font(base_, 10, QFont::Bold));
    painter.drawText(QRectF(x, line_y, width, points(14)), wrapped, q(sheet_.boxes[i].title));
    line_y = y + points(box_title_pt);
    for (const std::string& line : sheet_.boxes[i].lines)
      line_y =
          paint_lines(painter, box_lines(line, body), body, x, line_y) + points(box_line_gap_pt);
    tallest = std::max(tallest, line_y - y);
  }
  painter.setPen(printed_line(0.8));
  for (std::size_t i = 0; i < sheet_.boxes.size(); ++i) {
    const double x = body_.left() + box_step() * static_cast<double>(i);
    painter.drawRect(QRectF(x, y, box_step() - points(box_gap_pt), tallest + points(4)));
  }
  painter.setPen(Qt::black);
  return y + tallest + points(below_boxes_pt);
}

double StatusSheetPages::paint_readings(QPainter& painter, double y) const {
  if (sheet_.readings.empty()) return y;
  painter.setFont(printed_font(base_, 10, QFont::Bold));
  painter.drawText(QRectF(body_.left(), y, body_.width(), points(14)), wrapped,
                   QStringLiteral("Temperatures to read today"));
  y += points(reading_row_pt);
  const double step = (body_.width() + points(reading_gap_pt)) / readings_abreast;
  painter.setFont(printed_font(base_, 9.5, QFont::Normal));
  for (std::size_t i = 0; i < sheet_.readings.size(); ++i) {
    const std::size_t column = i % readings_abreast, row = i / readings_abreast;
    const double x = body_.left() + step * static_cast<double>(column);
    const double row_y = y + points(reading_row_pt) * static_cast<double>(row);
    paint_fitted(painter, QRectF(x, row_y, step - points(72), points(14)),
                 Qt::AlignLeft | Qt::AlignVCenter, q(sheet_.readings[i]), base_,
                 {9.5, 5, QFont::Normal});
    painter.setPen(printed_line(0.5));
    painter.drawLine(QPointF(x + step - points(66), row_y + points(13)),
                     QPointF(x + step - points(reading_gap_pt), row_y + points(13)));
    painter.setPen(Qt::black);
  }
  return y + points(reading_row_pt) * rows_of_readings();
}

void StatusSheetPages::paint_signatures(QPainter& painter, double y) const {
  painter.setFont(printed_font(base_, 9.5, QFont::Normal));
  const double step = (body_.width() + points(signature_gap_pt)) /
                      static_cast<double>(std::max<std::size_t>(1, sheet_.signatures.size()));
  for (std::size_t i = 0; i < sheet_.signatures.size(); ++i) {
    const double x = body_.left() + step * static_cast<double>(i);
    painter.drawText(QRectF(x, y + points(20), points(110), points(14)),
                     Qt::AlignLeft | Qt::AlignVCenter, q(sheet_.signatures[i]));
    painter.setPen(printed_line(0.5));
    painter.drawLine(QPointF(x + points(92), y + points(33)),
                     QPointF(x + step - points(signature_gap_pt), y + points(33)));
    painter.setPen(Qt::black);
  }
}

}  // namespace ullage::ui
