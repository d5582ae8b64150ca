// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cellar/readings.h"

#include <cmath>
#include <string>

#include "core/cellar/presets.h"
#include "core/units/magnitude.h"
#include "core/units/present.h"

namespace ullage::cellar {

namespace {

// As somebody stated it of the instrument, else as its kind usually is.
template <class T>
T stated_or(const std::optional<T>& stated, const std::optional<T>& usual) {
  return stated ? *stated : present(usual);
}

units::ErrorSource bias_of(const InstrumentRecord& i) { return {i.name + ": bias"}; }
units::ErrorSource reading_of(const InstrumentRecord& i, std::int64_t reading) {
  return {i.name + ": reading " + std::to_string(reading)};
}

// The usual errors of this instrument; of `otherwise` where it is of a kind that
// does not read this at all.
const InstrumentPreset& usual_errors(const InstrumentRecord& i, InstrumentKind otherwise) {
  const bool fits = reads_of(i.instrument_kind) == reads_of(otherwise);
  return instrument_preset(fits ? i.instrument_kind : otherwise);
}

}  // namespace

InstrumentRecord Readings::instrument(std::optional<InstrumentId> id, InstrumentKind otherwise,
                                      const char* unnamed) {
  if (id) {
    if (auto known = lookup_.find(*id)) return *known;
  }
  InstrumentRecord usual = instrument_from_preset(otherwise);
  usual.name = unnamed;
  return usual;
}

PressureEstimate Readings::pressure(GaugePressure p, std::optional<InstrumentId> id,
                                    std::int64_t reading) {
  const InstrumentRecord i = instrument(id, InstrumentKind::regulator_dial, "unnamed dial");
  const InstrumentPreset& usual = usual_errors(i, InstrumentKind::regulator_dial);
  return PressureEstimate(p)
      .with(bias_of(i), units::in_pascals(stated_or(i.pressure_bias, usual.pressure_bias)))
      .with(reading_of(i, reading),
            units::in_pascals(stated_or(i.pressure_repeatability, usual.pressure_repeatability)));
}

TemperatureEstimate Readings::temperature(Temperature t, std::optional<InstrumentId> id,
                                          std::int64_t reading) {
  const InstrumentRecord i = instrument(id, InstrumentKind::thermometer, "unnamed thermometer");
  const InstrumentPreset& usual = usual_errors(i, InstrumentKind::thermometer);
  return TemperatureEstimate(t)
      .with(bias_of(i), units::in_kelvin(stated_or(i.temperature_bias, usual.temperature_bias)))
      .with(reading_of(i, reading), units::in_kelvin(stated_or(i.temperature_repeatability,
                                                               usual.temperature_repeatability)));
}

MassEstimate Readings::mass(Mass m, std::optional<InstrumentId> id, std::int64_t reading) {
  const InstrumentRecord i = instrument(id, InstrumentKind::bathroom_scale, "unnamed scale");
  const InstrumentPreset& usual = usual_errors(i, InstrumentKind::bathroom_scale);
  return MassEstimate(m)
      .with(bias_of(i), units::in_kilograms(stated_or(i.mass_bias, usual.mass_bias)))
      .with(reading_of(i, reading),
            units::in_kilograms(stated_or(i.mass_repeatability, usual.mass_repeatability)));
}

VolumeEstimate Readings::metered(Volume v, std::optional<InstrumentId> id, std::int64_t reading) {
  const InstrumentRecord i = instrument(id, InstrumentKind::flow_meter, "unnamed meter");
  const InstrumentPreset& usual = usual_errors(i, InstrumentKind::flow_meter);
  const double magnitude = units::to_magnitude(v) / 100.0;
  return VolumeEstimate(v)
      .with(bias_of(i), magnitude * stated_or(i.relative_bias_percent, usual.relative_bias_percent))
      .with(reading_of(i, reading), magnitude * stated_or(i.relative_repeatability_percent,
                                                          usual.relative_repeatability_percent));
}

Co2Estimate Readings::co2(Co2Concentration c, std::optional<Co2Concentration> half_width,
                          std::optional<InstrumentId> id, std::int64_t reading) {
  const units::Co2Volumes v = units::to_volumes(c);
  const InstrumentRecord i = instrument(id, InstrumentKind::co2_meter, "unnamed CO₂ meter");
  if (half_width) {
    return Co2Estimate(v).with(reading_of(i, reading), units::to_volumes(*half_width).count());
  }
  const InstrumentPreset& usual = usual_errors(i, InstrumentKind::co2_meter);
  const double percent = v.count() / 100.0;
  return Co2Estimate(v)
      .with(bias_of(i), percent * stated_or(i.relative_bias_percent, usual.relative_bias_percent))
      .with(reading_of(i, reading), percent * stated_or(i.relative_repeatability_percent,
                                                        usual.relative_repeatability_percent));
}

}  // namespace ullage::cellar
