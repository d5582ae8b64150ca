// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a keg's hold test and the steps of its preparation stand on.
#include <fmt/format.h>

#include "core/cellar/hold_test.h"
#include "core/report/hold_report.h"
#include "core/report/keg_grounds.h"
#include "core/report/keg_inputs.h"

namespace ullage::report {
namespace {

using cellar::MessageKey;

bool tells_oxygen(const cellar::Message& m) {
  return m.key == MessageKey::step_purged_cycles || m.key == MessageKey::step_purged_swept ||
         m.key == MessageKey::step_purged_pushed || m.key == MessageKey::step_purged_in_order;
}

std::string purge_cause(const cellar::Message& m) {
  return m.key == MessageKey::step_purged_pushed ? "air left on top" : "purge: mixing";
}

}  // namespace

Grounds hold_result_grounds(const KegSubject& s) {
  if (!s.keg.hold_result) return {};
  std::string answer = say(*s.keg.hold_result, s.speaker);
  if (s.keg.hold_result_from)
    return hold_grounds(*s.keg.hold_result_from, s.speaker, "Hold test", std::move(answer));
  Grounds g = grounds_by(laws::hold_test, "Hold test", std::move(answer));
  g.narrow.emplace_back("Read it with the gas off, and the same dial again a day later or more.");
  return g;
}

Grounds step_grounds(const KegSubject& s, const cellar::PreparationStep& step) {
  if (!step.done_at || !step.result) return {};
  if (step.kind == "hold_reading") return hold_result_grounds(s);
  if (!tells_oxygen(*step.result)) return {};
  Grounds g = grounds_by(laws::purging, "Oxygen left", say(*step.result, s.speaker));
  g.inputs.push_back({"How it was purged", InputOrigin::typed, say_age(*step.done_at, s.speaker)});
  if (const std::size_t before = step.goes_on_from.size(); before > 0) {
    g.inputs.push_back({before == 1 ? std::string("The purge before it")
                                    : fmt::format("The {} purges before it", before),
                        InputOrigin::typed,
                        {}});
  }
  add_input(g, size_input(s));
  add_input(g, air_input(s));
  g.inputs.push_back({"How well gas and air mix", InputOrigin::assumed, {}});
  g.inputs.push_back({"The dial and how warm the keg stood", InputOrigin::assumed, {}});
  g.notes.emplace_back(
      "Likely, and at most if they mix badly and the dial, the warmth and the weather err as far "
      "as they may. The beer’s own oxygen comes on top.");
  g.narrow = {remedy_for({purge_cause(*step.result)})};
  return g;
}

}  // namespace ullage::report
