// SPDX-License-Identifier: GPL-3.0-or-later
//
// The content of the list that goes down into the cellar on a cleaning day: the
// steps in their order, with amounts, cautions, a box to tick for each thing and
// two places to sign. Painted by ui/print.
#pragma once

#include <string>
#include <vector>

#include "core/cellar/cleaning_plan.h"
#include "core/report/say.h"

namespace ullage::report {

struct CleaningListThing {
  std::string name;
  bool done = false;  // before the day: a line that stands locked
};
struct CleaningListStep {
  std::string what;  // "1. Lock the lines, sign every tap · Cold room"
  std::string takes;
  std::string caution;
  std::vector<CleaningListThing> things;
};
struct CleaningList {
  std::string title;  // "Cleaning list"
  std::string cellar;
  std::string day;      // "Saturday, 2026-11-28"
  std::string date;     // "2026-11-28"
  std::string printed;  // "Printed 2026-11-24 14:05 by MK"
  std::vector<std::string> costs;
  std::vector<CleaningListStep> steps;
  std::vector<std::string> left_out;
  // The cleaners the amounts are for, where nobody said which are on the shelf.
  std::vector<std::string> assumed;
  std::vector<std::string> signatures;
  std::string footnote;
};

// `assumed`: the kit of the amounts, where it is not the person's own.
[[nodiscard]] CleaningList cleaning_list(const cellar::PlannedDay&, const cellar::CellarStatus&,
                                         const Speaker&, const std::string& by,
                                         const cellar::CleaningKit* assumed = nullptr);
// The same for programs; of no day, an object without steps.
[[nodiscard]] std::string json_of(const CleaningList&);

}  // namespace ullage::report
