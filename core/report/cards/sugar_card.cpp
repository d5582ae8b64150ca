// SPDX-License-Identifier: GPL-3.0-or-later
//
// Beer to be carbonated by sugar: grams for its range, or what the sugar that is
// in it comes to.
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "core/cellar/suggest.h"
#include "core/physics/priming.h"
#include "core/report/cards/card_parts.h"
#include "core/units/present.h"

namespace ullage::report {
namespace {

using cellar::SugarKind;
using physics::PrimingPlan;
using physics::PrimingQuestion;
using units::Printer;

constexpr double sugar_warmest_error = 1.0;          // K, of a warmest that was written down
constexpr double sugar_usual_warmest = 20.0;         // °C, where nobody wrote it down
constexpr double sugar_unknown_error = 6.0;          // K about it; common practice, no source
constexpr double sugar_slow_below = 15.0;            // °C: yeast takes weeks; common practice
constexpr double sugar_extract_worth_minding = 0.1;  // volumes still to come by themselves

struct SugarName {
  SugarKind kind;
  physics::Sugar sugar;
  const char* name;
};
constexpr std::array sugar_names{
    SugarName{SugarKind::sucrose, physics::Sugar::sucrose, "Table sugar"},
    SugarName{SugarKind::glucose, physics::Sugar::glucose, "Dextrose, dry"},
    SugarName{SugarKind::glucose_monohydrate, physics::Sugar::glucose_monohydrate,
              "Dextrose with its water"},
    SugarName{SugarKind::dry_malt_extract, physics::Sugar::dry_malt_extract, "Dry malt extract"}};

const SugarName& sugar_name_of(SugarKind kind) {
  return *std::find_if(sugar_names.begin(), sugar_names.end(),
                       [&](const SugarName& n) { return n.kind == kind; });
}

// What the journal says of how it was filled and what was done since.
struct SugarStory {
  const cellar::Filled* filled = nullptr;
  bool gas_was_set = false;
  std::vector<const cellar::Entry*> primed;
};

SugarStory sugar_story(const KegSubject& s, const cellar::Journal& journal) {
  SugarStory out;
  for (const cellar::Entry* e : journal.story(cellar::subject(s.keg.record.keg))) {
    if (e->header.happened_at > s.speaker.now) break;
    if (const auto* f = get_if<cellar::Filled>(&e->payload)) {
      out = {};
      out.filled = f;
    } else if (const auto* g = get_if<cellar::GasSet>(&e->payload)) {
      out.gas_was_set = out.gas_was_set || units::in_pascals(g->pressure) > 0;
    } else if (holds_alternative<cellar::Primed>(e->payload)) {
      out.primed.push_back(e);
    }
  }
  return out;
}

struct SugarWarmest {
  units::Estimate<units::Temperature> at;
  GroundsInput input;
};

SugarWarmest sugar_warmest(const KegSubject& s, const cellar::Filled& filled) {
  const units::ErrorSource source{s.keg.record.tag + ": warmest after fermentation"};
  const Printer& print = s.speaker.printer;
  const auto& written = present(s.keg.contents).batch_record.warmest_after_fermentation;
  if (written) {
    return {units::Estimate(*written).with(source, sugar_warmest_error),
            {"Warmest after fermentation " + print.print(*written), InputOrigin::typed, {}}};
  }
  units::Temperature usual = units::celsius(sugar_usual_warmest);
  if (filled.temperature) usual = std::max(usual, *filled.temperature);
  const auto at = units::Estimate(usual).with(source, sugar_unknown_error);
  return {at, {"Warmest after fermentation " + print.print(at), InputOrigin::assumed, {}}};
}

// Where the range shall hold: the coldest place there is, or where it stands.
struct SugarServed {
  units::Temperature at;
  std::string where;
};
SugarServed sugar_served(const KegSubject& s) {
  SugarServed out{present(s.keg.beer_temperature).value(), "where it stands"};
  for (const cellar::PlaceStatus& p : s.cellar.places) {
    if (p.temperature && *p.temperature < out.at) out = {*p.temperature, p.record.name};
  }
  return out;
}

struct SugarWriter {
  const KegSubject& s;
  PrimingQuestion ask;
  SugarWarmest warmest;
  SugarServed served;
  KegCard card = {};

  [[nodiscard]] const Printer& print() const { return s.speaker.printer; }

