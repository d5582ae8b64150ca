// SPDX-License-Identifier: GPL-3.0-or-later
//
// Lines as they really are: a hose's true bore by a timed pour, the trade's loss per
// length beside pipe friction, and lines of several pieces with a restrictor.
#include <array>

#include "core/physics/line_balance.h"
#include "core/physics/line_volume.h"
#include "core/report/laws_slate.h"
#include "core/report/slate/typed_line.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Estimate;
using units::Printer;

constexpr double glass_fill_share = 0.03;  // of a measured glass, 95 %, assumed

constexpr auto timed_subjects =
    std::to_array<SubjectField>({{Subject::gauge_pressure, "pressure"},
                                 {Subject::length, "length"},
                                 {Subject::bore, "bore"},
                                 {Subject::factor, "seconds"},
                                 {Subject::rise, "rise"},
                                 {Subject::flow, "seconds"},
                                 {Subject::duration, "seconds"},
                                 {Subject::volume, "glass"},
                                 {Subject::pressure_loss, "fittings"},
                                 {Subject::temperature, "temperature"}});
constexpr auto pieces_subjects =
    std::to_array<SubjectField>({{Subject::gauge_pressure, "pressure"},
                                 {Subject::length, "length"},
                                 {Subject::bore, "bore"},
                                 {Subject::rise, "rise"},
                                 {Subject::flow, "length"},
                                 {Subject::pressure_loss, "restrictor"},
                                 {Subject::temperature, "temperature"}});

// --- a timed pour

physics::MeasuredPour measured_pour(const Inputs& in) {
  const auto glass = in.get<units::Volume>("glass");
  return {Estimate(glass).with_error({"what was poured"}, units::Volume(glass_fill_share * glass)),
          Estimate(units::seconds(in.number("seconds")))
              .with_error({"watch"}, units::seconds(physics::watch_half_width_seconds)),
          on_dial(in, "pressure"), on_thermometer(in, "temperature")};
}

// Were the bore as stated: the walls that explain the same pour.
void tell_rough_walls(const Inputs& in, const physics::LineParts& parts, Answer& a,
                      const Printer& printer) {
  const auto walls = physics::calibrate_roughness(
      parts, measured_pour(in), units::specific_gravity(1.010), physics::ordinary_beer_viscosity);
  if (walls) {
    a.sentences.push_back("Or, with the bore as sold, walls as rough as " +
                          printer.number(units::in_metres(*walls) * 1e6, 0) +
                          " µm: both tell the same pour.");
  } else {
    a.sentences.emplace_back(
        "No roughness of the walls explains it with the bore as sold: the bore differs.");
  }
}

Outcome timed_pour(const Inputs& in, const Printer& printer) {
  const auto parts = typed_parts(in, in.get<units::Length>("length"));
  const auto resists =
      physics::calibrate_bore(parts, measured_pour(in), units::specific_gravity(1.010),
                              physics::ordinary_viscosity_factor({"the beer’s viscosity"}));
  if (!resists) {
    if (resists.error().subject == Subject::factor) {
      return std::unexpected(
          impossible("seconds",
                     "No bore from half to one and a half times the stated explains such a pour: "
                     "look at pressure, length and glass."));
    }
    return std::unexpected(problem_of(resists.error(), timed_subjects, in, printer));
  }
  const physics::BoreRange factor = physics::range_of_bores(*resists);
  const auto bore = in.get<units::Length>("bore");
  const auto words = [&](const auto& print) {
    return print(factor.likely.count()) + " (" + print(factor.low.count()) + " to " +
           (factor.high ? print(factor.high->count()) : std::string("any")) + ")";
  };
  Answer a;
  a.values.push_back(
      in_words("The hose pours like a bore of",
               words([&](double f) { return printer.print_bore(units::Length(bore * f)); }), true));
  a.values.push_back(in_words("That is, of the bore as sold",
                              words([&](double f) { return printer.print(units::fraction(f)); })));
  for (AnswerValue& v : a.values) v = because(resists->contributions(), std::move(v));
  const auto beer = physics::flowing_beer(in.get<units::Temperature>("temperature"));
  if (beer) {
    const auto prior = physics::bore_prior(typed_material(in), bore, *beer, {"bore of the hose"});
    a.values.push_back(in_words("Taken before it was timed",
                                printer.print(units::fraction(prior.low().count())) + " to " +
                                    printer.print(units::fraction(prior.high().count()))));
  }
  tell_rough_walls(in, parts, a, printer);
  a.sentences.emplace_back(
      "Carried to another pour on the same dial it is better than its ±: what the dial is off by "
      "cancels. Time two or three.");
  if (const auto known = typed_line(in, physics::with_bores(parts, factor.likely),
                                    in.get<units::GaugePressure>("pressure"))) {
    LineKnown as_timed = *known;
    as_timed.bores = Estimate(physics::BoreFactor(1));
    draw_profile(as_timed, in.get<units::GaugePressure>("pressure"), a);
  }
  return a;
}

