// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the level and the day it runs out stand on.
#include <fmt/format.h>

#include "core/report/keg_grounds.h"
#include "core/report/keg_inputs.h"
#include "core/report/laws_slate.h"
#include "core/units/present.h"

namespace ullage::report {
namespace {

using cellar::LevelMethod;
using cellar::LevelTold;

// The first of a longer story and the last of it are told.
constexpr std::size_t level_words_told = 5;

std::string method_words(LevelMethod method) {
  switch (method) {
    case LevelMethod::weight:
      return "Weighed";
    case LevelMethod::heft:
      return "Hefted";
    case LevelMethod::condensation_line:
      return "By the dew line";
    case LevelMethod::glasses:
      return "Glasses counted";
    case LevelMethod::metered:
      return "Metered";
  }
  return {};
}

GroundsInput told_input(const LevelTold& t, const KegSubject& s) {
  const std::string amount = s.speaker.printer.print(t.amount);
  const std::string by = t.method ? method_words(*t.method) + ": " : std::string();
  GroundsInput input{{}, InputOrigin::read, say_age(t.at, s.speaker)};
  switch (t.what) {
    case LevelTold::What::in_it_at_first:
      input.what = "At first in it: " + amount;
      input.origin = InputOrigin::typed;
      break;
    case LevelTold::What::left:
      input.what = by + amount + " left";
      break;
    case LevelTold::What::drawn:
      input.what = by + amount + " drawn";
      break;
    case LevelTold::What::lost:
      input.what = amount + " lost";
      input.origin = InputOrigin::typed;
      break;
  }
  return input;
}

void add_level_words(Grounds& g, const KegSubject& s) {
  const auto& told = s.keg.level.told;
  const bool all = told.size() <= level_words_told;
  const std::size_t from = all ? 0 : told.size() - (level_words_told - 1);
  if (!all) {
    g.inputs.push_back(told_input(told.front(), s));
    if (from > 1)
      g.inputs.push_back({fmt::format("{} words on it between", from - 1), InputOrigin::read, {}});
  }
  for (std::size_t i = from; i < told.size(); ++i) g.inputs.push_back(told_input(told[i], s));
}

void add_draw(Grounds& g, const KegSubject& s) {
  if (!s.keg.level.drawn_today) return;
  g.inputs.push_back(
      {"Drawn on a day like today: " + s.speaker.printer.print(*s.keg.level.drawn_today),
       InputOrigin::worked_out,
       {}});
}

}  // namespace

Grounds level_grounds(const KegSubject& s) {
  const cellar::Level& level = s.keg.level;
  if (!level.left && !level.cant_tell) return {};
  const bool several = level.told.size() > 1;
  Grounds g = grounds_by(several ? laws::level_fusion : laws::level, "Left in it",
                         level.left ? s.speaker.printer.print(*level.left)
                                    : "can’t tell: " + say(present(level.cant_tell), s.speaker));
  add_level_words(g, s);
  add_draw(g, s);
  add_input(g, filling_input(s));
  add_input(g, size_input(s));
  if (level.left && level.cant_tell)
    g.notes.push_back("They disagree. " + say(*level.cant_tell, s.speaker));
  if (level.left) g.narrow = narrowing(*level.left);
  return g;
}

Grounds run_out_grounds(const KegSubject& s) {
  const cellar::Level& level = s.keg.level;
  if (!level.runs_out) return {};
  Grounds g = grounds_by(
      laws::run_out, "Runs out",
      say(cellar::message(cellar::MessageKey::level_runs_out, *level.runs_out), s.speaker));
  if (level.left) add_input(g, level_input(s));
  add_draw(g, s);
  add_level_words(g, s);
  g.notes.emplace_back(
      "The draw is learned from this keg and from those before it on its line, Friday and Saturday "
      "apart.");
  g.notes.emplace_back("If it goes on as in the last weeks. The range holds four times in five.");
  // A time is beer over beer a day.
  std::vector<units::Contribution> causes;
  if (level.left) add_relative_errors(causes, *level.left);
  if (level.drawn_today) add_relative_errors(causes, *level.drawn_today);
  g.narrow = narrowing_of(shares_of(causes));
  if (g.narrow.empty()) g.narrow.emplace_back("Weigh the keg.");
  return g;
}

}  // namespace ullage::report
