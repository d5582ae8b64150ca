// SPDX-License-Identifier: GPL-3.0-or-later
//
// A cellar with a gas bottle, a regulator with its dial and a parcel scale, and
// the entries that its account is kept from.
#pragma once

#include <string>

#include "core/cellar/gas_account.h"
#include "tests/cellar/scenario.h"

namespace ullage::testing {

struct GasCellar : Scenario {
  GasCellar() {
    box = place("Cold box", 4);
    dial = instrument("Dial", InstrumentKind::regulator_dial);
    scale = instrument("Parcel scale", InstrumentKind::parcel_scale);
    bottle = gas_bottle("Bottle 1");
    regulator = gas_regulator("Regulator 1", bottle);
  }

  InstrumentId instrument(const std::string& name, InstrumentKind kind) {
    InstrumentRecord r = instrument_from_preset(kind);
    r.instrument = gas_ids.make<InstrumentId>();
    r.name = name;
    log(day(-60), r);
    return r.instrument;
  }
  BottleId gas_bottle(const std::string& name, double co2 = 1) {
    BottleRecord b;
    b.bottle = gas_ids.make<BottleId>();
    b.name = name;
    b.co2 = units::mole_fraction(co2);
    b.tare = units::kilograms(3.5);
    b.content = units::kilograms(2.27);
    b.price_minor = 2270;  // a gram for a cent
    b.place = box;
    log(day(-60), b);
    return b.bottle;
  }
  RegulatorId gas_regulator(const std::string& name, std::optional<BottleId> on,
                            std::optional<RegulatorId> fed_by = {}) {
    RegulatorRecord r;
    r.regulator = gas_ids.make<RegulatorId>();
    r.name = name;
    r.bottle = on;
    r.dial = dial;
    r.fed_by = fed_by;
    log(day(-60), r);
    return r.regulator;
  }
  EntryId weigh(Instant when, double gas_kilograms, std::optional<BottleId> which = {}) {
    return log(when, BottleWeighed{
                         which.value_or(bottle), units::kilograms(3.5 + gas_kilograms), scale, {}});
  }
  EntryId set_gas(KegId keg, Instant when, double psi, std::optional<RegulatorId> from = {}) {
    return log(
        when,
        GasSet{
            keg, units::gauge_psi(psi), GasPurpose::serving, from.value_or(regulator), dial, {}});
  }
  EntryId heavy(KegId keg, Instant when, double kilograms) {
    LevelReading l;
    l.keg = keg;
    l.method = LevelMethod::weight;
    l.gross_mass = units::kilograms(kilograms);
    return log(when, l);
  }
  // A keg delivered carbonated: beer of `litres`.
  KegId delivered(const std::string& tag, BatchId of, Instant when) {
    const KegId k = keg(tag, box);
    Received r;
    r.keg = k;
    r.batch = of;
    r.volume = units::litres(18.6);
    r.temperature = units::celsius(4);
    r.co2 = units::to_concentration(units::volumes_of_co2(2.5));
    log(when, r);
    return k;
  }
  [[nodiscard]] const GasAccount& account(Instant now, std::size_t index = 0) {
    told = cellar(now);
    return *told.bottles.at(index).account;
  }

  PlaceId box;
  InstrumentId dial, scale;
  BottleId bottle;
  RegulatorId regulator;
  CellarStatus told;
  CountingIds gas_ids{7};
};

}  // namespace ullage::testing