  [[nodiscard]] Grounds grounds(std::string name, std::string answer) const {
    Grounds g = grounds_by(cards::sugar_law, std::move(name), std::move(answer));
    g.inputs.push_back({fmt::format("To hold {} at {} ({})", print().print(ask.target),
                                    print().print(served.at), served.where),
                        InputOrigin::typed,
                        {}});
    g.inputs.push_back(warmest.input);
    g.inputs.push_back(cards::level_input(s));
    g.inputs.push_back(cards::size_input(s));
    g.inputs.push_back(cards::beer_temperature_input(s));
    g.inputs.push_back({ask.headspace_purged ? "Headspace of CO₂ when filled (closed transfer)"
                                             : "Headspace of air when filled (open transfer)",
                        InputOrigin::typed,
                        {}});
    g.inputs.push_back(cards::air_input(s));
    return g;
  }
  Grounds& figure(const std::string& name, const std::string& value) {
    card.figures.push_back({name, value, grounds(name, value), {}});
    return card.figures.back().grounds;
  }

  [[nodiscard]] physics::Result<PrimingPlan> plan_with(physics::Sugar sugar) const {
    PrimingQuestion q = ask;
    q.sugar = sugar;
    return physics::priming(q);
  }

  // Beside sugar and residual, the level: more beer wants more sugar.
  [[nodiscard]] units::Estimate<units::Mass> with_level(const PrimingPlan& plan,
                                                        physics::Sugar sugar) const {
    units::Estimate<units::Mass> grams = plan.sugar;
    const auto& left = present(s.keg.level.left);
    for (const units::Contribution& c : left.contributions()) {
      PrimingQuestion up = ask;
      up.sugar = sugar;
      up.beer = left.shifted(c.source, 1.0);
      const auto then = physics::priming(up);
      if (then) grams = grams.with_error(c.source, then->sugar.value() - plan.sugar.value());
    }
    return grams;
  }

  void tell_what_is_there(const units::Estimate<units::Co2Volumes>& residual) {
    figure("Left from fermentation", print().print(residual)).narrow = narrowing(residual);
    const auto head =
        units::propagate([&](units::Volume beer) -> units::Volume { return ask.brimful - beer; },
                         present(s.keg.level.left));
    figure("Headspace", print().print(head)).narrow = narrowing(head);
  }

  void tell_grams() {
    const auto first = plan_with(physics::Sugar::sucrose);
    if (!first) {
      refuse(first.error());
      return;
    }
    card.verdict = fmt::format("{} of table sugar for {} at {}",
                               print().print(with_level(*first, physics::Sugar::sucrose)),
                               print().print(ask.target), print().print(served.at));
    for (const SugarName& each : sugar_names) {
      const auto plan = plan_with(each.sugar);
      if (!plan) continue;
      const auto grams = with_level(*plan, each.sugar);
      Grounds& g = figure(each.name, print().print(grams));
      const auto yield = physics::sugar_yield(each.sugar);
      g.inputs.push_back(
          {fmt::format("A gram gives {} ± {} g of CO₂", print().number(yield.value().count(), 2),
                       print().number(yield.half_width(), 2)),
           InputOrigin::assumed,
           {}});
      g.notes.push_back(print().print(plan->for_headspace) + " of it fills the headspace.");
      g.narrow = narrowing(grams);
      cellar::Primed entry;
      entry.sugar = each.kind;
      entry.mass = units::grams(std::round(units::in_grams(plan->sugar.value())));
      card.figures.back().act =
          CardAct{"Log…", cellar::keg_task<cellar::Primed>(s.keg.record.keg, entry)};
    }
    tell_what_is_there(first->residual);
    tell_pressure(first->while_conditioning);
  }

  void refuse(const physics::RangeError& e) {
    if (e.subject == physics::Subject::co2 && e.value == ask.target.count()) {
      card.verdict = "No sugar: what fermentation left is as much as its range asks for";
      return;
    }
    card = cards::cant_tell(cards::why_refused(e, print()), {cards::weigh_it(s)});
  }

  void tell_pressure(const units::Estimate<units::GaugePressure>& p) {
    figure("Standing at, fermented out", print().print(p)).narrow = narrowing(p);
    const auto& rated = s.keg.record.rated_pressure;
    card.cautions.push_back(
        rated && p.high() > *rated
            ? fmt::format("It may reach {}; this keg is rated for {}. Use less, or keep it "
                          "cooler.",
                          print().print(p.high()), print().print(*rated))
        : rated
            ? fmt::format("Sugar makes pressure: about {} here, the keg is rated for {}. Relief "
                          "valve in order, and vent before you open it.",
                          print().print(p.value()), print().print(*rated))
            : std::string("Sugar makes pressure. Look at what is stamped on the keg, and vent "
                          "before you open it."));
    if (ask.conditions_at < units::celsius(sugar_slow_below)) {
      card.notes.push_back(fmt::format(
          "At {} yeast works slowly or not at all; keep it warm until it has fermented.",
          print().print(ask.conditions_at)));
    }
  }

