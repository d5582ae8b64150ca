// SPDX-License-Identifier: GPL-3.0-or-later
//
// A log or list of core/report on pages, landscape. Nothing is clipped: cells
// wrap, rows grow, and a row taller than a page goes on overleaf. Each page
// carries the heading, the column names and "page x of y". What was struck is
// crossed through, with the sentence of who struck it beneath.
#pragma once

#include <QFont>
#include <QRectF>
#include <QStringList>
#include <vector>

#include "core/report/table_sheet.h"
#include "ui/print/pages.h"
#include "ui/print/paper.h"

namespace ullage::ui {

class TableSheetPages final : public Pages {
 public:
  TableSheetPages(report::TableSheet sheet, Paper paper, const QFont& base);

  [[nodiscard]] int count() const override { return static_cast<int>(pages_.size()); }
  [[nodiscard]] QPageLayout layout() const override;
  void paint(QPainter& painter, int page) const override;

 private:
  // What is set on a page as one piece.
  struct Block {
    enum class Kind { row, heading, words, box_title, box_line, gap, signatures };
    Kind kind = Kind::words;
    std::vector<QStringList> cells;  // of a row: the lines under each column; else one
    QStringList standing;            // below a row
    bool struck = false, marked = false;
    bool goes_on = false;  // the first part of a row that was broken
    double height = 0;
  };
  struct Placed {
    std::size_t block = 0;
    double y = 0;
  };
  struct Page {
    std::vector<Placed> blocks;
    bool column_names = false;
  };

  void lay_out_columns();
  void lay_out_rows();
  void add_row(const report::TableRow& row);
  void add_boxes();
  void break_pages();
  void keep_the_last_row_company();
  [[nodiscard]] bool in_table(const Block& block) const;
  [[nodiscard]] double row_height(const Block& block) const;
  [[nodiscard]] Block part_of(const Block& block, int from_line, int lines) const;
  [[nodiscard]] double names_height() const;

  void paint_names(QPainter& painter) const;
  void paint_block(QPainter& painter, const Block& block, double y) const;
  void paint_row(QPainter& painter, const Block& block, double y) const;
  void rule_off_blanks(QPainter& painter, const Block& block, double y) const;

  report::TableSheet sheet_;
  QFont base_, cell_, first_cell_, small_;
  Paper paper_;
  QRectF body_;
  std::vector<double> columns_;
  std::vector<QStringList> names_;
  std::vector<Block> blocks_;
  std::vector<Page> pages_;
};

}  // namespace ullage::ui
