// SPDX-License-Identifier: GPL-3.0-or-later
//
// More CO2 than the range: vents with waits between, and what else there is.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/cellar/suggest.h"
#include "core/physics/carbonation.h"
#include "core/physics/rescue.h"
#include "core/report/cards/card_parts.h"
#include "core/units/present.h"

namespace ullage::report {
namespace {

using cellar::Instant;
using physics::OverCarbonated;
using units::Printer;

// A room; warmer beer is not asked for.
units::Temperature rescue_room() { return units::celsius(20); }

// Vents since the gas was last let in, or since the beer is in the keg.
struct RescueVents {
  int count = 0;
  std::optional<Instant> last;
};

RescueVents rescue_vents(const KegSubject& s, const cellar::Journal& journal) {
  RescueVents out;
  for (const cellar::Entry* e : journal.story(cellar::subject(s.keg.record.keg))) {
    const Instant at = e->header.happened_at;
    if (at > s.speaker.now) break;
    if (at < present(s.keg.contents).since) continue;
    if (holds_alternative<cellar::GasSet>(e->payload)) out = {};
    if (!holds_alternative<cellar::Vented>(e->payload)) continue;
    ++out.count;
    out.last = at;
  }
  return out;
}

units::Co2Volumes rescue_target(const cellar::Co2State& co2) {
  return units::volumes_of_co2(
      (present(co2.target_low).count() + present(co2.target_high).count()) / 2);
}

// What the beer holds once it is at rest with its headspace: after a vent that is
// less than what it has now.
units::Estimate<units::Co2Volumes> rescue_co2(const KegSubject& s, const RescueVents& vents) {
  const cellar::Co2State& co2 = s.keg.co2;
  if (s.keg.gas.on || vents.count == 0 || !co2.settles_at) return present(co2.now);
  return {*co2.settles_at, present(co2.now).contributions()};
}

physics::Result<physics::LogEstimate<units::Duration>> rescue_pace(const KegSubject& s) {
  if (s.keg.co2.uptake) {
    const cellar::UptakeBand& b = s.keg.co2.uptake->learned;
    const double factor = std::sqrt(units::in_seconds(b.high) / units::in_seconds(b.low));
    return physics::LogEstimate<units::Duration>(b.likely, factor,
                                                 {s.keg.record.tag + ": carbonation rate"});
  }
  const auto usual = physics::carbonation_priors(
      s.keg.record.brimful, present(s.keg.level.left).value(), s.keg.record.tag);
  if (!usual) return std::unexpected(usual.error());
  return usual->resting;
}

// Where no further vent is worth it: nearer to the middle of the range than to its top.
units::Co2Volumes rescue_near_enough(const cellar::Co2State& co2) {
  return units::volumes_of_co2((rescue_target(co2).count() + present(co2.target_high).count()) / 2);
}

Grounds rescue_grounds(const KegSubject& s, const OverCarbonated& over, std::string name,
                       std::string answer) {
  Grounds g = grounds_by(cards::venting_law, std::move(name), std::move(answer));
  const Printer& print = s.speaker.printer;
  g.inputs.push_back({"CO₂ at rest " + print.print(over.co2), InputOrigin::worked_out, {}});
  g.inputs.push_back(
      {"Down to " + print.print(rescue_target(s.keg.co2)) + ", the middle of its range",
       InputOrigin::typed,
       {}});
  g.inputs.push_back(cards::level_input(s));
  g.inputs.push_back(cards::size_input(s));
  g.inputs.push_back(cards::beer_temperature_input(s));
  g.inputs.push_back(cards::air_input(s));
  return g;
}

std::string say_wait(const physics::LogEstimate<units::Duration>& t, const Printer& print) {
  return fmt::format("{} ({})", print.print(t.median()), print.print_range(t.low(), t.high()));
}

// One card being written.
struct RescueWriter {
  const KegSubject& s;
  const OverCarbonated& over;
  const RescueVents& vents;
  KegCard card = {};

  [[nodiscard]] const Printer& print() const { return s.speaker.printer; }

  Grounds& figure(const std::string& name, const std::string& value) {
    card.figures.push_back({name, value, rescue_grounds(s, over, name, value), {}});
    return card.figures.back().grounds;
  }