  // Extract that is still to ferment makes gas as well.
  void tell_extract(const cellar::Filled& filled) {
    const auto& final = present(s.keg.contents).batch_record.final_gravity;
    if (!filled.gravity || !final) return;
    const auto more = physics::co2_still_to_come(*filled.gravity, *final);
    if (!more || more->count() < sugar_extract_worth_minding) return;
    card.cautions.push_back(
        fmt::format("It was filled at {}, above its final {}: fermenting out gives {} by itself, "
                    "on top of any sugar.",
                    print().print(*filled.gravity), print().print(*final), print().print(*more)));
  }

  void tell_primed(const std::vector<const cellar::Entry*>& primed) {
    const auto& last = get<cellar::Primed>(primed.back()->payload);
    const SugarName& kind = sugar_name_of(last.sugar);
    const double yield = physics::sugar_yield(kind.sugar).value().count();
    units::Mass sum = units::grams(0);  // as if all were of the last kind
    for (const cellar::Entry* e : primed) {
      const auto& p = get<cellar::Primed>(e->payload);
      sum += p.mass * (physics::sugar_yield(sugar_name_of(p.sugar).sugar).value().count() / yield);
    }
    ask.sugar = kind.sugar;
    const auto comes_to = physics::primed_to(ask, sum);
    if (!comes_to) {
      refuse(comes_to.error());
      return;
    }
    const std::string age = say_age(primed.back()->header.happened_at, s.speaker);
    card.verdict = fmt::format("Primed {}: comes to {} at {}", age, print().print(*comes_to),
                               print().print(served.at));
    Grounds& g = figure("CO₂ once it has fermented", print().print(*comes_to));
    g.inputs.push_back(
        {fmt::format("{}: {}", kind.name, print().print(sum)), InputOrigin::typed, age});
    g.notes.push_back(
        "Its range is " +
        print().print_range(present(s.keg.co2.target_low), present(s.keg.co2.target_high)) + ".");
    g.narrow = narrowing(*comes_to);
    const auto residual = physics::residual_co2(ask.warmest, ask.ambient);
    if (residual) tell_what_is_there(*residual);
    card.notes.emplace_back("Sugar works at its own pace: a pressure at rest tells how far it is.");
    card.acts.push_back(cards::read_pressure(s));
    card.cautions.emplace_back("Vent before you open the keg.");
  }
};

}  // namespace

std::optional<KegCard> sugar_card(const KegSubject& s, const cellar::Journal& journal) {
  const cellar::KegStatus& keg = s.keg;
  if (!keg.contents || !keg.contents->filled_by_us || keg.gas.on || keg.line) return std::nullopt;
  const SugarStory story = sugar_story(s, journal);
  if (story.filled == nullptr) return std::nullopt;
  const bool still = story.filled->co2_at_fill == cellar::Co2AtFill::still;
  if (story.primed.empty() && (!still || story.gas_was_set)) return std::nullopt;
  // Once a reading has told what it came to, that stands in its curve.
  if (!story.primed.empty() && keg.co2.now) return std::nullopt;
  const cellar::Co2State& co2 = keg.co2;
  if (!co2.target_low || !co2.target_high)
    return cards::cant_tell("its beer has no CO₂ range yet; say one on the Beers page");
  if (!keg.level.left)
    return cards::cant_tell("how much beer it holds is not known", {cards::weigh_it(s)});
  if (!keg.beer_temperature)
    return cards::cant_tell(
        "its temperature is not known; say where it stands, and how warm it "
        "is there");
  const auto air = cards::air_of(s);
  if (!air) return cards::cant_tell("the altitude is beyond what the equation covers");
  const SugarWarmest warmest = sugar_warmest(s, *story.filled);
  const SugarServed served = sugar_served(s);
  PrimingQuestion ask;
  ask.brimful = keg.record.brimful;
  ask.beer = keg.level.left->value();
  ask.warmest = warmest.at;
  ask.ambient = *air;
  ask.target = units::volumes_of_co2((co2.target_low->count() + co2.target_high->count()) / 2);
  ask.holds_at = served.at;
  ask.conditions_at = keg.beer_temperature->value();
  ask.headspace_purged = story.filled->transfer == cellar::Transfer::closed;
  SugarWriter write{s, ask, warmest, served};
  if (story.primed.empty()) {
    write.tell_grams();
    write.tell_extract(*story.filled);
  } else {
    write.tell_primed(story.primed);
  }
  return std::move(write.card);
}

}  // namespace ullage::report
