// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/cleaning_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/physics/gas_use.h"
#include "core/report/names.h"

namespace ullage::report {

using namespace cellar;

namespace {

bool american(const Speaker& s) { return s.words == RegionalWords::us; }

// A little of a liquid reads better in small measures: fluid ounces beside US
// gallons, else millilitres.
std::string liquid(units::Volume v, const Speaker& s) {
  constexpr double us_quart = 32;
  if (s.printer.units.volume == units::VolumeUnit::us_gallon) {
    const double ounces = units::in_us_gallons(v) * 128;
    if (ounces >= us_quart) return s.printer.print(v);
    return s.printer.number(ounces, ounces < 10 ? 1 : 0) + " fl oz";
  }
  const double ml = units::in_litres(v) * 1000;
  if (ml < 1000) return fmt::format("{:.0f} mL", ml);
  return s.printer.print(v);
}
std::string powder(units::Mass m, const Speaker& s) {
  if (s.printer.units.mass == units::MassUnit::pound) return s.printer.print(m);
  const double g = units::in_grams(m);
  if (g < 1000) return fmt::format("{:.0f} g", g);
  return s.printer.print(m);
}

// The same with its error, in one unit.
std::string liquid_with_error(units::Volume v, units::Volume wide, const Speaker& s) {
  if (s.printer.units.volume == units::VolumeUnit::us_gallon) {
    if (units::in_us_gallons(v) < 0.25) {
      return units::value_with_error(units::in_us_gallons(v) * 128,
                                     units::in_us_gallons(wide) * 128, s.printer.style) +
             " fl oz";
    }
  } else if (units::in_litres(v) < 1) {
    return units::value_with_error(units::in_litres(v) * 1000, units::in_litres(wide) * 1000,
                                   s.printer.style) +
           " mL";
  }
  return s.printer.print(units::Estimate<units::Volume>(v).with_error({"hoses"}, wide));
}

// How warm the solution usually is, in whole degrees.
std::string say_warmth(const Speaker& s) {
  const physics::LineCleaningPractice& usual = physics::line_cleaning_practice;
  if (s.printer.units.temperature == units::TemperatureUnit::fahrenheit) {
    return "at " + s.printer.print_range(usual.coldest, usual.hottest);
  }
  const auto whole = [](units::Temperature t) {
    return units::celsius(std::round(units::in_celsius(t)));
  };
  return "at " + s.printer.print_range(whole(usual.coldest), whole(usual.hottest));
}

std::string say_purge_gas(units::Mass purged, const Speaker& s) {
  return s.printer.print(physics::gas_to_purge(purged, {"purge: gas used"})) + " of CO₂";
}

std::string money(std::int64_t minor) { return fmt::format("{}.{:02}", minor / 100, minor % 100); }

}  // namespace

std::string say(WorkKind work, const Speaker& s) {
  switch (work) {
    case WorkKind::caustic:
      return "Clean the line";
    case WorkKind::acid:
      return "Acid against beer stone";
    case WorkKind::strip_down:
      return american(s) ? "Take the faucet apart" : "Take the tap apart";
    case WorkKind::seals:
      return "Renew the seals";
    case WorkKind::keg_clean:
      return "Wash the keg";
    case WorkKind::coupler_clean:
      return "Clean the coupler";
    case WorkKind::place_clean:
      return "Clean floor and cooler";
    case WorkKind::alarm_check:
      return "Try the gas alarm";
    case WorkKind::bottle_retest:
      return "Bottle due for its test";
    case WorkKind::leak_test:
      return "Test for leaks";
  }
  return {};
}

std::string say(RuleScope scope, const Speaker&) {
  switch (scope) {
    case RuleScope::line:
      return "every line";
    case RuleScope::keg:
      return "every keg";
    case RuleScope::coupler:
      return "every coupler";
    case RuleScope::bottle:
      return "every gas bottle";
    case RuleScope::place:
      return "every place";
    case RuleScope::alarm:
      return "every gas alarm";
  }
  return {};
}

std::string say_due(const DueWork& w, const Speaker& s) {
  if (w.state == DueState::overdue) return say_days(w.days_over) + " overdue";
  const std::int64_t ahead = (w.due - s.calendar->date_of(s.now)).count();
  if (ahead == 0) return "due today";
  if (ahead == 1) return "due tomorrow";
  return "due " + say_date(w.due, s);
}

std::string_view say_moved(const DueWork& w) {
  return planned_for(w) < w.due ? "brought forward to" : "put off to";
}

std::string say_rule(const AppliedRule& r, const Speaker&) {
  const std::string source = r.source.empty() ? r.reason : r.source;
  if (!r.interval_days) return source.empty() ? "each time it is called for" : source;
  const std::string every = "every " + say_days(*r.interval_days);
  return source.empty() ? every + ", own rule" : every + ": " + source;
}

std::vector<std::string> say_why(const DueWork& w, const Speaker& s) {
  std::vector<std::string> lines = {say_rule(w.governing, s)};
  if (!w.governing.reason.empty() && !w.governing.source.empty()) {
    lines.push_back("because: " + w.governing.reason);
  }
  lines.push_back(w.last_done ? "last done " + say_day(*w.last_done, s)
                              : std::string("never logged: counted from when it was registered"));
  if (w.partly_done) lines.push_back("partly done " + say_day(*w.partly_done, s));
  if (w.put_off_to) {
    std::string line = fmt::format("{} {}", say_moved(w), say_date(*w.put_off_to, s));
    if (!w.put_off_because.empty()) line += ": " + w.put_off_because;
    lines.push_back(std::move(line));
  }
  for (const AppliedRule& r : w.also) lines.push_back("also: " + say_rule(r, s));
  return lines;
}

std::string say_will_be(const DueWork& w, const CellarStatus& names, const Speaker& s) {
  return fmt::format("{} – {} will be {} ({})", name_of(w.about, names), say(w.work, s),
                     say_due(w, s), say_rule(w.governing, s));
}

std::string say_step(const PlanStep& step, const Speaker& s) {
  switch (step.kind) {
    case StepKind::check_alarm:
      return "Try the gas alarm";
    case StepKind::lock:
      return american(s) ? "Lock the lines, sign every faucet" : "Lock the lines, sign every tap";
    case StepKind::vent:
      return "Gas off, let the pressure off";
    case StepKind::flush:
      return "Flush the beer out with water";
    case StepKind::caustic: {
      const std::string what = step.agent.empty() ? "cleaner" : step.agent;
      return step.kegs ? "Wash the kegs with " + what : "Fill the lines with " + what;
    }
    case StepKind::rinse:
      return step.kegs ? "Rinse the kegs" : "Rinse the lines with water";
    case StepKind::acid:
      return "Fill the lines with " + (step.agent.empty() ? std::string("acid") : step.agent);
    case StepKind::rinse_acid:
      return "Rinse the acid out with water";
    case StepKind::strip_down:
      return american(s) ? "Take the faucets apart and brush them"
                         : "Take the taps apart and brush them";
    case StepKind::coupler:
      return "Brush the couplers";
    case StepKind::seals:
      return "Renew the seals";
    case StepKind::purge:
      return "Close the kegs and purge them";
    case StepKind::release:
      return "Check and release the lines";
    case StepKind::leak_test:
      return "Test for leaks";
    case StepKind::place_clean:
      return "Clean floor and cooler";
    case StepKind::retest:
      return "Set bottles aside for their test";
  }
  return {};
}

std::string say_amounts(const PlanStep& step, const Speaker& s) {
  std::vector<std::string> parts;
  if (step.solution) {
    std::string mix = liquid(*step.solution, s) + " of solution";
    if (step.concentrate) {
      mix += ": " + liquid(*step.concentrate, s) + " of cleaner";
    } else if (step.concentrate_mass) {
      mix += ": " + powder(*step.concentrate_mass, s) + " of cleaner";
    }
    if (step.water) mix += " into " + liquid(*step.water, s) + " of water";
    parts.push_back(std::move(mix));
  } else if (step.water) {
    parts.push_back("at least " + liquid(*step.water, s) + " of water");
  }
  if (step.lines_unmeasured > 0) {
    const std::string more =
        fmt::format("{} line{} whose contents are not known", step.lines_unmeasured,
                    step.lines_unmeasured == 1 ? "" : "s");
    if (parts.empty()) {
      parts.push_back("water for " + more);
    } else {
      parts.back() += ", and for " + more;
    }
  }
  if (step.kind == StepKind::caustic && !step.kegs) {
    parts.push_back(say_warmth(s));
  }
  if (step.contact) parts.push_back(say_minutes(*step.contact, s) + " contact");
  if (step.seals > 0) {
    parts.push_back(fmt::format("{} set{} of seals", step.seals, step.seals == 1 ? "" : "s"));
  }
  if (step.gas) parts.push_back(say_purge_gas(*step.gas, s));
  if (units::in_minutes(step.hands_on) > 0) {
    parts.push_back(say_minutes(step.hands_on, s) + " of work");
  }
  return fmt::format("{}", fmt::join(parts, "; "));
}

std::string say_caution(const PlanStep& step, const Speaker& s) {
  switch (step.caution) {
    case StepCaution::none:
      return {};
    case StepCaution::pressure:
      return "Vent before you open anything. Keep your face away.";
    case StepCaution::caustic:
      return "Caustic burns eyes and skin: goggles, gloves, apron. Never leave it unattended; the "
             "label comes first.";
    case StepCaution::acid:
      return "Acid burns: goggles and gloves. Only after the caustic is rinsed out. Never with a "
             "chlorine cleaner: it gives off poisonous gas.";
    case StepCaution::chlorine:
      return "Chlorine cleaner: never let acid near it today. Goggles and gloves; air the place.";
    case StepCaution::release:
      return step.kind == StepKind::lock
                 ? (american(s) ? "Hang a sign on the faucet as well: do not serve."
                                : "Hang a sign on the tap as well: do not serve.")
                 : "By litmus or pH against tap water, never by finger or taste.";
    case StepCaution::gas:
      return "CO₂ stays low and cannot be smelt: air the place. If a real alarm sounds, stay out.";
  }
  return {};
}

std::string say_reason(const PlannedDay& day, const Speaker&) {
  switch (day.why) {
    case DayReason::overdue_now:
      return "the soonest: something is overdue";
    case DayReason::first_falls_due:
      return "the day on which the first thing falls due";
    case DayReason::least_beer_lost:
      return "least beer lost: kegs will have run empty";
    case DayReason::a_day_later:
      return "a day later";
  }
  return {};
}

std::string say_beer_lost(const BeerLost& lost, const Speaker& s) {
  const auto litres = [](units::Volume v) { return units::in_litres(v); };
  if (litres(lost.most) < 0.005) return "no beer lost that is on record";
  const double up = litres(lost.most) - litres(lost.likely);
  const double down = litres(lost.likely) - litres(lost.least);
  // As wide above as below: hoses alone. Else a keg may or may not have run empty.
  const bool even = std::abs(up - down) < 0.001;
  std::string words =
      even ? "about " + liquid_with_error(lost.likely, units::litres(up), s) + " of beer lost"
           : liquid(lost.least, s) + " to " + liquid(lost.most, s) + " of beer lost, likely " +
                 liquid(lost.likely, s);
  if (lost.price_most <= 0) return words;
  words += even ? ", worth " + money(lost.price_minor) + " ± " +
                      money(lost.price_most - lost.price_minor)
                : ", worth " + money(lost.price_least) + " to " + money(lost.price_most);
  return words;
}

std::vector<std::string> say_cost(const PlannedDay& day, const Speaker& s) {
  const DayCost& c = day.cost;
  std::vector<std::string> lines;
  std::string beer = say_beer_lost(c.beer, s);
  if (c.lines_unpriced > 0) beer += fmt::format(" ({} without a price)", c.lines_unpriced);
  if (c.lines_unmeasured > 0) {
    beer += fmt::format("; {} line{} not measured", c.lines_unmeasured,
                        c.lines_unmeasured == 1 ? "" : "s");
  }
  lines.push_back(std::move(beer));
  if (c.lines_run_empty > 0) {
    lines.push_back(fmt::format("{} keg{} on tap likely empty by then", c.lines_run_empty,
                                c.lines_run_empty == 1 ? "" : "s"));
  }
  lines.push_back(c.late == 0
                      ? std::string("nothing late")
                      : fmt::format("{} late, by {} at most", c.late, say_days(c.most_days_late)));
  lines.push_back(fmt::format("{} task{}, {}", day.tasks.size(), day.tasks.size() == 1 ? "" : "s",
                              say_minutes(c.time, s)));
  if (units::in_grams(c.gas) > 0) lines.push_back(say_purge_gas(c.gas, s) + " to purge kegs");
  return lines;
}

std::string say_thing(const PlanStep& step, SubjectRef thing, const PlannedDay& day,
                      const CellarStatus& names, const Speaker& s) {
  std::string words = name_of(thing, names);
  if (const LineLock* lock = step.locked_before(thing)) {
    words += ", locked since " + say_time(lock->since, s);
    if (!lock->by.empty()) words += " by " + lock->by;
  }
  if (waits_for_empty(thing, day, names)) words += ", once it has run empty";
  return words;
}

bool waits_for_empty(SubjectRef thing, const PlannedDay& day, const CellarStatus& now) {
  const KegId id{thing.uuid};
  if (std::find(day.when_empty.begin(), day.when_empty.end(), id) == day.when_empty.end()) {
    return false;
  }
  const KegStatus* keg = now.find(id);
  return keg != nullptr && keg->contents.has_value();
}

std::string say_left_out(const LeftOut& l, const CellarStatus& names, const Speaker& s) {
  std::string what = say(l.task.work, s) + ", " + name_of(l.task.about, names);
  switch (l.why) {
    case LeftOutWhy::no_time:
      return what + ": not enough time that day";
    case LeftOutWhy::keg_has_beer:
      return what + ": once the keg is empty";
    case LeftOutWhy::acid_with_chlorine:
      return what + ": not on a day with a chlorine cleaner";
    case LeftOutWhy::chlorine_with_acid:
      return what + ": the cleaner has chlorine, and acid was used or stands in a line";
    case LeftOutWhy::put_off:
      return what + ": put off" + (l.until ? " to " + say_date(*l.until, s) : std::string());
    case LeftOutWhy::follows_caustic:
      return what + ": follows the line’s cleaning" +
             (l.until ? ", put off to " + say_date(*l.until, s) : std::string());
  }
  return what;
}

std::string say_cleaner(const Cleaner& c, const Speaker& s) {
  const auto percent = [&](units::Fraction share) { return s.printer.print(share); };
  return fmt::format(
      "{} with {} of active by weight{}, used at {}", c.name, percent(c.label.active),
      c.label.density
          ? fmt::format(
                " ({} times as heavy as water)",
                s.printer.number(units::in_kilograms_per_cubic_metre(*c.label.density) / 1000, 2))
          : std::string(),
      percent(c.strength));
}

std::string say_minutes(units::Duration d, const Speaker&) {
  const auto minutes = static_cast<std::int64_t>(std::ceil(units::in_minutes(d) - 1e-9));
  if (minutes < 60) return fmt::format("{} min", minutes);
  if (minutes % 60 == 0) return fmt::format("{} h", minutes / 60);
  return fmt::format("{} h {} min", minutes / 60, minutes % 60);
}

}  // namespace ullage::report
