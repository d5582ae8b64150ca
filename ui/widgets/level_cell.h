// SPDX-License-Identifier: GPL-3.0-or-later
//
// How much is left: a keg filled as high as the beer stands, with the stretch
// that is uncertain paler, and the amount beside it.
#pragma once

#include <QRectF>

#include "ui/models/keg_row.h"
#include "ui/widgets/cell_style.h"

class QPainter;

namespace ullage::ui {

void paint_keg_glyph(QPainter&, const QRectF&, const LevelView&, const Theme&);
void paint_level_cell(QPainter&, const QRectF& cell, const LevelView&, const CellStyle&);
// Where the amount stands in the cell; empty when there is none.
[[nodiscard]] QRectF level_number_rect(const QRectF& cell, const LevelView&, const CellStyle&);

}  // namespace ullage::ui
