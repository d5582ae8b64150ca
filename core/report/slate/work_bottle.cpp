// SPDX-License-Identifier: GPL-3.0-or-later
//
// A gas bottle: what its gauge tells, and what two weighings say was lost.
#include <array>
#include <cmath>

#include "core/physics/co2_bottle.h"
#include "core/physics/gas_ledger.h"
#include "core/report/laws_slate.h"
#include "core/report/slate/fields.h"

namespace ullage::report::slate {
namespace {

using physics::GaugeTells;
using physics::Subject;
using units::Estimate;
using units::Printer;

constexpr auto gauge_subjects =
    std::to_array<SubjectField>({{Subject::temperature, "temperature"},
                                 {Subject::gauge_pressure, "pressure"},
                                 {Subject::absolute_pressure, "pressure"},
                                 {Subject::co2_fraction, "share"},
                                 {Subject::fraction, "fill"},
                                 {Subject::volume, "content"},
                                 {Subject::mass, "content"}});
constexpr auto account_subjects = std::to_array<SubjectField>(
    {{Subject::mass, "second"}, {Subject::duration, "between"}, {Subject::step_time, "between"}});

void tell_gauge(const physics::GaugeVerdict& verdict, const Inputs& in, Answer& a) {
  switch (verdict.tells) {
    case GaugeTells::nothing_while_liquid:
      a.values.push_back(in_words("Left in the bottle", "Can’t tell: anything up to full", true));
      if (verdict.least) a.values.push_back(exactly("At least", *verdict.least));
      a.sentences.emplace_back(
          "There is liquid in it, and while there is, the gauge shows how warm the bottle is and "
          "nothing else. Weigh it.");
      break;
    case GaugeTells::vapour_only:
      a.sentences.emplace_back("The liquid is gone: it falls fast from now on.");
      break;
    case GaugeTells::mixed_gas:
      a.sentences.emplace_back("Mixed gas is all gas: its gauge falls with what is drawn.");
      break;
    case GaugeTells::above_saturation:
      a.values.push_back(in_words("Left in the bottle", "Can’t tell", true));
      a.sentences.emplace_back(
          "More than CO₂ can show at this temperature: the bottle is warmer than that, too full, "
          "or "
          "holds another gas.");
      a.cautions.emplace_back("If it may be too full, keep it cool and have its supplier see it.");
      break;
  }
  if (verdict.gas) {
    a.values.push_back(estimated("Left in the bottle", *verdict.gas, true));
    const auto content = in.get<units::Mass>("content");
    a.values.push_back(estimated("Of a full one", units::propagate(
                                                      [content](units::Mass m) {
                                                        return units::fraction(
                                                            units::in_kilograms(m) /
                                                            units::in_kilograms(content));
                                                      },
                                                      *verdict.gas)));
  }
  if (verdict.saturation) {
    const auto shows = units::try_propagate(
        [](units::Temperature t,
           units::AbsolutePressure air) -> physics::Result<units::GaugePressure> {
          const auto s = physics::co2_saturation(t);
          if (!s) return std::unexpected(s.error());
          return units::GaugePressure::from_absolute(s->pressure, air);
        },
        on_thermometer(in, "temperature"), air_at(in));
    const auto plain = units::GaugePressure::from_absolute(*verdict.saturation, air_at(in).value());
    a.values.push_back(shows ? estimated("With liquid it would show", *shows)
                             : exactly("With liquid it would show", plain));
  }
}

Outcome bottle_gauge(const Inputs& in, const Printer& printer) {
  const auto fill = in.get<units::Fraction>("fill");
  const auto capacity = physics::water_capacity_for(in.get<units::Mass>("content"), fill);
  if (!capacity) return std::unexpected(problem_of(capacity.error(), gauge_subjects, in, printer));
  const physics::BottleGauge gauge{on_dial(in, "pressure"), on_thermometer(in, "temperature"),
                                   air_at(in).value()};
  const auto verdict = physics::what_gauge_tells(gauge, gas_share(in), *capacity, {"gas equation"});
  if (!verdict) return std::unexpected(problem_of(verdict.error(), gauge_subjects, in, printer));
  Answer a;
  tell_gauge(*verdict, in, a);
  if (const auto full_at = physics::liquid_full_temperature(fill)) {
    a.cautions.push_back("A full bottle of CO₂ is full of liquid from about " +
                         printer.print(*full_at) +
                         " on, and its pressure then rises steeply: never warm one, stand it up "
                         "and chain it.");
  }
  return a;
}

Estimate<units::Mass> weighed_in(const Inputs& in, std::string_view key, int n) {
  return Estimate(in.get<units::Mass>(key))
      .with_error({"scale: reading " + std::to_string(n)}, in.get<units::Mass>("scale"));
}

void tell_days_left(const Inputs& in, const physics::UnexplainedLoss& loss,
                    const Estimate<units::Mass>& used, const Estimate<units::Mass>& second,
                    const Printer& printer, Answer& a) {
  const auto tare = in.maybe<units::Mass>("tare");
  if (!tare) return;
  const double span = units::in_days(in.get<units::Duration>("between"));
  const physics::GasSpending spending{
      units::propagate([&](units::Mass m) { return units::Mass(m - *tare); }, second),
      units::propagate([&](units::Mass m) { return units::Mass(m / span); }, used), loss.per_day};
  const auto left = physics::days_left(spending);
  if (!left || !left->likely) return;
  if (left->earliest && left->latest) {
    a.values.push_back(
        because(loss.per_day.contributions(),
                between("Gas for another", *left->likely, *left->earliest, *left->latest)));
  } else {
    const std::string least = left->earliest ? printer.print(*left->earliest) : std::string("–");
    a.values.push_back(because(
        loss.per_day.contributions(),
        in_words("Gas for another", printer.print(*left->likely) + " (at least " + least + ")")));
  }
}

Outcome gas_lost(const Inputs& in, const Printer& printer) {
  const auto second_key = in.get<units::Mass>("second");
  if (in.has("tare") && in.get<units::Mass>("tare") > second_key) {
    return std::unexpected(beyond(
        "tare", in, second_key,
        "It weighed " + printer.print(second_key) + " with gas in it: empty it is lighter."));
  }
  const double share = in.get<units::Fraction>("method").count();
  const auto used =
      Estimate(in.get<units::Mass>("used"))
          .with({"expected use"}, share * units::in_kilograms(in.get<units::Mass>("used")));
  const auto second = weighed_in(in, "second", 2);
  const std::array points{physics::LedgerPoint{units::seconds(0), weighed_in(in, "first", 1),
                                               Estimate<units::Mass>(units::grams(0))},
                          physics::LedgerPoint{in.get<units::Duration>("between"), second, used}};
  const auto loss = physics::unexplained_loss(points);
  if (!loss) return std::unexpected(problem_of(loss.error(), account_subjects, in, printer));
  const auto& between_two = loss->between.front();
  Answer a;
  a.values.push_back(estimated("Unexplained, a day", loss->per_day, true));
  a.values.push_back(estimated("The bottle got lighter by", between_two.weighed));
  a.values.push_back(estimated("Unexplained of that", between_two.unexplained));
  const auto& causes = loss->per_day.contributions();
  constexpr double as_good_as_sure = 0.999;
  a.values.push_back(
      loss->confidence.count() > as_good_as_sure
          ? because(causes, in_words("How sure that gas is lost", "more than 99.9 %"))
          : because(causes, exactly("How sure that gas is lost", loss->confidence)));
  a.values.push_back(because(
      causes, exactly("A loss it would see 9 times in 10, a day", loss->smallest_visible_per_day)));
  tell_days_left(in, *loss, used, second, printer, a);
  a.sentences.emplace_back(loss->verdict == physics::LossVerdict::unexplained
                               ? "More is gone than the work explains: look for a leak, from the "
                                 "bottle outwards, with suds."
                               : "Not enough to call it a loss, which is not to say that there is "
                                 "none. A longer time between weighings tells more.");
  if (loss->verdict == physics::LossVerdict::unexplained) {
    a.cautions.emplace_back("Gas that is lost is in the room: air it. CO₂ collects low.");
  }
  return a;
}

std::vector<Field> gauge_fields() {
  Field pressure{.key = "pressure",
                 .label = "High-pressure gauge",
                 .kind = FieldKind::gauge_pressure,
                 .start = units::gauge_psi(800),
                 .least = units::gauge_psi(0),
                 .greatest = units::gauge_psi(4000)};
  Field temperature{.key = "temperature",
                    .label = "The bottle itself at",
                    .kind = FieldKind::temperature,
                    .start = units::celsius(20),
                    .least = units::celsius(-20),
                    .greatest = units::celsius(50)};
  Field dial = dial_error_field();
  dial.start = units::psi(40);
  dial.greatest = units::psi(300);
  Field share = co2_share_field();
  share.detail = false;
  Field fill{.key = "fill",
             .label = "Filled, by the water it would hold",
             .kind = FieldKind::fraction,
             .start = units::fraction(physics::usual_fill_ratio),
             .least = units::fraction(physics::fill_ratio_range.low),
             .greatest = units::fraction(physics::fill_ratio_range.high),
             .detail = true,
             .hint = "68 % at most in the US, up to 75 % in Europe; by weight."};
  return {std::move(pressure),
          std::move(temperature),
          mass_field("content", "CO₂ in it when full", units::kilograms(2.27),
                     units::kilograms(0.1), units::kilograms(60)),
          std::move(share),
          std::move(dial),
          thermometer_error_field(),
          std::move(fill),
          altitude_field()};
}

std::vector<Field> account_fields() {
  using units::kilograms;
  Field used = mass_field("used", "The work on kegs should have used", kilograms(0.25),
                          kilograms(0), kilograms(100));
  used.hint = "See “How much gas does a keg take?”; purging comes on top.";
  Field tare = may_be_blank(
      mass_field("tare", "The empty bottle", kilograms(5), kilograms(0.1), kilograms(200)));
  tare.hint = "Stamped on it. With it, the days left are told.";
  Field method{.key = "method",
               .label = "That use is known within",
               .kind = FieldKind::fraction,
               .start = units::fraction(0.15),
               .least = units::fraction(0),
               .greatest = units::fraction(1),
               .detail = true};
  return {mass_field("first", "First weighing", kilograms(8.2), kilograms(0.2), kilograms(300)),
          mass_field("second", "Second weighing", kilograms(7.7), kilograms(0.2), kilograms(300)),
          duration_field("between", "Between the two", units::days(14), units::hours(1),
                         units::days(400)),
          std::move(used),
          std::move(tare),
          mass_field("scale", "The scale repeats itself within", kilograms(0.05), kilograms(0),
                     kilograms(10)),
          std::move(method)};
}

}  // namespace

void add_bottle_computations(std::vector<Computation>& all) {
  all.push_back({"bottle_gauge", "What does a bottle’s gauge tell?", "Gas",
                 "bottle cylinder gauge high pressure liquid full empty left psi mixed gas tank",
                 gauge_fields(), &laws::bottles, bottle_gauge});
  all.push_back({"gas_lost", "Is a gas bottle losing gas?", "Gas",
                 "bottle cylinder leak lost loss weighing account ledger days left",
                 account_fields(), &laws::gas_account, gas_lost});
}

}  // namespace ullage::report::slate
