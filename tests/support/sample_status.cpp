// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/sample_status.h"

#include <algorithm>
#include <cmath>

namespace ullage::testing {

namespace {

using cellar::Co2Verdict;
using cellar::KegKind;
using cellar::Phase;
using cellar::ReadinessKind;
using cellar::Severity;

SampleKeg carbonating_rye() {
  SampleKeg k(1, "K01", KegKind::ball_lock_19, 19);
  k.phase(Phase::carbonating, -0.8).beer(1, "Red Rye", 18.6, 0.2);
  k.co2(1.7, 0.3, 2.4, 2.6, Co2Verdict::below).gas(30, 11);
  k.span(-4.2, -4, Phase::clean).span(-4, -3.8, Phase::sanitised).span(-3.8, -0.8, Phase::purged);
  k.span(-0.8, 0, Phase::carbonating)
      .span(0, 2, Phase::carbonating, true)
      .span(2, 92, Phase::ready, true);
  k.says("Ready Fri 27 Nov", "drop to 11 psi Thu 14:00");
  k.readiness(ReadinessKind::ready_at, "Ready Fri 27 Nov (1 to 3 days)").ready_at(1, 2, 3);
  k.because("At 30 psi and 1.1 °C it takes up about 0.5 volumes a day.");
  k.because("Drop to 11 psi Thu 14:00 and vent, or it overshoots 2.6 by Fri morning.");
  k.advice(Severity::warning, "Line 3 will pour fast",
           "At 11 psi, 1.2 m of 4.8 mm hose gives 62 mL/s. 3 m gives 42.", "line_record");
  k.advice(Severity::advice, "Drop to 11 psi on Thu 14:00 and vent",
           "Lowering the regulator does not lower the keg: vent it too.", "gas_set");
  k.step("hold_reading", -5, true, "Held 30 psi for 2 days");
  k.step("cleaned", -4.2, true, "Caustic 2 %, 20 min").step("sanitised", -4, true);
  k.step_missing("inspected").step("purged", -3.8, true, "5 cycles at 30 psi, 0.08 % oxygen left");
  return k.use_next(4);
}

SampleKeg lager_on_locked_line() {
  SampleKeg k(11, "K11", KegKind::us_sixth_barrel, 19.5);
  k.phase(Phase::on_tap, -3.3).beer(11, "Cellar Lager", 5.5, 0.8);
  k.co2(2.6, 0.1, 2.4, 2.7, Co2Verdict::within).gas(12, 12).on_line(2).locked("JB");
  k.span(-13, -12, Phase::clean).span(-12, -5.4, Phase::carbonating).span(-5.4, -3.3, Phase::ready);
  k.span(-3.3, 0, Phase::on_tap).span(0, 0.8, Phase::on_tap, true);
  k.says("On tap 2", "flush, check and release line 2");
  k.readiness(ReadinessKind::blocked, "Do not serve: line 2 holds caustic");
  return k;
}

SampleKeg cider_held_back() {
  SampleKeg k(6, "K06", KegKind::keg_30, 30);
  k.phase(Phase::ready, -6).beer(6, "Orchard Cider", 29, 0.5);
  k.co2(2.5, 0.2, 2.4, 2.8, Co2Verdict::within).quarantined("tastes of butter, brewer asked");
  k.span(-6, 0, Phase::ready).span(0, 14, Phase::ready, true);
  k.says("Held back", "decide: clear or return");
  k.readiness(ReadinessKind::blocked, "Held back since Mon");
  k.advice(Severity::danger, "Do not serve: held back", "Tastes of butter, brewer asked.",
           "cleared");
  return k;
}

SampleKeg stout_nobody_can_tell() {
  SampleKeg stout(4, "K04", KegKind::keg_50, 50);
  stout.phase(Phase::conditioning, -0.7).beer(4, "Night Shift Stout", 50, 1.0);
  stout.co2_unknown("no temperature known for the back room").span(-0.7, 0, Phase::conditioning);
  stout.span(0, 1, Phase::conditioning, true)
      .says("Can’t tell yet", "read the temperature of Back room");
  stout.readiness(ReadinessKind::cant_tell, "Can’t tell yet: no temperature known");
  return stout;
}

SampleKeg wheat_over_its_range() {
  SampleKeg wheat(8, "K08", KegKind::us_sixth_barrel, 19.5);
  wheat.phase(Phase::carbonating, -6)
      .beer(8, "Cloudy Wheat with a long name to elide", 19, 0.4)
      .gas(30, 16);
  wheat.co2(4.1, 0.4, 3.2, 3.6, Co2Verdict::above).span(-6, 0, Phase::carbonating);
  wheat.says("Over its range", "vent 12 times, an hour apart");
  wheat.advice(Severity::warning, "Over-carbonated", "4.1 ± 0.4 volumes against 3.2 to 3.6.",
               "vented");
  return wheat;
}

std::vector<cellar::KegStatus> dozen() {
  SampleKeg bitter(3, "K03", KegKind::ball_lock_19, 19);
  bitter.phase(Phase::on_tap, -2).beer(3, "Harbour Bitter", 11.8, 0.6).on_line(1).gas(9, 9);
  bitter.co2(2.0, 0.1, 1.9, 2.2, Co2Verdict::within).span(-9, -8, Phase::clean);
  bitter.span(-8, -4, Phase::carbonating).span(-4, -2, Phase::ready).span(-2, 0, Phase::on_tap);
  bitter.span(0, 3.5, Phase::on_tap, true).says("On tap 1", "empty about Sun 29 Nov");
  bitter.readiness(ReadinessKind::ready_now, "Ready").use_next(1);

  SampleKeg saison(7, "K07", KegKind::ball_lock_19, 19);
  saison.phase(Phase::ready, -2).beer(7, "Saison No. 4", 18.7, 0.3).gas(15, 14);
  saison.co2(2.9, 0.1, 2.7, 3.1, Co2Verdict::within).span(-8, -2, Phase::carbonating);
  saison.span(-2, 0, Phase::ready).span(0, 60, Phase::ready, true);
  saison.says("Ready since Mon", "tap any time");
  saison.readiness(ReadinessKind::ready_now, "Ready since Mon").use_next(2);

  SampleKeg purged(5, "K05", KegKind::ball_lock_19, 19);
  purged.phase(Phase::purged, -4).span(-5, -4.5, Phase::clean).span(-4.5, -4, Phase::sanitised);
  purged.span(-4, 0, Phase::purged).span(0, 20, Phase::purged, true);
  purged.says("Ready to fill", "holds 12 psi, 7 days");

  SampleKeg leaky(9, "K09", KegKind::ball_lock_19, 19);
  leaky.phase(Phase::clean, -1.2).span(-14, -1.2, Phase::dirty).span(-1.2, 0, Phase::clean);
  leaky.says("Fix the seal", "lid leaks 14 ± 3 g a day");
  leaky.advice(Severity::warning, "Failed its hold test", "Fell 4 psi in 20 h.", "inspected");

  SampleKeg ginger(2, "K02", KegKind::ball_lock_9, 9.5);
  ginger.phase(Phase::carbonating, -2).beer(2, "Ginger Beer", 9.2, 0.1).gas(22, 20);
  ginger.co2(2.1, 0.3, 2.9, 3.4, Co2Verdict::below).span(-2.4, -2, Phase::clean);
  ginger.span(-2, 0, Phase::carbonating)
      .span(0, 5, Phase::carbonating, true)
      .span(5, 60, Phase::ready, true);
  ginger.says("Ready Mon 30 Nov", "holding 22 psi").ready_at(3, 5, 8);
  ginger.readiness(ReadinessKind::ready_at, "Ready Mon 30 Nov (3 to 8 days)").use_next(5);

  SampleKeg dirty(12, "K12", KegKind::ball_lock_19, 19);
  dirty.phase(Phase::dirty, -1).span(-14, -1, Phase::on_tap).span(-1, 0, Phase::dirty);
  dirty.says("Dirty", "clean it");

  SampleKeg unknown(10, "K10", KegKind::pin_lock_19, 19);
  unknown.says("Not known yet", "say what is in it");

  return {carbonating_rye().status(),
          ginger.status(),
          bitter.status(),
          stout_nobody_can_tell().status(),
          purged.status(),
          cider_held_back().status(),
          saison.status(),
          wheat_over_its_range().status(),
          leaky.status(),
          unknown.status(),
          lager_on_locked_line().status(),
          dirty.status()};
}

}  // namespace

cellar::CellarStatus sample_cellar() { return sample_cellar_of(12); }

cellar::CellarStatus sample_cellar_of(std::size_t kegs) {
  cellar::CellarStatus status;
  status.now = sample_now;
  status.cellar = cellar::CellarDescribed{};
  status.cellar->name = "Sample cellar";
  const std::vector<cellar::KegStatus> models = dozen();
  for (std::size_t i = 0; i < kegs; ++i) {
    cellar::KegStatus keg = models[i % models.size()];
    keg.record.keg = numbered<cellar::KegId>(static_cast<std::uint16_t>(i + 1));
    const std::string number = std::to_string(i + 1);
    keg.record.tag = "K" + std::string(number.size() < 2 ? 1 : 0, '0') + number;
    status.kegs.push_back(std::move(keg));
  }
  return status;
}

cellar::CarbonationCurveData sample_curve() {
  cellar::CarbonationCurveData curve;
  for (int h = -20; h <= 96; ++h) {
    const double since = h + 20;
    const double likely =
        since < 68 ? 0.85 + 2.6 * (1 - std::exp(-since / 60)) : 2.62 - (since - 68) * 0.002;
    const double spread = 0.05 + std::min(since, 68.0) * 0.004;
    curve.points.push_back({days_on(h / 24.0), units::volumes_of_co2(likely - spread),
                            units::volumes_of_co2(likely), units::volumes_of_co2(likely + spread)});
  }
  curve.readings.push_back({days_on(-0.25), co2_about(1.6, 0.25), numbered<cellar::EntryId>(60)});
  curve.marks.push_back({days_on(-0.8), words("30 psi"), false});
  curve.marks.push_back({days_on(2.0), words("drop to 11 psi"), true});
  curve.target_low = units::volumes_of_co2(2.4);
  curve.target_high = units::volumes_of_co2(2.6);
  return curve;
}

}  // namespace ullage::testing
