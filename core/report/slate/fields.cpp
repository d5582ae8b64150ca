// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/slate/fields.h"

#include <algorithm>

#include "core/physics/atmosphere.h"
#include "core/physics/equilibrium.h"
#include "core/physics/keg_cooling.h"

namespace ullage::report::slate {
namespace {

using physics::Subject;
using units::Estimate;

// A number of a refusal, in the quantity it is of; empty where there is none to
// show.
std::optional<Value> quantity_of(Subject subject, double v) {
  switch (subject) {
    case Subject::temperature:
      return units::kelvin(v);
    case Subject::gauge_pressure:
      return units::gauge_pascals(v);
    case Subject::altitude:
    case Subject::length:
      return units::metres(v);
    case Subject::co2:
    case Subject::co2_above_water:
      return units::volumes_of_co2(v);
    case Subject::co2_fraction:
    case Subject::oxygen_fraction:
      return units::mole_fraction(v);
    case Subject::gravity:
    case Subject::final_gravity:
      return units::specific_gravity(v);
    case Subject::alcohol:
      return units::percent_abv(v);
    case Subject::volume:
    case Subject::beer_volume:
    case Subject::headspace:
      return units::cubic_metres(v);
    case Subject::mass:
      return units::kilograms(v);
    case Subject::cycles:
    case Subject::vessel_volumes:
    case Subject::glasses:
      return Count{v};
    case Subject::duration:
    case Subject::step_time:
    case Subject::time_constant:
      return units::seconds(v);
    case Subject::fraction:
      return units::fraction(v);
    default:
      return std::nullopt;
  }
}

std::string sentence_of(const physics::RangeError& e, const std::optional<Value>& limit,
                        const units::Printer& printer) {
  const std::string at = limit ? print(*limit, printer) : std::string();
  switch (e.subject) {
    case Subject::co2_above_water:
      return "No: pure water would hold no more than " + at + " there, and beer holds less.";
    case Subject::final_gravity:
      return "The final gravity can’t be above the original.";
    case Subject::absolute_pressure:
      return "The equation does not reach this pressure.";
    case Subject::headspace:
      return "No room for gas is left above the beer: at least " + at + " is needed.";
    case Subject::beer_volume:
      if (e.value > e.high) return "It holds no more than " + at + ".";
      break;
    case Subject::mass:
      return "The weight and the empty weight don’t go together.";
    default:
      break;
  }
  if (!limit) return "That is beyond what the equation is good for.";
  return (e.value < e.low ? "The least is " : "The most is ") + at + ".";
}

}  // namespace

Field beer_temperature_field(std::string_view key, std::string_view label,
                             units::Temperature start) {
  return {.key = key,
          .label = label,
          .kind = FieldKind::temperature,
          .start = start,
          .least = units::kelvin(physics::beer_temperature_range.low),
          .greatest = units::kelvin(physics::beer_temperature_range.high)};
}

Field place_temperature_field(units::Temperature start) {
  return {.key = "place",
          .label = "Air about the keg",
          .kind = FieldKind::temperature,
          .start = start,
          .least = units::kelvin(physics::beer_temperature_range.low),
          .greatest = units::kelvin(physics::beer_temperature_range.high)};
}

Field pressure_field(std::string_view key, std::string_view label, units::GaugePressure start) {
  return {.key = key,
          .label = label,
          .kind = FieldKind::gauge_pressure,
          .start = start,
          .least = units::gauge_psi(0),
          .greatest = units::gauge_psi(65)};
}

Field co2_field(std::string_view key, std::string_view label, units::Co2Volumes start) {
  return {.key = key,
          .label = label,
          .kind = FieldKind::co2,
          .start = start,
          .least = units::volumes_of_co2(0.1),
          .greatest = units::volumes_of_co2(6)};
}

Field brimful_field() {
  return {.key = "brimful",
          .label = "The keg holds, to the brim",
          .kind = FieldKind::volume,
          .start = units::litres(19.9),
          .least = units::litres(1),
          .greatest = units::litres(200)};
}

Field beer_volume_field(std::string_view label, units::Volume start) {
  return {.key = "beer",
          .label = label,
          .kind = FieldKind::volume,
          .start = start,
          .least = units::litres(0.2),
          .greatest = units::litres(200)};
}

Field glass_field() {
  return {.key = "glass",
          .label = "A glass holds",
          .kind = FieldKind::glass,
          .start = units::litres(0.5),
          .least = units::litres(0.05),
          .greatest = units::litres(3)};
}

Field altitude_field() {
  return {.key = "altitude",
          .label = "Altitude",
          .kind = FieldKind::length,
          .start = units::metres(0),
          .least = units::metres(-400),
          .greatest = units::metres(5000),
          .detail = true,
          .hint = "Air is thinner up high: the dial must show more."};
}

Field co2_share_field() {
  return {.key = "share",
          .label = "CO₂ in the gas",
          .kind = FieldKind::fraction,
          .start = units::fraction(1),
          .least = units::fraction(0.05),
          .greatest = units::fraction(1),
          .detail = true,
          .hint = "100 % unless it is a blend with nitrogen."};
}

Field dial_error_field() {
  return {.key = "dial",
          .label = "The dial may be off by",
          .kind = FieldKind::pressure_difference,
          .start = units::psi(2),
          .least = units::psi(0),
          .greatest = units::psi(10),
          .detail = true};
}

Field thermometer_error_field() {
  return {.key = "thermometer",
          .label = "The thermometer may be off by",
          .kind = FieldKind::temperature_difference,
          .start = units::kelvin_difference(0.5),
          .least = units::kelvin_difference(0),
          .greatest = units::kelvin_difference(5),
          .detail = true,
          .hint = "For a fridge display take four times as much."};
}

Field mass_field(std::string_view key, std::string_view label, units::Mass start, units::Mass least,
                 units::Mass greatest) {
  return {.key = key,
          .label = label,
          .kind = FieldKind::mass,
          .start = start,
          .least = least,
          .greatest = greatest};
}

Field duration_field(std::string_view key, std::string_view label, units::Duration start,
                     units::Duration least, units::Duration greatest) {
  return {.key = key,
          .label = label,
          .kind = FieldKind::duration,
          .start = start,
          .least = least,
          .greatest = greatest};
}

Field choice_field(std::string_view key, std::string_view label,
                   std::vector<std::string_view> choices) {
  return {.key = key,
          .label = label,
          .kind = FieldKind::choice,
          .start = Choice{0},
          .least = Choice{0},
          .greatest = Choice{static_cast<int>(choices.size()) - 1},
          .choices = std::move(choices)};
}

Field co2_error_field(std::string_view key, std::string_view label) {
  Field f = further(co2_field(key, label, units::volumes_of_co2(0.1)));
  f.least = units::volumes_of_co2(0);
  f.greatest = units::volumes_of_co2(3);
  return f;
}

Field uptake_field() {
  Field f =
      further(may_be_blank(number_field("days", "Days to close most of the gap", 4, 0.2, 60)));
  f.hint =
      "How fast this keg takes gas up, if you know: two thirds of the way. Otherwise 4 "
      "days for a full soda keg, 2 to 8.";
  return f;
}

Field uptake_factor_field() {
  Field f = further(number_field("days_factor", "The days may be off by a factor of", 1.25, 1, 10));
  f.hint = "Counts where the days are filled in: 1.25 is a quarter more, or a fifth less.";
  return f;
}

physics::Result<physics::CarbonationRates> uptake_rates(const Inputs& in) {
  auto rates = physics::carbonation_priors(in.get<units::Volume>("brimful"),
                                           in.get<units::Volume>("beer"), "this keg");
  if (rates && in.has("days")) {
    const units::ErrorSource source = rates->resting.source();
    rates->resting = {units::days(in.number("days")), in.number("days_factor"), source};
  }
  return rates;
}

Field further(Field f) {
  f.detail = true;
  return f;
}

Field may_be_blank(Field f) {
  f.start.reset();
  f.optional = true;
  return f;
}

Field number_field(std::string_view key, std::string_view label, double start, double least,
                   double greatest) {
  return {.key = key,
          .label = label,
          .kind = FieldKind::number,
          .start = Count{start},
          .least = Count{least},
          .greatest = Count{greatest}};
}

Estimate<units::GaugePressure> on_dial(const Inputs& in, std::string_view key) {
  const auto off = in.maybe<units::PressureDifference>("dial").value_or(units::psi(0));
  return Estimate(in.get<units::GaugePressure>(key)).with_error({"dial: bias"}, off);
}

Estimate<units::Temperature> on_thermometer(const Inputs& in, std::string_view key) {
  const auto off =
      in.maybe<units::TemperatureDifference>("thermometer").value_or(units::kelvin_difference(0));
  return Estimate(in.get<units::Temperature>(key)).with_error({"thermometer: bias"}, off);
}

Estimate<units::AbsolutePressure> air_at(const Inputs& in) {
  const auto altitude = in.maybe<units::Length>("altitude").value_or(units::metres(0));
  return physics::ambient_pressure_estimate(altitude, {"weather"}).value();
}

units::MoleFraction gas_share(const Inputs& in) {
  const auto share = in.maybe<units::Fraction>("share");
  return units::mole_fraction(share ? share->count() : 1.0);
}

Problem problem_of(const physics::RangeError& e, SubjectFields fields, const Inputs& in,
                   const units::Printer& printer) {
  const auto at = std::find_if(fields.begin(), fields.end(),
                               [&](const SubjectField& f) { return f.subject == e.subject; });
  Problem p;
  p.fault = e.value < e.low ? Fault::too_small : Fault::too_large;
  if (at != fields.end()) {
    p.field = at->field;
    if (const Inputs::Held* held = in.held(at->field)) p.value = held->value;
  }
  p.limit = quantity_of(e.subject, e.value < e.low ? e.low : e.high);
  if (p.limit && !is_finite(*p.limit)) p.limit.reset();
  p.sentence = sentence_of(e, p.limit, printer);
  return p;
}

Problem impossible(std::string_view field, std::string sentence) {
  return {std::string(field), Fault::impossible, {}, {}, std::move(sentence)};
}

Problem beyond(std::string_view field, const Inputs& in, const Value& limit, std::string sentence) {
  Problem p = impossible(field, std::move(sentence));
  if (const Inputs::Held* held = in.held(field)) p.value = held->value;
  p.limit = limit;
  return p;
}

}  // namespace ullage::report::slate
