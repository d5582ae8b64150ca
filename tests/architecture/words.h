// SPDX-License-Identifier: GPL-3.0-or-later
//
// What may not be written: words of unfinished work, places of one machine, a
// read of the clock where time must be handed in, bare numbers for physical values.
#pragma once

#include <vector>

#include "tests/architecture/source_tree.h"

namespace ullage::architecture {

// Marks of unfinished work, paths and hosts of a machine, merge leftovers, and notes
// about how the project was made instead of what it is.
[[nodiscard]] std::vector<Finding> words_that_do_not_belong(const SourceTree& tree);

// The wall clock read anywhere in core: there, time is always an argument.
[[nodiscard]] std::vector<Finding> clock_in_core(const SourceTree& tree);

// Parameters like `double pressure` in headers of core outside core/units: physical
// values cross function boundaries as quantities. A dimensionless number says so in
// its name (..._ratio, ..._fraction, ..._factor).
[[nodiscard]] std::vector<Finding> bare_physical_numbers(const SourceTree& tree);

// Silenced linter findings that don't name the check they silence.
[[nodiscard]] std::vector<Finding> unnamed_lint_silences(const SourceTree& tree);

// `using namespace` in headers of the program.
[[nodiscard]] std::vector<Finding> opened_namespaces_in_headers(const SourceTree& tree);

}  // namespace ullage::architecture
