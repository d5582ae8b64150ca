// SPDX-License-Identifier: GPL-3.0-or-later
//
// Our own icons, drawn as SVG on a 24-unit grid and coloured for the theme they
// stand in. They are drawn anew at every size and pixel ratio.
#pragma once

#include <QColor>
#include <QIcon>
#include <QPixmap>

class QPainter;
class QRectF;

namespace ullage::ui {

enum class Icon {
  keg,
  tap,
  line,
  lock,
  gas,
  log,
  settings,
  plus,
  search,
  warning,
  danger,
  info,
  clock,
  ready,
  empty,
  on_tap,
  check,
  close,
  undo,
  redo,
  print,
  filter,
  compact,
  comfortable,
  chevron_left,
  chevron_right,
  chevron_up,
  chevron_down,
  thermometer,
  transfer,
  keg_change,
  stock,
  folder,
  restore,
  strike,
  edit,
  slate,
  beers,
  round,
  safety,
  cleaning,
  ullage
};
inline constexpr int icon_count = static_cast<int>(Icon::ullage) + 1;

[[nodiscard]] QIcon icon(Icon, const QColor&);
void paint_icon(QPainter&, const QRectF&, Icon, const QColor&);
// Where the drawing lies among the resources.
[[nodiscard]] QString icon_path(Icon);

}  // namespace ullage::ui
