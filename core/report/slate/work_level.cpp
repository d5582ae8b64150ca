// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is left: by weight, by glasses, and by several readings joined.
#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/physics/level.h"
#include "core/physics/level_filter.h"
#include "core/report/laws_slate.h"
#include "core/report/slate/fields.h"
#include "core/units/present.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Estimate;
using units::Printer;

constexpr auto weight_subjects =
    std::to_array<SubjectField>({{Subject::mass, "gross"},
                                 {Subject::gravity, "gravity"},
                                 {Subject::temperature, "temperature"},
                                 {Subject::beer_volume, "gross"},
                                 {Subject::volume, "brimful"},
                                 {Subject::gauge_pressure, "pressure"}});
constexpr auto glass_subjects = std::to_array<SubjectField>(
    {{Subject::glasses, "glasses"}, {Subject::volume, "glass"}, {Subject::beer_volume, "glasses"}});
constexpr auto fused_subjects = std::to_array<SubjectField>(
    {{Subject::beer_volume, "beer"}, {Subject::volume, "brimful"}, {Subject::step_time, "since"}});

physics::Result<Estimate<units::Volume>> weighed(const Inputs& in) {
  physics::Weighing w;
  w.gross = Estimate(in.get<units::Mass>("gross"))
                .with_error({"scale: bias"}, in.get<units::Mass>("scale"));
  w.tare = Estimate(in.get<units::Mass>("tare"))
               .with_error({"tare of the keg"}, in.get<units::Mass>("tare_error"));
  w.gravity = in.get<units::SpecificGravity>("gravity");
  w.temperature = in.get<units::Temperature>("temperature");
  w.brimful = in.get<units::Volume>("brimful");
  w.headspace = in.get<units::GaugePressure>("pressure");
  w.ambient = air_at(in).value();
  return physics::beer_from_weight(w);
}

Outcome left_by_weight(const Inputs& in, const Printer& printer) {
  const auto left = weighed(in);
  if (!left) return std::unexpected(problem_of(left.error(), weight_subjects, in, printer));
  Answer a;
  a.values.push_back(estimated("Beer in it", *left, true));
  a.values.push_back(in_words("That is", printer.print_glasses(left->value())));
  const auto brimful = in.get<units::Volume>("brimful");
  a.values.push_back(estimated(
      "Of the keg", units::propagate(
                        [brimful](units::Volume v) {
                          return units::fraction(units::in_litres(v) / units::in_litres(brimful));
                        },
                        *left)));
  return a;
}

physics::Glasses glasses_in(const Inputs& in) {
  return {in.number("glasses"),
          in.get<units::Volume>("glass"),
          {"fill of the glass"},
          {"loss at the tap"}};
}

Outcome left_by_glasses(const Inputs& in, const Printer& printer) {
  const physics::Glasses glasses = glasses_in(in);
  const auto start = Estimate(in.get<units::Volume>("beer"));
  const auto left = physics::beer_after_glasses(start, glasses);
  if (!left) return std::unexpected(problem_of(left.error(), glass_subjects, in, printer));
  const auto poured = physics::poured_by_glasses(glasses);
  Answer a;
  a.values.push_back(estimated("Left", *left, true));
  if (poured) a.values.push_back(estimated("Poured, with loss", *poured));
  a.sentences.emplace_back("Counted glasses drift: weigh it now and then.");
  return a;
}

// One way of telling how much is left, by itself.
struct ToldLevel {
  std::string name;  // "The scale"
  Estimate<units::Volume> left;
  std::optional<physics::LevelConflict> conflict;  // with what came before it
};

void add_told(const char* name, const Estimate<units::Volume>& left, std::vector<ToldLevel>& told) {
  told.push_back({name, left, {}});
}

// By all that is filled in but the count of glasses; the least sure first.
std::expected<std::vector<ToldLevel>, Problem> levels_told(const Inputs& in,
                                                           const Printer& printer) {
  const auto brimful = in.get<units::Volume>("brimful");
  std::vector<ToldLevel> told;
  if (in.has("gross")) {
    const auto left = weighed(in);
    if (!left) return std::unexpected(problem_of(left.error(), weight_subjects, in, printer));
    add_told("The scale", *left, told);
  }
  if (in.has("float")) {
    const auto read = in.get<units::Volume>("float");
    if (read > brimful) {
      return std::unexpected(
          beyond("float", in, brimful, "It holds no more than " + printer.print(brimful) + "."));
    }
    add_told("The float",
             Estimate(read).with_error({"float"}, in.get<units::Volume>("float_error")), told);
  }
  if (in.has("dew")) {
    if (const auto left = physics::beer_from_condensation_line(in.get<units::Fraction>("dew"),
                                                               brimful, {"condensation line"})) {
      add_told("The dew line", *left, told);
    }
  }
  if (in.has("heft")) {
    if (const auto left =
            physics::beer_from_heft(in.get<units::Fraction>("heft"), brimful, {"heft"})) {
      add_told("The hand", *left, told);
    }
  }
  std::stable_sort(told.begin(), told.end(), [](const ToldLevel& a, const ToldLevel& b) {
    return b.left.half_width() < a.left.half_width();
  });
  return told;
}

