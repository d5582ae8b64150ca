// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/hold_report.h"

#include <fmt/format.h>

#include <algorithm>

namespace ullage::report {

namespace {

using cellar::HoldStudy;
using physics::HoldOutcome;
using physics::HoldReason;
using physics::HoldVerdict;
using physics::LeakRange;
using units::Printer;

std::string upper_first(std::string s) {
  if (!s.empty() && s.front() >= 'a' && s.front() <= 'z')
    s.front() = static_cast<char>(s.front() - 'a' + 'A');
  return s;
}

// What either law leaves open.
LeakRange whole_range(const std::vector<physics::LawFit>& laws) {
  LeakRange out = laws.front().at_test;
  for (const physics::LawFit& f : laws) {
    out.low = std::min(out.low, f.at_test.low);
    out.high = out.high && f.at_test.high ? std::optional(std::max(*out.high, *f.at_test.high))
                                          : std::nullopt;
  }
  return out;
}

void tell_leak(const HoldStudy& study, const Speaker& speaker, HoldReport& out) {
  const HoldOutcome& outcome = *study.outcome;
  const Printer& print = speaker.printer;
  out.figures.push_back(
      {"Lost", fmt::format("{} a day, over the test", print.print(outcome.leak_per_day))});
  if (outcome.laws.empty()) return;
  out.figures.push_back(
      {fmt::format("At {}", print.print(study.test.readings.front().pressure.value())),
       fmt::format("{} a day", say_leak(whole_range(outcome.laws), print))});
  const std::string service = fmt::format("In use at {}", print.print(study.test.service.pressure));
  out.figures.push_back({service, fmt::format("{} a day through a scratch, {} through a hole",
                                              say_leak(outcome.laws.front().at_service, print),
                                              say_leak(outcome.laws.back().at_service, print))});
  if (outcome.bottle.soonest) {
    out.figures.push_back(
        {fmt::format("A {} bottle lasts", print.print(*study.test.service.bottle)),
         fmt::format("{} at least", print.print(*outcome.bottle.soonest))});
  }
}

void tell_notes(const HoldStudy& study, const Speaker& speaker, HoldReport& out) {
  const HoldOutcome& outcome = *study.outcome;
  const Printer& print = speaker.printer;
  if (outcome.proven_down_to) {
    out.notes.push_back(
        fmt::format("Lids seat with pressure: this proves it down to {}, not below.",
                    print.print(*outcome.proven_down_to)));
  }
  if (outcome.reason == HoldReason::too_soon)
    out.notes.emplace_back("Gas and lid settle for half an hour; before that nothing counts.");
  if (study.temperature_assumed) {
    out.notes.emplace_back(
        "A temperature was not read: about 15 °C is assumed, which widens the answer. Read it "
        "with the pressure.");
  }
  if (study.beer) {
    out.notes.emplace_back(
        "With beer inside, what it takes up and gives off is counted in. Tested empty, the keg "
        "tells more in a day.");
  }
}

}  // namespace

std::string say_leak(const LeakRange& r, const Printer& print) {
  const bool nothing_possible = !(r.low > units::grams(0));
  if (!r.high) {
    return nothing_possible ? std::string("anything")
                            : fmt::format("at least {}", print.print(r.low));
  }
  if (!(*r.high > units::grams(0))) return "none";
  if (nothing_possible) return fmt::format("at most {}", print.print(*r.high));
  return fmt::format("{} to {}", print.print(r.low), print.print(*r.high));
}

HoldReport hold_report(const HoldStudy& study, const Speaker& speaker) {
  HoldReport out;
  out.verdict = upper_first(say(cellar::hold_words(study), speaker));
  if (!study.outcome) return out;
  const HoldOutcome& outcome = *study.outcome;
  if (study.test.readings.size() >= 2 && outcome.smallest_visible_per_day) {
    const Printer& print = speaker.printer;
    out.figures.push_back(
        {"Without a leak", fmt::format("{} now; it read {}", print.print(outcome.expected),
                                       print.print(study.test.readings.back().pressure.value()))});
    tell_leak(study, speaker, out);
    out.figures.push_back(
        {"Smallest leak seen", fmt::format("{} a day; anything less could hide",
                                           print.print(*outcome.smallest_visible_per_day))});
    if (outcome.verdict == HoldVerdict::cant_tell && outcome.read_again_at) {
      out.figures.push_back(
          {"Read again", say_time(study.time_of(*outcome.read_again_at), speaker)});
    }
  }
  tell_notes(study, speaker, out);
  return out;
}

}  // namespace ullage::report
