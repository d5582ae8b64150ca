// SPDX-License-Identifier: GPL-3.0-or-later
//
// Draws the cells of the keg table by handing each to its painter.
#pragma once

#include <QStyledItemDelegate>

#include "ui/widgets/life_strip.h"

namespace ullage::ui {

class KegTableModel;

class KegRowDelegate final : public QStyledItemDelegate {
  Q_OBJECT
 public:
  KegRowDelegate(const KegTableModel&, QObject* parent);

  void set_compact(bool on) { compact_ = on; }
  void set_hovered_row(int row) { hovered_row_ = row; }
  void set_phase_names(PhaseNames names) { names_ = std::move(names); }

  void paint(QPainter*, const QStyleOptionViewItem&, const QModelIndex&) const override;

 private:
  [[nodiscard]] QColor ground_of(const QStyleOptionViewItem&, const QModelIndex&,
                                 const Theme&) const;
  void paint_ground(QPainter&, const QStyleOptionViewItem&, const QModelIndex&,
                    const CellStyle&) const;

  const KegTableModel& model_;
  PhaseNames names_;
  bool compact_ = false;
  int hovered_row_ = -1;
};

}  // namespace ullage::ui
