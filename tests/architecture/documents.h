// SPDX-License-Identifier: GPL-3.0-or-later
//
// What must be written down: licence lines, a README in each folder, the documents at
// the top, and links that lead somewhere.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "tests/architecture/source_tree.h"

namespace ullage::architecture {

// Sources, scripts, SQL and CMake files whose first line (second in a script) is not
// the SPDX licence line.
[[nodiscard]] std::vector<Finding> missing_licence_lines(const SourceTree& tree);

// Folders with code, and the top folders, lacking a README.md that begins with three
// sentences, one a line: what it owns, what it must not know, what to read first.
[[nodiscard]] std::vector<Finding> missing_readmes(const SourceTree& tree);

// README.md, DEVELOPERS.md or the licence missing; README not naming the two
// commands near its top.
[[nodiscard]] std::vector<Finding> missing_documents(const SourceTree& tree);

// Files and folders at the top of the tree that the map of the house does not name.
[[nodiscard]] std::vector<Finding> strangers_at_the_top(const SourceTree& tree);

// Relative links in Markdown files to something that is not in `paths` (files and
// folders, relative to the top of the tree).
[[nodiscard]] std::vector<Finding> dead_links(const SourceTree& tree,
                                              const std::set<std::string>& paths);

// Everything in the project that a link may lead to.
[[nodiscard]] std::set<std::string> project_paths();

}  // namespace ullage::architecture
