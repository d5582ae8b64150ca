// SPDX-License-Identifier: GPL-3.0-or-later
//
// An empty, clean keg: the cheapest way to the oxygen wanted; after the purge,
// what it left and what it took.
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

#include "core/cellar/purge_story.h"
#include "core/cellar/suggest.h"
#include "core/physics/purge_errors.h"
#include "core/report/cards/card_parts.h"
#include "core/report/cards/purge_words.h"
#include "core/report/regional.h"
#include "core/units/present.h"

namespace ullage::report {
namespace {

using physics::PurgeEstimate;
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

std::string purge_left(const PurgeOutcome& out, const Printer& print) {
  return slate::print(slate::between("", out.oxygen, out.best, out.worst), print);
}

std::string purge_in_beer(const PurgeEstimate& known, const Printer& print) {
  const PurgeOutcome& out = known.outcome;
  return slate::print(
      slate::between("", out.if_all_in_beer, known.if_all_in_beer_best, out.if_all_in_beer_worst),
      print);
}

std::optional<cellar::PurgeKnown> purge_known(const KegSubject& s) {
  const auto& cellar = s.cellar.cellar;
  const PurgePlace place = purge_place(s);
  return cellar::purge_known(s.keg.record, cellar ? cellar->altitude : units::metres(0), place.at,
                             place.input.origin != InputOrigin::assumed);
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
  cellar::PurgeKnown known;
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
      g.inputs.push_back({cards::purge_done_words(*e, print()), InputOrigin::typed,
                          say_age(e->header.happened_at, s.speaker)});
    return g;
  }

  Grounds& figure(const std::string& name, const std::string& value) {
    card.figures.push_back({name, value, grounds(name, value), {}});
    return card.figures.back().grounds;
  }

  void tell_outcome(const PurgeEstimate& out) {
    Grounds& left = figure("Oxygen left", purge_left(out.outcome, print()));
    left.notes.emplace_back(
        "How well the gas mixes is most of its range; dial, weather and temperature are in it.");
    left.narrow = narrowing_of(shares_of(out.oxygen_errors));
    left.narrow.emplace_back("A meter at the relief valve; without one, make a cycle more.");
    Grounds& beer = figure("In the beer, if it takes all up", purge_in_beer(out, print()));
    beer.narrow = narrowing_of(shares_of(out.in_beer_errors));
    beer.inputs.push_back(
        {"Beer to go in: " + print().print(known.vessel.beer), InputOrigin::assumed, {}});
    beer.notes.emplace_back(
        "Most of it leaves through the relief valve while the keg fills. The beer’s own oxygen "
        "comes on top.");
    Grounds& used = figure("CO₂ it takes", print().print(out.co2_used));
    used.notes.emplace_back("The arithmetic itself is taken to be within 15 % (assumed).");
    used.narrow = narrowing(out.co2_used);
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
      const auto at = known.by(
          std::array{physics::PurgeAct(physics::PressureCycles{n, cycles.high, cycles.low})},
          before);
      if (!at) break;
      const PurgeOutcome& left = at->outcome;
      card.chart.points.push_back(
          {slate::Count{static_cast<double>(n)}, left.best, left.oxygen, left.worst});
    }
    if (card.chart.points.empty()) card.chart = {};
  }

  void plan() {
    const physics::PurgeMeans can = means();
    const auto all = physics::purge_plans(target, known.plain(), can, done);
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
    card.verdict =
        fmt::format("For {} or less, least gas: {}", wanted,
                    regional(cards::purge_way_words(best, print(), can.push), s.speaker.words));
    if (const auto told = of_plan(best, can)) tell_outcome(*told);
    offer_log(best, can.push);
    tell_other_ways(ways, can);
    for (const PurgePlan& p : ways) {
      if (p.way == PurgeWay::cycles) {
        draw(p.cycles, done);
        break;
      }
    }
    caution();
  }

  // A push begins from air, whatever was done before it.
  [[nodiscard]] physics::Result<PurgeEstimate> of_plan(const PurgePlan& p,
                                                       const physics::PurgeMeans& can) const {
    return known.by(physics::acts_of(p, can), done);
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

  void tell_other_ways(const std::vector<PurgePlan>& ways, const physics::PurgeMeans& can) {
    for (std::size_t i = 1; i < std::min(ways.size(), purge_ways_told); ++i) {
      const auto told = of_plan(ways[i], can);
      if (!told) continue;
      figure(cards::purge_short_name(ways[i], print()),
             fmt::format("{} of CO₂, {} left", print().print(told->co2_used),
                         purge_left(told->outcome, print())))
          .narrow = narrowing(told->co2_used);
      if (auto task = purge_task(ways[i], s.keg.record.keg, can.push))
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
    const auto told = cellar::left_by_purges(known, purges);
    if (!told) return false;
    done = told->outcome;
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
    if (cycles != nullptr) {
      const auto before = cellar::left_by_purges(known, std::span(purges).first(purges.size() - 1));
      draw(*cycles, before ? std::optional(before->outcome) : std::nullopt);
    }
    tell_outcome(*told);
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
  const auto known = purge_known(s);
  if (!known) return cards::cant_tell("the altitude is beyond what the equation covers");
  PurgeWriter write{s, *known, purge_place(s), target};
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
