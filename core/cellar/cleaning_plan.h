// SPDX-License-Identifier: GPL-3.0-or-later
//
// The next cleaning day: which day, what is done on it, in which order, and
// what that takes. Two days are proposed, with what each costs.
//
// What a day takes on: all that is due by then; what falls due soon after (within
// a quarter of its interval, a day at least, a week at most); and the washing of
// kegs that will have run empty, where a rule asks for it after each emptying.
// Work put off to a later day is left to it, with the acid that follows a line's
// caustic; what was brought forward is taken on from its new day. Where the time at hand does not
// suffice, the longest overdue comes first, and no overdue work is left out that still fits.
//
// The order is the safe one, whatever is on the list: alarms tried; lines locked
// and their taps signed; pressure let off; beer flushed out with water; caustic;
// rinsed; acid; rinsed; parts opened; washed kegs closed and
// purged; lines released by a check; leak tests;
// floors. Acid and a chlorinated cleaner never come on one day: the acid waits; and
// where the one was used that day already, or stands in a locked line, the other
// waits, whatever else is due.
//
// Minutes of hands-on work are common practice without a source and can be
// changed in the kit; strength and contact times start from the trade's practice
// (physics::line_cleaning_practice) and the label comes first.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/cellar/due_work.h"
#include "core/physics/cleaning_solution.h"
#include "core/units/estimate.h"

namespace ullage::cellar {

// A cleaner as its label describes it and as it is used.
struct Cleaner {
  LineAgent kind = LineAgent::caustic;
  std::string name;
  units::Fraction strength = physics::line_cleaning_practice.caustic;  // in use, by weight
  physics::Concentrate label;
  units::Duration contact = physics::line_cleaning_practice.standing;
};

// Hands-on work at one thing.
struct WorkMinutes {
  // Of each line or keg, whatever is done to it.
  units::Duration lock = units::minutes(1);
  units::Duration vent = units::minutes(1);
  units::Duration flush = units::minutes(2);
  units::Duration rinse = units::minutes(2);
  units::Duration release = units::minutes(2);
  units::Duration purge = units::minutes(3);
  // The work itself.
  units::Duration line = units::minutes(4);  // with caustic or acid
  units::Duration strip_down = units::minutes(5);
  units::Duration coupler = units::minutes(3);
  units::Duration seals = units::minutes(10);
  units::Duration keg = units::minutes(12);
  units::Duration place = units::minutes(15);
  units::Duration alarm = units::minutes(3);
  units::Duration leak_test = units::minutes(5);
  units::Duration bottle = units::minutes(5);
};

struct CleaningKit {
  Cleaner caustic;
  Cleaner acid;
  Volume pot = units::litres(2);  // what the cleaning vessel and its hose hold besides the line
  Volume keg_fill = units::litres(5);  // solution a keg is washed with
  std::int64_t rinses = 3;             // line volumes of water, at least; the check decides
  std::int64_t purge_cycles = 5;       // of a cleaned keg
  GaugePressure purge_to = units::gauge_bar(2);
  WorkMinutes minutes;
};
// Strengths, contact times and label figures to start from.
[[nodiscard]] CleaningKit usual_kit();

// When a keg on tap runs empty, with its range.
struct EmptyForecast {
  KegId keg;
  Window when;
};
// Of every keg that has a forecast.
[[nodiscard]] std::vector<EmptyForecast> kegs_running_empty(const CellarStatus&);

struct PlanWishes {
  Date from;  // no day before this one
  std::chrono::days horizon{14};
  units::Duration time_at_hand = units::minutes(180);  // on any one day
  CleaningKit kit;
  std::vector<EmptyForecast> empties;
};
// From today, with the usual kit and the kegs that run empty by themselves.
[[nodiscard]] PlanWishes usual_wishes(const CellarStatus&, const LocalCalendar&);

enum class StepKind {
  check_alarm,
  lock,
  vent,
  flush,  // the beer out, with water
  caustic,
  rinse,
  acid,
  rinse_acid,
  strip_down,
  coupler,
  seals,
  purge,  // washed kegs, closed again
  release,
  leak_test,
  place_clean,
  retest
};
enum class StepCaution { none, pressure, caustic, acid, chlorine, release, gas };

struct PlanStep {
  StepKind kind = StepKind::lock;
  std::optional<PlaceId> place;
  bool kegs = false;  // washing kegs, not lines
  std::vector<SubjectRef> things;
  std::vector<std::size_t> tasks;      // of the day, that are done once the step is
  std::vector<LineLock> locked;        // of a lock: the things that stand locked already
  std::vector<SubjectRef> acid_first;  // of a lock: lines whose first chemical is acid
  std::int64_t lines_unmeasured = 0;   // whose contents are not in the amounts
  StepCaution caution = StepCaution::none;
  std::string agent;  // the cleaner's name
  std::optional<LineAgent> agent_kind;
  std::optional<Volume> solution;
  std::optional<Volume> concentrate;     // of a liquid
  std::optional<Mass> concentrate_mass;  // of any
  std::optional<Volume> water;
  std::optional<Mass> gas;
  std::int64_t seals = 0;  // sets of them
  std::optional<units::Duration> contact;
  units::Duration hands_on = units::minutes(0);