// What the filter makes of the start, the glasses and the first so many readings.
physics::Result<physics::LevelFilter> filter_of(const Inputs& in,
                                                const std::vector<ToldLevel>& told,
                                                std::size_t readings) {
  const auto now = in.get<units::Duration>("since");
  physics::LevelHistory history;
  history.brimful = in.get<units::Volume>("brimful");
  history.start = Estimate(in.get<units::Volume>("beer"))
                      .with_error({"beer at the start"}, in.get<units::Volume>("beer_error"));
  history.steps.push_back({units::seconds(0), physics::PutOnTap{}});
  if (in.has("glasses")) {
    const auto poured = physics::poured_by_glasses(glasses_in(in));
    if (!poured) return std::unexpected(poured.error());
    history.steps.push_back({now, physics::BeerCounted{*poured}});
  }
  for (std::size_t i = 0; i < readings; ++i) {
    history.steps.push_back({now, physics::LevelRead{told[i].left}});
  }
  return physics::LevelFilter::make(history);
}

Estimate<units::Volume> not_below_nothing(const Estimate<units::Volume>& e) {
  return {std::max(e.value(), units::litres(0)), e.contributions()};
}

std::string conflict_words(const ToldLevel& told, const Printer& printer) {
  const physics::LevelConflict& c = present(told.conflict);
  const bool less = c.reads.value() < c.expected.value();
  return told.name + " says " + printer.print(c.reads) + ", where what was known before says " +
         printer.print(not_below_nothing(c.expected)) +
         ". They can’t both be right, so no mean is taken: " +
         (!c.taken ? "this one is left out, as it is the less sure and reads more."
          : less   ? "it goes on from this one, which reads less."
                   : "it goes on from this one, which is the surer.");
}

void tell_fused(const Inputs& in, const physics::LevelFilter& filter,
                const std::vector<ToldLevel>& told, const Printer& printer, Answer& a) {
  const auto at_now = filter.at(in.get<units::Duration>("since"));
  const auto left = not_below_nothing(at_now);
  const auto conflicts = std::count_if(told.begin(), told.end(),
                                       [](const ToldLevel& t) { return t.conflict.has_value(); });
  a.values.push_back(
      estimated(conflicts > 0 ? "Left, if it is right so" : "Left, by all of it", left, true));
  a.values.push_back(in_words("That is", printer.print_glasses(left.value())));
  for (const ToldLevel& t : told) {
    a.values.push_back(
        estimated(t.name + (t.conflict ? " alone, which does not fit" : " alone"), t.left));
  }
  if (const auto a_day = filter.draw_a_day()) a.values.push_back(estimated("Drawn a day", *a_day));
  for (const ToldLevel& t : told) {
    if (t.conflict) a.sentences.push_back(conflict_words(t, printer));
  }
  if (conflicts > 0) {
    a.sentences.emplace_back(
        "Read the odd one again, and ask what went unlogged: a jug drawn, a leak, another keg’s "
        "empty weight.");
  } else if (told.empty()) {
    a.sentences.emplace_back(
        in.has("glasses") ? "Counted glasses drift: add a weighing, or the dew line."
                          : "Nothing was read: a keg on tap is taken to last ten days, give or "
                            "take ten. Add what you can see.");
  } else {
    a.sentences.emplace_back("All of it fits together.");
  }
  if (at_now.high() < units::litres(0)) {
    a.sentences.emplace_back("By this it should be empty already.");
  }
}

Outcome left_by_readings(const Inputs& in, const Printer& printer) {
  const auto brimful = in.get<units::Volume>("brimful");
  if (in.get<units::Volume>("beer") > brimful) {
    return std::unexpected(
        beyond("beer", in, brimful, "It holds no more than " + printer.print(brimful) + "."));
  }
  auto told = levels_told(in, printer);
  if (!told) return std::unexpected(told.error());
  if (in.has("glasses")) {
    const auto poured = physics::poured_by_glasses(glasses_in(in));
    if (!poured) return std::unexpected(problem_of(poured.error(), glass_subjects, in, printer));
  }
  auto filter = filter_of(in, *told, 0);
  // A conflict is open right after the reading that raised it; a later one that
  // agrees would close it, yet both figures are to be seen.
  for (std::size_t i = 0; filter && i < told->size(); ++i) {
    filter = filter_of(in, *told, i + 1);
    if (filter && !filter->conflicts().empty()) {
      (*told)[i].conflict = filter->conflicts().back();
    }
  }
  if (!filter) return std::unexpected(problem_of(filter.error(), fused_subjects, in, printer));
  Answer a;
  tell_fused(in, *filter, *told, printer, a);
  return a;
}

