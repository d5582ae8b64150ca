// SPDX-License-Identifier: GPL-3.0-or-later
//
// A keg's state and next step in words behind a shape, and the plate that takes
// their place while it must not be served.
#pragma once

#include <QRectF>

#include "ui/models/keg_row.h"
#include "ui/widgets/cell_style.h"

class QPainter;

namespace ullage::ui {

void paint_state_cell(QPainter&, const QRectF& cell, const KegRow&, const CellStyle&);

}  // namespace ullage::ui
