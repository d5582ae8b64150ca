// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/slate/prefiller.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/report/keg_inputs.h"

namespace ullage::report::slate {

using cellar::KegStatus;

namespace {

template <class Q>
std::optional<Value> optional_value(const std::optional<Q>& q) {
  return q ? std::optional<Value>(*q) : std::nullopt;
}
template <class Q>
std::optional<Value> value_of(const std::optional<units::Estimate<Q>>& e) {
  return e ? std::optional<Value>(e->value()) : std::nullopt;
}

}  // namespace

Prefiller::Prefiller(std::string_view key, const KegSubject& subject)
    : computation_(*find_computation(key)),
      s_(subject),
      in_(starting_inputs(computation_, subject.speaker.printer.units)) {}

Prefiller& Prefiller::put(std::string_view field, const std::optional<Value>& value,
                          InputOrigin origin, std::optional<cellar::Instant> at) {
  const Field* f = find(field);
  if (f == nullptr) return *this;
  if (value) return fill(*f, *value, origin, at);
  if (f->detail) {
    assumed_.push_back(label(*f));
  } else {
    in_.set(field, std::nullopt);
    to_fill_in_.push_back(label(*f));
  }
  return *this;
}

Prefiller& Prefiller::put_known(std::string_view field, const std::optional<Value>& value,
                                InputOrigin origin, std::optional<cellar::Instant> at) {
  const Field* f = find(field);
  return f == nullptr || !value ? *this : fill(*f, *value, origin, at);
}

Prefiller& Prefiller::blank(std::string_view field) {
  in_.set(field, std::nullopt);
  return *this;
}

Prefiller& Prefiller::keg() {
  const KegStatus& k = s_.keg;
  const bool sized = k.record.brimful > units::litres(0);
  put("brimful", sized ? std::optional<Value>(k.record.brimful) : std::nullopt, InputOrigin::typed);
  const cellar::PlaceStatus* place = k.place ? s_.cellar.find(k.place->place) : nullptr;
  const bool known = place != nullptr && place->temperature;
  const auto air = known ? std::optional<Value>(*place->temperature) : std::nullopt;
  const auto read_at = known ? place->read_at : std::nullopt;
  const InputOrigin read = read_at ? InputOrigin::read : InputOrigin::typed;
  put("place", air, read, read_at);
  if (k.contents) {
    put("beer", value_of(k.level.left), InputOrigin::worked_out, k.level.measured_at);
    put("temperature", value_of(k.beer_temperature), InputOrigin::worked_out);
  } else {
    put("beer", Value(k.record.nominal), InputOrigin::typed);
    put("temperature", air, read, read_at);
  }
  const auto& cellar = s_.cellar.cellar;
  put("altitude", cellar ? std::optional<Value>(cellar->altitude) : std::nullopt,
      InputOrigin::typed);
  put("share", Value(units::fraction(k.gas.co2.count())), InputOrigin::typed, k.gas.since);
  return *this;
}

Prefiller& Prefiller::temperature_error() {
  if (!s_.keg.beer_temperature) return *this;
  return put_known("thermometer", Value(s_.keg.beer_temperature->error()), InputOrigin::worked_out);
}

Prefiller& Prefiller::gas() {
  const cellar::GasOnKeg& gas = s_.keg.gas;
  return put("pressure", gas.on && gas.set ? std::optional<Value>(*gas.set) : std::nullopt,
             InputOrigin::typed, gas.since);
}

Prefiller& Prefiller::dial_error() {
  const cellar::InstrumentRecord* dial = gas_dial(s_);
  if (dial == nullptr || !dial->pressure_bias) return *this;
  const double repeat =
      dial->pressure_repeatability ? units::in_pascals(*dial->pressure_repeatability) : 0.0;
  return put_known(
      "dial", Value(units::pascals(std::hypot(units::in_pascals(*dial->pressure_bias), repeat))),
      InputOrigin::typed);
}

Prefiller& Prefiller::range() {
  const cellar::Co2State& co2 = s_.keg.co2;
  const auto middle = middle_of_range();
  put("low", optional_value(co2.target_low), InputOrigin::typed);
  put("high", optional_value(co2.target_high), InputOrigin::typed);
  return put("co2", middle, InputOrigin::typed);
}

std::optional<Value> Prefiller::middle_of_range() const {
  const cellar::Co2State& co2 = s_.keg.co2;
  if (!co2.target_low || !co2.target_high) return std::nullopt;
  return Value(units::volumes_of_co2((co2.target_low->count() + co2.target_high->count()) / 2));
}

Prefiller& Prefiller::co2_now(std::string_view field, std::string_view error) {
  const auto& now = s_.keg.co2.now;
  put(field, value_of(now), InputOrigin::worked_out);
  if (now) {
    put_known(error, Value(units::volumes_of_co2(now->half_width())), InputOrigin::worked_out);
  }
  return *this;
}

Prefiller& Prefiller::pace() {
  const auto& uptake = s_.keg.co2.uptake;
  if (!uptake) return *this;
  const cellar::UptakeBand& band = uptake->learned;
  const double factor = std::sqrt(units::in_seconds(band.high) / units::in_seconds(band.low));
  return put_known("days", Value(Count{units::in_days(band.likely)}), InputOrigin::worked_out)
      .put_known("days_factor", Value(Count{factor}), InputOrigin::worked_out);
}

Offer Prefiller::offer(std::string label) const {
  return {computation_.key, std::move(label), in_, to_fill_in_, assumed_};
}

const Field* Prefiller::find(std::string_view field) const {
  const auto f = std::find_if(computation_.fields.begin(), computation_.fields.end(),
                              [&](const Field& each) { return each.key == field; });
  return f == computation_.fields.end() ? nullptr : &*f;
}

std::string Prefiller::label(const Field& f) const { return label_of(f, s_.speaker.words); }

Prefiller& Prefiller::fill(const Field& f, const Value& value, InputOrigin origin,
                           std::optional<cellar::Instant> at) {
  if (value.index() != f.least.index()) return *this;  // another thing of that name
  const double m = magnitude_of(value);
  if (m >= magnitude_of(f.least) && m <= magnitude_of(f.greatest)) {
    in_.set(f.key, value, origin, at ? say_age(*at, s_.speaker) : std::string());
  } else {
    in_.set(f.key, std::nullopt);
    to_fill_in_.push_back(label(f) + " (" + print(value, s_.speaker.printer) + " is beyond this)");
  }
  return *this;
}

}  // namespace ullage::report::slate