  void tell_vents(const physics::VentPlan& plan, const physics::VentedEnd& end) {
    const std::string wait = say_wait(plan.wait, print());
    tell_verdict(plan);
    figure(vents.count == 0 ? "Vents" : "Vents still to do",
           cards::say_count(plan.vents, plan.fewest, plan.most))
        .narrow = narrowing(over.co2);
    Grounds& pace = figure("Wait after each", wait);
    pace.notes.emplace_back("Until the gauge is 95 % of the way back.");
    pace.narrow.emplace_back(
        "Watch the gauge after the first vent: when it stands still, the wait is over.");
    const std::string last = print().print(end.last_to);
    figure("Let down to", plan.vents == 1 ? last
                                          : fmt::format("{}, the last time to {}",
                                                        print().print(units::gauge_psi(0)), last));
    figure("Then it comes back to", print().print(end.after_first))
        .notes.emplace_back("After the first vent and its wait; a check of the reckoning.");
    figure("CO₂ in the end", print().print(end.co2)).narrow = narrowing(end.co2);
    figure("Standing at", print().print(end.at_rest));
    offer_acts(plan.vents == 1 ? end.last_to : units::gauge_psi(0));
  }

  void tell_verdict(const physics::VentPlan& plan) {
    const std::string so_far = vents.count == 0
                                   ? std::string()
                                   : fmt::format("Vented {} {}, last {}; ", vents.count,
                                                 vents.count == 1 ? "time" : "times",
                                                 say_age(present(vents.last), s.speaker));
    const std::string more =
        fmt::format("{}{} {}", cards::say_count(plan.vents, plan.fewest, plan.most),
                    vents.count == 0 ? "" : " more", cards::plural(plan.vents, "vent"));
    if (vents.last && !s.keg.gas.on) {
      const Instant ready = cellar::after(*vents.last, plan.wait.median());
      if (ready > s.speaker.now) {
        card.verdict =
            fmt::format("{}wait until about {}, then {}", so_far, say_time(ready, s.speaker), more);
        return;
      }
    }
    card.verdict =
        vents.count == 0 ? fmt::format("{}, gas off, with a wait after each", more) : so_far + more;
  }

  void offer_acts(units::GaugePressure to) {
    const cellar::KegId id = s.keg.record.keg;
    if (s.keg.gas.on) {
      card.notes.emplace_back("Take the gas off first, or the regulator fills up what you vent.");
      card.acts.push_back({"Log the gas off…", cellar::keg_task<cellar::GasOff>(id)});
    }
    cellar::Vented vent;
    vent.to_pressure = to;
    card.acts.push_back({"Log a vent…", cellar::keg_task<cellar::Vented>(id, vent)});
    card.acts.push_back(cards::read_pressure(s));
  }

  // No more vents: it comes down by itself.
  void tell_enough() {
    const std::string rests = print().print(over.co2);
    card.verdict = fmt::format("Vented {} {}: enough, it comes to rest at {}", vents.count,
                               vents.count == 1 ? "time" : "times", rests);
    figure("CO₂ in the end", rests).narrow = narrowing(over.co2);
    card.notes.emplace_back("Leave the gas off until the gauge stands still.");
    card.acts.push_back(cards::read_pressure(s));
  }

  // A number of another way down, with the errors of what it starts from.
  template <class Plan, class Q>
  [[nodiscard]] auto with_errors(physics::Result<Plan> (*plan)(const OverCarbonated&),
                                 Q Plan::* number) const {
    return units::try_propagate(
        [&](units::Volume beer, units::Co2Volumes co2, units::Temperature t) -> physics::Result<Q> {
          OverCarbonated at = over;
          at.beer = units::Estimate(beer);
          at.co2 = units::Estimate(co2);
          at.temperature = units::Estimate(t);
          const auto planned = plan(at);
          if (!planned) return std::unexpected(planned.error());
          return *planned.*number;
        },
        over.beer, over.co2, over.temperature);
  }

