// SPDX-License-Identifier: GPL-3.0-or-later
//
// The status sheet on pages, landscape. Rows are never split over pages and no
// cell is clipped: text wraps and rows grow. Each page carries the heading, the
// column names and "page x of y".
#pragma once

#include <QFont>
#include <QRectF>
#include <vector>

#include "core/report/status_sheet.h"
#include "ui/print/pages.h"
#include "ui/print/paper.h"

namespace ullage::ui {

class StatusSheetPages final : public Pages {
 public:
  StatusSheetPages(report::StatusSheet sheet, Paper paper, const QFont& base);

  [[nodiscard]] int count() const override { return static_cast<int>(pages_.size()); }
  [[nodiscard]] QPageLayout layout() const override;
  void paint(QPainter& painter, int page) const override;

 private:
  struct Row {
    std::vector<QStringList> cells;  // the lines under each column
    double height = 0;
    bool marked = false;
  };
  struct Page {
    std::size_t first_row = 0, row_count = 0;
    bool table = false;
    bool foot_matter = false;  // boxes, readings, signatures
  };

  [[nodiscard]] QFont cell_font(std::size_t column) const;
  [[nodiscard]] QStringList box_lines(const std::string& text, const QFont&) const;
  [[nodiscard]] double box_step() const;
  [[nodiscard]] double needed_width(std::size_t column) const;
  void lay_out_columns();
  void lay_out_rows();
  void break_pages();
  [[nodiscard]] double foot_matter_height() const;
  [[nodiscard]] double rows_of_readings() const;
  void paint_heading(QPainter& painter, int page) const;
  double paint_column_names(QPainter& painter, double y) const;
  void paint_row(QPainter& painter, const Row& row, double y) const;
  void paint_foot_matter(QPainter& painter, double y) const;
  double paint_boxes(QPainter& painter, double y) const;
  double paint_readings(QPainter& painter, double y) const;
  void paint_signatures(QPainter& painter, double y) const;

  report::StatusSheet sheet_;
  std::vector<QStringList> cells_;  // of its rows
  QFont base_;
  Paper paper_;
  QRectF body_;  // between heading and foot
  std::vector<double> columns_;
  std::vector<Row> rows_;
  std::vector<Page> pages_;
};

}  // namespace ullage::ui
