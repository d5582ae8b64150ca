// SPDX-License-Identifier: GPL-3.0-or-later
//
// When a keg on tap runs out, by what was drawn lately.
#include <array>
#include <cmath>

#include "core/physics/run_out.h"
#include "core/report/laws.h"
#include "core/report/slate/fields.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Estimate;
using units::Printer;

constexpr int days_of_week = 7;
constexpr auto run_out_subjects = std::to_array<SubjectField>({{Subject::beer_volume, "drawn"},
                                                               {Subject::volume, "left"},
                                                               {Subject::duration, "over"},
                                                               {Subject::parts, "over"}});

// The days of the week that a span up to the end of yesterday had.
physics::WeekdayShares weekdays_before(int today, double days) {
  physics::WeekdayShares shares{};
  int day = today;
  while (days > 0) {
    day = (day + days_of_week - 1) % days_of_week;
    shares.at(static_cast<std::size_t>(day)) += std::min(1.0, days);
    days -= 1;
  }
  return shares;
}

Outcome runs_out(const Inputs& in, const Printer& printer) {
  // Monday first as people read a week; the physics counts from Sunday.
  const int today = (in.choice("weekday") + 1) % days_of_week;
  const auto over = in.get<units::Duration>("over");
  physics::RunOutQuestion question;
  question.left = Estimate(in.get<units::Volume>("left"))
                      .with_error({"level"}, in.get<units::Volume>("left_error"));
  question.seen.push_back(
      {weekdays_before(today, units::in_days(over)),
       Estimate(in.get<units::Volume>("drawn"))
           .with_error({"what was drawn"}, in.get<units::Volume>("drawn_error"))});
  question.weekday = today;
  const auto out = physics::run_out(question);
  if (!out) return std::unexpected(problem_of(out.error(), run_out_subjects, in, printer));
  Answer a;
  // A time is beer over beer a day.
  std::vector<units::Contribution> causes;
  add_relative_errors(causes, question.left);
  add_relative_errors(causes, out->a_day.at(static_cast<std::size_t>(question.weekday)));
  if (!out->likely) {
    a.values.push_back(because(causes, in_words("Runs out in", "more than a year", true)));
  } else {
    const std::string from = out->earliest ? printer.print(*out->earliest) : std::string("at once");
    const std::string to = out->latest ? printer.print(*out->latest) : std::string("over a year");
    a.values.push_back(because(causes, in_words("Runs out in", printer.print(*out->likely), true)));
    a.values.push_back(
        because(causes, in_words("Eight times in ten between", from + " and " + to)));
  }
  a.values.push_back(estimated(
      "Drawn a day, so far",
      units::propagate(
          [over](units::Volume v) { return units::Volume(v * (1 / units::in_days(over))); },
          question.seen.front().drawn)));
  a.values.push_back(estimated("On a Friday", out->a_day.at(static_cast<std::size_t>(5))));
  a.values.push_back(estimated("On a Monday", out->a_day.at(static_cast<std::size_t>(1))));
  a.sentences.emplace_back(
      "Counted from this morning. Days scatter by half of themselves, so one span tells little: "
      "the longer it is, the narrower this gets.");
  return a;
}

Field run_out_volume(std::string_view key, std::string_view label, double start, double least,
                     double greatest) {
  return {.key = key,
          .label = label,
          .kind = FieldKind::volume,
          .start = units::litres(start),
          .least = units::litres(least),
          .greatest = units::litres(greatest)};
}

}  // namespace

void add_run_out_computations(std::vector<Computation>& all) {
  all.push_back(
      {"run_out",
       "When does a keg run out?",
       "Level",
       "run out empty days left how long will last forecast drawn poured level",
       {run_out_volume("left", "Left in it", 12, 0.1, 200),
        run_out_volume("drawn", "Drawn so far", 6, 0, 1000),
        duration_field("over", "In the last", units::days(4), units::hours(1), units::days(365)),
        choice_field(
            "weekday", "Today is",
            {"Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"}),
        further(run_out_volume("left_error", "What is left may be off by", 1, 0, 20)),
        further(run_out_volume("drawn_error", "What was drawn may be off by", 1, 0, 50))},
       &laws::run_out,
       runs_out});
}

}  // namespace ullage::report::slate