  void tell_held() {
    const auto held = physics::hold_at_target(over);
    const auto setting = with_errors(&physics::hold_at_target, &physics::HeldPlan::setting);
    if (!held || !setting) return;
    Grounds& g = figure("Or a relief valve set to",
                        fmt::format("{}: near it after {}", print().print(*setting),
                                    say_wait(held->within, print())));
    g.notes.emplace_back("Nothing to count, and it can’t go too far.");
    g.narrow = narrowing(*setting);
  }

  void tell_served() {
    const auto poured = with_errors(&physics::serve_to_target, &physics::ServePlan::drawn);
    const auto stands = with_errors(&physics::serve_to_target, &physics::ServePlan::pressure);
    const bool sure = poured && stands;
    Grounds& g =
        figure("Or serve it down",
               sure ? fmt::format("{} poured with the gas off; then it stands at {}",
                                  print().print(*poured), print().print(*stands))
                    : std::string("can’t be relied on: it may be empty, or pour no more, before"));
    if (sure) g.narrow = narrowing(*poured);
  }

  void tell_warmed() {
    if (over.temperature.value() > rescue_room()) return;
    OverCarbonated warm = over;
    warm.temperature =
        units::Estimate<units::Temperature>(rescue_room(), over.temperature.contributions());
    const auto plan = physics::vents_to_target(warm);
    if (!plan) return;
    const units::GaugePressure stands = plan->steps.front().before;
    const std::string name = "Or warm it to " + print().print(rescue_room());
    const auto& rated = s.keg.record.rated_pressure;
    if (rated && stands > *rated) {
      figure(name, fmt::format("no: it would stand at {}, and is rated for {}",
                               print().print(stands), print().print(*rated)));
      return;
    }
    figure(name, fmt::format("{} {}, but it then stands at {}",
                             cards::say_count(plan->vents, plan->fewest, plan->most),
                             cards::plural(plan->vents, "vent"), print().print(stands)));
    if (!rated) {
      card.figures.back().grounds.notes.emplace_back(
          "Look at the pressure stamped on the keg before you warm it.");
    }
  }

  void caution() {
    card.cautions.emplace_back(
        "Open the relief valve a little at a time, face away from it, in a well-aired room: CO₂ "
        "collects low. Stop when foam comes.");
  }
};

}  // namespace

std::optional<KegCard> rescue_card(const KegSubject& s, const cellar::Journal& journal) {
  const cellar::KegStatus& keg = s.keg;
  if (!keg.contents || keg.co2.verdict != cellar::Co2Verdict::above) return std::nullopt;
  if (!keg.co2.now || !keg.co2.target_low || !keg.co2.target_high) return std::nullopt;
  if (!keg.level.left)
    return cards::cant_tell("how many vents it takes hangs on how full it is",
                            {cards::weigh_it(s)});
  if (!keg.beer_temperature)
    return cards::cant_tell("its temperature is not known", {cards::read_pressure(s)});
  const auto air = cards::air_of(s);
  if (!air) return cards::cant_tell("the altitude is beyond what the equation covers");
  const auto pace = rescue_pace(s);
  if (!pace) return cards::cant_tell(cards::why_refused(pace.error(), s.speaker.printer));
  const RescueVents vents = rescue_vents(s, journal);
  const OverCarbonated over{keg.record.brimful,
                            *keg.level.left,
                            rescue_co2(s, vents),
                            *keg.beer_temperature,
                            *air,
                            rescue_target(keg.co2),
                            *pace};
  RescueWriter write{s, over, vents};
  if (vents.count > 0 && over.co2.value() <= rescue_near_enough(keg.co2)) {
    write.tell_enough();
    return std::move(write.card);
  }
  const auto plan = physics::vents_to_target(over);
  if (!plan) {
    return cards::cant_tell(cards::why_refused(plan.error(), s.speaker.printer),
                            {cards::weigh_it(s), cards::read_pressure(s)});
  }
  const auto end = physics::end_of_vents(over, *plan);
  if (!end) {
    return cards::cant_tell(cards::why_refused(end.error(), s.speaker.printer),
                            {cards::weigh_it(s), cards::read_pressure(s)});
  }
  write.tell_vents(*plan, *end);
  write.tell_held();
  write.tell_served();
  write.tell_warmed();
  write.caution();
  return std::move(write.card);
}

}  // namespace ullage::report
