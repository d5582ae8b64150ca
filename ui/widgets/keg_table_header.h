// SPDX-License-Identifier: GPL-3.0-or-later
//
// The head of the keg table: names of columns, the dates over the life strips
// and the scale over the CO2 gauges.
#pragma once

#include <QHeaderView>
#include <QStringList>
#include <optional>
#include <vector>

#include "ui/models/keg_table_model.h"
#include "ui/widgets/life_strip.h"

namespace ullage::ui {

class KegTableHeader final : public QHeaderView {
  Q_OBJECT
 public:
  KegTableHeader(const KegTableModel&, QWidget* parent);

  void set_compact(bool);
  void set_dates(std::vector<LifeTick>);
  // "CO₂, 0 to 5 vol"
  void set_co2_name(const QString&);
  // The column the rows are ordered by.
  void set_ordered_by(std::optional<KegColumn>);

  [[nodiscard]] QSize sizeHint() const override;

 protected:
  void paintSection(QPainter*, const QRect&, int section) const override;

 private:
  void paint_name(QPainter&, const QRectF&, int section, const CellStyle&) const;

  const KegTableModel& model_;
  bool compact_ = false;
  std::vector<LifeTick> dates_;
  QString co2_name_;
  std::optional<KegColumn> ordered_by_;
};

}  // namespace ullage::ui
