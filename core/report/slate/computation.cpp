// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/slate/computation.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <sstream>
#include <type_traits>

#include "core/report/regional.h"
#include "core/report/slate/fields.h"
#include "core/units/present.h"
#include "core/units/shown.h"

namespace ullage::report::slate {
namespace {

using units::Printer;

template <class Q>
concept Estimated = requires(const Printer& p, units::Estimate<Q> e) { p.print(e); };

std::string with_error(const AnswerValue& a, const Printer& printer) {
  return visit(
      [&](auto q) -> std::string {
        using Q = decltype(q);
        if constexpr (std::is_same_v<Q, units::MoleFraction>) {
          return print_share({q, a.errors}, printer);
        } else if constexpr (units::Quantity<Q> && Estimated<Q>) {
          return printer.print(units::Estimate<Q>(q, a.errors));
        } else {
          return print(Value(q), printer);
        }
      },
      present(a.value));
}

// Every word of an answer in the reader's region.
void say_regionally(Answer& a, RegionalWords words) {
  if (words == RegionalWords::british) return;
  for (auto* texts : {&a.sentences, &a.cautions}) {
    for (std::string& text : *texts) text = regional(text, words);
  }
  for (AnswerValue& v : a.values) {
    v.name = regional(v.name, words);
    v.words = regional(v.words, words);
  }
  for (std::string* text :
       {&a.chart.title, &a.chart.x_title, &a.chart.y_title, &a.chart.points_label}) {
    *text = regional(*text, words);
  }
  for (ChartLine& line : a.chart.lines) line.label = regional(line.label, words);
  for (ChartMark& mark : a.chart.marks) mark.label = regional(mark.label, words);
}

std::string shown(const Field& field, const Value& value, const Printer& printer) {
  if (field.kind == FieldKind::bore) return print_bore(value, printer);
  if (field.kind == FieldKind::choice) {
    const auto* choice = get_if<Choice>(&value);
    const auto index = choice ? static_cast<std::size_t>(choice->index) : 0;
    return index < field.choices.size() ? std::string(field.choices[index]) : std::string();
  }
  return print(value, printer);
}

std::optional<Problem> check_field(const Field& f, const std::optional<Value>& value,
                                   const Printer& printer) {
  const std::string key(f.key);
  if (!value) {
    if (f.optional) return std::nullopt;
    return Problem{key, Fault::missing, {}, {}, "Fill this in."};
  }
  if (value->index() != f.least.index() || !is_finite(*value)) {
    return Problem{key, Fault::not_a_number, value, {}, "That is no number to reckon with."};
  }
  if (magnitude_of(*value) < magnitude_of(f.least)) {
    return Problem{key, Fault::too_small, value, f.least,
                   "The least is " + shown(f, f.least, printer) + "."};
  }
  if (magnitude_of(*value) > magnitude_of(f.greatest)) {
    return Problem{key, Fault::too_large, value, f.greatest,
                   "The most is " + shown(f, f.greatest, printer) + "."};
  }
  return std::nullopt;
}

std::string lowered(std::string_view text) {
  std::string out(text);
  std::transform(out.begin(), out.end(), out.begin(), [](unsigned char c) {
    return c < 0x80 ? static_cast<char>(std::tolower(c)) : static_cast<char>(c);
  });
  return out;
}

// A small two is typed as a plain one: "CO₂" is found by "co2".
std::string with_plain_digits(std::string text) {
  constexpr std::string_view small_two = "₂";
  for (auto at = text.find(small_two); at != std::string::npos; at = text.find(small_two, at)) {
    text.replace(at, small_two.size(), "2");
  }
  return text;
}

std::vector<std::string> words_in(std::string_view text) {
  std::vector<std::string> words;
  std::string word;
  for (const char c : with_plain_digits(lowered(text))) {
    const auto u = static_cast<unsigned char>(c);
    if (std::isalnum(u) || u >= 0x80) {
      word += c;
    } else if (!word.empty()) {
      words.push_back(std::move(word));
      word.clear();
    }
  }
  if (!word.empty()) words.push_back(std::move(word));
  return words;
}

// How well one typed word fits: a whole word of the title best, then its start,
// then the further words. 0: not at all.
int fit(const std::string& typed, const std::vector<std::string>& title,
        const std::vector<std::string>& finds) {
  int best = 0;
  const auto look = [&](const std::vector<std::string>& words, int whole, int start) {
    for (const std::string& word : words) {
      if (word == typed) best = std::max(best, whole);
      if (word.starts_with(typed)) best = std::max(best, start);
    }
  };
  look(title, 8, 5);
  look(finds, 7, 3);
  return best;
}

}  // namespace

void Inputs::set(std::string_view key, std::optional<Value> value, InputOrigin origin,
                 std::string age) {
  held_.insert_or_assign(std::string(key), Held{std::move(value), origin, std::move(age)});
}

const Inputs::Held* Inputs::held(std::string_view key) const {
  const auto at = held_.find(key);
  return at == held_.end() ? nullptr : &at->second;
}

bool Inputs::has(std::string_view key) const {
  const Held* there = held(key);
  return there != nullptr && there->value.has_value();
}

AnswerValue exactly(std::string name, Value value, bool main) {
  return {std::move(name), value, {}, {}, {}, {}, main};
}

AnswerValue between(std::string name, Value likely, Value low, Value high, bool main) {
  return {std::move(name), likely, {}, low, high, {}, main};
}

AnswerValue in_words(std::string name, std::string words, bool main) {
  return {std::move(name), {}, {}, {}, {}, std::move(words), main};
}

AnswerValue because(std::vector<units::Contribution> causes, AnswerValue a) {
  a.causes = std::move(causes);
  return a;
}

AnswerValue because(const units::ErrorSource& source, AnswerValue a) {
  return because(std::vector<units::Contribution>{{source, 1.0}}, std::move(a));
}

std::string print(const AnswerValue& a, const Printer& printer) {
  if (!a.value) return a.words;
  if (a.low && a.high) {
    const std::string likely = print(*a.value, printer);
    const std::string range = print_range(*a.low, *a.high, printer);
    return range == likely ? likely : fmt::format("{} ({})", likely, range);
  }
  if (a.low) {
    const std::string likely = print(*a.value, printer);
    return magnitude_of(*a.low) > 0 ? fmt::format("{} ({} at the earliest, perhaps never)", likely,
                                                  print(*a.low, printer))
                                    : likely + " (perhaps at once, perhaps never)";
  }
  return a.errors.empty() ? print(*a.value, printer) : with_error(a, printer);
}

std::span<const Computation> computations() {
  static const std::vector<Computation> all = [] {
    std::vector<Computation> made;
    add_co2_computations(made);
    add_carbonation_computations(made);
    add_rocking_computations(made);
    add_shut_keg_computations(made);
    add_rescue_computations(made);
    add_priming_computations(made);
    add_hold_computations(made);
    add_purge_computations(made);
    add_beer_computations(made);
    add_line_computations(made);
    add_piece_computations(made);
    add_regulator_computations(made);
    add_break_out_computations(made);
    add_gas_computations(made);
    add_room_computations(made);
    add_cleaner_computations(made);
    add_bottle_computations(made);
    add_run_out_computations(made);
    add_level_computations(made);
    add_measure_computations(made);
    return made;
  }();
  return all;
}

const Computation* find_computation(std::string_view key) {
  const auto all = computations();
  const auto at =
      std::find_if(all.begin(), all.end(), [&](const Computation& c) { return c.key == key; });
  return at == all.end() ? nullptr : &*at;
}

std::vector<const Computation*> find_by_words(std::string_view typed) {
  const std::vector<std::string> wanted = words_in(typed);
  std::vector<std::pair<int, const Computation*>> found;
  for (const Computation& c : computations()) {
    const auto title = words_in(c.title);
    const auto finds = words_in(std::string(c.finds) + " " + std::string(c.group));
    int score = 0;
    bool all_fit = true;
    for (const std::string& word : wanted) {
      const int here = fit(word, title, finds);
      all_fit = all_fit && here > 0;
      score += here;
    }
    if (all_fit) found.emplace_back(score, &c);
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const auto& a, const auto& b) { return a.first > b.first; });
  std::vector<const Computation*> out;
  out.reserve(found.size());
  for (const auto& [score, c] : found) out.push_back(c);
  return out;
}

