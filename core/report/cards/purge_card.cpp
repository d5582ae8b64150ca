// SPDX-License-Identifier: GPL-3.0-or-later
//
// An empty, clean keg: the cheapest way to the oxygen wanted; after the purge,
// what it left and what it took.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <span>

#include "core/cellar/purge_story.h"
#include "core/cellar/suggest.h"
#include "core/physics/gas_use.h"
#include "core/physics/purge_plan.h"
#include "core/report/cards/card_parts.h"
#include "core/report/regional.h"
#include "core/units/present.h"

namespace ullage::report {
namespace {

using physics::PurgeOutcome;
using physics::PurgePlan;
using physics::PurgeWay;
using units::Printer;

constexpr int purge_cycles_drawn = 10;
constexpr std::size_t purge_ways_told = 4;
constexpr double purge_usual_celsius = 15;  // as the journal's other purge figures take it

struct PurgePlace {
  units::Temperature at = units::celsius(purge_usual_celsius);
  GroundsInput input;
};

PurgePlace purge_place(const KegSubject& s) {
  PurgePlace out;
  const auto say_at = [&] { return "Keg and gas at " + s.speaker.printer.print(out.at); };
  const cellar::PlaceStatus* place = s.keg.place ? s.cellar.find(s.keg.place->place) : nullptr;
  if (place != nullptr && place->temperature) {
    out.at = *place->temperature;
    out.input = {say_at(), place->read_at ? InputOrigin::read : InputOrigin::typed,
                 place->read_at ? say_age(*place->read_at, s.speaker) : std::string()};
  } else {
    out.input = {say_at(), InputOrigin::assumed, {}};
  }
  return out;
}

std::string purge_times(int n) {
  return n == 1 ? "once" : n == 2 ? "twice" : fmt::format("{} times", n);
}

std::string purge_way_words(const PurgePlan& p, const Printer& print, units::GaugePressure push) {
  switch (p.way) {
    case PurgeWay::cycles:
      return fmt::format("fill to {} and vent, {}", print.print(p.cycles.high),
                         purge_times(p.cycles.cycles));
    case PurgeWay::sweep:
      return fmt::format(
          "sweep {} keg volumes of gas through",
          print.number(p.vessel_volumes, p.vessel_volumes == std::floor(p.vessel_volumes) ? 0 : 1));
    case PurgeWay::push_then_cycles:
      return fmt::format(
          "fill it to the brim with sanitiser, push that out with {}, then fill to {} and vent, {}",
          print.print(push), print.print(p.cycles.high), purge_times(p.cycles.cycles));
    default:
      return fmt::format("fill it to the brim with sanitiser and push that out with {}",
                         print.print(push));
  }
}

std::string purge_short_name(const PurgePlan& p, const Printer& print) {
  switch (p.way) {
    case PurgeWay::cycles:
      return fmt::format("Or {} × {}", p.cycles.cycles, print.print(p.cycles.high));
    case PurgeWay::sweep:
      return "Or a sweep";
    case PurgeWay::push_then_cycles:
      return fmt::format("Or push liquid out, then {} × {}", p.cycles.cycles,
                         print.print(p.cycles.high));
    default:
      return "Or push liquid out";
  }
}

std::string purge_done_words(const cellar::Entry& e, const Printer& print) {
  const auto act = cellar::purge_act(get<cellar::Purged>(e.payload));
  if (!act) return "Purged, not said how much: passed over";
  if (const auto* c = get_if<physics::PressureCycles>(&*act))
    return fmt::format("Filled to {} and vented, {}", print.print(c->high), purge_times(c->cycles));
  if (const auto* sweep = get_if<physics::Sweep>(&*act))
    return fmt::format("{} keg volumes of gas swept through",
                       print.number(sweep->vessel_volumes, 1));
  return fmt::format("Sanitiser pushed out with {}",
                     print.print(get<physics::LiquidPush>(*act).pressure));
}

units::Estimate<units::Mass> purge_gas(const PurgeOutcome& out) {
  return physics::gas_to_purge(out.co2_used, {"purge: gas used"});
}

std::string purge_left(const PurgeOutcome& out, const Printer& print) {
  return slate::print(slate::between("", out.oxygen, out.best, out.worst), print);
}

std::string purge_in_beer(const PurgeOutcome& out, const Printer& print) {
  // It scales with the oxygen left.
  const double share = out.oxygen.count() > 0 ? out.best.count() / out.oxygen.count() : 1;
  return slate::print(
      slate::between("", out.if_all_in_beer,
                     physics::milligrams_of_oxygen_per_litre(out.if_all_in_beer.count() * share),
                     out.if_all_in_beer_worst),
      print);
}

std::optional<cellar::SuggestedTask> purge_task(const PurgePlan& p, cellar::KegId keg,
                                                units::GaugePressure push) {
  cellar::Purged purge;
  switch (p.way) {
    case PurgeWay::cycles:
      purge.cycles = p.cycles.cycles;
      purge.pressure = p.cycles.high;
      break;
    case PurgeWay::sweep:
      purge.method = cellar::PurgeMethod::swept;
      purge.vessel_volumes = p.vessel_volumes;
      break;
    case PurgeWay::liquid_push:
      purge.method = cellar::PurgeMethod::pushed_liquid;
      purge.pressure = push;
      break;
    case PurgeWay::push_then_cycles:
      return std::nullopt;
  }
  return cellar::keg_task<cellar::Purged>(keg, purge);
}

struct PurgeWriter {
  const KegSubject& s;
  physics::Vessel vessel;
  PurgePlace place;
  units::MoleFraction target;
  std::vector<const cellar::Entry*> purges = {};  // that count, in their order
  std::optional<PurgeOutcome> done = {};          // what they left
  KegCard card = {};

