// SPDX-License-Identifier: GPL-3.0-or-later
//
// A keg's hold test in words: the verdict, its numbers with the reasons behind each,
// and what to mind about them. For the keg's panel; the journal and the sheet say the
// verdict alone.
#pragma once

#include <string>
#include <vector>

#include "core/cellar/hold_test.h"
#include "core/report/grounds.h"
#include "core/report/say.h"

namespace ullage::report {

struct HoldFigure {
  std::string name;   // "Lost"
  std::string value;  // "1.2 ± 0.8 g a day"
  Grounds grounds;
};

struct HoldReport {
  std::string verdict;  // a sentence without its full stop
  std::vector<HoldFigure> figures;
  std::vector<std::string> notes;
};

[[nodiscard]] HoldReport hold_report(const cellar::HoldStudy&, const Speaker&);

// The reasons behind any answer of the test: its readings, what is taken for granted
// about them, and what would narrow it.
[[nodiscard]] Grounds hold_grounds(const cellar::HoldStudy&, const Speaker&, std::string name,
                                   std::string answer);

// "at most 2.4 g", "1.9 to 2.4 g", "at least 70 g": a day, at 95 %.
[[nodiscard]] std::string say_leak(const physics::LeakRange&, const units::Printer&);

}  // namespace ullage::report
