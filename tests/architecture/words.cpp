// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/words.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>
#include <string_view>

namespace ullage::architecture {

namespace {

// Written in two halves, so that this file obeys its own rule.
constexpr std::array<std::string_view, 4> unfinished = {
    "TO"
    "DO",
    "FIX"
    "ME",
    "XX"
    "X",
    "HA"
    "CK"};
constexpr std::array<std::string_view, 9> foreign = {
    "/wo"
    "rk/",
    "/fa"
    "rm/",
    "/ro"
    "ot/",
    "/ho"
    "me/",
    "trans"
    "cript",
    "seed docu"
    "ment",
    "deb.deb"
    "ian.org",
    "<<<<"
    "<<< ",
    ">>>>"
    ">>> "};

constexpr std::array<std::string_view, 11> clock_reads = {
    "system_clock::now",      "utc_clock::now",        "currentDateTime", "currentDate(",
    "currentTime(",           "currentSecsSinceEpoch", "gettimeofday",    "clock_gettime",
    "currentMSecsSinceEpoch", "CURRENT_TIMESTAMP",     "std::time("};

constexpr std::array<std::string_view, 12> physical_names = {
    "pressure", "temperature", "volume", "mass",  "gravity", "plato",
    "celsius",  "kelvin",      "psi",    "litre", "density", "altitude"};

constexpr std::array<std::string_view, 7> dimensionless_names = {
    "ratio", "fraction", "factor", "coefficient", "exponent", "share", "scale"};

bool lower_contains(std::string_view text, std::string_view part) {
  const auto same = [](char a, char b) {
    return std::tolower(static_cast<unsigned char>(a)) ==
           std::tolower(static_cast<unsigned char>(b));
  };
  return !std::ranges::search(text, part, same).empty();
}

// "/tmp/" followed by a name is a place of one machine.
bool names_temporary_place(std::string_view line) {
  const std::string_view mark =
      "/t"
      "mp/";
  const std::size_t at = line.find(mark);
  return at != std::string_view::npos && at + mark.size() < line.size() &&
         std::isalpha(static_cast<unsigned char>(line[at + mark.size()])) != 0;
}

// The word followed by a number, with or without "#".
bool names_an_issue(std::string_view line) {
  const std::string_view mark =
      "iss"
      "ue ";
  for (std::size_t at = line.find(mark); at != std::string_view::npos;
       at = line.find(mark, at + 1)) {
    const std::string_view rest = line.substr(at + mark.size());
    const std::size_t digit = rest.starts_with('#') ? 1 : 0;
    if (digit < rest.size() && std::isdigit(static_cast<unsigned char>(rest[digit])) != 0)
      return true;
  }
  return false;
}

std::string identifier_at(std::string_view text) {
  const auto end = std::ranges::find_if_not(
      text, [](char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_'; });
  return {text.begin(), end};
}

// Judged by the parts of a name: "gauge_pressure", "temperature_c", but neither
// "pressure_ratio" nor the coefficient "grams_per_litre".
bool is_physical(std::string_view name) {
  bool physical = false;
  for (std::size_t at = 0; at <= name.size();) {
    const std::size_t end = std::min(name.find('_', at), name.size());
    const std::string_view part = name.substr(at, end - at);
    if (part == "per" ||
        std::ranges::find(dimensionless_names, part) != dimensionless_names.end()) {
      return false;
    }
    physical |= std::ranges::find(physical_names, part) != physical_names.end();
    at = end + 1;
  }
  return physical;
}

bool is_in(const SourceFile& file, std::string_view folder) {
  return file.path.starts_with(folder) && file.path.size() > folder.size() &&
         file.path[folder.size()] == '/';
}

}  // namespace

std::vector<Finding> words_that_do_not_belong(const SourceTree& tree) {
  std::vector<Finding> findings;
  for (const SourceFile& file : tree) {
    if (file.path == "docs/COPYING") continue;  // not ours to word
    std::size_t number = 0;
    for (const std::string_view line : lines_of(file.text)) {
      ++number;
      const auto report = [&](std::string_view what) {
        findings.push_back({file.path, number, "does not belong here: " + std::string(what)});
      };
      for (const std::string_view word : unfinished) {
        if (find_word(line, word) != std::string_view::npos) report(word);
      }
      for (const std::string_view part : foreign) {
        if (lower_contains(line, part)) report(part);
      }
      if (names_temporary_place(line)) report("a temporary place of one machine");
      if (names_an_issue(line)) report("the number of a task");
    }
  }
  return findings;
}

std::vector<Finding> clock_in_core(const SourceTree& tree) {
  std::vector<Finding> findings;
  for (const SourceFile& file : tree) {
    const bool sql = file.path.ends_with(".sql");
    if (!(is_code(file) && is_in(file, "core")) && !sql) continue;
    const std::string code = without_comments(file.text, false);
    std::size_t number = 0;
    for (const std::string_view line : lines_of(code)) {
      ++number;
      for (const std::string_view read : clock_reads) {
        if (line.find(read) == std::string_view::npos) continue;
        findings.push_back({file.path, number, "reads the clock: " + std::string(read)});
      }
      const bool bare_time = line.find("time(nullptr)") != std::string_view::npos ||
                             line.find("time(NULL)") != std::string_view::npos;
      const bool sql_now = line.find("('now'") != std::string_view::npos ||
                           line.find(", 'now'") != std::string_view::npos;
      if (bare_time || sql_now) findings.push_back({file.path, number, "reads the clock"});
    }
  }
  return findings;
}

std::vector<Finding> bare_physical_numbers(const SourceTree& tree) {
  std::vector<Finding> findings;
  for (const SourceFile& file : tree) {
    if (!is_header(file) || !is_in(file, "core") || is_in(file, "core/units")) continue;
    const std::string code = without_comments(file.text, true);
    std::size_t number = 0;
    for (const std::string_view line : lines_of(code)) {
      ++number;
      for (std::size_t at = find_word(line, "double"); at != std::string_view::npos;
           at = find_word(line, "double", at + 1)) {
        const std::size_t next = line.find_first_not_of(" &", at + 6);
        if (next == std::string_view::npos) continue;
        const std::string name = identifier_at(line.substr(next));
        const std::string_view after = line.substr(next + name.size());
        const bool is_parameter = after.starts_with(',') || after.starts_with(')');
        if (is_parameter && is_physical(name)) {
          findings.push_back({file.path, number, "a physical value as a bare number: " + name});
        }
      }
    }
  }
  return findings;
}

std::vector<Finding> unnamed_lint_silences(const SourceTree& tree) {
  const std::string mark =
      "NO"
      "LINT";
  std::vector<Finding> findings;
  for (const SourceFile& file : tree) {
    if (!is_code(file)) continue;
    std::size_t number = 0;
    for (const std::string_view line : lines_of(file.text)) {
      ++number;
      const std::size_t at = line.find(mark);
      if (at == std::string_view::npos) continue;
      std::string_view rest = line.substr(at + mark.size());
      for (const std::string_view form : {"NEXTLINE", "BEGIN", "END"}) {
        if (rest.starts_with(form)) rest.remove_prefix(form.size());
      }
      if (!rest.starts_with('(')) {
        findings.push_back({file.path, number, "silences the linter without naming the check"});
      }
    }
  }
  return findings;
}

std::vector<Finding> opened_namespaces_in_headers(const SourceTree& tree) {
  std::vector<Finding> findings;
  for (const SourceFile& file : tree) {
    if (!is_header(file) || is_in(file, "tests")) continue;
    const std::string code = without_comments(file.text, true);
    std::size_t number = 0;
    for (const std::string_view line : lines_of(code)) {
      ++number;
      if (find_word(line, "using namespace") != std::string_view::npos) {
        findings.push_back({file.path, number, "opens a namespace for everyone who includes it"});
      }
    }
  }
  return findings;
}

}  // namespace ullage::architecture