std::string label_of(const Field& f, RegionalWords words) { return regional(f.label, words); }

std::string hint_of(const Field& f, const Printer& printer, RegionalWords words) {
  std::string hint;
  std::string_view rest = f.hint;
  for (const Value& value : f.hint_values) {
    const auto at = rest.find("{}");
    if (at == std::string_view::npos) break;
    hint += rest.substr(0, at);
    hint += print(value, printer);
    rest.remove_prefix(at + 2);
  }
  hint += rest;
  return regional(hint, words);
}

std::vector<std::string> choices_of(const Field& f, RegionalWords words) {
  std::vector<std::string> out;
  out.reserve(f.choices.size());
  for (const std::string_view choice : f.choices) out.push_back(regional(choice, words));
  return out;
}

Inputs starting_inputs(const Computation& c, const units::DisplayUnits& units) {
  const bool us = units.volume == units::VolumeUnit::us_gallon;
  Inputs in;
  for (const Field& f : c.fields) {
    const bool glass = f.kind == FieldKind::glass && f.start.has_value();
    in.set(f.key,
           glass              ? std::optional<Value>(units::one_glass(units))
           : us && f.us_start ? f.us_start
                              : f.start,
           InputOrigin::assumed);
  }
  return in;
}

std::optional<Problem> check_inputs(const Computation& c, const Inputs& in,
                                    const Printer& printer) {
  for (const Field& f : c.fields) {
    const Inputs::Held* held = in.held(f.key);
    if (auto problem = check_field(f, held ? held->value : std::nullopt, printer)) return problem;
  }
  return std::nullopt;
}

Outcome work_out(const Computation& c, const Inputs& in, const Printer& printer,
                 RegionalWords words) {
  if (auto problem = check_inputs(c, in, printer)) return std::unexpected(std::move(*problem));
  Outcome out = c.work(in, printer);
  if (out) {
    say_regionally(*out, words);
  } else {
    out.error().sentence = regional(out.error().sentence, words);
  }
  return out;
}

Grounds grounds_of(const Computation& c, const Inputs& in, const AnswerValue& a,
                   const Printer& printer, RegionalWords words) {
  Grounds g = grounds_by(*c.law, a.name, print(a, printer));
  g.equation = regional(g.equation, words);
  for (const Field& f : c.fields) {
    const Inputs::Held* held = in.held(f.key);
    if (held == nullptr || !held->value) continue;
    g.inputs.push_back(
        {regional(std::string(f.label) + " " + shown(f, *held->value, printer), words),
         held->origin, held->age});
  }
  if (a.low && a.high) {
    g.notes.emplace_back("In brackets: between these, nineteen times in twenty.");
  } else if (a.low) {
    g.notes.emplace_back(
        "In brackets: no sooner, thirty-nine times in forty. At the other end of the errors it "
        "never comes.");
  }
  g.narrow = narrowing_of(shares_of(a.errors.empty() ? a.causes : a.errors));
  for (std::string& line : g.narrow) line = regional(line, words);
  return g;
}

}  // namespace ullage::report::slate