  [[nodiscard]] const Printer& print() const { return s.speaker.printer; }

  [[nodiscard]] Grounds grounds(std::string name, std::string answer) const {
    Grounds g = grounds_by(laws::purging, std::move(name), std::move(answer));
    g.inputs.push_back(cards::size_input(s));
    g.inputs.push_back(place.input);
    g.inputs.push_back(cards::air_input(s));
    g.inputs.push_back({"Oxygen in the gas " + slate::print(physics::supply_oxygen, print()),
                        InputOrigin::assumed,
                        {}});
    const physics::Mixing m = physics::cycle_mixing();
    g.inputs.push_back({fmt::format("Mixing in a fill {} ({} to {})", print().print(m.likely),
                                    print().print(m.worst), print().print(m.best)),
                        InputOrigin::assumed,
                        {}});
    for (const cellar::Entry* e : purges)
      g.inputs.push_back({purge_done_words(*e, print()), InputOrigin::typed,
                          say_age(e->header.happened_at, s.speaker)});
    return g;
  }

  Grounds& figure(const std::string& name, const std::string& value) {
    card.figures.push_back({name, value, grounds(name, value), {}});
    return card.figures.back().grounds;
  }

  void tell_outcome(const PurgeOutcome& out) {
    Grounds& left = figure("Oxygen left", purge_left(out, print()));
    left.notes.emplace_back("How well the gas mixes is all of its range.");
    left.narrow.emplace_back("A meter at the relief valve; without one, make a cycle more.");
    Grounds& beer = figure("In the beer, if it takes all up", purge_in_beer(out, print()));
    beer.inputs.push_back(
        {"Beer to go in: " + print().print(vessel.beer), InputOrigin::assumed, {}});
    beer.notes.emplace_back(
        "Most of it leaves through the relief valve while the keg fills. The beer’s own oxygen "
        "comes on top.");
    const auto gas = purge_gas(out);
    Grounds& used = figure("CO₂ it takes", print().print(gas));
    used.notes.emplace_back("By the arithmetic, within 15 % (assumed).");
    used.narrow = narrowing(gas);
  }

  [[nodiscard]] physics::PurgeMeans means() const {
    physics::PurgeMeans m;
    const auto& rated = s.keg.record.rated_pressure;
    if (rated) std::erase_if(m.pressures, [&](const auto& p) { return p > *rated; });
    return m;
  }

  // From what there was before the cycles.
  void draw(const physics::PressureCycles& cycles, const std::optional<PurgeOutcome>& before) {
    card.chart = {.title = "Oxygen by cycle, filled to " + print().print(cycles.high),
                  .x_title = "Cycles",
                  .y_title = "Oxygen",
                  .log_y = true,
                  .dots = true};
    for (int n = 0; n <= std::max(cycles.cycles, purge_cycles_drawn); ++n) {
      const auto at =
          physics::purge_on(before, vessel, physics::PressureCycles{n, cycles.high, cycles.low});
      if (!at) break;
      card.chart.points.push_back(
          {slate::Count{static_cast<double>(n)}, at->best, at->oxygen, at->worst});
    }
    if (card.chart.points.empty()) card.chart = {};
  }

  void plan() {
    const physics::PurgeMeans can = means();
    const auto all = physics::purge_plans(target, vessel, can, done);
    const std::string wanted = slate::print(target, print());
    if (!all) {
      card = cards::cant_tell(fmt::format("no purge gets to {}; the gas itself has {}", wanted,
                                          slate::print(physics::supply_oxygen, print())));
      return;
    }
    const std::vector<PurgePlan>& ways = *all;
    if (ways.empty()) {
      card = cards::cant_tell(fmt::format("no way within 60 cycles gets to {}", wanted));
      return;
    }
    const PurgePlan& best = ways.front();
    card.verdict = fmt::format("For {} or less, least gas: {}", wanted,
                               regional(purge_way_words(best, print(), can.push), s.speaker.words));
    tell_outcome(best.outcome);
    offer_log(best, can.push);
    tell_other_ways(ways, can.push);
    for (const PurgePlan& p : ways) {
      if (p.way == PurgeWay::cycles) {
        draw(p.cycles, done);
        break;
      }
    }
    caution();
  }

