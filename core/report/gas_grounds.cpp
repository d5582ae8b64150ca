// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/gas_grounds.h"

#include <cmath>

#include "core/cellar/gas_sums.h"
#include "core/units/present.h"

namespace ullage::report {
namespace {

using cellar::GasAccount;
using cellar::MassEstimate;

// Many kegs' small errors are told as one.
std::vector<std::string> narrowing_gas(const cellar::MassEstimate& m) {
  return narrowing(cellar::smaller_causes_together(m));
}

// Longer lists of weighings are told by their ends.
constexpr std::size_t weighings_told = 4;

void add_weighings(Grounds& g, const GasAccount& a, const Speaker& speaker) {
  const auto tell = [&](const cellar::AccountWeighing& w) {
    const std::string gas = speaker.printer.print(w.gas);
    g.inputs.push_back({(a.tare_known ? "Gas in it " : "With its bottle ") + gas, InputOrigin::read,
                        say_age(w.at, speaker)});
  };
  if (a.weighings.size() <= weighings_told) {
    for (const cellar::AccountWeighing& w : a.weighings) tell(w);
    return;
  }
  tell(a.weighings.front());
  g.inputs.push_back(
      {std::to_string(a.weighings.size() - 2) + " weighings between", InputOrigin::read, {}});
  tell(a.weighings.back());
}

void add_tare(Grounds& g, const GasAccount& a, const Speaker& speaker) {
  for (const cellar::BottleRecord& b : a.bottles) {
    if (b.tare)
      g.inputs.push_back({b.name + " weighs " + speaker.printer.print(*b.tare) + " empty",
                          InputOrigin::typed,
                          {}});
  }
}

void add_use(Grounds& g, const GasAccount& a, const Speaker& speaker) {
  if (!a.use_per_day) return;
  g.inputs.push_back({"Used by the kegs, " + speaker.printer.print(*a.use_per_day) + " a day",
                      InputOrigin::worked_out,
                      {}});
}

void add_loss(Grounds& g, const GasAccount& a, const Speaker& speaker) {
  if (!a.loss) return;
  g.inputs.push_back({"Unexplained, " + speaker.printer.print(a.loss->per_day) + " a day",
                      InputOrigin::worked_out,
                      {}});
}

void add_kegs(Grounds& g, const GasAccount& a, const Speaker& speaker) {
  cellar::for_each_keg(a, [&](const cellar::BranchKeg& k) {
    g.inputs.push_back({k.tag + " on gas at " + speaker.printer.print(k.set), InputOrigin::typed,
                        say_age(k.since, speaker)});
  });
}

void advise_weighing(Grounds& g, const GasAccount& a) {
  if (a.weighings.size() < weighings_told)
    g.narrow.emplace_back("Weigh it each week, on the same scale: every weighing narrows it.");
}

}  // namespace

std::string say_money(double minor, const Speaker& speaker) {
  return speaker.printer.number(minor / 100, 2);
}

Grounds gas_now_grounds(const GasAccount& a, const Speaker& speaker) {
  if (!a.gas_now) return {};
  Grounds g = grounds_by(laws::gas_account, "In it now", speaker.printer.print(*a.gas_now));
  add_weighings(g, a, speaker);
  add_tare(g, a, speaker);
  add_use(g, a, speaker);
  add_loss(g, a, speaker);
  g.notes.emplace_back("The last weighing, less what was used and lost since.");
  g.narrow = narrowing_gas(*a.gas_now);
  if (!a.weighings.empty()) g.narrow.emplace_back("Weigh the bottle now.");
  return g;
}

Grounds gas_lasts_grounds(const GasAccount& a, const Speaker& speaker) {
  if (!a.runs_out) return {};
  Grounds g = grounds_by(laws::gas_account, "Lasts until", say_day(a.runs_out->likely, speaker));
  if (a.gas_now)
    g.inputs.push_back(
        {"In it now, " + speaker.printer.print(*a.gas_now), InputOrigin::worked_out, {}});
  add_use(g, a, speaker);
  add_loss(g, a, speaker);
  g.notes.emplace_back("If use and loss go on as they have since the account began.");
  if (a.gas_now) g.narrow = narrowing_gas(*a.gas_now);
  advise_weighing(g, a);
  return g;
}

Grounds gas_use_grounds(const GasAccount& a, const Speaker& speaker) {
  if (!a.use_per_day) return {};
  Grounds g = grounds_by(laws::gas_use, "Used by the kegs",
                         speaker.printer.print(*a.use_per_day) + " a day");
  add_kegs(g, a, speaker);
  if (!a.weighings.empty())
    g.inputs.push_back({"Pours, fillings, purges and tests in the journal since the account began",
                        InputOrigin::typed, say_age(a.weighings.front().at, speaker)});
  g.narrow = narrowing_gas(*a.use_per_day);
  g.narrow.emplace_back("Read the levels of the kegs on tap when you weigh the bottle.");
  return g;
}

Grounds gas_loss_grounds(const GasAccount& a, const Speaker& speaker) {
  if (!a.loss && !a.cant_tell) return {};
  Grounds g = grounds_by(laws::gas_account, "Unexplained",
                         a.loss ? speaker.printer.print(a.loss->per_day) + " a day"
                                : "can’t tell: " + say(*a.cant_tell, speaker));
  add_weighings(g, a, speaker);
  add_use(g, a, speaker);
  if (a.loss) {
    if (!a.alarm && a.loss->confidence.count() < physics::loss_sure_from)
      g.notes.emplace_back("Not enough to call it a loss, which is not to say that there is none.");
    g.notes.push_back("A steady loss of " +
                      speaker.printer.print(a.loss->smallest_visible_per_day) +
                      " a day would be called one 9 times in 10. The warning wants 99 %.");
    if (!a.loss->steady)
      g.notes.emplace_back(
          "The weighings don’t lie on one line: it began, ended or changed, or an "
          "entry is wrong or missing.");
    g.narrow = narrowing_gas(a.loss->per_day);
  }
  advise_weighing(g, a);
  return g;
}

Grounds gas_cost_grounds(const GasAccount& a, const Speaker& speaker) {
  if (!a.cost_minor_per_30_days || !a.loss) return {};
  Grounds g = grounds_by(laws::gas_account, "Costs in 30 days",
                         say_money(static_cast<double>(*a.cost_minor_per_30_days), speaker));
  add_loss(g, a, speaker);
  for (const cellar::BottleRecord& b : a.bottles) {
    if (b.price_minor)
      g.inputs.push_back(
          {"A full " + b.name + " at " + say_money(static_cast<double>(*b.price_minor), speaker),
           InputOrigin::typed,
           {}});
    if (b.price_minor && b.content)
      g.inputs.push_back(
          {"It holds " + speaker.printer.print(*b.content) + " when full", InputOrigin::typed, {}});
  }
  g.narrow = narrowing_gas(a.loss->per_day);
  return g;
}

Grounds gas_planned_grounds(const GasAccount& a, const Speaker& speaker) {
  if (a.planned.value().value() <= 0) return {};
  Grounds g = grounds_by(laws::gas_use, "For the kegs on it", speaker.printer.print(a.planned));
  add_kegs(g, a, speaker);
  if (a.gas_now)
    g.inputs.push_back(
        {"In it now, " + speaker.printer.print(*a.gas_now), InputOrigin::worked_out, {}});
  add_loss(g, a, speaker);
  g.notes.emplace_back("To push out and carbonate what is in them now, and two weeks of loss.");
  g.narrow = narrowing_gas(a.planned);
  return g;
}

Grounds gas_for_kegs_grounds(const cellar::KegsToFill& kegs, const GasAccount& a,
                             const Speaker& speaker) {
  const auto gas = cellar::gas_for(kegs, a);
  if (!gas) return {};
  const units::Printer& print = speaker.printer;
  Grounds g = grounds_by(laws::gas_use, "For the kegs still to fill", print.print(gas->for_them));
  g.inputs.push_back(
      {std::to_string(kegs.count) + " kegs of " + print.print(kegs.each), InputOrigin::typed, {}});
  g.inputs.push_back(
      {"Served at " + print.print(present(a.next_keg).pressure) + " and " +
           print.print(present(a.next_keg).temperature),
       a.planned.value().value() > 0 ? InputOrigin::worked_out : InputOrigin::assumed,
       {}});
  g.inputs.push_back(
      {"Filled still and carbonated to what most beer is served at", InputOrigin::assumed, {}});
  if (a.planned.value().value() > 0)
    g.inputs.push_back(
        {"For the kegs on it, " + print.print(a.planned), InputOrigin::worked_out, {}});
  if (a.gas_now)
    g.inputs.push_back({"In it now, " + print.print(*a.gas_now), InputOrigin::worked_out, {}});
  add_use(g, a, speaker);
  if (a.alarm) {
    add_loss(g, a, speaker);
    g.notes.emplace_back("The loss is taken to go on as long as the work takes.");
  } else if (a.loss) {
    g.notes.emplace_back("No loss is counted: what is unexplained is not enough to call it one.");
  }
  g.notes.emplace_back(
      "To carbonate them and push them out. Purging is not counted: a keg pushed out full of water "
      "takes about as much again as serving it.");
  g.narrow = narrowing_gas(gas->for_them);
  return g;
}

Grounds gas_gauge_grounds(const GasAccount& a, std::size_t bottle, const Speaker& speaker) {
  if (bottle >= a.told.size() || !a.told[bottle].gauge) return {};
  const cellar::ToldBottle& told = a.told[bottle];
  Grounds g = grounds_by(laws::bottle_gauge, "Its gauge", say(present(told.gauge), speaker));
  g.inputs.push_back({"The gauge on " + a.bottles[bottle].name, InputOrigin::read,
                      told.gauge_read ? say_age(*told.gauge_read, speaker) : std::string()});
  g.narrow.emplace_back("Weigh it: a scale tells what a gauge can’t.");
  return g;
}

Grounds liquid_full_grounds(const GasAccount& a, std::size_t bottle, const Speaker& speaker) {
  if (bottle >= a.told.size() || !a.told[bottle].liquid_full_at) return {};
  const cellar::ToldBottle& told = a.told[bottle];
  const cellar::BottleRecord& b = a.bottles[bottle];
  Grounds g = grounds_by(laws::bottle_gauge, "Full of liquid at",
                         speaker.printer.print(present(told.liquid_full_at)));
  if (b.fill_ratio)
    g.inputs.push_back(
        {b.name + " filled to " + speaker.printer.print(*b.fill_ratio), InputOrigin::typed, {}});
  if (told.place)
    g.inputs.push_back({"Its place at " + speaker.printer.print(*told.place),
                        told.place_read ? InputOrigin::read : InputOrigin::typed,
                        {}});
  g.notes.emplace_back(
      "Above that its pressure climbs steeply. Keep it cool; the label and local "
      "rules come first.");
  return g;
}

Grounds isolation_wait_grounds(const GasAccount& a, const Speaker& speaker) {
  if (!a.isolation_wait || !a.loss) return {};
  const units::Printer& print = speaker.printer;
  Grounds g =
      grounds_by(laws::isolation_wait, "Each branch shut for", print.print(*a.isolation_wait));
  add_loss(g, a, speaker);
  if (!a.loss->between.empty()) {
    const MassEstimate& lighter = a.loss->between.back().weighed;
    g.inputs.push_back(
        {"Lighter between the last two weighings by " + print.print(lighter), InputOrigin::read,
         a.weighings.empty() ? std::string() : say_age(a.weighings.back().at, speaker)});
    g.notes.push_back("Weighing before and after may be off by " + print.print(lighter.error()) +
                      "; to show, three times that have to be lost, " +
                      print.print(cellar::isolation_shows_at * lighter.error()) + ".");
    if (!(*a.isolation_wait > cellar::isolation_least))
      g.notes.emplace_back("This scale would show it sooner: half a day is the least.");
    g.narrow = narrowing_gas(lighter);
  }
  g.narrow.emplace_back("A finer scale shortens the wait.");
  return g;
}

}  // namespace ullage::report