  // The lock that is there already; null when this one is to be set.
  [[nodiscard]] const LineLock* locked_before(SubjectRef thing) const;
};

enum class LeftOutWhy {
  no_time,
  keg_has_beer,
  acid_with_chlorine,
  chlorine_with_acid,
  put_off,         // to a later day
  follows_caustic  // acid, whose line's caustic was put off
};
struct LeftOut {
  DueWork task;
  LeftOutWhy why = LeftOutWhy::no_time;
  std::optional<Date> until;  // of what was put off
};

// The beer in the lines that are flushed, with what it may come to at least and at
// most (95 %): hoses are drawn and measured to a few percent, and a keg may or may
// not have run empty by then. The price is of the beer that has one on record.
struct BeerLost {
  Volume likely = units::litres(0), least = units::litres(0), most = units::litres(0);
  std::int64_t price_minor = 0, price_least = 0, price_most = 0;
};

struct DayCost {
  BeerLost beer;
  std::int64_t lines_unpriced = 0;
  std::int64_t lines_unmeasured = 0;  // whose hose is not on record: not in the volume
  std::int64_t lines_run_empty = 0;   // whose keg will have run out: nothing lost
  std::int64_t late = 0;              // tasks done overdue, or left overdue
  std::int64_t most_days_late = 0;
  units::Duration time = units::minutes(0);  // hands-on and waiting together
  Mass gas = units::kilograms(0);
};

enum class DayReason {
  overdue_now,      // something is overdue already: the soonest day
  first_falls_due,  // the day on which the first thing falls due
  least_beer_lost,  // kegs run empty before
  a_day_later
};

struct PlannedDay {
  Date day;
  DayReason why = DayReason::first_falls_due;
  std::vector<DueWork> tasks;
  std::vector<LeftOut> left_out;
  std::vector<PlanStep> steps;
  DayCost cost;
  // Kegs that have beer now and work on this list: to be done once they are empty.
  std::vector<KegId> when_empty;
};

// Nothing, when nothing falls due within the horizon; else one or two days, the
// one proposed first.
[[nodiscard]] std::vector<PlannedDay> propose_cleaning_days(const std::vector<DueWork>&,
                                                            const CellarStatus&,
                                                            const LocalCalendar&,
                                                            const PlanWishes&);
// The plan of one day. Lines that stand locked today are rinsed and released on
// today's list, whether they are due or not; those that are cleaned on it need no
// second lock, and the list says since when they have theirs.
[[nodiscard]] PlannedDay plan_cleaning_day(Date, const std::vector<DueWork>&, const CellarStatus&,
                                           const LocalCalendar&, const PlanWishes&);

// Hands-on time and waiting that these tasks take together: chemicals of a kind
// stand in all lines at once, so their contact time counts once.
[[nodiscard]] units::Duration time_for(const std::vector<DueWork>&, const CleaningKit&);

// The beer a line holds, by its pieces, else its length and bore; nullopt when
// they are not on record.
[[nodiscard]] std::optional<Volume> volume_of_line(LineId, const CellarStatus&);
// The same with its error (core/physics/line_volume.h).
[[nodiscard]] std::optional<units::Estimate<Volume>> beer_in_line(LineId, const CellarStatus&);

}  // namespace ullage::cellar
