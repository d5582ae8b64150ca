// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/exchange_reader.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <nlohmann/json.hpp>

namespace ullage::store {

namespace {

// Hands characters to the parser and counts the lines it has taken.
class LineCountingIterator {
 public:
  using iterator_category = std::input_iterator_tag;
  using value_type = char;
  using difference_type = std::ptrdiff_t;
  using pointer = const char*;
  using reference = const char&;

  LineCountingIterator(std::string_view::const_iterator at, std::size_t* line)
      : at_(at), line_(line) {}
  reference operator*() const { return *at_; }
  LineCountingIterator& operator++() {
    if (*at_++ == '\n') ++*line_;
    return *this;
  }
  LineCountingIterator operator++(int) {
    LineCountingIterator before = *this;
    ++*this;
    return before;
  }
  friend bool operator==(LineCountingIterator a, LineCountingIterator b) { return a.at_ == b.at_; }

 private:
  std::string_view::const_iterator at_;
  std::size_t* line_;
};

// The parser's events. A handler that returns false ends the reading.
class ExchangeEvents {
 public:
  ExchangeEvents(const std::size_t& line, ProblemList& problems,
                 const std::function<void(const RawEntry&)>& take)
      : line_(line), problems_(problems), take_(take) {}

  bool null() { return value(RawValue()); }
  bool boolean(bool v) { return value(v); }
  bool number_integer(std::int64_t v) { return value(v); }
  bool number_unsigned(std::uint64_t v) {
    if (v > static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max())) {
      return value(static_cast<double>(v));
    }
    return value(static_cast<std::int64_t>(v));
  }
  bool number_float(double v, const std::string& /*as_written*/) { return value(v); }
  bool string(std::string& v) { return value(std::move(v)); }
  bool binary(std::vector<std::uint8_t>& /*never in text*/) { return false; }

  bool start_object(std::size_t /*unknown*/) {
    if (where_ == Where::outside) {
      where_ = Where::frame;
      return true;
    }
    if (where_ == Where::entries) {
      where_ = Where::entry;
      entry_.fields.clear();
      entry_.line = line_;
      ++entry_.number;
      return true;
    }
    return broken(misplaced("an object"));
  }
  bool end_object() {
    if (where_ == Where::frame) {
      where_ = Where::done;
      if (!seen_entries_) return broken("There is no list of entries in it.");
      return true;
    }
    where_ = Where::entries;
    take_(entry_);
    return !problems_.full();
  }
  bool start_array(std::size_t /*unknown*/) {
    if (where_ != Where::frame || key_ != "entries") return broken(misplaced("a list"));
    if (!format_ok_ || !version_ok_) {
      return broken("It does not begin with the format and version of an exported cellar.");
    }
    where_ = Where::entries;
    seen_entries_ = true;
    return true;
  }
  bool end_array() {
    where_ = Where::frame;
    return true;
  }

  bool key(std::string& name) {
    key_ = name;
    key_line_ = line_;
    if (where_ == Where::frame && name != "format" && name != "version" && name != "entries") {
      return broken(fmt::format("“{}” is no part of the format.", name));
    }
    if (where_ == Where::frame && name == "entries" && seen_entries_) {
      return broken("It has two lists of entries.");
    }
    return true;
  }

  bool parse_error(std::size_t /*position*/, const std::string& /*last*/,
                   const nlohmann::detail::exception& error) {
    const std::string_view words = error.what();
    // "[...] parse error at line 1, column 2: syntax error ...": what follows the place.
    const std::size_t colon = words.find(": ");
    problems_.add({line_, 0, "",
                   fmt::format("It is not well-formed here: {}.",
                               colon == std::string_view::npos ? words : words.substr(colon + 2))});
    return false;
  }

 private:
  enum class Where { outside, frame, entries, entry, done };

  [[nodiscard]] std::string misplaced(std::string_view what) const {
    if (where_ == Where::entry) return fmt::format("“{}” holds {}, not a plain value.", key_, what);
    if (where_ == Where::outside) return "It is not an exported cellar.";
    return fmt::format("There is {} where none belongs.", what);
  }
  bool broken(std::string what) {
    problems_.add({line_, where_ == Where::entry ? entry_.number : 0,
                   where_ == Where::entry ? key_ : "", std::move(what)});
    return false;
  }

  bool value(RawValue v) {
    switch (where_) {
      case Where::entry:
        entry_.fields.push_back({key_, std::move(v), key_line_});
        return true;
      case Where::frame:
        return frame_value(v);
      default:
        return broken(misplaced("a bare value"));
    }
  }

  bool frame_value(const RawValue& v) {
    if (key_ == "format") {
      const auto* const word = get_if<std::string>(&v);
      format_ok_ = word != nullptr && *word == "ullage-cellar";
      return format_ok_ || broken("It is not an exported cellar.");
    }
    if (key_ == "version") {
      const auto* const number = get_if<std::int64_t>(&v);
      if (number == nullptr || *number < 1) return broken("Its version makes no sense.");
      version_ok_ = *number == 1;
      return version_ok_ ||
             broken(
                 fmt::format("It is version {} of the format, of a later release of Ullage; this "
                             "one reads version 1.",
                             *number));
    }
    return broken("Its entries are not a list.");
  }

  const std::size_t& line_;
  ProblemList& problems_;
  const std::function<void(const RawEntry&)>& take_;
  Where where_ = Where::outside;
  std::string key_;
  std::size_t key_line_ = 1;
  bool format_ok_ = false;
  bool version_ok_ = false;
  bool seen_entries_ = false;
  RawEntry entry_;
};

}  // namespace

const RawField* RawEntry::find(std::string_view name) const {
  const auto at = std::ranges::find(fields, name, &RawField::name);
  return at == fields.end() ? nullptr : &*at;
}

void ProblemList::add(ImportProblem problem) {
  if (refusal_.problems.size() >= import_problem_limit) {
    refusal_.more = true;
    return;
  }
  refusal_.problems.push_back(std::move(problem));
}

void read_exchange(std::string_view text, ProblemList& problems,
                   const std::function<void(const RawEntry&)>& take) {
  if (text.size() > import_size_limit) {
    problems.add({0, 0, "", "It is larger than 1 GiB, more than any cellar comes to."});
    return;
  }
  std::size_t line = 1;
  ExchangeEvents events(line, problems, take);
  const LineCountingIterator begin(text.begin(), &line);
  const LineCountingIterator end(text.end(), &line);
  nlohmann::json::sax_parse(begin, end, &events);
}

}  // namespace ullage::store
