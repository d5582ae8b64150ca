// SPDX-License-Identifier: GPL-3.0-or-later
//
// CO2 in a keg against the range its beer should be served in. All rows share
// one scale, so their marks can be compared down the column.
#pragma once

#include <QRectF>

#include "ui/models/keg_row.h"
#include "ui/widgets/cell_style.h"

class QPainter;

namespace ullage::ui {

// The gauge alone: a track from 0 to `top` volumes, the range as a band, the
// likely value as a tick and its error as a bar.
void paint_co2_gauge(QPainter&, const QRectF&, const Co2View&, double top, const Theme&);
void paint_co2_cell(QPainter&, const QRectF& cell, const Co2View&, double top, const CellStyle&);

// Where the number stands in the cell; empty when there is none.
[[nodiscard]] QRectF co2_number_rect(const QRectF& cell, const Co2View&, const CellStyle&);

// Where the gauge lies in a cell: the header's scale uses it too.
[[nodiscard]] QRectF co2_gauge_rect(const QRectF& cell, const CellStyle&);

}  // namespace ullage::ui