// --- the trade's figure beside friction

std::string print_gradient(units::PressureGradient g, const Printer& printer) {
  const bool feet = printer.units.length == units::LengthUnit::foot;
  const units::PressureDifference loss(g * (feet ? units::feet(1) : units::metres(1)));
  const bool psi = printer.units.pressure == units::PressureUnit::psi;
  return printer.number(psi ? units::in_psi(loss) : units::in_bar(loss), psi ? 2 : 3) +
         (psi ? " psi/" : " bar/") + (feet ? "ft" : "m");
}

Outcome restriction(const Inputs& in, const Printer& printer) {
  constexpr auto subjects =
      std::to_array<SubjectField>({{Subject::temperature, "temperature"}, {Subject::bore, "bore"}});
  const auto refused = [&](const physics::RangeError& e) {
    return std::unexpected(problem_of(e, subjects, in, printer));
  };
  const auto bore = in.get<units::Length>("bore");
  const auto known = on_thermometer(in, "temperature");
  const auto friction = units::try_propagate(
      [&](units::Temperature t, physics::ViscosityFactor thick) {
        const auto beer = physics::flowing_beer(t, units::specific_gravity(1.010), thick);
        return beer ? physics::friction_restriction(bore, *beer)
                    : physics::Result<units::PressureGradient>(std::unexpected(beer.error()));
      },
      known, physics::ordinary_viscosity_factor({"the beer’s viscosity"}));
  if (!friction) return refused(friction.error());
  Answer a;
  const auto figure = physics::handbook_restriction(typed_material(in), bore);
  AnswerValue by_friction = because(friction->contributions(),
                                    in_words("Pipe friction alone",
                                             print_gradient(friction->value(), printer) + " (" +
                                                 print_gradient(friction->low(), printer) + " to " +
                                                 print_gradient(friction->high(), printer) + ")",
                                             !figure));
  if (!figure) {
    a.values.push_back(std::move(by_friction));
    a.sentences.emplace_back("The trade prints no figure for such a hose.");
    return a;
  }
  const auto beer = physics::flowing_beer(known.value());
  if (!beer) return refused(beer.error());
  const auto compared = physics::compare_restriction(*figure, *beer);
  if (!compared) return refused(compared.error());
  std::string usual = print_gradient(figure->usual, printer);
  if (figure->least < figure->most) {
    usual += " (prints " + print_gradient(figure->least, printer) + " to " +
             print_gradient(figure->most, printer) + ")";
  }
  a.values.push_back(in_words("The handbook’s figure", std::move(usual), true));
  a.values.push_back(std::move(by_friction));
  const double usual_loss = units::to_magnitude(figure->usual);
  a.values.push_back(estimated("Friction explains of it",
                               units::propagate(
                                   [usual_loss](units::PressureGradient g) {
                                     return units::fraction(units::to_magnitude(g) / usual_loss);
                                   },
                                   *friction)));
  a.values.push_back(
      in_words("Bore that would explain all of it",
               printer.print_bore(units::Length(figure->bore * compared->implied_bore.count()))));
  a.sentences.push_back("Both at the usual pour, " + print_flow(physics::nominal_pour(), printer) +
                        ".");
  a.sentences.emplace_back(
      "Stated bores are nominal, hoses swell and age, and the tables are old, rounded and differ "
      "among themselves. Neither is hidden: time a pour, and the hose tells its own.");
  return a;
}