  // One entry tells one way, so a push with cycles after it is two.
  void offer_log(const PurgePlan& best, units::GaugePressure push) {
    const cellar::KegId keg = s.keg.record.keg;
    if (auto task = purge_task(best, keg, push)) {
      card.acts.push_back({"Log this purge…", *std::move(task)});
      return;
    }
    PurgePlan part = best;
    part.way = PurgeWay::liquid_push;
    card.acts.push_back({"Log the push…", present(purge_task(part, keg, push))});
    part.way = PurgeWay::cycles;
    card.acts.push_back({"Log the cycles…", present(purge_task(part, keg, push))});
    card.notes.emplace_back(
        "Log one after the other: the cycles go on from what the push left, as long as the keg "
        "stays shut.");
  }

  void tell_other_ways(const std::vector<PurgePlan>& ways, units::GaugePressure push) {
    for (std::size_t i = 1; i < std::min(ways.size(), purge_ways_told); ++i) {
      const std::string name = purge_short_name(ways[i], print());
      const auto gas = purge_gas(ways[i].outcome);
      figure(name, fmt::format("{} of CO₂, {} left", print().print(gas),
                               slate::print(ways[i].outcome.oxygen, print())))
          .narrow = narrowing(gas);
      if (auto task = purge_task(ways[i], s.keg.record.keg, push))
        card.figures.back().act = CardAct{"Log…", *std::move(task)};
    }
  }

  void caution() {
    card.cautions.emplace_back("Vent outdoors or into a well-aired room; CO₂ collects low.");
    if (!s.keg.record.rated_pressure) {
      card.cautions.emplace_back("Look at the pressure stamped on the keg before you fill it.");
    }
  }

  // What the logged purges came to; whether that is enough.
  bool tell_logged() {
    done = cellar::left_by_purges(vessel, purges);
    if (!done) return false;
    const cellar::Entry& last = *purges.back();
    const bool enough = done->oxygen <= target;
    card.verdict = fmt::format("Purged {}: {} of oxygen left, {} the {} wanted",
                               say_age(last.header.happened_at, s.speaker),
                               slate::print(done->oxygen, print()), enough ? "within" : "above",
                               slate::print(target, print()));
    if (purges.size() > 1)
      card.notes.push_back(
          fmt::format("{} purges in a row, each on what the one before left.", purges.size()));
    const auto act = cellar::purge_act(get<cellar::Purged>(last.payload));
    const auto* cycles = act ? get_if<physics::PressureCycles>(&*act) : nullptr;
    if (cycles != nullptr)
      draw(*cycles, cellar::left_by_purges(vessel, std::span(purges).first(purges.size() - 1)));
    tell_outcome(*done);
    return enough;
  }
};

std::vector<const cellar::Entry*> purges_that_count(const KegSubject& s,
                                                    const cellar::Journal& journal) {
  std::vector<const cellar::Entry*> out;
  const auto take = [&](cellar::EntryId id) {
    const cellar::Entry* e = journal.find(id);
    if (e != nullptr && holds_alternative<cellar::Purged>(e->payload)) out.push_back(e);
  };
  for (const cellar::PreparationStep& step : s.keg.preparation) {
    if (step.kind != cellar::Purged::kind || !step.still_counts || !step.entry) continue;
    for (const cellar::EntryId id : step.goes_on_from) take(id);
    take(*step.entry);
  }
  return out;
}

}  // namespace

std::optional<KegCard> purge_card(const KegSubject& s, const cellar::Journal& journal,
                                  units::MoleFraction target) {
  using cellar::Phase;
  const Phase phase = s.keg.phase;
  if (s.keg.contents ||
      (phase != Phase::clean && phase != Phase::sanitised && phase != Phase::purged))
    return std::nullopt;
  if (!(units::in_litres(s.keg.record.brimful) > 0))
    return cards::cant_tell("how much the keg holds is not on record");
  const auto air = cards::air_of(s);
  if (!air) return cards::cant_tell("the altitude is beyond what the equation covers");
  const PurgePlace place = purge_place(s);
  const units::Volume beer = std::min(s.keg.record.nominal, s.keg.record.brimful);
  PurgeWriter write{s, {s.keg.record.brimful, beer, *air, place.at}, place, target};
  write.purges = purges_that_count(s, journal);
  if (!write.purges.empty()) {
    if (write.tell_logged()) return std::move(write.card);
    const std::string before = std::exchange(write.card.verdict, {});
    write.card = {};
    write.plan();
    if (!before.empty()) write.card.notes.insert(write.card.notes.begin(), before + ".");
    return std::move(write.card);
  }
  write.plan();
  return std::move(write.card);
}

}  // namespace ullage::report
