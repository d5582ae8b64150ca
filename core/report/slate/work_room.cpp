// SPDX-License-Identifier: GPL-3.0-or-later
//
// What gas makes of a room's air, all at once or leaking, with the errors of tape,
// scale and air changes.
#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/physics/room_errors.h"
#include "core/report/laws_slate.h"
#include "core/report/slate/fields.h"
#include "core/units/number_text.h"
#include "core/units/paper_text.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Estimate;
using units::Printer;

constexpr auto room_subjects = std::to_array<SubjectField>({{Subject::volume, "long"},
                                                            {Subject::temperature, "temperature"},
                                                            {Subject::mass, "gas"},
                                                            {Subject::air_changes, "changes"},
                                                            {Subject::duration, "after"},
                                                            {Subject::co2_fraction, "share"}});
constexpr int leak_points = 60;
constexpr auto shift_limit = units::mole_fraction(0.005);  // over a working day, in most countries
constexpr auto high_limit = units::mole_fraction(0.03);    // for minutes, and a room's size

physics::KnownRoom room_of(const Inputs& in) {
  const physics::TapedRoom taped{
      in.get<units::Length>("long"), in.get<units::Length>("wide"), in.get<units::Length>("high"),
      in.get<units::Length>("tape"),
      Estimate(in.get<units::Fraction>("stock"))
          .with({"kegs and stock"}, in.get<units::Fraction>("stock_error").count())};
  return {physics::net_volume(taped), on_thermometer(in, "temperature"), air_at(in)};
}

constexpr std::string_view never_even =
    "If evenly mixed, which it never is: low spots and pits stand far higher. The ± is of tape, "
    "scale and air changes alone, so it is no margin of safety.";
constexpr std::string_view no_all_clear =
    "A caution, never an all-clear. CO₂ is not noticed and kills; nitrogen takes the oxygen’s "
    "place. Air the room, mind the alarm, and keep to your local code.";

void tell_room(const physics::KnownRoom& room, const Printer& printer, Answer& a) {
  a.values.push_back(
      because(room.net_volume.contributions(),
              in_words("This room’s air", units::print_room(room.net_volume, printer))));
}

Outcome room_air(const Inputs& in, const Printer& printer) {
  physics::KnownGas gas;
  gas.bottles = {{in.get<units::Mass>("gas"), gas_share(in)}};
  gas.there =
      gas.there.with({"content of the bottles"}, in.get<units::Fraction>("gas_error").count());
  const physics::KnownRoom room = room_of(in);
  const auto out = physics::room_air_estimate(gas, room);
  if (!out) return std::unexpected(problem_of(out.error(), room_subjects, in, printer));
  Answer a;
  a.values.push_back(estimated("CO₂ if all escapes, evenly mixed", out->co2, true));
  a.values.push_back(estimated("Oxygen then", out->oxygen));
  if (const auto needed = physics::room_for_estimate(high_limit, gas, room)) {
    a.values.push_back(
        because(needed->contributions(),
                in_words("A room in which it is 3 %", units::print_room(*needed, printer))));
  }
  tell_room(room, printer, a);
  a.sentences.emplace_back(never_even);
  a.cautions.emplace_back(no_all_clear);
  return a;
}

physics::KnownLeak leak_of(const Inputs& in) {
  const auto gas = in.get<units::Mass>("gas");
  return {Estimate(gas).with_error({"what leaks"},
                                   units::Mass(in.get<units::Fraction>("gas_error").count() * gas)),
          gas_share(in), units::per_second(in.number("changes") / 3600),
          in.number("changes_factor")};
}

