// SPDX-License-Identifier: GPL-3.0-or-later
//
// What the demo cellar consists of: its places, instruments, gas, lines, beers
// and kegs, and the ids by which its story speaks of them.
#pragma once

#include "app/demo_story.h"

namespace ullage::app {

struct DemoPlaces {
  cellar::PlaceId cold_box, conditioning, cellar_room, bar;
};
struct DemoInstruments {
  cellar::InstrumentId dial_a, dial_b, fridge, bottle_thermometer, parcel_scale, bathroom_scale;
};
struct DemoOutlet {
  cellar::RegulatorId regulator;
  cellar::InstrumentId dial;
};
struct DemoGas {
  cellar::BottleId one, two;
  cellar::RegulatorId serving, burst;
  DemoOutlet lager, saison, ginger, porter;  // secondaries behind the burst regulator
};
struct DemoLines {
  cellar::LineId one, two, three;
};
struct DemoBatches {
  cellar::BatchId bitter, saison, rye, ginger, porter, amber, pils, lager, pale, old_bitter;
};
struct DemoKegs {
  cellar::KegId k01, k02, k03, k04, k05, k06, k07, k08, k09, k10, k11, k12, p01, p02, p03;
};

struct DemoRegister {
  DemoPlaces places;
  DemoInstruments instruments;
  DemoGas gas;
  DemoLines lines;
  DemoBatches batches;
  DemoKegs kegs;
};

[[nodiscard]] cellar::CellarDescribed demo_description();

// Logs the register, some six weeks ago, and returns its ids.
[[nodiscard]] DemoRegister register_demo(DemoStory& story);

}  // namespace ullage::app
