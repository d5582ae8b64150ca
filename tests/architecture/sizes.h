// SPDX-License-Identifier: GPL-3.0-or-later
//
// How large a thing may grow before it must be split.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

#include "tests/architecture/source_tree.h"

namespace ullage::architecture {

inline constexpr std::size_t longest_source = 400;
inline constexpr std::size_t longest_header = 250;
inline constexpr std::size_t longest_function = 60;

// Sources and headers with more lines than they may have.
[[nodiscard]] std::vector<Finding> long_files(const SourceTree& tree);

// Functions whose body, both braces included, spans more lines than it may.
[[nodiscard]] std::vector<Finding> long_functions(const SourceTree& tree);

struct FunctionBody {
  std::size_t first_line;
  std::size_t last_line;
};

// The bodies of functions defined in namespaces or classes, in order. Found by
// counting braces: a brace opens a body when what stands before it has a parameter
// list and is no class, namespace or initialiser. Lambdas belong to the function
// around them.
[[nodiscard]] std::vector<FunctionBody> function_bodies(std::string_view text);

}  // namespace ullage::architecture