// The curve up to where it has nearly settled, or to the time asked for.
void draw_leak(const physics::KnownLeak& leak, const physics::KnownRoom& room,
               units::Duration after, Answer& a) {
  a.chart.title = "CO₂ in the room’s air over time, evenly mixed";
  a.chart.x_title = "After";
  a.chart.y_title = "CO₂";
  const double n = units::in_per_second(leak.air_changes);
  const double nearly_settled = n > 0 ? 3 / n : 0;
  const units::Duration until = units::seconds(
      std::max({units::in_seconds(after), std::min(nearly_settled, 30 * 86400.0), 3600.0}));
  double highest = 0;
  for (int i = 0; i <= leak_points; ++i) {
    const units::Duration t = until * (static_cast<double>(i) / leak_points);
    const auto co2 = physics::steady_release_range(leak, room, t);
    if (!co2) return;
    const auto high = co2->high.value_or(co2->likely);
    highest = std::max(highest, high.count());
    a.chart.points.push_back({t, co2->low.value_or(co2->likely), co2->likely, high});
  }
  a.chart.points_label = "CO₂";
  // A line far above would leave the curve flat along the floor.
  constexpr double worth_drawing = 0.2;
  for (const auto& [limit, label] :
       {std::pair{shift_limit, "0.5 %"}, std::pair{high_limit, "3 %"}}) {
    if (highest < worth_drawing * limit.count()) continue;
    a.chart.lines.push_back({label, true, {{units::seconds(0), limit}, {until, limit}}});
  }
  a.chart.marks.push_back({after, "asked"});
}

std::string time_reached(const std::optional<units::Duration>& when, const Printer& printer) {
  constexpr double beyond_telling = 3650;  // days
  if (!when) return "never";
  return units::in_days(*when) > beyond_telling ? "years" : printer.print(*when);
}

// "after 9 h (7 h to never)", "never"
std::string reached_words(const physics::ReachedWhen& when, const Printer& printer) {
  const std::string likely = time_reached(when.likely, printer);
  std::string words = when.likely ? "after " + likely : likely;
  const std::string from = time_reached(when.earliest, printer);
  const std::string to = time_reached(when.latest, printer);
  if (from != likely || to != likely) words += " (" + from + " to " + to + ")";
  return words;
}

void tell_limits(const physics::KnownLeak& leak, const physics::KnownRoom& room,
                 const Printer& printer, Answer& a) {
  for (const auto& [limit, name] : {std::pair{shift_limit, "0.5 %, the limit for a working day"},
                                    std::pair{high_limit, "3 %, the limit for minutes"}}) {
    const auto when = physics::steady_release_reaches(limit, leak, room);
    if (!when) continue;
    a.values.push_back(because(when->errors, in_words(name, reached_words(*when, printer))));
  }
}

void tell_ventilation(const physics::KnownLeak& leak, const physics::KnownRoom& room,
                      const Printer& printer, Answer& a) {
  const auto needed = physics::air_changes_estimate(shift_limit, leak, room);
  if (!needed) return;
  const double an_hour = units::in_per_second(needed->value()) * 3600;
  const double off = needed->half_width() * 3600;
  const std::string words = off > 0 ? units::value_with_error(an_hour, off, printer.style)
                                    : printer.number(an_hour, an_hour < 1 ? 2 : 1);
  a.values.push_back(because(needed->contributions(),
                             in_words("Air changes an hour that keep it at 0.5 %", words)));
}

Outcome steady_leak(const Inputs& in, const Printer& printer) {
  const physics::KnownLeak leak = leak_of(in);
  const physics::KnownRoom room = room_of(in);
  const auto after = in.get<units::Duration>("after");
  const auto then = physics::steady_release_range(leak, room, after);
  const auto oxygen = physics::oxygen_range(leak, room, after);
  if (!then || !oxygen) {
    return std::unexpected(
        problem_of(!then ? then.error() : oxygen.error(), room_subjects, in, printer));
  }
  Answer a;
  a.values.push_back(within("CO₂ after " + printer.print(after) + ", evenly mixed", *then, true));
  const auto settles = physics::steady_release_range(leak, room);
  a.values.push_back(settles ? within("It settles at", *settles)
                             : in_words("It settles at", "nothing: it goes on rising"));
  tell_limits(leak, room, printer, a);
  a.values.push_back(within("Oxygen then", *oxygen));
  tell_ventilation(leak, room, printer, a);
  tell_room(room, printer, a);
  a.sentences.emplace_back(never_even);
  a.sentences.emplace_back(
      "What fresh air brings itself, 0.04 %, is left out. The limits are those most countries "
      "list; yours may be others.");
  a.cautions.emplace_back(no_all_clear);
  draw_leak(leak, room, after, a);
  return a;
}

