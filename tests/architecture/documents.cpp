// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/documents.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <filesystem>
#include <string_view>

namespace ullage::architecture {

namespace {

constexpr std::string_view licence = "SPDX-License-Identifier: GPL-3.0-or-later";
constexpr std::array<std::string_view, 5> top_folders = {"app", "ui", "resources", "tests", "docs"};
constexpr std::array<std::string_view, 10> top_names = {
    "CMakeLists.txt", "CMakePresets.json", "DEVELOPERS.md", "README.md", "app", "core",
    "docs",           "resources",         "tests",         "ui"};
constexpr std::size_t readme_top = 20;  // lines in which the two commands must be named

const SourceFile* find_file(const SourceTree& tree, std::string_view path) {
  const auto found = std::ranges::find(tree, path, &SourceFile::path);
  return found == tree.end() ? nullptr : &*found;
}

bool needs_licence_line(const SourceFile& file) {
  return is_code(file) || file.path.ends_with(".inc") || file.path.ends_with(".sql") ||
         file.path.ends_with(".cmake") || file.path.ends_with(".sh") ||
         file.path.ends_with("CMakeLists.txt") || file.text.starts_with("#!");
}

std::set<std::string> folders_needing_readmes(const SourceTree& tree) {
  std::set<std::string> folders;
  for (const SourceFile& file : tree) {
    const std::size_t slash = file.path.rfind('/');
    if (slash == std::string::npos) continue;
    if (is_code(file)) folders.insert(file.path.substr(0, slash));
    const std::string top = file.path.substr(0, file.path.find('/'));
    if (std::ranges::find(top_folders, top) != top_folders.end()) folders.insert(top);
  }
  return folders;
}

// What the folder owns, what it must not know, what to read first.
bool begins_with_three_sentences(std::string_view text) {
  constexpr std::size_t sentences = 3;
  const auto lines = lines_of(text);
  if (lines.size() < sentences) return false;
  return std::all_of(lines.begin(), lines.begin() + sentences, [](std::string_view line) {
    return !line.empty() && std::isupper(static_cast<unsigned char>(line.front())) != 0 &&
           line.find_first_of(".:") != std::string_view::npos;
  });
}

// Where `](` begins a link, the target up to the closing bracket or a fragment.
std::vector<std::string_view> link_targets(std::string_view line) {
  std::vector<std::string_view> targets;
  for (std::size_t at = line.find("]("); at != std::string_view::npos;
       at = line.find("](", at + 1)) {
    const std::string_view rest = line.substr(at + 2);
    targets.push_back(rest.substr(0, rest.find_first_of(")# ")));
  }
  return targets;
}

bool is_elsewhere(std::string_view target) {
  return target.empty() || target.find("://") != std::string_view::npos ||
         target.starts_with("mailto:");
}

}  // namespace

std::vector<Finding> missing_licence_lines(const SourceTree& tree) {
  std::vector<Finding> findings;
  for (const SourceFile& file : tree) {
    if (!needs_licence_line(file)) continue;
    const auto lines = lines_of(file.text);
    const bool script = file.text.starts_with("#!") || file.path.ends_with(".sh");
    const std::size_t last = std::min<std::size_t>(script ? 2 : 1, lines.size());
    const bool found = std::any_of(lines.begin(), lines.begin() + static_cast<std::ptrdiff_t>(last),
                                   [](std::string_view line) { return line.ends_with(licence); });
    if (!found) findings.push_back({file.path, 1, "does not begin with its licence line"});
  }
  return findings;
}

std::vector<Finding> missing_readmes(const SourceTree& tree) {
  std::vector<Finding> findings;
  for (const std::string& folder : folders_needing_readmes(tree)) {
    const SourceFile* readme = find_file(tree, folder + "/README.md");
    if (readme == nullptr) {
      findings.push_back({folder, 0, "has no README.md"});
    } else if (!begins_with_three_sentences(readme->text)) {
      findings.push_back({readme->path, 0, "does not begin with three sentences, one a line"});
    }
  }
  return findings;
}

std::vector<Finding> missing_documents(const SourceTree& tree) {
  std::vector<Finding> findings;
  for (const std::string_view path : {"README.md", "DEVELOPERS.md", "docs/COPYING"}) {
    const SourceFile* file = find_file(tree, path);
    if (file == nullptr || file->text.empty())
      findings.push_back({std::string(path), 0, "is missing"});
  }
  const SourceFile* copying = find_file(tree, "docs/COPYING");
  if (copying != nullptr && copying->text.find("GNU GENERAL PUBLIC LICENSE") == std::string::npos) {
    findings.push_back({copying->path, 0, "is not the licence"});
  }
  const SourceFile* readme = find_file(tree, "README.md");
  if (readme == nullptr) return findings;
  std::string top;
  for (const std::string_view line : lines_of(readme->text)) {
    if (std::ranges::count(top, '\n') < static_cast<std::ptrdiff_t>(readme_top)) {
      top.append(line).push_back('\n');
    }
  }
  for (const std::string_view command : {"app/run", "tests/run"}) {
    if (find_word(top, command) == std::string_view::npos) {
      findings.push_back({readme->path, 0, "does not name near its top: " + std::string(command)});
    }
  }
  return findings;
}

std::vector<Finding> strangers_at_the_top(const SourceTree& tree) {
  std::vector<Finding> findings;
  for (const SourceFile& file : tree) {
    const std::string name = file.path.substr(0, file.path.find('/'));
    if (!name.starts_with('.') && std::ranges::find(top_names, name) == top_names.end()) {
      findings.push_back({file.path, 0, "the design names nothing like it at the top"});
    }
  }
  return findings;
}

std::vector<Finding> dead_links(const SourceTree& tree, const std::set<std::string>& paths) {
  std::vector<Finding> findings;
  for (const SourceFile& file : tree) {
    if (!file.path.ends_with(".md")) continue;
    const auto here = std::filesystem::path(file.path).parent_path();
    std::size_t number = 0;
    for (const std::string_view line : lines_of(file.text)) {
      ++number;
      for (const std::string_view target : link_targets(line)) {
        if (is_elsewhere(target)) continue;
        std::string path = (here / target).lexically_normal().generic_string();
        if (path.ends_with('/')) path.pop_back();
        if (!paths.contains(path)) {
          findings.push_back({file.path, number, "leads nowhere: " + std::string(target)});
        }
      }
    }
  }
  return findings;
}

std::set<std::string> project_paths() {
  const std::filesystem::path root = ULLAGE_SOURCE_DIR;
  std::set<std::string> paths;
  auto walk = std::filesystem::recursive_directory_iterator(root);
  for (const auto end = std::filesystem::end(walk); walk != end; ++walk) {
    const std::string name = walk->path().filename().string();
    if (walk->is_directory() && (name == ".git" || name.starts_with("build"))) {
      walk.disable_recursion_pending();
      continue;
    }
    paths.insert(std::filesystem::relative(walk->path(), root).generic_string());
  }
  return paths;
}

}  // namespace ullage::architecture
