// SPDX-License-Identifier: GPL-3.0-or-later
//
// The what-if computations: every one over everything that can be typed answers
// in finite numbers or names the field that is wrong; found by what people
// call them; and right where a printed figure says what is right.
#include <gmock/gmock.h>

#include <cmath>
#include <random>
#include <regex>

#include "core/report/laws_slate.h"
#include "core/report/slate/computation.h"
#include "tests/report/asked.h"
#include "tests/support/under_sanitizers.h"

namespace ullage::testing::slates {
namespace {

using namespace report::slate;  // NOLINT(google-build-using-namespace): the whole file is about it
using report::slate::Fault;     // the cellar has a Fault and a Field, too
using report::slate::Field;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::Not;

using asking::the;

const units::Printer& metric = asking::in_metric_units;
const units::Printer& american = asking::in_us_units;

std::vector<std::string> all_words(const Computation& c, const Inputs& in, const Answer& a,
                                   const units::Printer& printer) {
  std::vector<std::string> words = a.sentences;
  words.insert(words.end(), a.cautions.begin(), a.cautions.end());
  for (const AnswerValue& v : a.values) {
    words.push_back(v.name + ": " + print(v, printer));
    for (std::string& line : report::lines_of(grounds_of(c, in, v, printer))) {
      words.push_back(std::move(line));
    }
  }
  return words;
}

// "nan" or "inf" as a word of its own, with or without a sign.
bool says_no_number(const std::string& words) {
  return std::regex_search(words, std::regex("(^|[^a-zA-Z])(nan|inf)([^a-zA-Z]|$)"));
}

void expect_finite(const Answer& a, const std::string& about) {
  ASSERT_FALSE(a.values.empty()) << about;
  for (const AnswerValue& v : a.values) {
    for (const auto* sources : {&v.errors, &v.causes}) {
      for (const units::Contribution& e : *sources)
        EXPECT_TRUE(std::isfinite(e.half_width)) << about << v.name << e.source.name;
    }
    if (!v.value) {
      EXPECT_FALSE(v.words.empty()) << about;
      continue;
    }
    EXPECT_TRUE(is_finite(*v.value)) << about << v.name;
    for (const auto& end : {v.low, v.high}) {
      EXPECT_TRUE(!end || is_finite(*end)) << about << v.name;
    }
  }
  for (const ChartPoint& p : a.chart.points) {
    EXPECT_TRUE(is_finite(p.x) && is_finite(p.low) && is_finite(p.likely) && is_finite(p.high))
        << about;
  }
  for (const ChartLine& line : a.chart.lines) {
    EXPECT_FALSE(line.label.empty()) << about;
    for (const auto& [x, y] : line.points) {
      EXPECT_TRUE(is_finite(x) && is_finite(y)) << about << line.label;
    }
  }
}

void expect_speakable(const std::vector<std::string>& words, const std::string& about) {
  for (const std::string& w : words) {
    EXPECT_FALSE(says_no_number(w)) << about << w;
    EXPECT_THAT(w, Not(HasSubstr(": –"))) << about << w;
  }
}

void expect_named(const Computation& c, const Problem& p, const std::string& about) {
  EXPECT_FALSE(p.sentence.empty()) << about;
  EXPECT_FALSE(says_no_number(p.sentence)) << about << p.sentence;
  if (p.field.empty()) return;
  std::vector<std::string> keys;
  keys.reserve(c.fields.size());
  for (const Field& f : c.fields) keys.emplace_back(f.key);
  EXPECT_THAT(keys, Contains(p.field)) << about;
}

// Somewhere in the field's range, its ends often enough to matter.
Value drawn(const Field& f, std::mt19937& random) {
  const double low = magnitude_of(f.least);
  const double high = magnitude_of(f.greatest);
  const int where = std::uniform_int_distribution(0, 9)(random);
  if (where == 0) return f.least;
  if (where == 1) return f.greatest;
  double m = std::uniform_real_distribution(low, high)(random);
  // Small values of wide ranges are what people type.
  if (where >= 6 && low >= 0) m = low + (high - low) * std::pow((m - low) / (high - low), 4);
  if (f.kind == FieldKind::whole_number || f.kind == FieldKind::choice) m = std::round(m);
  return with_magnitude(f.least, m);
}

class EveryComputation : public ::testing::TestWithParam<std::string> {
 protected:
  [[nodiscard]] const Computation& computation() const { return the(GetParam()); }
};

TEST_P(EveryComputation, AnswersAsItStands) {
  const Computation& c = computation();
  const Inputs in = starting_inputs(c);
  for (const auto& printer : {metric, american}) {
    const Outcome out = work_out(c, in, printer);
    ASSERT_TRUE(out) << out.error().field << ": " << out.error().sentence;
    expect_finite(*out, GetParam());
    EXPECT_TRUE(out->values.front().main);
    expect_speakable(all_words(c, in, *out, printer), GetParam());
  }
}

// Whatever is told with a range or a ± says what it comes from.
TEST_P(EveryComputation, EveryRangeSaysWhatWouldNarrowIt) {
  const Computation& c = computation();
  const Inputs in = starting_inputs(c);
  const Outcome out = work_out(c, in, metric);
  ASSERT_TRUE(out);
  const std::regex range_in_words(R"(±|\([0-9.]+[^)]* to |\(at least)");
  for (const AnswerValue& v : out->values) {
    const bool ranged = (v.low && v.high) || std::regex_search(print(v, metric), range_in_words);
    if (!ranged) continue;
    EXPECT_FALSE(grounds_of(c, in, v, metric).narrow.empty()) << v.name << ": " << print(v, metric);
  }
}

TEST_P(EveryComputation, AnswersOrNamesTheFieldForWhateverIsTyped) {
  const Computation& c = computation();
  std::mt19937 random(20261128);
  // Those that follow a keg over time take theirs.
  const bool slow = c.law == &report::laws::carbonation || c.law == &report::laws::learned_rate;
  const int cases = (slow ? 60 : 400) / (testing::under_sanitizers ? 4 : 1);
  int answered = 0;
  for (int i = 0; i < cases; ++i) {
    Inputs in;
    std::string about = GetParam() + " with";
    for (const Field& f : c.fields) {
      const bool blank = f.optional && std::bernoulli_distribution(0.4)(random);
      // Half of the cases differ from the start in one field or two: those answer.
      const bool as_it_stands = i % 2 == 0 && std::bernoulli_distribution(0.85)(random);
      const std::optional<Value> v = blank          ? std::nullopt
                                     : as_it_stands ? f.start
                                                    : std::optional(drawn(f, random));
      in.set(f.key, v);
      if (v) about += " " + std::string(f.key) + "=" + std::to_string(magnitude_of(*v));
    }
    const Outcome out = work_out(c, in, metric);
    if (!out) {
      expect_named(c, out.error(), about);
      continue;
    }
    ++answered;
    expect_finite(*out, about);
    expect_speakable(all_words(c, in, *out, metric), about);
    if (HasFailure()) return;
  }
  EXPECT_GT(answered, cases / 10);
}

TEST_P(EveryComputation, RefusesEveryNonsenseAtItsField) {
  const Computation& c = computation();
  for (const Field& f : c.fields) {
    if (f.kind == FieldKind::choice) continue;
    const double low = magnitude_of(f.least);
    const double high = magnitude_of(f.greatest);
    const double beyond = std::max(1.0, std::abs(high)) * 10;
    for (const double m : {std::nan(""), HUGE_VAL, -HUGE_VAL, low - beyond, high + beyond}) {
      Inputs in = starting_inputs(c);
      in.set(f.key, with_magnitude(f.least, m));
      const Outcome out = work_out(c, in, american);
      ASSERT_FALSE(out) << GetParam() << " took " << f.key << " " << m;
      EXPECT_EQ(out.error().field, f.key);
      EXPECT_EQ(out.error().fault, !std::isfinite(m) ? Fault::not_a_number
                                   : m < low         ? Fault::too_small
                                                     : Fault::too_large);
      EXPECT_EQ(out.error().limit.has_value(), std::isfinite(m)) << f.key;
      expect_named(c, out.error(), GetParam());
    }
    Inputs in = starting_inputs(c);
    in.set(f.key, std::nullopt);
    const Outcome out = work_out(c, in, american);
    if (!f.optional) {
      ASSERT_FALSE(out) << f.key;
      EXPECT_EQ(out.error().fault, Fault::missing);
    }
    in.set(f.key, Value(Choice{0}));  // another kind of value altogether
    EXPECT_FALSE(work_out(c, in, american)) << f.key;
  }
}

TEST_P(EveryComputation, SpeaksTheUnitsOfTheReader) {
  const Computation& c = computation();
  if (GetParam() == "convert") return;  // its point is to show them all
  const Inputs in = starting_inputs(c);
  const Outcome out = work_out(c, in, metric);
  ASSERT_TRUE(out);
  for (const std::string& w : all_words(c, in, *out, metric)) {
    for (const char* theirs : {"°F", " psi", " gal", " lb", " ft", " oz"}) {
      EXPECT_THAT(w, Not(HasSubstr(theirs))) << GetParam();
    }
  }
  const Outcome us = work_out(c, in, american);
  ASSERT_TRUE(us);
  for (const std::string& w : all_words(c, in, *us, american)) {
    EXPECT_THAT(w, Not(HasSubstr(" °C"))) << GetParam();
    EXPECT_THAT(w, Not(HasSubstr(" bar "))) << GetParam();
  }
}

// A reader in the US meets neither spelling nor words of the other side, whatever stands
// in the form, the answer or its reasons; and no hint leaves a blank where a value was due.
TEST_P(EveryComputation, SpeaksTheWordsOfTheRegion) {
  const Computation& c = computation();
  const auto us = report::RegionalWords::us;
  const Inputs in = starting_inputs(c, american.units);
  const Outcome out = work_out(c, in, american, us);
  ASSERT_TRUE(out) << out.error().field << ": " << out.error().sentence;
  std::vector<std::string> words = out->sentences;
  words.insert(words.end(), out->cautions.begin(), out->cautions.end());
  for (const AnswerValue& v : out->values) {
    words.push_back(v.name + ": " + print(v, american));
    const report::Grounds g = grounds_of(c, in, v, american, us);
    for (const report::GroundsInput& i : g.inputs) words.push_back(i.what);
    words.push_back(g.equation);
    words.insert(words.end(), g.narrow.begin(), g.narrow.end());
  }
  for (const Field& f : c.fields) {
    words.push_back(label_of(f, us));
    words.push_back(hint_of(f, american, us));
    for (const std::string& choice : choices_of(f, us)) words.push_back(choice);
    EXPECT_THAT(hint_of(f, metric, us), Not(HasSubstr("{"))) << f.key;
  }
  const std::regex theirs("\\b(litres?|millilitres?|metres?|sanitis\\w*)\\b");
  const std::regex tap("(^|[^n] )\\b[Tt]aps?\\b(?! water)");
  for (const std::string& w : words) {
    EXPECT_FALSE(std::regex_search(w, theirs)) << w;
    EXPECT_FALSE(std::regex_search(w, tap)) << w;
    EXPECT_THAT(w, Not(HasSubstr("{}"))) << w;
  }
}

TEST_P(EveryComputation, IsFoundByItsOwnTitle) {
  const auto found = find_by_words(computation().title);
  ASSERT_FALSE(found.empty());
  EXPECT_EQ(found.front()->key, GetParam());
}

std::vector<std::string> keys() {
  std::vector<std::string> all;
  for (const Computation& c : computations()) all.emplace_back(c.key);
  return all;
}
INSTANTIATE_TEST_SUITE_P(Slate, EveryComputation, ::testing::ValuesIn(keys()),
                         [](const auto& each) { return each.param; });

TEST(SlateSearch, FindsWhatPeopleCallIt) {
  const std::vector<std::pair<const char*, const char*>> asked{
      {"set pressure", "pressure_to_set"},
      {"burst", "burst"},
      {"30 psi how long", "burst"},
      {"purge cycles", "purge_cycles"},
      {"abv", "alcohol"},
      {"plato", "gravity_scales"},
      {"cool", "cooling"},
      {"weigh", "left_by_weight"},
      {"nitrogen", "blend_to_order"},
      {"line volume", "line_contents"},
      {"convert bar", "convert"},
      {"PINTS poured", "left_by_glasses"},
      {"set and forget", "set_and_wait"},
      {"steady leak", "steady_leak"},
      {"air changes", "steady_leak"},
      {"bottle empties", "room_air"},
      {"dew line", "left_by_readings"},
      {"heft", "left_by_readings"},
      {"shake", "rocking"},
      {"gas off", "shut_keg"},
      {"calibrate", "timed_pour"},
      {"psi per foot", "restriction"},
      {"restrictor", "line_pieces"},
      {"caustic strength", "cleaner_strength"},
      {"fewest regulators", "one_regulator"},
      {"blend pure", "blend_like"},
      {"prior", "learned_rate"}};
  for (const auto& [typed, key] : asked) {
    const auto found = find_by_words(typed);
    ASSERT_FALSE(found.empty()) << typed;
    EXPECT_EQ(found.front()->key, key) << typed;
  }
  EXPECT_TRUE(find_by_words("zymurgical").empty());
  EXPECT_EQ(find_by_words("").size(), computations().size());
}

}  // namespace
}  // namespace ullage::testing::slates
