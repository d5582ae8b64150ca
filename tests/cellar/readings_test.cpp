// SPDX-License-Identifier: GPL-3.0-or-later
//
// What an instrument is off by where nobody stated it: the usual figures of its own kind.
#include "core/cellar/readings.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/cellar/presets.h"
#include "tests/cellar/scenario.h"

namespace ullage::cellar {
namespace {

using namespace testing;

InstrumentId instrument(Scenario& s, std::uint8_t n, InstrumentKind kind) {
  InstrumentRecord record;
  record.instrument.uuid.bytes[0] = n;
  record.instrument_kind = kind;
  record.name = "No. " + std::to_string(n);
  s.log(day(-50), record);
  return record.instrument;
}

// The design's defaults (common practice, no source): a fridge display against beer
// 2 / 0.5 °C, a thermometer in a water bottle 0.5 / 0.2 °C, a 0-60 psi dial 2 / 0.5 psi, a
// spunding dial 1 / 0.3 psi, a bathroom scale 0.3 / 0.1 kg, a parcel scale 0.05 / 0.02 kg.
TEST(Readings, AnInstrumentWithoutStatedErrorsHasTheUsualOnesOfItsKind) {
  Scenario s;
  Lookup lookup(s.journal);
  Readings readings(lookup);
  const auto both = [](double bias, double repeat) { return std::hypot(bias, repeat); };
  const auto fridge = instrument(s, 1, InstrumentKind::fridge_display);
  const auto probe = instrument(s, 2, InstrumentKind::thermometer);
  const auto spunding = instrument(s, 3, InstrumentKind::spunding_dial);
  const auto parcel = instrument(s, 4, InstrumentKind::parcel_scale);
  const auto t = units::celsius(4);
  EXPECT_NEAR(readings.temperature(t, fridge, 1).half_width(), both(2, 0.5), 1e-9);
  EXPECT_NEAR(readings.temperature(t, probe, 1).half_width(), both(0.5, 0.2), 1e-9);
  EXPECT_NEAR(readings.temperature(t, {}, 1).half_width(), both(0.5, 0.2), 1e-9);
  const double psi = units::in_pascals(units::psi(1));
  const auto p = units::gauge_psi(12);
  EXPECT_NEAR(readings.pressure(p, spunding, 1).half_width(), both(1, 0.3) * psi, 1e-6);
  EXPECT_NEAR(readings.pressure(p, {}, 1).half_width(), both(2, 0.5) * psi, 1e-6);
  // Somebody named a scale as the dial: it says nothing of how a dial errs.
  EXPECT_NEAR(readings.pressure(p, parcel, 1).half_width(), both(2, 0.5) * psi, 1e-6);
  EXPECT_NEAR(readings.mass(units::kilograms(20), parcel, 1).half_width(), both(0.05, 0.02), 1e-9);
}

}  // namespace
}  // namespace ullage::cellar
