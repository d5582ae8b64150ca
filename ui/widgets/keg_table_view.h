// SPDX-License-Identifier: GPL-3.0-or-later
//
// The keg table: one row a keg, chosen by mouse or arrows. Typing goes to
// whoever listens to `typed`; Enter says `opened`. The space bar, the menu key and
// the right button ask for the reasons of the row's numbers, a click on a number
// for its own; a dotted line shows which can be clicked.
#pragma once

#include <QTableView>
#include <array>
#include <optional>

#include "ui/models/keg_table_model.h"
#include "ui/widgets/keg_row_delegate.h"
#include "ui/widgets/keg_table_header.h"

namespace ullage::ui {

class KegTableView final : public QTableView {
  Q_OBJECT
 public:
  explicit KegTableView(KegTableModel&, QWidget* parent = nullptr);

  void set_compact(bool);
  [[nodiscard]] bool compact() const { return compact_; }
  void set_phase_names(PhaseNames names) { delegate_->set_phase_names(std::move(names)); }
  [[nodiscard]] KegTableHeader& header() { return *header_; }

  // The chosen keg stays chosen while it is shown; choosing scrolls to it.
  [[nodiscard]] std::optional<cellar::KegId> chosen() const;
  void choose(cellar::KegId);

  // Widths the person dragged, 0 for a column left to itself.
  using Widths = std::array<int, keg_column_count>;
  [[nodiscard]] Widths dragged_widths() const { return dragged_; }
  void set_dragged_widths(const Widths&);

  void keyboardSearch(const QString& text) override { emit typed(text); }

 signals:
  void chosen_changed();
  void opened();  // Enter or a click on a row
  void typed(const QString& text);
  // The reasons of one number, or of the whole row; `at` in the viewport.
  void reasons_of_number(KegColumn column, const QRect& at);
  void reasons_of_row(const QRect& at);
  void widths_dragged();

 protected:
  void resizeEvent(QResizeEvent*) override;
  void keyPressEvent(QKeyEvent*) override;
  void mouseMoveEvent(QMouseEvent*) override;
  void mouseReleaseEvent(QMouseEvent*) override;
  void contextMenuEvent(QContextMenuEvent*) override;
  void leaveEvent(QEvent*) override;
  void paintEvent(QPaintEvent*) override;
  QModelIndex moveCursor(CursorAction, Qt::KeyboardModifiers) override;
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

 private:
  void lay_out_columns();
  void lay_out_rows();
  void hover(int row);
  // Where the number of that cell stands; empty when it shows none.
  [[nodiscard]] QRect number_at(const QModelIndex&) const;
  [[nodiscard]] QModelIndex number_under(const QPoint&) const;
  [[nodiscard]] QRect row_rect(int row) const;
  void underline_numbers(QPainter&, int row) const;

  KegTableModel& model_;
  KegRowDelegate* delegate_;
  KegTableHeader* header_;
  Widths dragged_{};
  bool compact_ = false;
  bool laying_out_ = false;
  int hovered_ = -1;
};

}  // namespace ullage::ui
