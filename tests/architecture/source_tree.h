// SPDX-License-Identifier: GPL-3.0-or-later
//
// The source tree as text, for the rules of this folder. A rule is a function from
// a tree to its findings; an empty list means that the tree obeys. Trees are plain
// values, so that each rule is also tried on a small bad tree made in memory.
#pragma once

#include <cstddef>
#include <filesystem>
#include <iosfwd>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::architecture {

// One file; `path` is relative to the top of the tree, with forward slashes. A picture, or
// whatever else is no text, has an empty one.
struct SourceFile {
  std::string path;
  std::string text;
};

using SourceTree = std::vector<SourceFile>;

// One breach of a rule; line 0 speaks of the file (or folder) as a whole.
struct Finding {
  std::string path;
  std::size_t line = 0;
  std::string what;
};

std::ostream& operator<<(std::ostream& out, const Finding& finding);

// Every file below `root` that belongs to the project, in order of path. Build folders
// and the version store are left out.
[[nodiscard]] SourceTree read_tree(const std::filesystem::path& root);

// The tree of this project, read once.
[[nodiscard]] const SourceTree& project();

[[nodiscard]] std::vector<std::string_view> lines_of(std::string_view text);

// The text with comments blanked out, and string and character literals too when
// `and_literals` is set. Line breaks stay where they are.
[[nodiscard]] std::string without_comments(std::string_view text, bool and_literals);

[[nodiscard]] bool is_header(const SourceFile& file);
[[nodiscard]] bool is_source(const SourceFile& file);  // .cpp only
[[nodiscard]] bool is_code(const SourceFile& file);    // either

// The folder of the house that a path lies in: "core/units", "ui", "tests" ...;
// empty for files at the top.
[[nodiscard]] std::string folder_of(std::string_view path);

// The first place at or after `from` where `word` stands alone, that is, not as a
// part of a longer identifier; npos when there is none.
[[nodiscard]] std::size_t find_word(std::string_view text, std::string_view word,
                                    std::size_t from = 0);

}  // namespace ullage::architecture