// --- several pieces

struct PieceKeys {
  std::string_view length, bore, name;
};
constexpr std::array<PieceKeys, 3> piece_keys{
    {{"length", "bore", "first"}, {"length2", "bore2", "second"}, {"length3", "bore3", "third"}}};

// The hoses in order with the rise shared by length, then fittings and restrictor.
std::expected<physics::LineParts, Problem> pieces_in(const Inputs& in) {
  physics::LineParts parts;
  for (const PieceKeys& keys : piece_keys) {
    if (!in.has(keys.length) && !in.has(keys.bore)) continue;
    for (const std::string_view key : {keys.length, keys.bore}) {
      if (in.has(key)) continue;
      Problem p = impossible(key, "A piece takes its length and its bore.");
      p.fault = Fault::missing;
      return std::unexpected(std::move(p));
    }
    physics::Hose hose;
    hose.length = in.get<units::Length>(keys.length);
    hose.bore = in.get<units::Length>(keys.bore);
    parts.emplace_back(hose);
  }
  const auto whole = physics::total_length(parts);
  for (physics::LinePart& part : parts) {
    auto& hose = get<physics::Hose>(part);
    hose.rise = units::Length(in.get<units::Length>("rise") * (hose.length / whole));
  }
  parts.emplace_back(physics::Fitting{in.get<units::PressureDifference>("fittings")});
  if (in.has("restrictor"))
    parts.emplace_back(physics::Fitting{in.get<units::PressureDifference>("restrictor")});
  return parts;
}

void tell_losses(const LineKnown& known, units::VolumeFlow flow, const Printer& printer,
                 Answer& a) {
  const auto beer = physics::flowing_beer(known.temperature.value());
  if (!beer) return;
  const auto line =
      physics::LineFlow::make(physics::with_bores(known.parts, known.bores.value()), *beer);
  if (!line) return;
  for (std::size_t i = 0; i < known.parts.size(); ++i) {
    const auto lost = line->loss_in(i, flow);
    if (!lost) continue;
    const bool hose = get_if<physics::Hose>(&known.parts[i]) != nullptr;
    const bool restrictor = !hose && i > 0 && get_if<physics::Fitting>(&known.parts[i - 1]);
    const std::string name = hose         ? "Lost in piece " + std::to_string(i + 1)
                             : restrictor ? std::string("Lost in the restrictor")
                                          : std::string("Lost in coupler, shank and tap");
    a.values.push_back(exactly(name, *lost));
  }
  a.values.push_back(in_words("Lost to the lift", printer.print(line->lift())));
  a.values.push_back(estimated(
      "It holds", physics::as_hoses_hold(physics::total_volume(known.parts), "the line")));
}

// On paper: what the handbook's figures leave over at its usual pour.
void tell_paper_balance(const Inputs& in, const physics::LineParts& parts, const Printer& printer,
                        Answer& a) {
  std::vector<physics::HandbookRun> runs;
  for (const physics::LinePart& part : parts) {
    const auto* hose = get_if<physics::Hose>(&part);
    if (hose == nullptr) continue;
    const auto figure = physics::handbook_restriction(typed_material(in), hose->bore);
    if (!figure) return;
    runs.push_back({hose->length, figure->usual});
  }
  const auto balance = physics::handbook_balance(in.get<units::GaugePressure>("pressure"),
                                                 in.get<units::Length>("rise"), runs);
  if (!balance) return;
  units::PressureDifference left = balance->left - in.get<units::PressureDifference>("fittings");
  if (in.has("restrictor")) left -= in.get<units::PressureDifference>("restrictor");
  a.sentences.push_back(left >= units::psi(0)
                            ? "By the handbook’s figures, at its usual pour, " +
                                  printer.print(left) + " is left to take up."
                            : "By the handbook’s figures its usual pour lacks " +
                                  printer.print(units::PressureDifference(-left)) + ".");
}

