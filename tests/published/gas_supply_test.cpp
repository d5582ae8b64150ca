// SPDX-License-Identifier: GPL-3.0-or-later
//
// Bottles, rooms and limits against printed tables and worked examples.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "core/physics/atmosphere.h"
#include "core/physics/co2_bottle.h"
#include "core/physics/co2_gas.h"
#include "core/physics/gas_use.h"
#include "core/physics/room_air.h"
#include "core/physics/room_leak.h"
#include "tests/published/csv.h"

namespace ullage::published {
namespace {

using namespace physics;
using namespace units;

// Pressures are printed to 1e-4 MPa and densities to 3 or 4 figures; the sources
// (two tables and a set of equations) differ among themselves by 0.05 %.
TEST(Co2Saturation, PrintedTables) {
  int densities = 0;
  for (const Row& row : table("co2_saturation.csv")) {
    const double c = row.number("temp_C");
    const auto s = co2_saturation(celsius(c));
    ASSERT_TRUE(s) << c;
    const double mpa = row.number("saturation_pressure_MPa_abs");
    EXPECT_NEAR(in_pascals(s->pressure) / 1e6, mpa, 5e-4 * mpa) << c;
    if (const auto liquid = row.maybe("liquid_density_kg_m3")) {
      EXPECT_NEAR(in_kilograms_per_cubic_metre(s->liquid), *liquid, 5e-4 * *liquid + 0.05) << c;
      const double vapour = row.number("vapour_density_kg_m3");
      EXPECT_NEAR(in_kilograms_per_cubic_metre(s->vapour), vapour, 5e-4 * vapour + 0.05) << c;
      ++densities;
    }
  }
  EXPECT_GE(densities, 10);
}

// Critical point from a fluid file and from Duschek 1990 (verified): both ends of
// the curves meet there.
TEST(Co2Saturation, MeetsAtTheCriticalPoint) {
  const auto s = co2_saturation(kelvin(saturation_temperature_range.high));
  ASSERT_TRUE(s);
  EXPECT_NEAR(in_pascals(s->pressure) / 1e6, 7.3773, 0.003);
  EXPECT_GT(s->liquid, kilograms_per_cubic_metre(467.6));
  EXPECT_LT(s->vapour, kilograms_per_cubic_metre(467.6));
}

// 49 CFR 173.304a allows 68 % (verified); full of liquid at 26.8 C by the
// reference notes, which print one decimal.
TEST(FillRatio, LiquidFullTemperature) {
  const auto t = liquid_full_temperature(fraction(0.68));
  ASSERT_TRUE(t);
  EXPECT_NEAR(in_celsius(*t), 26.8, 0.05);
  // 958 psi gauge there, computed elsewhere; the rounding of the temperature
  // alone is 0.05 K of 1.6 bar/K, 1.2 psi.
  const auto s = co2_saturation(*t);
  ASSERT_TRUE(s);
  EXPECT_NEAR(in_psi(s->pressure - sea_level()), 958, 2);
}

// The dense-gas equation against the printed vapour densities: within the half-width
// that the program gives it (4 %) and the print's half unit. An ideal gas would be a
// quarter off at -20 C and half at 30 C.
TEST(DenseGas, SaturatedVapour) {
  for (const Row& row : table("co2_saturation.csv")) {
    const auto printed = row.maybe("vapour_density_kg_m3");
    const double c = row.number("temp_C");
    if (!printed) continue;
    const auto p = co2_saturation(celsius(c))->pressure;
    const auto d = bottle_gas_density(p, celsius(c), mole_fraction(1));
    ASSERT_TRUE(d) << c;
    EXPECT_NEAR(in_kilograms_per_cubic_metre(*d), *printed,
                dense_co2_half_width.count() * *printed + 0.05)
        << c;
  }
}

// At keg pressures two equations of different kinds: the virial table (computed
// elsewhere from verified coefficients, good to the 0.3 % that co2_gas.h states). A cubic
// equation of two constants gives the second virial coefficient of such a gas to about a
// tenth (textbooks, from memory), so what it is off by is a tenth of what a real gas is
// off the ideal one.
TEST(DenseGas, LowPressureTable) {
  int checked = 0;
  for (const Row& row : table("co2_gas_compressibility.csv")) {
    const auto d = bottle_gas_density(bar_absolute(row.number("pressure_bar_abs")),
                                      celsius(row.number("temp_C")), mole_fraction(1));
    ASSERT_TRUE(d);
    const double printed = row.number("density_kg_m3");
    EXPECT_NEAR(in_kilograms_per_cubic_metre(*d), printed,
                (0.003 + 0.1 * (1 - row.number("Z"))) * printed);
    ++checked;
  }
  EXPECT_EQ(checked, 30);
}

// Thinned out, every gas is ideal: compressibilities at p and 2p run straight to 1, but
// for their squares (1 % at 1 bar and 0 C is 1e-4).
TEST(DenseGas, IsIdealInTheLimit) {
  for (const double co2 : {0.0, 0.3, 0.6, 1.0}) {
    const double molar = co2 * 44.0095e-3 + (1 - co2) * 28.0134e-3;
    for (const double c : {0.0, 10.0, 25.0}) {
      const auto z = [&](double bars) {
        const auto d = bottle_gas_density(bar_absolute(bars), celsius(c), mole_fraction(co2));
        const double ideal = bars * 1e5 * molar / (8.314462618 * (c + 273.15));
        return d ? ideal / in_kilograms_per_cubic_metre(*d) : std::nan("");
      };
      EXPECT_NEAR(2 * z(0.5) - z(1), 1, 1e-4) << co2 << " " << c;
      EXPECT_NEAR(z(0.5), 1, 0.006) << co2 << " " << c;
    }
  }
}

// Compressibility of nitrogen at 300 K in an engineers' handbook (from memory, to 1e-4),
// within the half-width of anything with nitrogen in it (5 %); an ideal gas is 5.3 % off
// at 200 bar.
TEST(DenseGas, Nitrogen) {
  constexpr std::array<std::array<double, 2>, 4> handbook{
      {{1, 0.9998}, {40, 0.9964}, {100, 1.0052}, {200, 1.0559}}};
  for (const auto& [bars, z] : handbook) {
    const auto d = bottle_gas_density(bar_absolute(bars), kelvin(300), mole_fraction(0));
    ASSERT_TRUE(d);
    const double ideal = bars * 1e5 * 28.0134e-3 / (gas_constant * 300);
    EXPECT_NEAR(ideal / in_kilograms_per_cubic_metre(*d), z,
                dense_mixed_half_width.count() * z + 0.00005)
        << bars;
  }
}

Room room_of(double m3, double c) { return {cubic_metres(m3), celsius(c), sea_level()}; }

// The insurer's examples (verified) take 0.51 m3/kg, gas at 0 C, rounded up: 17
// m3 a kilogram at 3 %. Exact gas gives 16.9; at 20 C it is 6.6 % more than theirs.
TEST(RoomExamples, NetRoomForThreePercent) {
  int checked = 0;
  for (const Row& row : table("co2_room_examples.csv")) {
    const auto m3 = row.maybe("room_m3");
    if (!m3 || row.text("case").find("net room volume") == std::string::npos) continue;
    const std::array gas{EscapingGas{kilograms(row.number("mass_kg"))}};
    const auto room = room_for(mole_fraction(0.03), gas, room_of(*m3, 0));
    ASSERT_TRUE(room);
    EXPECT_NEAR(in_cubic_metres(*room), *m3, 0.01 * *m3);
    const auto out = if_all_escapes(gas, room_of(*m3, 0));
    ASSERT_TRUE(out);
    EXPECT_NEAR(out->co2.count(), 0.03, 0.0003);
    ++checked;
  }
  EXPECT_EQ(checked, 3);
}

TEST(RoomExamples, GasOfATenKilogramCylinder) {
  const std::array gas{EscapingGas{kilograms(10)}};
  const auto out = if_all_escapes(gas, room_of(170, 0));
  ASSERT_TRUE(out);
  EXPECT_NEAR(in_cubic_metres(out->gas), 5.1, 0.05);  // printed to one decimal
}

// 500 g in 50 m3: printed 0.5 %, by 22.4 L/mol at 0 C.
TEST(RoomExamples, HalfAKilogram) {
  const std::array gas{EscapingGas{kilograms(0.5)}};
  const auto out = if_all_escapes(gas, room_of(50, 0));
  ASSERT_TRUE(out);
  EXPECT_NEAR(out->co2.count() * 100, 0.5, 0.05);
}

// 6.35 kg by both forms, computed elsewhere with 1.8393 kg/m3; printed to 0.01 %.
TEST(RoomExamples, BothForms) {
  for (const Row& row : table("co2_room_examples.csv")) {
    if (!row.text("case").starts_with("6.35 kg")) continue;
    const std::array gas{EscapingGas{kilograms(6.35)}};
    const auto out = if_all_escapes(gas, room_of(row.number("room_m3"), 20));
    ASSERT_TRUE(out);
    const bool overflow = row.text("case").find("overflow") != std::string::npos;
    EXPECT_NEAR((overflow ? out->co2_flowing : out->co2).count() * 100, row.number("value"), 0.006)
        << row.text("case");
  }
}

// What the gas trade's guidance on nitrogen works out for a room that loses air to it:
// oxygen % = 100 x 0.21 (V - v) / V (from memory; 0.21 for air, 0.05 % above ours).
// v of 5 kg at 20 °C by the ideal gas law and 28.0134 g/mol, within 0.1 % for nitrogen.
TEST(RoomExamples, NitrogenTakesTheOxygensPlace) {
  const std::array gas{EscapingGas{kilograms(5), mole_fraction(0)}};
  const double v = 5 / 28.0134e-3 * 8.314462618 * 293.15 / 101325;
  for (const double room_m3 : {10.0, 20.0, 60.0}) {
    const auto out = if_all_escapes(gas, room_of(room_m3, 20));
    ASSERT_TRUE(out);
    EXPECT_NEAR(out->oxygen.count() * 100, 100 * 0.21 * (room_m3 - v) / room_m3, 0.08) << room_m3;
    EXPECT_EQ(out->co2.count(), 0);
    EXPECT_GT(out->oxygen_flowing, out->oxygen) << "the gas drives mixed air out";
  }
}

// 3.5 m3/h into 330 m3 at one air change an hour. The manual prints 0.5 % (a
// verified print of a wrong figure: G/(n V) is 1.06 %, 0.67 % after the first
// hour), so the right values are tested.
TEST(RoomExamples, SteadyRelease) {
  const Room room = room_of(330, 20);
  const double kg_per_day =
      3.5 * 24 * in_kilograms_per_cubic_metre(*co2_gas_density(sea_level(), celsius(20)));
  const EscapingGas leak{kilograms(kg_per_day)};
  const auto settled = steady_release(leak, room, per_second(1 / 3600.0));
  const auto first_hour = steady_release(leak, room, per_second(1 / 3600.0), hours(1));
  ASSERT_TRUE(settled && first_hour);
  EXPECT_NEAR(settled->count() * 100, 1.06, 0.005);
  EXPECT_NEAR(first_hour->count() * 100, 0.67, 0.005);
  // The other ways round: 0.67 % is there after the hour (0.005 % are 46 s then), and the
  // 0.5 % that the manual promises takes 3.5 / (330 × 0.005) = 2.12 air changes.
  const auto when =
      steady_release_reaches(mole_fraction(0.0067), leak, room, per_second(1 / 3600.0));
  ASSERT_TRUE(when && *when);
  EXPECT_NEAR(in_minutes(**when), 60, 46 / 60.0);
  const auto needed = air_changes_for(mole_fraction(0.005), leak, room);
  ASSERT_TRUE(needed);
  EXPECT_NEAR(in_per_second(*needed) * 3600, 2.12, 0.005);
}

// What the program calls a limit of the printed document, and its kind; nothing for
// one that is no longer in force.
struct InForce {
  std::string_view name;
  LimitKind kind;
};
const std::map<std::string, std::optional<InForce>>& printed_limits() {
  static const std::map<std::string, std::optional<InForce>> all{
      {"OSHA PEL", InForce{"OSHA PEL", LimitKind::working_day}},
      {"NIOSH REL TWA", InForce{"NIOSH REL TWA", LimitKind::working_day}},
      {"NIOSH REL STEL", InForce{"NIOSH REL STEL", LimitKind::short_time}},
      {"ACGIH TLV-TWA", InForce{"ACGIH TLV-TWA", LimitKind::working_day}},
      {"ACGIH TLV-STEL", InForce{"ACGIH TLV-STEL", LimitKind::short_time}},
      {"NIOSH IDLH revised", InForce{"NIOSH IDLH", LimitKind::immediate_danger}},
      {"IFC 5307 alarm threshold max", InForce{"fire code alarm, at most", LimitKind::alarm}},
      {"NIOSH IDLH original", std::nullopt},           // revised in 1994
      {"NIOSH 1976 criteria document", std::nullopt},  // before the REL
      {"NIOSH 1976 ceiling", std::nullopt},
      {"OSHA 1989 PEL (vacated)", std::nullopt}};
  return all;
}

// Every US limit in force of the printed document is in the program's list, with
// its certainty; what was superseded is not.
TEST(ExposureLimits, AsPrinted) {
  std::size_t rows = 0;
  std::size_t of_the_us = 0;
  for (const ExposureLimit& l : exposure_limits()) of_the_us += l.country == "US" ? 1 : 0;
  std::size_t found = 0;
  for (const Row& row : table("co2_exposure_limits.csv")) {
    const std::string& name = row.text("limit");
    ASSERT_TRUE(printed_limits().contains(name)) << name;
    const auto& in_force = printed_limits().at(name);
    ++rows;
    if (!in_force) continue;
    for (const ExposureLimit& l : exposure_limits()) {
      if (l.country != "US" || l.name != in_force->name) continue;
      EXPECT_EQ(l.kind, in_force->kind) << name;
      EXPECT_DOUBLE_EQ(l.value.count() * 1e6, row.number("value_ppm")) << name;
      EXPECT_EQ(l.certainty, SourceCertainty::verified) << name;
      EXPECT_EQ(row.text("flag"), "verified") << name;
      if (row.text("averaging") == "15 min" || row.text("averaging") == "8 h TWA") {
        EXPECT_EQ(l.averaging, row.text("averaging").substr(0, l.averaging.size())) << name;
        EXPECT_FALSE(l.averaging.empty());
      }
      ++found;
    }
  }
  EXPECT_EQ(rows, printed_limits().size());
  EXPECT_EQ(found, 7U);
  // Beside these the fire code's high alarm (below) and short oxygen, of another source.
  EXPECT_EQ(of_the_us, found + 2);
}

// The fire code's row also quotes its high alarm, in words.
TEST(ExposureLimits, HighAlarmIsQuotedBesideTheAlarm) {
  const auto all = exposure_limits();
  const auto high = std::find_if(all.begin(), all.end(), [](const ExposureLimit& l) {
    return l.kind == LimitKind::high_alarm;
  });
  ASSERT_NE(high, all.end());
  int quoted = 0;
  for (const Row& row : table("co2_exposure_limits.csv")) {
    const std::string& source = row.text("source");
    const auto at = source.find("2018 adds ");
    if (at == std::string::npos) continue;
    EXPECT_DOUBLE_EQ(std::stod(source.substr(at + 10)), high->value.count() * 1e6);
    ++quoted;
  }
  EXPECT_EQ(quoted, 1);
}

TEST(ExposureLimits, AreByCountryAndRising) {
  const auto all = exposure_limits();
  EXPECT_TRUE(std::is_sorted(all.begin(), all.end(), [](const auto& a, const auto& b) {
    if (a.country != b.country) return a.country < b.country;
    return a.kind != LimitKind::oxygen_below && b.kind != LimitKind::oxygen_below &&
           a.value < b.value;
  }));
}

// Our own arithmetic of the needs list, by ideal gas at 12 psi and 3.3 C and by
// 1.9768 g/L: serving a 19 L keg 67 g, carbonating it from 0.85 to 2.5 volumes 62
// g, a push-out 43 g at about 3 psi. Printed without decimals; real gas is 2 % more.
TEST(GasOfAKeg, FiguresOfPractice) {
  const SupplyState cold{Estimate<GaugePressure>(gauge_psi(12)),
                         Estimate<Temperature>(celsius(3.3)), sea_level()};
  const Estimate<Volume> keg(litres(19));
  const auto pushed = gas_to_push(keg, cold, {"method"});
  const auto taken =
      gas_to_carbonate(keg, Estimate<Co2Volumes>(volumes_of_co2(0.85)),
                       Estimate<Co2Volumes>(volumes_of_co2(2.5)), mole_fraction(1), {"method"});
  ASSERT_TRUE(pushed && taken);
  EXPECT_NEAR(in_grams(pushed->value()), 67, 0.5 + 0.025 * 67);
  EXPECT_NEAR(in_grams(taken->value()), 62, 0.5);
}

}  // namespace
}  // namespace ullage::published
