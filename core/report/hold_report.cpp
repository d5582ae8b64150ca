// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/hold_report.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/units/present.h"

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

// Longer tests are told by their ends.
constexpr std::size_t hold_readings_told = 4;

void add_study_readings(Grounds& g, const HoldStudy& study, const Speaker& speaker) {
  const auto& readings = study.test.readings;
  const auto tell = [&](const physics::HoldReading& r) {
    g.inputs.push_back({fmt::format("Read {} at {}", speaker.printer.print(r.pressure.value()),
                                    speaker.printer.print(r.temperature.value())),
                        InputOrigin::read, say_age(study.time_of(r.at), speaker)});
  };
  const bool all = readings.size() <= hold_readings_told;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    if (all || i == 0 || i + 1 == readings.size()) tell(readings[i]);
    if (!all && i == 0)
      g.inputs.push_back(
          {fmt::format("{} readings between", readings.size() - 2), InputOrigin::read, {}});
  }
  if (study.temperature_assumed)
    g.inputs.push_back({"A temperature not read, as about 15 °C", InputOrigin::assumed, {}});
}

void add_hold_circumstances(Grounds& g, const HoldStudy& study, const Printer& print) {
  const physics::HoldTest& test = study.test;
  g.inputs.push_back({"Room for gas " + print.print(test.gas_space), InputOrigin::typed, {}});
  if (study.beer) {
    g.inputs.push_back(
        {"Beer inside with " + print.print(study.beer->co2), InputOrigin::worked_out, {}});
  } else {
    g.inputs.push_back({fmt::format("Water left inside, up to {}", print.print(test.wet_residue)),
                        InputOrigin::assumed,
                        {}});
  }
  g.inputs.push_back(
      {"A leak from " + print.print(study.limit_per_day) + " a day", InputOrigin::typed, {}});
  g.inputs.push_back({fmt::format("In use at {} and {}", print.print(test.service.pressure),
                                  print.print(test.service.temperature)),
                      InputOrigin::assumed,
                      {}});
}

// The numbers of one report as they are told, each with its reasons.
class HoldTeller {
 public:
  HoldTeller(const HoldStudy& study, const Speaker& speaker, HoldReport& out)
      : study_(study), speaker_(speaker), out_(out) {}

  void figure(std::string name, std::string value) {
    Grounds grounds = hold_grounds(study_, speaker_, name, value);
    out_.figures.push_back({std::move(name), std::move(value), std::move(grounds)});
  }

  void leak() {
    const HoldOutcome& outcome = present(study_.outcome);
    const Printer& print = speaker_.printer;
    figure("Lost", fmt::format("{} a day, over the test", print.print(outcome.leak_per_day)));
    if (outcome.laws.empty()) return;
    figure(fmt::format("At {}", print.print(study_.test.readings.front().pressure.value())),
           fmt::format("{} a day", say_leak(whole_range(outcome.laws), print)));
    figure(fmt::format("In use at {}", print.print(study_.test.service.pressure)),
           fmt::format("{} a day through a scratch, {} through a hole",
                       say_leak(outcome.laws.front().at_service, print),
                       say_leak(outcome.laws.back().at_service, print)));
    if (outcome.bottle.soonest) {
      figure(fmt::format("A {} bottle lasts", print.print(present(study_.test.service.bottle))),
             fmt::format("{} at least", print.print(*outcome.bottle.soonest)));
    }
  }

 private:
  const HoldStudy& study_;
  const Speaker& speaker_;
  HoldReport& out_;
};

void tell_notes(const HoldStudy& study, const Speaker& speaker, HoldReport& out) {
  const HoldOutcome& outcome = present(study.outcome);
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

Grounds hold_grounds(const HoldStudy& study, const Speaker& speaker, std::string name,
                     std::string answer) {
  Grounds g = grounds_by(laws::hold_test, std::move(name), std::move(answer));
  add_study_readings(g, study, speaker);
  add_hold_circumstances(g, study, speaker.printer);
  if (!study.outcome) return g;
  const HoldOutcome& outcome = *study.outcome;
  if (!outcome.laws.empty()) {
    g.notes.emplace_back(
        "Through a scratch the loss follows the squares of the pressures, through a hole the "
        "pressure: the readings don’t tell which, so both are told.");
  }
  g.narrow = narrowing(outcome.leak_per_day);
  if (study.test.readings.size() < 2) {
    g.narrow.emplace_back("Read the same dial again, a day later or more.");
  } else if (outcome.verdict == HoldVerdict::cant_tell && outcome.read_again_at) {
    g.narrow.push_back("Read the same dial again " +
                       say_time(study.time_of(*outcome.read_again_at), speaker) + ".");
  }
  return g;
}

HoldReport hold_report(const HoldStudy& study, const Speaker& speaker) {
  HoldReport out;
  out.verdict = upper_first(say(cellar::hold_words(study), speaker));
  if (!study.outcome) return out;
  const HoldOutcome& outcome = *study.outcome;
  if (study.test.readings.size() >= 2 && outcome.smallest_visible_per_day) {
    const Printer& print = speaker.printer;
    HoldTeller tell(study, speaker, out);
    tell.figure("Without a leak",
                fmt::format("{} now; it read {}", print.print(outcome.expected),
                            print.print(study.test.readings.back().pressure.value())));
    tell.leak();
    tell.figure("Smallest leak seen", fmt::format("{} a day; anything less could hide",
                                                  print.print(*outcome.smallest_visible_per_day)));
    if (outcome.verdict == HoldVerdict::cant_tell && outcome.read_again_at)
      tell.figure("Read again", say_time(study.time_of(*outcome.read_again_at), speaker));
  }
  tell_notes(study, speaker, out);
  return out;
}

}  // namespace ullage::report
