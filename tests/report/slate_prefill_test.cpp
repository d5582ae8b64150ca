// SPDX-License-Identifier: GPL-3.0-or-later
//
// A keg's own figures in the fields, with how and when they came to be known;
// and the form an answer leads to.
#include <gmock/gmock.h>

#include "core/cellar/hold_test.h"
#include "core/cellar/presets.h"
#include "core/report/slate/prefill.h"
#include "core/units/present.h"

namespace ullage::testing {
namespace {

namespace slate = report::slate;
using report::InputOrigin;
using ::testing::ElementsAre;

const units::Printer us_printer{units::DisplayUnits::us(), {}};

class SlatePrefill : public ::testing::Test {
 protected:
  SlatePrefill() {
    speaker_.printer = us_printer;
    speaker_.now = cellar::Instant{std::chrono::seconds(1'800'000'000)};
    const cellar::PlaceRecord place{.name = "Cold box"};
    cellar_.places.push_back({place, units::celsius(3), speaker_.now - std::chrono::days(1), 1});
    cellar_.cellar = cellar::CellarDescribed{.altitude = units::metres(800)};
    keg_.record = cellar::keg_from_preset(cellar::KegKind::ball_lock_19);
    keg_.record.tag = "K01";
    keg_.place = place;
    keg_.phase = cellar::Phase::carbonating;
    keg_.contents.emplace();
    keg_.contents->batch_record.final_gravity = units::specific_gravity(1.012);
    keg_.level.left = units::Estimate<units::Volume>(units::litres(17));
    keg_.beer_temperature =
        units::Estimate<units::Temperature>(units::celsius(10)).with({"K01: cooling rate"}, 1.0);
    keg_.co2.now = units::Estimate<units::Co2Volumes>(units::volumes_of_co2(1.6));
    keg_.co2.target_low = units::volumes_of_co2(2.4);
    keg_.co2.target_high = units::volumes_of_co2(2.6);
    keg_.co2.verdict = cellar::Co2Verdict::below;
    keg_.gas.on = true;
    keg_.gas.set = units::gauge_psi(30);
    keg_.gas.should_be = units::gauge_psi(12);
    keg_.gas.since = speaker_.now - std::chrono::days(2);
  }
  [[nodiscard]] std::optional<slate::Offer> offer(std::string_view key) const {
    for (slate::Offer& o : slate::offers_for({cellar_, keg_, speaker_})) {
      if (o.computation == key) return o;
    }
    return std::nullopt;
  }
  cellar::CellarStatus cellar_;
  cellar::KegStatus keg_;
  report::Speaker speaker_;
};

TEST_F(SlatePrefill, PutsTheKegsFiguresInWithTheirAge) {
  const auto burst = offer("burst");
  ASSERT_TRUE(burst);
  const slate::Inputs& in = present(burst).inputs;
  EXPECT_EQ(in.get<units::Volume>("beer"), units::litres(17));
  EXPECT_EQ(in.get<units::Length>("altitude"), units::metres(800));
  EXPECT_EQ(in.get<units::Temperature>("temperature"), units::celsius(10));
  EXPECT_EQ(in.get<units::Temperature>("place"), units::celsius(3));
  EXPECT_EQ(in.held("place")->origin, InputOrigin::read);
  EXPECT_EQ(in.held("place")->age, "1 d ago");
  EXPECT_EQ(in.get<units::Co2Volumes>("start"), units::volumes_of_co2(1.6));
  EXPECT_EQ(in.held("start")->origin, InputOrigin::worked_out);
  EXPECT_EQ(in.get<units::GaugePressure>("pressure"), units::gauge_psi(30));
  EXPECT_EQ(in.get<units::GaugePressure>("serving"), units::gauge_psi(12));
  EXPECT_EQ(in.held("dial")->origin, InputOrigin::assumed);
}

// What the keg does not tell is not left looking as if it did.
TEST_F(SlatePrefill, WhatIsNotKnownIsLeftEmptyAndSaid) {
  keg_.record = cellar::keg_from_preset(cellar::KegKind::keg_50);
  keg_.level.left.reset();
  keg_.beer_temperature.reset();
  keg_.record.tare.reset();
  cellar_.cellar.reset();
  const auto burst = offer("burst");
  ASSERT_TRUE(burst);
  EXPECT_FALSE(present(burst).inputs.has("beer"));
  EXPECT_FALSE(present(burst).inputs.has("temperature"));
  EXPECT_THAT(present(burst).to_fill_in, ElementsAre("Beer in it", "Beer now at"));
  EXPECT_THAT(present(burst).assumed, ElementsAre("Altitude"));
  const slate::Outcome out =
      slate::work_out(*slate::find_computation("burst"), present(burst).inputs, us_printer);
  ASSERT_FALSE(out);
  EXPECT_EQ(out.error().fault, slate::Fault::missing);
  const auto weight = offer("left_by_weight");
  ASSERT_TRUE(weight);
  EXPECT_FALSE(present(weight).inputs.has("gross"));
  EXPECT_FALSE(present(weight).inputs.has("tare"));
  EXPECT_TRUE(present(weight).inputs.has("gravity"));
  EXPECT_THAT(present(weight).to_fill_in, ElementsAre("On the scale", "The empty keg"));
}

TEST_F(SlatePrefill, WhatIsBeyondAFieldIsSaidAndNotReplaced) {
  keg_.record.brimful = units::litres(250);
  const auto burst = offer("burst");
  ASSERT_TRUE(burst);
  EXPECT_FALSE(present(burst).inputs.has("brimful"));
  EXPECT_THAT(present(burst).to_fill_in,
              ElementsAre(::testing::AllOf(::testing::StartsWith("The keg holds, to the brim ("),
                                           ::testing::EndsWith(" is beyond this)"))));
}

TEST_F(SlatePrefill, APurgeIsOfThisKegAndItsBeerToCome) {
  keg_.record = cellar::keg_from_preset(cellar::KegKind::keg_50);
  keg_.contents.reset();
  keg_.level.left.reset();
  keg_.beer_temperature.reset();
  const auto purge = offer("purge_cycles");
  ASSERT_TRUE(purge);
  EXPECT_EQ(present(purge).inputs.get<units::Volume>("beer"), keg_.record.nominal);
  EXPECT_EQ(present(purge).inputs.get<units::Temperature>("temperature"), units::celsius(3));
  EXPECT_THAT(present(purge).to_fill_in, ::testing::IsEmpty());
}

// When it was shut, and that two dials were read, goes with a hold test's readings.
TEST_F(SlatePrefill, AHoldTestSaysWhenItWasShutAndOnWhichDials) {
  keg_.contents.reset();
  const auto read = [](double hours, const char* dial) {
    return physics::HoldReading{
        units::hours(hours),
        units::Estimate<units::GaugePressure>(units::gauge_psi(30)).with({dial}, 7000),
        units::Estimate<units::Temperature>(units::celsius(20))};
  };
  cellar::HoldStudy study;
  study.origin = speaker_.now - std::chrono::days(2);
  study.limit_per_day = units::grams(2);
  study.test.readings = {read(0, "R1: bias"), read(24, "R1: bias")};
  keg_.hold_study = std::make_shared<cellar::HoldStudy>(study);
  const auto one = offer("hold_test");
  ASSERT_TRUE(one);
  EXPECT_FALSE(present(one).inputs.has("shut"));
  EXPECT_EQ(present(one).inputs.choice("dials"), 0);
  study.test.closed_at = units::hours(-3);
  study.test.readings.back() = read(24, "R2: bias");
  keg_.hold_study = std::make_shared<cellar::HoldStudy>(study);
  const auto two = offer("hold_test");
  ASSERT_TRUE(two);
  EXPECT_EQ(present(two).inputs.get<units::Duration>("shut"), units::hours(3));
  EXPECT_EQ(present(two).inputs.choice("dials"), 1);
}

// The band of an answer is that of this keg's own figures.
TEST_F(SlatePrefill, TakesTheKegsOwnErrorsAndPace) {
  keg_.co2.now = units::Estimate<units::Co2Volumes>(units::volumes_of_co2(1.6)).with({"x"}, 0.35);
  keg_.co2.uptake = cellar::UptakeRate{{units::days(2), units::days(4), units::days(8)},
                                       {units::days(4), units::days(5), units::days(6.25)},
                                       3,
                                       true};
  cellar::InstrumentId dial;
  dial.uuid.bytes[15] = 5;
  cellar_.instruments.push_back(
      {.instrument = dial, .name = "R1", .pressure_bias = units::psi(0.5)});
  keg_.gas.dial = dial;
  const auto burst = offer("burst");
  ASSERT_TRUE(burst);
  EXPECT_NEAR(present(burst).inputs.get<units::Co2Volumes>("start_error").count(), 0.35, 1e-9);
  EXPECT_NEAR(present(burst).inputs.number("days"), 5, 1e-9);
  EXPECT_NEAR(present(burst).inputs.number("days_factor"), 1.25, 1e-9);
  EXPECT_NEAR(units::in_psi(present(burst).inputs.get<units::PressureDifference>("dial")), 0.5,
              1e-9);
  const auto serving = offer("pressure_to_set");
  ASSERT_TRUE(serving);
  EXPECT_NEAR(
      units::in_kelvin(present(serving).inputs.get<units::TemperatureDifference>("thermometer")), 1,
      1e-9);
  keg_.co2.verdict = cellar::Co2Verdict::above;
  keg_.level.left = units::Estimate<units::Volume>(units::litres(17)).with({"x"}, 0.0009);
  const auto rescue = offer("rescue");
  ASSERT_TRUE(rescue);
  EXPECT_NEAR(units::in_litres(present(rescue).inputs.get<units::Volume>("level_error")), 0.9,
              1e-9);
  EXPECT_NEAR(present(rescue).inputs.get<units::Co2Volumes>("co2_error").count(), 0.35, 1e-9);
}

TEST_F(SlatePrefill, EveryOfferAnswersAsItStands) {
  const auto offers = slate::offers_for({cellar_, keg_, speaker_});
  EXPECT_GE(offers.size(), 5U);
  for (const slate::Offer& o : offers) {
    const auto* c = slate::find_computation(o.computation);
    ASSERT_NE(c, nullptr);
    // The scale's reading is the person's to type.
    const slate::Outcome out = slate::work_out(*c, o.inputs, us_printer);
    EXPECT_TRUE(out || o.computation == "left_by_weight") << o.computation;
  }
}

TEST_F(SlatePrefill, AKegBelowItsRangeIsToldHowLongToRockIt) {
  const auto rock = offer("rocking");
  ASSERT_TRUE(rock);
  EXPECT_FALSE(present(rock).inputs.has("rocked"));
  EXPECT_TRUE(present(rock).inputs.has("start"));
  const slate::Outcome out =
      slate::work_out(*slate::find_computation("rocking"), present(rock).inputs, us_printer);
  ASSERT_TRUE(out);
  EXPECT_FALSE(out->values.empty());
}

TEST_F(SlatePrefill, AnEmptyKegIsOfferedPurging) {
  keg_.contents.reset();
  keg_.phase = cellar::Phase::sanitised;
  EXPECT_TRUE(offer("purge_cycles"));
  EXPECT_TRUE(offer("purge_cheapest"));
  EXPECT_FALSE(offer("burst"));
  keg_.phase = cellar::Phase::unknown;
  EXPECT_TRUE(slate::offers_for({cellar_, keg_, speaker_}).empty());
}

TEST_F(SlatePrefill, APressureLeadsToSettingIt) {
  const auto serving = offer("pressure_to_set");
  ASSERT_TRUE(serving);
  const auto* c = slate::find_computation("pressure_to_set");
  const slate::Outcome out = slate::work_out(*c, present(serving).inputs, us_printer);
  ASSERT_TRUE(out);
  const auto task = slate::leads_to(*c, present(serving).inputs, *out, keg_);
  ASSERT_TRUE(task);
  EXPECT_EQ(present(task).kind, "gas_set");
  const auto& gas = get<cellar::GasSet>(present(present(task).prefill));
  EXPECT_EQ(gas.purpose, cellar::GasPurpose::serving);
  // What is filled in is what was answered, to a tenth of a psi.
  EXPECT_NEAR(units::in_psi(gas.pressure),
              units::in_psi(get<units::GaugePressure>(present(out->values.front().value))),
              0.05 + 1e-9);
}

TEST_F(SlatePrefill, APurgeLeadsToLoggingIt) {
  const auto* c = slate::find_computation("purge_cycles");
  slate::Inputs in = slate::starting_inputs(*c);
  in.set("cycles", slate::Count{7});
  in.set("pressure", units::gauge_psi(25));
  const slate::Outcome out = slate::work_out(*c, in, us_printer);
  ASSERT_TRUE(out);
  const auto task = slate::leads_to(*c, in, *out, keg_);
  ASSERT_TRUE(task);
  const auto& purge = get<cellar::Purged>(present(present(task).prefill));
  EXPECT_EQ(purge.cycles, 7);
  EXPECT_EQ(purge.pressure, units::gauge_psi(25));
  EXPECT_EQ(purge.method, cellar::PurgeMethod::cycles);
}

TEST_F(SlatePrefill, WhatOnlyTellsSomethingLeadsNowhere) {
  const auto* c = slate::find_computation("alcohol");
  const slate::Inputs in = slate::starting_inputs(*c);
  const slate::Outcome out = slate::work_out(*c, in, us_printer);
  ASSERT_TRUE(out);
  EXPECT_FALSE(slate::leads_to(*c, in, *out, keg_));
}

}  // namespace
}  // namespace ullage::testing
