// SPDX-License-Identifier: GPL-3.0-or-later
//
// Judges of any widget, for the tests of every page and dialog. Each returns one
// sentence per finding and nothing when all is well. The widget must be shown.
#pragma once

#include <string>
#include <vector>

class QTreeView;
class QWidget;

namespace ullage::testing {

// Every control that takes the keyboard says its name to a screen reader.
[[nodiscard]] std::vector<std::string> unnamed_controls(QWidget& window);

// Tab alone reaches every control that takes it, and comes round again. Groups
// of exclusive buttons count as one stop.
[[nodiscard]] std::vector<std::string> tab_order_faults(QWidget& window);

// All text that is painted, by whatever widget, stands at least `ratio` to 1 against what
// it is painted on; what is scrolled out of sight is scrolled to.
[[nodiscard]] std::vector<std::string> contrast_faults(QWidget& window, double ratio = 7.0);

// Labels and buttons with less room than their text needs.
[[nodiscard]] std::vector<std::string> clipped_texts(QWidget& window);

// Rows of a tree or list with less room than their text needs.
[[nodiscard]] std::vector<std::string> cut_cells(const QTreeView& view);

}  // namespace ullage::testing