Outcome line_pieces(const Inputs& in, const Printer& printer) {
  const auto refused = [&](const physics::RangeError& e) {
    return std::unexpected(problem_of(e, pieces_subjects, in, printer));
  };
  const auto parts = pieces_in(in);
  if (!parts) return std::unexpected(parts.error());
  const auto pressure = in.get<units::GaugePressure>("pressure");
  const auto known = typed_line(in, *parts, pressure);
  if (!known) return refused(known.error());
  const auto flow = pour_of(*known);
  if (!flow) return refused(flow.error());
  Answer a;
  tell_pour(*flow, in.get<units::Volume>("glass"), printer, a);
  tell_losses(*known, flow->likely, printer, a);
  tell_paper_balance(in, *parts, printer, a);
  a.sentences.emplace_back(
      "A restrictor loses with the square of the pour: what is stated holds at the usual one.");
  draw_profile(*known, pressure, a);
  return a;
}

std::vector<Field> piece_fields() {
  std::vector<Field> fields{pressure_field("pressure", "Pressure on the keg", units::gauge_psi(25)),
                            material_field()};
  const auto piece = [&](const PieceKeys& keys, std::string_view length, std::string_view bore,
                         units::Length long_, units::Length wide) {
    Field f = run_field();
    f.key = keys.length;
    f.label = length;
    f.start = long_;
    fields.push_back(std::move(f));
    Field b = bore_field();
    b.key = keys.bore;
    b.label = bore;
    b.start = wide;
    fields.push_back(std::move(b));
  };
  piece(piece_keys[0], "First piece, long", "First piece, bore", units::metres(12),
        units::inches(0.375));
  piece(piece_keys[1], "Second piece, long", "Second piece, bore", units::metres(1.5),
        units::inches(0.1875));
  piece(piece_keys[2], "Third piece, long", "Third piece, bore", units::metres(1),
        units::inches(0.25));
  for (std::size_t i = fields.size() - 4; i < fields.size(); ++i) fields[i].optional = true;
  for (std::size_t i = fields.size() - 2; i < fields.size(); ++i)
    fields[i] = further(may_be_blank(std::move(fields[i])));
  Field restrictor{.key = "restrictor",
                   .label = "A restrictor loses",
                   .kind = FieldKind::pressure_difference,
                   .least = units::psi(0),
                   .greatest = units::psi(60),
                   .optional = true,
                   .hint = "At a usual pour, as its maker says. Blank for none."};
  fields.push_back(std::move(restrictor));
  fields.push_back(glass_field());
  for (Field& f : common_line_fields()) fields.push_back(std::move(f));
  return fields;
}

}  // namespace

void add_piece_computations(std::vector<Computation>& all) {
  std::vector<Field> timing{pressure_field("pressure", "Pressure on the keg", units::gauge_psi(12)),
                            material_field(),
                            bore_field(),
                            run_field(),
                            glass_field(),
                            seconds_field()};
  timing.back().hint = "From opening to shutting, by hand.";
  timing.back().hint_values = {};
  for (Field& f : common_line_fields()) timing.push_back(std::move(f));
  all.push_back({"timed_pour", "What bore has a hose, by a timed pour?", "Lines",
                 "calibrate calibration timed pour watch true effective bore stopwatch",
                 std::move(timing), &laws::line_calibration, timed_pour});
  all.push_back({"restriction",
                 "What does a hose lose by its length?",
                 "Lines",
                 "restriction resistance psi per foot handbook table friction difference hose",
                 {material_field(), bore_field(),
                  further(beer_temperature_field("temperature", "Beer at", units::celsius(4))),
                  thermometer_error_field()},
                 &laws::handbook_lines,
                 restriction});
  all.push_back({"line_pieces", "How does a line of several pieces pour?", "Lines",
                 "pieces segments trunk long draw restrictor choker flow hose several",
                 piece_fields(), &laws::line_flow, line_pieces});
}

}  // namespace ullage::report::slate
