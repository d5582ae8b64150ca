// SPDX-License-Identifier: GPL-3.0-or-later
//
// A keg rocked under gas, and how fast a keg takes gas up, learned from a reading.
#include <algorithm>

#include "core/physics/rate_posterior.h"
#include "core/report/laws_slate.h"
#include "core/report/slate/typed_keg.h"

namespace ullage::report::slate {
namespace {

using physics::CarbonationModel;
using units::Estimate;
using units::Printer;

constexpr double rocked_at_most_hours = 12;

constexpr auto rocking_subjects = keg_subjects("rocked", "start");
constexpr auto learning_subjects = keg_subjects("after", "read");

physics::Result<CarbonationModel> rocked_for(const Inputs& in,
                                             const physics::CarbonationRates& rates,
                                             units::Duration how_long) {
  physics::CarbonationHistory h = history_of(in);
  h.steps.push_back({units::seconds(0), physics::Rocked{how_long}});
  return CarbonationModel::make(h, rates, units::days(2));
}

void tell_rocking_words(const physics::Window& past, Answer& a) {
  if (past.likely) {
    a.sentences.emplace_back(
        "Rocked on, this pressure leads past the range. Stop early, let it rest with the gas off, "
        "and read it.");
  }
  a.sentences.emplace_back(
      "How fast rocking goes is practice without a source: two thirds of the way in 10 minutes, "
      "3 to 33. Cold beer takes up more.");
  a.cautions.emplace_back(
      "Keep the gas connection above the beer, or a check valve in it: beer in a regulator ruins "
      "it.");
}

Outcome rocking(const Inputs& in, const Printer& printer) {
  if (auto bad = check_range(in, printer)) return std::unexpected(std::move(*bad));
  const auto refused = [&](const physics::RangeError& e) {
    return std::unexpected(problem_of(e, rocking_subjects, in, printer));
  };
  const auto rates = uptake_rates(in);
  if (!rates) return refused(rates.error());
  const auto on_and_on = rocked_for(in, *rates, units::hours(rocked_at_most_hours));
  if (!on_and_on) return refused(on_and_on.error());
  const auto reaches =
      on_and_on->time_to_reach(in.get<units::Co2Volumes>("low"), units::seconds(0));
  const auto past = on_and_on->time_leaving(in.get<units::Co2Volumes>("high"), units::seconds(0));
  const auto rocked = in.maybe<units::Duration>("rocked");
  const auto shown =
      rocked_for(in, *rates, rocked ? *rocked : reaches.likely.value_or(units::minutes(30)));
  if (!shown) return refused(shown.error());
  Answer a;
  a.values.push_back(window_value("Rock it for", reaches, *on_and_on, true));
  if (rocked) {
    const auto then = shown->co2_at(*rocked);
    if (!then) return refused(then.error());
    a.values.push_back(estimated("CO₂ after " + printer.print(*rocked), *then));
  }
  if (past.likely)
    a.values.push_back(window_value("Past its range after", past, *on_and_on, false));
  a.values.push_back(estimated("At this pressure it settles at", shown->equilibrium_end()));
  tell_rocking_words(past, a);
  const auto drawn = rocked ? *rocked : reaches.likely.value_or(units::minutes(30));
  draw_co2(*shown, in, std::clamp(drawn * 2.5, units::minutes(30), units::days(1)), a);
  a.chart.marks.push_back({drawn, "stop rocking"});
  return a;
}

physics::CarbonationHistory with_the_reading(const Inputs& in) {
  physics::CarbonationHistory h = history_of(in);
  const double half_width = in.get<units::Co2Volumes>("read_error").count();
  h.readings.push_back(
      {in.get<units::Duration>("after"),
       Estimate(in.get<units::Co2Volumes>("read")).with({"the CO₂ reading"}, half_width)});
  return h;
}

AnswerValue rate_value(std::string name, const physics::RateBand& band,
                       const units::ErrorSource& source, bool main) {
  return because(source, between(std::move(name), band.median, band.low, band.high, main));
}

Outcome learned_rate(const Inputs& in, const Printer& printer) {
  if (auto bad = check_range(in, printer)) return std::unexpected(std::move(*bad));
  const auto refused = [&](const physics::RangeError& e) {
    return std::unexpected(problem_of(e, learning_subjects, in, printer));
  };
  const auto rates = uptake_rates(in);
  if (!rates) return refused(rates.error());
  const auto history = with_the_reading(in);
  const auto learned = physics::rate_posterior(history, *rates);
  if (!learned) return refused(learned.error());
  const auto after = in.get<units::Duration>("after");
  const auto model =
      CarbonationModel::make(history, *rates, units::Duration(after + units::days(60)));
  if (!model) return refused(model.error());
  Answer a;
  a.values.push_back(rate_value("This keg closes two thirds of the gap in", learned->posterior,
                                rates->resting.source(), true));
  a.values.push_back(
      rate_value("Taken before the reading", learned->prior, rates->resting.source(), false));
  const auto now = model->co2_at(after);
  if (!now) return refused(now.error());
  a.values.push_back(estimated("CO₂ then, by all that is known", *now));
  a.values.push_back(window_value(
      "In its range after",
      model->time_to_reach(in.get<units::Co2Volumes>("low"), units::seconds(0)), *model, false));
  if (!learned->fits) {
    a.sentences.emplace_back(
        "The reading does not go with the rest: less than once in a thousand times. Something is "
        "missing or mistyped, and nothing was learned from it.");
  }
  a.sentences.emplace_back(
      "Most is learned half way up: at the start and at rest every rate reads the same.");
  draw_co2(*model, in, std::max(after * 2.5, units::days(4)), a);
  a.chart.marks.push_back({after, "read"});
  return a;
}

std::vector<Field> rocking_fields() {
  Field rocked =
      may_be_blank(duration_field("rocked", "Rocked for", units::minutes(10), units::seconds(10),
                                  units::hours(rocked_at_most_hours)));
  rocked.hint = "Leave it blank to be told how long.";
  std::vector<Field> fields{pressure_field("pressure", "Rocked under", units::gauge_psi(30)),
                            std::move(rocked)};
  for (Field& f : keg_fields()) {
    if (f.key == "temperature") f.start = units::celsius(3);
    fields.push_back(std::move(f));
  }
  return fields;
}

std::vector<Field> learning_fields() {
  Field error = co2_field("read_error", "That reading may be off by", units::volumes_of_co2(0.15));
  error.least = units::volumes_of_co2(0.01);
  error.greatest = units::volumes_of_co2(1);
  std::vector<Field> fields{
      pressure_field("pressure", "Pressure since the start", units::gauge_psi(12)),
      duration_field("after", "Read, after", units::days(3), units::minutes(5), units::days(120)),
      co2_field("read", "CO₂ read then", units::volumes_of_co2(1.8)), std::move(error)};
  fields[2].hint = "By a meter, or by pressure and temperature after a rest with the gas off.";
  for (Field& f : keg_fields()) {
    if (f.key == "days" || f.key == "days_factor") continue;  // what is asked
    if (f.key == "temperature") f.start = units::celsius(3);
    fields.push_back(std::move(f));
  }
  return fields;
}

}  // namespace

void add_rocking_computations(std::vector<Computation>& all) {
  all.push_back({"rocking", "How long to rock a keg under gas?", "CO₂",
                 "rocking shake shaking roll rocked minutes quick force carbonate",
                 rocking_fields(), &laws::carbonation, rocking});
  all.push_back({"learned_rate", "How fast does this keg take up gas, by a reading?", "CO₂",
                 "learn learned rate uptake time constant posterior prior meter reading days",
                 learning_fields(), &laws::learned_rate, learned_rate});
}

}  // namespace ullage::report::slate