// --- fields

Field part_field(std::string_view key, std::string_view label, double start, double most) {
  return {.key = key,
          .label = label,
          .kind = FieldKind::fraction,
          .start = units::fraction(start),
          .least = units::fraction(0),
          .greatest = units::fraction(most)};
}

Field side_field(std::string_view key, std::string_view label, double metres, double most) {
  return {.key = key,
          .label = label,
          .kind = FieldKind::length,
          .start = units::metres(metres),
          .least = units::metres(0.3),
          .greatest = units::metres(most)};
}

Field tape_field() {
  Field tape = side_field("tape", "Each of them may be off by", 0.05, 1);
  tape.least = units::metres(0);
  tape.hint = "By tape {}; paced out ten times as much.";
  tape.hint_values = {units::metres(0.05)};
  return further(std::move(tape));
}

// Length, width, height, and what of it is no air.
std::vector<Field> room_fields() {
  Field temperature{.key = "temperature",
                    .label = "Room at",
                    .kind = FieldKind::temperature,
                    .start = units::celsius(12),
                    .least = units::celsius(-5),
                    .greatest = units::celsius(45)};
  return {side_field("long", "The room is long", 5, 100),
          side_field("wide", "and wide", 3.5, 100),
          side_field("high", "and high", 2.4, 20),
          tape_field(),
          further(part_field("stock", "Of it kegs and stock", 0.1, 0.9)),
          further(part_field("stock_error", "That part may be off by", 0.05, 0.5)),
          further(std::move(temperature)),
          thermometer_error_field(),
          altitude_field(),
          co2_share_field()};
}

std::vector<Field> with_room(std::vector<Field> fields) {
  for (Field& f : room_fields()) fields.push_back(std::move(f));
  return fields;
}

std::vector<Field> bottle_fields() {
  return {mass_field("gas", "Gas in all bottles", units::kilograms(12), units::kilograms(0.1),
                     units::kilograms(500)),
          further(part_field("gas_error", "The gas may be off by", 0.05, 0.5))};
}

std::vector<Field> leak_fields() {
  Field gas = mass_field("gas", "Gas let go in a day", units::grams(500), units::grams(1),
                         units::kilograms(500));
  gas.hint = "What a hold test or two weighings say a leak loses, or what beer gives off.";
  Field changes = number_field("changes", "Air changes an hour", 0.5, 0, 100);
  changes.hint = "What a fan moves in an hour over the room’s air; shut, take 0.";
  Field factor = number_field("changes_factor", "They may be off by a factor of", 1.5, 1, 3);
  factor.hint = "A guess is seldom better than 1.5: half as many again, or a third less.";
  return with_room(
      {std::move(gas), std::move(changes),
       duration_field("after", "And after", units::hours(8), units::minutes(1), units::days(365)),
       further(part_field("gas_error", "The gas may be off by", 0.2, 0.5)),
       further(std::move(factor))});
}

}  // namespace

void add_room_computations(std::vector<Computation>& all) {
  all.push_back({"room_air", "What if a gas bottle empties into the room?", "Gas",
                 "room air safety escape ppm percent oxygen co2 cylinder ventilation",
                 with_room(bottle_fields()), &laws::room_air, room_air});
  all.push_back(
      {"steady_leak", "What if gas leaks steadily into the room?", "Gas",
       "room air safety steady leak release fermenting ventilation air changes ppm percent co2",
       leak_fields(), &laws::steady_release, steady_leak});
}

}  // namespace ullage::report::slate
