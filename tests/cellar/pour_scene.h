// SPDX-License-Identifier: GPL-3.0-or-later
//
// A keg on a line, told in full, for tests of how it pours. Nothing here knows
// what should come out.
#pragma once

#include "core/cellar/pour_state.h"
#include "tests/cellar/scenario.h"

namespace ullage::testing {

struct PourFigures {
  double psi = 11.5;
  double celsius = 4;
  double volumes_low = 2.4, volumes_high = 2.6;
  double feet = 6;
  double bore_inch = 3.0 / 16;
  double rise_feet = 1;
  LineMaterial material = LineMaterial::vinyl;
  double altitude_m = 0;
  double co2_share = 1;
  UnitsPreset units = UnitsPreset::us;
};

// The keg has stood at the pressure for three weeks; tapped on day 21.
class PourScene : public Scenario {
 public:
  explicit PourScene(const PourFigures& f = {}) : figures(f) {
    CellarDescribed cellar;
    cellar.name = "Test cellar";
    cellar.time_zone = "Europe/London";
    cellar.altitude = units::metres(f.altitude_m);
    cellar.units = f.units;
    log(day(-90), cellar);
    box = place("Cold box", f.celsius);
    read(box, day(-20), f.celsius);
    beer = batch("House ale", f.volumes_low, f.volumes_high);
    keg = Scenario::keg("K01", box);
    line = register_line("Line 1", f);
    put_on(keg, line, f);
  }

  LineId register_line(const std::string& name, const PourFigures& f) {
    LineRecord r;
    r.line = counted.make<LineId>();
    r.name = name;
    r.tap = name.substr(5);
    r.length = units::feet(f.feet);
    r.bore = units::inches(f.bore_inch);
    r.rise = units::feet(f.rise_feet);
    r.material = f.material;
    record = r;
    log(day(-60), r);
    return r.line;
  }
  void put_on(KegId k, LineId on, const PourFigures& f) {
    Scenario::log(day(-1), Emptied{k});
    prepare(k, day(0));
    fill(k, beer, day(0, 3), 18.6, f.celsius);
    GasSet g{k, units::gauge_psi(f.psi), GasPurpose::set_and_wait, regulator, {}, {}};
    if (f.co2_share < 1) g.co2 = units::mole_fraction(f.co2_share);
    log(day(0, 4), g);
    log(day(21), Tapped{k, on});
  }
  SegmentId segment(std::int64_t position, double feet, double bore_inch, std::optional<PlaceId> at,
                    double rise_feet = 0) {
    SegmentRecord s;
    s.segment = counted.make<SegmentId>();
    s.line = line;
    s.position = position;
    s.length = units::feet(feet);
    s.bore = units::inches(bore_inch);
    s.place = at;
    s.rise = units::feet(rise_feet);
    log(day(-50), s);
    return s.segment;
  }
  void timed(Instant when, double seconds, std::optional<double> psi = {}) {
    TimedPour p;
    p.line = line;
    p.volume = units::us_pints(1);
    p.duration = units::seconds(seconds);
    if (psi) p.pressure = units::gauge_psi(*psi);
    log(when, p);
  }

  [[nodiscard]] LineStatus line_now(Instant when = day(22)) const {
    const CellarStatus all = cellar(when);
    return *all.find(line);
  }
  [[nodiscard]] PourState pour_now(Instant when = day(22)) const { return *line_now(when).pour; }

  PourFigures figures;
  CountingIds counted{9};
  std::optional<RegulatorId> regulator;
  PlaceId box;
  BatchId beer;
  KegId keg;
  LineId line;
  LineRecord record;
};

}  // namespace ullage::testing
