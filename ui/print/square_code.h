// SPDX-License-Identifier: GPL-3.0-or-later
//
// A text as a QR code, drawn in vectors so that it is sharp at any size. A
// quarter of it may be dirty or torn and it still reads (level Q of ISO 18004):
// a keg's tag gets wet.
#pragma once

#include <QRectF>
#include <string>

class QPainter;

namespace ullage::ui {

// Fills the square `area` with the code and the white border of four modules
// that readers need. False when the text is too long for any code; then nothing
// is drawn.
bool paint_square_code(QPainter& painter, const QRectF& area, const std::string& text);

}  // namespace ullage::ui
