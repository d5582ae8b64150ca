// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/sizes.h"

#include <algorithm>
#include <array>
#include <string>

namespace ullage::architecture {

namespace {

constexpr std::array<std::string_view, 6> scope_words = {"namespace", "class", "struct",
                                                         "enum",      "union", "extern"};

std::string_view trimmed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(" \t\n");
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(" \t\n") - first + 1);
}

// Drops leading `template <...>` and `inline`, so that what is declared comes first.
std::string_view declaration(std::string_view head) {
  head = trimmed(head);
  while (head.starts_with("template")) {
    const std::size_t open = head.find('<');
    if (open == std::string_view::npos) return head;
    int depth = 0;
    std::size_t at = open;
    for (; at < head.size(); ++at) {
      if (head[at] == '<') ++depth;
      if (head[at] == '>' && --depth == 0) break;
    }
    head = trimmed(head.substr(std::min(at + 1, head.size())));
  }
  if (head.starts_with("inline ")) head = trimmed(head.substr(7));
  return head;
}

enum class Brace { scope, body, other };

Brace kind_of(std::string_view head) {
  head = declaration(head);
  for (const std::string_view word : scope_words) {
    if (head.starts_with(word) && find_word(head, word) == 0) return Brace::scope;
  }
  const auto opened = std::ranges::count(head, '(');
  const bool has_parameters = opened > 0 && opened == std::ranges::count(head, ')');
  return has_parameters ? Brace::body : Brace::other;
}

// Preprocessor lines hold no braces that matter.
std::string without_directives(std::string text) {
  bool continued = false;
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    const std::string_view line = std::string_view(text).substr(at, end - at);
    const bool directive = continued || trimmed(line).starts_with('#');
    continued = directive && line.ends_with('\\');
    if (directive) std::fill_n(text.begin() + static_cast<std::ptrdiff_t>(at), end - at, ' ');
    at = end + 1;
  }
  return text;
}

}  // namespace

std::vector<FunctionBody> function_bodies(std::string_view text) {
  const std::string code = without_directives(without_comments(text, true));
  std::vector<FunctionBody> bodies;
  std::vector<Brace> open;
  std::size_t line = 1;
  std::size_t head = 0;
  std::size_t inside = 0;  // braces open since the body began
  for (std::size_t at = 0; at < code.size(); ++at) {
    const char c = code[at];
    if (c == '\n') ++line;
    if (inside > 0) {
      if (c == '{') ++inside;
      if (c == '}' && --inside == 0) {
        bodies.back().last_line = line;
        head = at + 1;
      }
    } else if (c == '{') {
      const Brace kind = kind_of(std::string_view(code).substr(head, at - head));
      if (kind == Brace::body) {
        bodies.push_back({line, line});
        inside = 1;
      } else {
        open.push_back(kind);
      }
      head = at + 1;
    } else if (c == '}' || c == ';') {
      if (c == '}' && !open.empty()) open.pop_back();
      head = at + 1;
    }
  }
  return bodies;
}

std::vector<Finding> long_files(const SourceTree& tree) {
  std::vector<Finding> findings;
  for (const SourceFile& file : tree) {
    if (!is_code(file)) continue;
    const std::size_t limit = is_header(file) ? longest_header : longest_source;
    const std::size_t count = lines_of(file.text).size();
    if (count > limit) {
      findings.push_back(
          {file.path, 0,
           std::to_string(count) + " lines, where " + std::to_string(limit) + " are allowed"});
    }
  }
  return findings;
}

std::vector<Finding> long_functions(const SourceTree& tree) {
  std::vector<Finding> findings;
  for (const SourceFile& file : tree) {
    if (!is_code(file)) continue;
    for (const FunctionBody& body : function_bodies(file.text)) {
      const std::size_t count = body.last_line - body.first_line + 1;
      if (count > longest_function) {
        findings.push_back({file.path, body.first_line,
                            "a function of " + std::to_string(count) + " lines, where " +
                                std::to_string(longest_function) + " are allowed"});
      }
    }
  }
  return findings;
}

}  // namespace ullage::architecture
