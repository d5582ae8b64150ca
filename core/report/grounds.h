// SPDX-License-Identifier: GPL-3.0-or-later
//
// Why a shown number is what it is: the answer with its ±, what it was worked
// out from (each input with its age and how it came to be known), the equation
// in words with the section of the docs that has it, how sure its source is,
// and what would narrow the answer. Plain words, ready to be shown, printed or
// read aloud; every displayed number has one of these behind it.
//
//   Grounds g = grounds_by(laws::carbonation, "CO₂ now", printer.print(co2));
//   g.inputs.push_back({"Regulator at 12 psi", InputOrigin::read, "3 d ago"});
//   g.narrow = narrowing(co2);
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/report/laws.h"
#include "core/units/estimate.h"

namespace ullage::report {

// How an input came to be known.
enum class InputOrigin {
  read,       // on an instrument
  typed,      // stated by a person: a setting, a record, a field
  assumed,    // a default nobody has stated
  worked_out  // itself an answer of the program
};
[[nodiscard]] std::string_view say(InputOrigin);  // "read", "typed in", "assumed", "worked out"

struct GroundsInput {
  std::string what;  // "Beer at 3.4 °C"
  InputOrigin origin = InputOrigin::typed;
  std::string age;  // "3 d ago"; empty when it has none
};

struct Grounds {
  std::string name;    // "CO₂ now"
  std::string answer;  // "2.4 ± 0.2 vol", or why it can't be told
  std::vector<GroundsInput> inputs;
  std::string equation;             // in words
  std::string section;              // of the docs, "Carbonation over time"
  std::string document;             // "physics.md"
  std::string source;               // where the equation comes from
  std::string certainty;            // "verified", "common practice, no source" ...
  std::vector<std::string> notes;   // where sources disagree, what is left out
  std::vector<std::string> narrow;  // what would narrow it, the most useful first

  [[nodiscard]] bool empty() const { return name.empty(); }
};

// With everything that the law says filled in.
[[nodiscard]] Grounds grounds_by(const Law&, std::string name, std::string answer);

// "Beer at 3.4 °C: read 3 d ago"
[[nodiscard]] std::string line_of(const GroundsInput&);
// "Source: Balling (from memory). Written out in physics.md, “Gravity and alcohol”."
[[nodiscard]] std::string source_line(const Grounds&);
// All of it as plain lines, headings included: for a screen reader and paper.
[[nodiscard]] std::vector<std::string> lines_of(const Grounds&);

// What a person can do about a named source of error; a plain sentence, or
// empty where nothing can be done about it.
[[nodiscard]] std::string remedy_for(const units::ErrorSource&);

// One source of error with its share of the variance, 0 to 1.
struct ErrorShare {
  units::ErrorSource source;
  units::Fraction share;
};
// "“dial R1: bias” makes 64 % of the ±. Check the dial against another one."
// Sources with less than a tenth of the variance are left out; biggest first.
[[nodiscard]] std::vector<std::string> narrowing_of(std::vector<ErrorShare>);

// By their squares; none where there is no error.
[[nodiscard]] std::vector<ErrorShare> shares_of(const std::vector<units::Contribution>&);

// Of a product or a quotient: each part counts by its errors' share of itself.
template <units::Quantity Q>
void add_relative_errors(std::vector<units::Contribution>& all, const units::Estimate<Q>& part) {
  const double size = units::to_magnitude(part.value());
  if (!(size > 0)) return;
  for (const units::Contribution& c : part.contributions())
    all.push_back({c.source, c.half_width / size});
}

template <units::Quantity Q>
[[nodiscard]] std::vector<std::string> narrowing(const units::Estimate<Q>& estimate) {
  return narrowing_of(shares_of(estimate.contributions()));
}

}  // namespace ullage::report
