// SPDX-License-Identifier: GPL-3.0-or-later
//
// Paper and the fixed raster all sheets are laid out on. Layout happens once, at
// 1200 dots an inch, and is scaled to whatever it is painted on, so that the
// preview, the printer and the PDF break lines and pages alike.
#pragma once

#include <QPageSize>

namespace ullage::ui {

enum class Paper { a4, letter };

inline constexpr double dots_per_inch = 1200.0;
[[nodiscard]] constexpr double points(double pt) { return pt * dots_per_inch / 72.0; }
[[nodiscard]] constexpr double millimetres_on_paper(double mm) { return mm * dots_per_inch / 25.4; }

[[nodiscard]] inline QPageSize page_size(Paper paper) {
  return QPageSize(paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter);
}

}  // namespace ullage::ui
