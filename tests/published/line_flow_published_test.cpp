// SPDX-License-Identifier: GPL-3.0-or-later
//
// Pipe flow, viscosity, restriction figures and balance against printed tables
// and worked examples.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>
#include <string>

#include "core/physics/atmosphere.h"
#include "core/physics/beer_viscosity.h"
#include "core/physics/draught_line.h"
#include "core/physics/gas_blend.h"
#include "core/physics/handbook_restriction.h"
#include "core/physics/line_balance.h"
#include "core/physics/pipe_friction.h"
#include "core/units/present.h"
#include "tests/published/csv.h"

namespace ullage::published {
namespace {

using namespace physics;
using namespace units;

// Laminar 64/Re is exact. The Colebrook rows were solved elsewhere and printed to
// four digits: half a unit in the last is 0.03 % of 0.01165. Haaland's formula is
// stated by its author to be within 2 % of Colebrook; Blasius is a fit to smooth
// pipes good to 5 % from 4000 to 1e5 (textbooks, from memory), and its row at
// 4000 agrees to 0.3 %.
TEST(FrictionTable, ByMethod) {
  int seen = 0;
  for (const Row& row : table("friction_factor_checks.csv")) {
    const Reynolds re(row.number("reynolds"));
    const RelativeRoughness rough(row.number("relative_roughness"));
    const double printed = row.number("darcy_f");
    const std::string& method = row.text("method");
    const auto f = friction_factor(re, rough);
    ASSERT_TRUE(f) << method;
    double tolerance = 0.02;
    if (method == "laminar definition") tolerance = 1e-12;
    if (method == "Colebrook") tolerance = 0.000005 / printed + 1e-9;
    if (method == "Blasius") tolerance = 0.05;
    EXPECT_NEAR(f->count() / printed, 1.0, tolerance) << method << " at " << re.count();
    ++seen;
  }
  EXPECT_EQ(seen, 20);
}

// White, Fluid Mechanics, Example 6.7 (verified): oil 900 kg/m3, 1e-5 m2/s,
// 0.2 m3/s through 500 m of 200 mm cast iron (0.26 mm). f 0.0225 is read off a
// chart: 2 %, and so is the head. Head loss 117 m (to the metre) and 265 kPa down
// 10 degrees are from memory; the book goes on with V rounded to 6.4 m/s, as is done
// here. The 265 kPa are what the friction of 1030 kPa has over the weight of the oil,
// so the chart's 2 % are 21 kPa of them.
TEST(White, Example67) {
  const Density oil = kilograms_per_cubic_metre(900);
  const Length bore = metres(0.2);
  const Velocity v = mean_velocity(VolumeFlow::from_value(0.2), bore);
  EXPECT_NEAR(v.value(), 6.4, 0.05);
  const Reynolds re = reynolds_number(oil, v, bore, millipascal_seconds(9.0));
  EXPECT_NEAR(re.count(), 128000, 0.01 * 128000);
  const auto f = friction_factor(re, RelativeRoughness(0.26 / 200));
  ASSERT_TRUE(f);
  EXPECT_NEAR(f->count(), 0.0225, 0.02 * 0.0225);
  const Velocity rounded = Velocity::from_value(6.4);
  const double lost = in_pascals(friction_loss(*f, metres(500), bore, oil, rounded));
  EXPECT_NEAR(lost / (900 * 9.81), 117, 0.02 * 117 + 0.5);
  const double weight = 900 * 9.81 * 500 * std::sin(10 * std::numbers::pi / 180);
  EXPECT_NEAR(lost - weight, 265e3, 0.02 * lost + 0.5e3);
}

// Engineering-exam lecture problem 4.5.2 (verified): 6.605 in asphalted iron,
// 10 ft/s, 62.12 lb/ft3, 1.85 lb/(ft h), 20 psi takes 875 ft; Re 6.654e5, Fanning
// f 0.0047 (read to two digits: 1 %, so the length is good to 1 %).
TEST(Textbook, EightHundredSeventyFiveFeet) {
  const Density rho = kilograms_per_cubic_metre(62.12 * kilograms_per_pound / 0.028316846592);
  const DynamicViscosity mu =
      millipascal_seconds(1.85 * kilograms_per_pound / metres_per_foot / 3600 * 1e3);
  const Velocity v = feet(10) / seconds(1);
  const Reynolds re = reynolds_number(rho, v, inches(6.605), mu);
  EXPECT_NEAR(re.count(), 6.654e5, 300);
  const auto f = friction_factor(re, RelativeRoughness(0.0004 * 12 / 6.605));
  ASSERT_TRUE(f);
  EXPECT_NEAR(to_fanning(*f).count(), 0.0047, 0.00005);
  const PressureDifference per_foot = friction_loss(*f, feet(1), inches(6.605), rho, v);
  EXPECT_NEAR(20 / in_psi(per_foot), 875, 9);
}

// Every printed water viscosity. The tables themselves differ by 0.7 % at 20 C
// (1.0087 against 1.002) and more at 25 (0.8949 against 0.890): 0.9 % covers
// their distance from one another.
TEST(WaterViscosity, Tables) {
  for (const Row& row : table("water_viscosity_density.csv")) {
    const auto mu = water_viscosity(celsius(row.number("temp_C")));
    ASSERT_TRUE(mu);
    const double printed = row.number("viscosity_mPa_s");
    const bool old = row.text("source").find("International Critical") != std::string::npos;
    EXPECT_NEAR(in_millipascal_seconds(*mu) / printed, 1.0, old ? 0.009 : 0.003)
        << row.text("source") << " at " << row.number("temp_C");
  }
}

// Zhang & Xu 2008 (excerpt, verified): 1.44 x water; 1.9 mPa s at 9 C (two
// digits: 3 %). A dark beer of 3.91 mPa s at 2 C is within the factors allowed.
TEST(BeerViscosity, Printed) {
  EXPECT_EQ(ordinary_beer_viscosity.count(), 1.44);
  EXPECT_NEAR(in_millipascal_seconds(*beer_viscosity(celsius(9))), 1.9, 0.06);
  const double dark = 3.91 / in_millipascal_seconds(*water_viscosity(celsius(2)));
  EXPECT_TRUE(beer_viscosity(celsius(2), ViscosityFactor(dark)));
}

double inches_of(const std::string& fraction_text) {
  const auto slash = fraction_text.find('/');
  return std::stod(fraction_text.substr(0, slash)) / std::stod(fraction_text.substr(slash + 1));
}

FlowingBeer beer_of_the_table() {
  return {kilograms_per_cubic_metre(1010), millipascal_seconds(2.32)};
}

// The theory rows were computed elsewhere with Colebrook throughout. Above Re
// 4000 ours must be the same to their rounding (half a unit of 0.001 psi/ft, and
// viscosity to three digits: 0.1 %). Between 2300 and 4000 we lie between
// Colebrook and laminar flow.
TEST(TubingTheory, AtTheNominalPour) {
  for (const Row& row : table("tubing_theory_computed.csv")) {
    const Length bore = inches(inches_of(row.text("inner_diameter_inch")));
    const FlowingBeer beer = beer_of_the_table();
    const Velocity v = mean_velocity(nominal_pour(), bore);
    EXPECT_NEAR(v.value(), row.number("velocity_m_s"), 0.0006);
    const Reynolds re = reynolds_number(beer.density, v, bore, beer.viscosity);
    EXPECT_NEAR(re.count() / row.number("reynolds"), 1.0, 0.002);
    const RelativeRoughness rough(drawn_tube_roughness().value() / bore.value());
    EXPECT_NEAR(colebrook_friction(re, rough)->count(), row.number("darcy_f"), 0.00006);
    const double ours = in_psi_per_foot(*friction_restriction(bore, beer));
    const double printed = row.number("psi_per_ft");
    const double laminar =
        in_psi(friction_loss(*laminar_friction(re), feet(1), bore, beer.density, v));
    if (re.count() >= turbulent_above) {
      EXPECT_NEAR(ours, printed, 0.0005 + 0.001 * printed);
    } else {
      EXPECT_LT(ours, printed + 0.0005);
      EXPECT_GT(ours, laminar);
    }
    EXPECT_NEAR(in_us_gallons(*line_volume(bore, feet(1))) * 128, row.number("US_floz_per_ft"),
                0.00006);
  }
}

HoseMaterial material_of(const std::string& text) {
  if (text == "vinyl") return HoseMaterial::vinyl;
  if (text == "barrier") return HoseMaterial::barrier;
  if (text == "polyethylene") return HoseMaterial::polyethylene;
  if (text == "stainless") return HoseMaterial::stainless;
  return HoseMaterial::other;
}

// The handbook's own rows are our usual figure; every other print of a hose lies
// between our least and most. Two rows of a maker of towers only say "plastic": they
// are held against vinyl, the soft hose sold for it.
TEST(TubingTable, FiguresArePrinted) {
  int handbook = 0;
  int others = 0;
  for (const Row& row : table("tubing_restriction.csv")) {
    const bool plastic = row.text("material").find("plastic") != std::string::npos;
    const HoseMaterial material = plastic ? HoseMaterial::vinyl : material_of(row.text("material"));
    ASSERT_NE(material, HoseMaterial::other) << row.text("material");
    const std::string& size = row.text("size_inch");
    const double inch = inches_of(size.substr(0, size.find(' ')));
    const bool outer = material == HoseMaterial::stainless;
    const auto f = handbook_restriction(material, inches(outer ? inch - 1.0 / 16 : inch));
    ASSERT_TRUE(f) << size;
    const double printed = row.number("restriction_psi_per_ft");
    if (row.text("source").find("tubing table") != std::string::npos) {
      EXPECT_NEAR(in_psi_per_foot(present(f).usual), printed, 1e-9) << row.text("material") << size;
      ++handbook;
    } else {
      EXPECT_GE(printed, in_psi_per_foot(present(f).least) - 1e-9) << row.text("material") << size;
      EXPECT_LE(printed, in_psi_per_foot(present(f).most) + 1e-9) << row.text("material") << size;
      ++others;
    }
  }
  EXPECT_EQ(handbook, 11);
  EXPECT_EQ(others, 13);
}

// What a foot holds. The table (from memory) is in simple fractions of an ounce (1/6,
// 1/3, 1/2, 3/4, 4/3), which all are whole twelfths: half a twelfth is its rounding.
// Stainless is sold by its outer diameter and printed by what the next smaller bore
// holds. One secondary print has 1/16 oz for 3/16 in, a misprint of the handbook's 1/6:
// by geometry it is 0.184, so the right figure is checked and the print is shown wrong.
TEST(TubingTable, VolumesOfAFoot) {
  constexpr double half_a_twelfth = 1.0 / 24;
  int checked = 0;
  int misprinted = 0;
  for (const Row& row : table("tubing_restriction.csv")) {
    const auto printed = row.maybe("volume_US_floz_per_ft");
    if (!printed) continue;
    const std::string& size = row.text("size_inch");
    const double inch = inches_of(size.substr(0, size.find(' ')));
    const bool outer = row.text("material") == "stainless";
    const auto held = line_volume(inches(outer ? inch - 1.0 / 16 : inch), feet(1));
    ASSERT_TRUE(held);
    const double ounces = in_us_gallons(*held) * 128;
    if (*printed == 0.0625) {
      EXPECT_EQ(size, "3/16 ID");
      EXPECT_GT(std::abs(ounces - *printed), half_a_twelfth);
      EXPECT_NEAR(ounces, 1.0 / 6, half_a_twelfth);
      ++misprinted;
      continue;
    }
    EXPECT_NEAR(ounces, *printed, half_a_twelfth) << row.text("material") << " " << size;
    ++checked;
  }
  EXPECT_EQ(checked, 11);
  EXPECT_EQ(misprinted, 1);
}

// The note beside the table: pipe friction alone explains 40 to 60 % of the common
// vinyl figures, to whole per cent, by Colebrook throughout: 60 at 3/16 in, 54 at 1/4,
// 40 at 5/16, 52 at 3/8. (1/2 in, 72 %, is not among the common ones.) Ours is the same
// where flow is turbulent, and lies between laminar flow and Colebrook where it isn't:
// 3/8 in at Re 3400.
TEST(TubingTable, FrictionExplainsAboutHalfOfVinyl) {
  const FlowingBeer beer = beer_of_the_table();
  for (const double inch : {3.0 / 16, 1.0 / 4, 5.0 / 16, 3.0 / 8}) {
    const auto figure = handbook_restriction(HoseMaterial::vinyl, inches(inch));
    const auto c = compare_restriction(present(figure), beer);
    ASSERT_TRUE(c);
    const Velocity v = mean_velocity(nominal_pour(), inches(inch));
    const Reynolds re = reynolds_number(beer.density, v, inches(inch), beer.viscosity);
    const auto share = [&](const Result<DarcyFriction>& f) {
      const auto loss = friction_loss(*f, feet(1), inches(inch), beer.density, v);
      return in_psi(loss) / in_psi_per_foot(figure->usual);
    };
    const double rough = drawn_tube_roughness().value() / inches(inch).value();
    const double colebrook = share(colebrook_friction(re, RelativeRoughness(rough)));
    EXPECT_GE(colebrook, 0.395) << inch;
    EXPECT_LE(colebrook, 0.605) << inch;
    if (re.count() >= turbulent_above) {
      EXPECT_NEAR(c->explained.count(), colebrook, 0.001) << inch;
    } else {
      EXPECT_LT(c->explained.count(), colebrook) << inch;
      EXPECT_GT(c->explained.count(), share(laminar_friction(re))) << inch;
    }
    EXPECT_LT(c->implied_bore.count(), 1.0);
  }
}

// 20 ft of 1/4 in vinyl = 17 psi, of 5/16 in barrier = 2 psi (verified).
TEST(Balance, TwentyFeetOfHose) {
  const auto loss = [](HoseMaterial m, double inch) {
    const auto f = handbook_restriction(m, inches(inch));
    return in_psi(handbook_balance(gauge_psi(20), feet(0), {{feet(20), f->usual}})->runs);
  };
  EXPECT_NEAR(loss(HoseMaterial::vinyl, 0.25), 17, 1e-9);
  EXPECT_NEAR(loss(HoseMaterial::barrier, 5.0 / 16), 2, 1e-9);
}

// Maker's manual 2010 p. 51 (verified): lift 13 - 8 = 5 ft is 2.5 psi; with 3.5
// in the line 6.0; 14.5 - 6.0 = 8.5 for the restrictor. The manual misprints "+"
// in its last line; 14.5 + 6.0 would be 20.5, and its next step uses 8.5.
// Restrictor hose: psi / 0.25 inches, which is 3 psi/ft.
TEST(Balance, MakersManual) {
  const auto b = handbook_balance(gauge_psi(14.5), feet(13 - 8), {{feet(50), psi_per_foot(0.07)}});
  ASSERT_TRUE(b);
  EXPECT_NEAR(in_psi(b->lift), 2.5, 1e-9);
  EXPECT_NEAR(in_psi(b->runs), 3.5, 1e-9);
  EXPECT_NEAR(in_psi(b->left), 8.5, 1e-9);
  EXPECT_NEAR(in_inches(*restrictor_length(b->left, psi_per_foot(3.0))), 8.5 / 0.25, 1e-9);
}

// Trade handbook (from memory): 4 ft of 3.0 psi/ft and 5 ft of lift take up 14.5.
TEST(Balance, HandbookExampleIsExact) {
  const auto b = handbook_balance(gauge_psi(14.5), feet(5), {{feet(4), psi_per_foot(3.0)}});
  ASSERT_TRUE(b);
  EXPECT_NEAR(in_psi(b->left), 0.0, 1e-9);
}

// Exact lift: 0.4335 psi/ft for water, 0.4379 at 1010 kg/m3 (computed, four
// digits); the trade's 0.5 is 14 % more.
TEST(Balance, LiftOfAFoot) {
  const auto lift = [](double density) {
    return in_psi(LineFlow::make({Hose{feet(1), inches(0.25), drawn_tube_roughness(), feet(1)}},
                                 {kilograms_per_cubic_metre(density), millipascal_seconds(2)})
                      ->lift());
  };
  EXPECT_NEAR(lift(1000), 0.4335, 0.00006);
  EXPECT_NEAR(lift(1010), 0.4379, 0.00006);
}

// Inputs b 12 psi and c 0.70 verified, results arithmetic with 14.7 psi of air:
// 23.4 psi; b 12, a 22 -> 72.8 %; 60 % at 20 psi is 6.12 psi of pure CO2. A forum
// post prints 6.18 for the last: it multiplies 34.7 x 0.6 to 20.88; 20.82 is
// right. Printed to 0.1 psi and 0.1 %; theirs 6.12 to 0.01.
TEST(Blend, Examples) {
  const AbsolutePressure air = psi_absolute(14.7);
  EXPECT_NEAR(in_psi(*applied_for(gauge_psi(12), mole_fraction(0.70), air)), 23.4, 0.06);
  EXPECT_NEAR(blend_for(gauge_psi(12), gauge_psi(22), air)->count() * 100, 72.8, 0.06);
  EXPECT_NEAR(in_psi(*pure_equivalent(gauge_psi(20), mole_fraction(0.60), air)), 6.12, 0.006);
  EXPECT_NEAR(in_psi(*applied_for(gauge_psi(12), mole_fraction(1), air)), 12, 1e-9);
  EXPECT_NEAR(blend_for(gauge_psi(12), gauge_psi(12), air)->count(), 1, 1e-12);
  EXPECT_FALSE(blend_for(gauge_psi(12), gauge_psi(10), air));
}

// 2 US fl oz/s = 0.9375 US gal/min, which the trade calls a gallon a minute.
TEST(NominalPour, TradeArithmetic) {
  EXPECT_NEAR(in_us_gallons(nominal_pour() * minutes(1)), 0.9375, 1e-9);
}

}  // namespace
}  // namespace ullage::published