// What a weighing takes beside the scale and the empty keg, seldom changed.
std::vector<Field> weighing_details() {
  Field gravity{.key = "gravity",
                .label = "The beer’s gravity now",
                .kind = FieldKind::gravity,
                .start = units::specific_gravity(1.011),
                .least = units::specific_gravity(0.985),
                .greatest = units::specific_gravity(1.15),
                .detail = true};
  using units::kilograms;
  return {further(mass_field("scale", "The scale may be off by", kilograms(0.3), kilograms(0),
                             kilograms(10))),
          further(mass_field("tare_error", "The empty weight may be off by", kilograms(0.5),
                             kilograms(0), kilograms(10))),
          std::move(gravity),
          further(beer_temperature_field("temperature", "Beer at", units::celsius(4))),
          further(pressure_field("pressure", "Gas in it at", units::gauge_psi(12))),
          altitude_field()};
}

std::vector<Field> weight_fields() {
  using units::kilograms;
  std::vector<Field> fields{
      mass_field("gross", "On the scale", kilograms(16), kilograms(0.5), kilograms(300)),
      mass_field("tare", "The empty keg", kilograms(4.3), kilograms(0.5), kilograms(90)),
      brimful_field()};
  for (Field& f : weighing_details()) fields.push_back(std::move(f));
  return fields;
}
Field read_share(std::string_view key, std::string_view label, std::optional<Value> start) {
  return {.key = key,
          .label = label,
          .kind = FieldKind::fraction,
          .start = std::move(start),
          .least = units::fraction(0),
          .greatest = units::fraction(1),
          .optional = true};
}

Field known_within(std::string_view key, std::string_view label, units::Volume start) {
  return further({.key = key,
                  .label = label,
                  .kind = FieldKind::volume,
                  .start = start,
                  .least = units::litres(0),
                  .greatest = units::litres(50)});
}

std::vector<Field> fused_fields() {
  using units::kilograms;
  Field glasses = number_field("glasses", "Glasses poured since", 12, 0, 5000);
  glasses.optional = true;
  Field gross =
      mass_field("gross", "On the scale now", kilograms(16.6), kilograms(0.5), kilograms(300));
  gross.optional = true;
  Field reading =
      may_be_blank(known_within("float", "A float or sight glass reads", units::litres(0)));
  reading.detail = false;
  reading.greatest = units::litres(200);
  Field dew = read_share("dew", "Dew line, of the keg’s height", Value(units::fraction(0.6)));
  dew.hint = "Leave blank what you have not read.";
  std::vector<Field> fields{
      brimful_field(),
      beer_volume_field("Beer when it was put on", units::litres(18.5)),
      duration_field("since", "Put on tap so long ago", units::days(5), units::minutes(1),
                     units::days(365)),
      std::move(glasses),
      glass_field(),
      std::move(gross),
      mass_field("tare", "The empty keg", kilograms(4.3), kilograms(0.5), kilograms(90)),
      std::move(dew),
      read_share("heft", "By hand, of a full one", std::nullopt),
      std::move(reading),
      known_within("beer_error", "The start may be off by", units::litres(0.4)),
      known_within("float_error", "The float may be off by", units::litres(1))};
  for (Field& f : weighing_details()) fields.push_back(std::move(f));
  return fields;
}

}  // namespace

void add_level_computations(std::vector<Computation>& all) {
  all.push_back({"left_by_weight", "How much beer by weight?", "Level",
                 "weigh scale left remaining level keg tare litres", weight_fields(), &laws::level,
                 left_by_weight});
  all.push_back({"left_by_glasses",
                 "How much is left after so many glasses?",
                 "Level",
                 "poured pints glasses left remaining level count",
                 {beer_volume_field("Beer at the start", units::litres(18.5)),
                  number_field("glasses", "Glasses poured", 12, 0, 5000), glass_field()},
                 &laws::level,
                 left_by_glasses});
  all.push_back({"left_by_readings", "How much is left by several readings?", "Level",
                 "level several fuse join weight scale heft hand dew line float sight conflict",
                 fused_fields(), &laws::level_fusion, left_by_readings});
}

}  // namespace ullage::report::slate
