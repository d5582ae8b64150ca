// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which folder may include what, judged by the #include lines alone.
#pragma once

#include <vector>

#include "tests/architecture/source_tree.h"

namespace ullage::architecture {

// The arrows of the house: units <- physics <- cellar <- report, store; ui uses all
// of these except store; only app uses everything; nothing outside tests uses tests.
// Own headers are named from the top of the tree.
[[nodiscard]] std::vector<Finding> wrong_arrows(const SourceTree& tree);

// Qt in core/units, core/physics, core/cellar or core/report.
[[nodiscard]] std::vector<Finding> qt_in_pure_core(const SourceTree& tree);

// SQLite, Qt SQL or words of SQL outside core/store.
[[nodiscard]] std::vector<Finding> sql_outside_store(const SourceTree& tree);

// Headers that cost more than they give: whole Qt modules, and <format>, which the
// oldest supported compiler lacks.
[[nodiscard]] std::vector<Finding> unwanted_headers(const SourceTree& tree);

}  // namespace ullage::architecture
