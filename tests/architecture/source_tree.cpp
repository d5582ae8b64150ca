// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/source_tree.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <fstream>
#include <iterator>
#include <ostream>
#include <utility>

namespace ullage::architecture {

namespace {

constexpr std::array<std::string_view, 15> text_extensions = {
    ".cpp", ".h",   ".inc", ".in",  ".md",  ".txt", ".cmake",  ".json",
    ".sql", ".csv", ".qrc", ".tsv", ".xml", ".sh",  ".desktop"};

bool is_text(const std::filesystem::path& path) {
  if (path.filename() == ".git") return false;  // a file where the tree is a linked copy
  const std::string extension = path.extension().string();
  // Files without an extension are scripts, package lists and the licence.
  return extension.empty() ||
         std::ranges::find(text_extensions, extension) != text_extensions.end();
}

bool is_skipped_folder(const std::filesystem::path& path) {
  const std::string name = path.filename().string();
  return name == ".git" || name == ".cache" || name.starts_with("build");
}

bool is_word_character(char c) {
  return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_';
}

// Blanks comments and literals in one pass over a text.
class Blanker {
 public:
  Blanker(std::string_view text, bool and_literals) : text_(text), and_literals_(and_literals) {
    out_.reserve(text.size());
  }

  std::string run() {
    while (at_ < text_.size()) step();
    return std::move(out_);
  }

 private:
  void step() {
    const std::string_view rest = text_.substr(at_);
    if (rest.starts_with("//")) {
      blank(std::min(rest.find('\n'), rest.size()));
    } else if (rest.starts_with("/*")) {
      const std::size_t end = rest.find("*/", 2);
      blank(end == std::string_view::npos ? rest.size() : end + 2);
    } else if (rest.starts_with("R\"") && !follows_word()) {
      literal(raw_literal_length(rest));
    } else if (rest.front() == '"' || (rest.front() == '\'' && !follows_word())) {
      literal(plain_literal_length(rest));
    } else {
      out_.push_back(rest.front());
      ++at_;
    }
  }

  // A quote after a digit or letter separates digits (1'000); an R after a letter
  // ends a name.
  bool follows_word() const { return at_ > 0 && is_word_character(text_[at_ - 1]); }

  static std::size_t plain_literal_length(std::string_view rest) {
    const char quote = rest.front();
    for (std::size_t i = 1; i < rest.size(); ++i) {
      if (rest[i] == '\\') {
        ++i;
      } else if (rest[i] == quote || rest[i] == '\n') {
        return i + 1;
      }
    }
    return rest.size();
  }

  static std::size_t raw_literal_length(std::string_view rest) {
    const std::size_t open = rest.find('(');
    if (open == std::string_view::npos) return rest.size();
    const std::string close = ")" + std::string(rest.substr(2, open - 2)) + "\"";
    const std::size_t end = rest.find(close, open);
    return end == std::string_view::npos ? rest.size() : end + close.size();
  }

  void literal(std::size_t length) {
    if (and_literals_) {
      blank(length);
    } else {
      out_.append(text_.substr(at_, length));
      at_ += length;
    }
  }

  void blank(std::size_t length) {
    for (const char c : text_.substr(at_, length)) out_.push_back(c == '\n' ? '\n' : ' ');
    at_ += length;
  }

  std::string_view text_;
  bool and_literals_;
  std::size_t at_ = 0;
  std::string out_;
};

}  // namespace

std::ostream& operator<<(std::ostream& out, const Finding& finding) {
  out << finding.path;
  if (finding.line != 0) out << ':' << finding.line;
  return out << ": " << finding.what;
}

SourceTree read_tree(const std::filesystem::path& root) {
  SourceTree tree;
  auto walk = std::filesystem::recursive_directory_iterator(root);
  for (const auto end = std::filesystem::end(walk); walk != end; ++walk) {
    if (walk->is_directory()) {
      if (is_skipped_folder(walk->path())) walk.disable_recursion_pending();
    } else if (walk->is_regular_file()) {
      std::string text;
      if (is_text(walk->path())) {
        std::ifstream in(walk->path(), std::ios::binary);
        text.assign(std::istreambuf_iterator<char>(in), {});
      }
      tree.push_back(
          {std::filesystem::relative(walk->path(), root).generic_string(), std::move(text)});
    }
  }
  std::ranges::sort(tree, {}, &SourceFile::path);
  return tree;
}

const SourceTree& project() {
  static const SourceTree tree = read_tree(ULLAGE_SOURCE_DIR);
  return tree;
}

std::vector<std::string_view> lines_of(std::string_view text) {
  std::vector<std::string_view> lines;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    lines.push_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return lines;
}

std::string without_comments(std::string_view text, bool and_literals) {
  return Blanker(text, and_literals).run();
}

bool is_header(const SourceFile& file) { return file.path.ends_with(".h"); }
bool is_source(const SourceFile& file) { return file.path.ends_with(".cpp"); }
bool is_code(const SourceFile& file) { return is_header(file) || is_source(file); }

std::string folder_of(std::string_view path) {
  const std::size_t slash = path.find('/');
  if (slash == std::string_view::npos) return {};
  const std::string_view top = path.substr(0, slash);
  if (top != "core") return std::string(top);
  return std::string(path.substr(0, path.find('/', slash + 1)));
}

std::size_t find_word(std::string_view text, std::string_view word, std::size_t from) {
  for (std::size_t at = text.find(word, from); at != std::string_view::npos;
       at = text.find(word, at + 1)) {
    const std::size_t after = at + word.size();
    const bool starts = at == 0 || !is_word_character(text[at - 1]);
    const bool ends = after >= text.size() || !is_word_character(text[after]);
    if (starts && ends) return at;
  }
  return std::string_view::npos;
}

}  // namespace ullage::architecture
