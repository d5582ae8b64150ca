// SPDX-License-Identifier: GPL-3.0-or-later
//
// A computation: typed fields with what stands in them at first and their
// limits, and a pure function from what is typed to an answer or to a problem
// that names the field, the value and the limit. Nothing in it needs a keg.
//
//   const Computation* c = find_computation("pressure_to_set");
//   Inputs in = starting_inputs(*c);
//   in.set("co2", units::volumes_of_co2(2.5));
//   const Outcome out = work_out(*c, in, printer);   // checks, then computes
#pragma once

#include <expected>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/report/grounds.h"
#include "core/report/say.h"
#include "core/report/slate/values.h"
#include "core/units/estimate.h"
#include "core/units/present.h"

namespace ullage::report::slate {

enum class FieldKind {
  gauge_pressure,
  pressure_difference,
  temperature,
  temperature_difference,
  volume,
  glass,  // a volume that starts as the reader's glass
  mass,
  length,
  bore,
  co2,
  gravity,
  fraction,
  abv,
  duration,
  number,
  whole_number,
  choice
};

struct Field {
  std::string_view key;
  std::string_view label;
  FieldKind kind = FieldKind::number;
  std::optional<Value> start;  // what stands there at first
  Value least, greatest;       // refused outside, ends included in the allowed
  bool optional = false;       // may be left blank
  bool detail = false;         // seldom changed: shown among the further ones
  std::string_view hint = {};  // "{}" where a value of hint_values stands
  std::vector<std::string_view> choices = {};
  std::vector<Value> hint_values = {};
  std::optional<Value> us_start = {};  // in place of start, for a reader of US units
};

// The words of a field as its reader says them, in the reader's units.
[[nodiscard]] std::string label_of(const Field&, RegionalWords);
[[nodiscard]] std::string hint_of(const Field&, const units::Printer&, RegionalWords);
[[nodiscard]] std::vector<std::string> choices_of(const Field&, RegionalWords);

// What stands in the fields.
class Inputs {
 public:
  struct Held {
    std::optional<Value> value;
    InputOrigin origin = InputOrigin::assumed;
    std::string age;  // of a reading it was taken from
  };
  void set(std::string_view key, std::optional<Value> value,
           InputOrigin origin = InputOrigin::typed, std::string age = {});
  [[nodiscard]] const Held* held(std::string_view key) const;
  [[nodiscard]] bool has(std::string_view key) const;

  // Of a field that is filled in with this kind; check_inputs has seen to it.
  template <class Q>
  [[nodiscard]] Q get(std::string_view key) const {
    return boost::variant2::get<Q>(present(held(key)->value));
  }
  template <class Q>
  [[nodiscard]] std::optional<Q> maybe(std::string_view key) const {
    return has(key) ? std::optional<Q>(get<Q>(key)) : std::nullopt;
  }
  [[nodiscard]] double number(std::string_view key) const { return get<Count>(key).number; }
  [[nodiscard]] int choice(std::string_view key) const { return get<Choice>(key).index; }

 private:
  std::map<std::string, Held, std::less<>> held_;
};

enum class Fault { missing, not_a_number, too_small, too_large, impossible };

struct Problem {
  std::string field;  // its key; empty when it is about several
  Fault fault = Fault::impossible;
  std::optional<Value> value, limit;
  std::string sentence;  // for the field, in the person's units
};

// One number of the answer: with a ± by its sources of error, or with a lopsided
// 95 % range, or in words alone. A time with a low end only may never come. Made by the
// functions below.
struct AnswerValue {
  std::string name;  // "Set the regulator to"
  std::optional<Value> value;
  std::vector<units::Contribution> errors;  // the ± of estimated()
  std::optional<Value> low, high;
  std::string words;  // instead of a number
  bool main = false;
  // What a range, or words, come from, by because(): only the shares count, whatever
  // the unit.
  std::vector<units::Contribution> causes = {};
};
[[nodiscard]] std::string print(const AnswerValue&, const units::Printer&);

template <units::Quantity Q>
[[nodiscard]] AnswerValue estimated(std::string name, const units::Estimate<Q>& e,
                                    bool main = false) {
  return {std::move(name), Value(e.value()), e.contributions(), {}, {}, {}, main};
}
[[nodiscard]] AnswerValue exactly(std::string name, Value value, bool main = false);
[[nodiscard]] AnswerValue between(std::string name, Value likely, Value low, Value high,
                                  bool main = false);
[[nodiscard]] AnswerValue in_words(std::string name, std::string words, bool main = false);
// The same value with what makes it uncertain: several causes, or one alone.
[[nodiscard]] AnswerValue because(std::vector<units::Contribution> causes, AnswerValue);
[[nodiscard]] AnswerValue because(const units::ErrorSource&, AnswerValue);

struct ChartPoint {
  Value x, low, likely, high;
};
struct ChartMark {
  Value x;
  std::string label;
};
// A line beside the points: what would be without a leak, what is wanted.
struct ChartLine {
  std::string label;
  bool guide = false;  // what it is held against, drawn in dashes
  std::vector<std::pair<Value, Value>> points;
  std::vector<std::pair<Value, Value>> band = {};  // about it, at each point: low and high
};
struct Chart {
  std::string title;
  std::string x_title, y_title;  // without units
  bool log_y = false;
  bool dots = false;              // single points (cycles, readings), not a line
  std::string points_label = {};  // what the points are, where lines stand beside them
  std::vector<ChartPoint> points;
  std::vector<ChartLine> lines = {};
  std::optional<Value> band_low, band_high;  // where it should be
  std::vector<ChartMark> marks;
  [[nodiscard]] bool empty() const { return points.size() < 2; }
};

struct Answer {
  std::vector<AnswerValue> values;     // the main one first
  std::vector<std::string> sentences;  // what it means and what to mind
  std::vector<std::string> cautions;   // what can hurt somebody
  Chart chart;
};

using Outcome = std::expected<Answer, Problem>;

struct Computation {
  std::string_view key;
  std::string_view title;  // as a question
  std::string_view group;
  std::string_view finds;  // further words to find it by
  std::vector<Field> fields;
  const Law* law = nullptr;
  // Inputs are complete, finite and within the limits of their fields.
  Outcome (*work)(const Inputs&, const units::Printer&) = nullptr;
};

[[nodiscard]] std::span<const Computation> computations();
[[nodiscard]] const Computation* find_computation(std::string_view key);
// What a few typed words may mean, best first; all of them when nothing is typed.
[[nodiscard]] std::vector<const Computation*> find_by_words(std::string_view typed);

[[nodiscard]] Inputs starting_inputs(const Computation&, const units::DisplayUnits& = {});
[[nodiscard]] std::optional<Problem> check_inputs(const Computation&, const Inputs&,
                                                  const units::Printer&);
[[nodiscard]] Outcome work_out(const Computation&, const Inputs&, const units::Printer&,
                               RegionalWords = RegionalWords::british);
// The reasons behind one value of the answer.
[[nodiscard]] Grounds grounds_of(const Computation&, const Inputs&, const AnswerValue&,
                                 const units::Printer&, RegionalWords = RegionalWords::british);

}  // namespace ullage::report::slate
