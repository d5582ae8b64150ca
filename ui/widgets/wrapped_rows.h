// SPDX-License-Identifier: GPL-3.0-or-later
//
// Rows of a tree or list that become as high as their longest text needs, instead
// of cutting it off: the columns that stretch wrap, and wrap anew when they get
// another width. The other columns stay as wide as what is in them.
//
//   wrap_rows(*tree, 30);  // at least 30 pixels a row
#pragma once

class QTreeView;

namespace ullage::ui {

void wrap_rows(QTreeView& view, int least_height);

}  // namespace ullage::ui
