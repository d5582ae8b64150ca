// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a keg on tap is offered, filled in from its journal, and the acts it leads to.
#include <gmock/gmock.h>

#include "core/report/slate/prefill.h"
#include "core/units/present.h"
#include "core/units/shown.h"
#include "tests/cellar/pour_scene.h"

namespace ullage::testing {
namespace {

namespace slate = report::slate;
using report::InputOrigin;
using ::testing::IsEmpty;

const units::Printer us_words{units::DisplayUnits::us(), {}};

class SlateOnTap : public ::testing::Test {
 protected:
  void look(Instant when) {
    status_ = scene_.cellar(when);
    speaker_ = {us_words, &scene_.calendar, report::RegionalWords::us, when};
  }
  [[nodiscard]] const KegStatus& keg() const { return *status_.find(scene_.keg); }
  [[nodiscard]] std::optional<slate::Offer> offer(std::string_view key) const {
    for (slate::Offer& o : slate::offers_for({status_, keg(), speaker_})) {
      if (o.computation == key) return o;
    }
    return std::nullopt;
  }
  static slate::Outcome answer(const slate::Offer& o) {
    return slate::work_out(*slate::find_computation(o.computation), o.inputs, us_words);
  }
  [[nodiscard]] std::optional<SuggestedTask> act(const slate::Offer& o) const {
    const slate::Outcome out = answer(o);
    if (!out) {
      ADD_FAILURE() << o.computation << ": " << out.error().sentence;
      return std::nullopt;
    }
    return slate::leads_to(*slate::find_computation(o.computation), o.inputs, *out, keg());
  }
  PourScene scene_;
  CellarStatus status_;
  report::Speaker speaker_;
};

// 18.6 L went in on day 0, it was put on tap on day 21: what is gone on day 24 was drawn
// in three days.
TEST_F(SlateOnTap, RunsOutByWhatWasDrawnSinceItWasPutOn) {
  LevelReading read{scene_.keg};
  read.method = LevelMethod::heft;
  read.fraction_left = units::fraction(0.5);
  scene_.log(day(24), read);
  look(day(24, 1));
  const auto o = offer("run_out");
  ASSERT_TRUE(o);
  EXPECT_THAT(present(o).to_fill_in, IsEmpty());
  const auto left = present(o).inputs.get<units::Volume>("left");
  EXPECT_EQ(left, present(keg().level.left).value());
  EXPECT_EQ(present(o).inputs.held("left")->origin, InputOrigin::worked_out);
  EXPECT_NEAR(units::in_litres(present(o).inputs.get<units::Volume>("drawn")),
              18.6 - units::in_litres(left), 0.01);
  EXPECT_NEAR(units::in_days(present(o).inputs.get<units::Duration>("over")), 3 + 1 / 24.0, 0.01);
  const std::chrono::weekday today(scene_.calendar.date_of(day(24, 1)));
  EXPECT_EQ(present(o).inputs.choice("weekday"), static_cast<int>(today.iso_encoding()) - 1);
  EXPECT_EQ(present(o).inputs.get<units::Volume>("left_error"), present(keg().level.left).error());
  EXPECT_TRUE(answer(present(o)));
}

TEST_F(SlateOnTap, GlassesGoFromWhatIsInItAndAreLogged) {
  LevelReading read{scene_.keg};
  read.method = LevelMethod::heft;
  read.fraction_left = units::fraction(0.5);
  scene_.log(day(23), read);
  look(day(23, 1));
  auto o = offer("left_by_glasses");
  ASSERT_TRUE(o);
  EXPECT_FALSE(present(o).inputs.has("glasses")) << "the person's to count";
  EXPECT_EQ(present(o).inputs.get<units::Volume>("beer"), present(keg().level.left).value());
  present(o).inputs.set("glasses", slate::Count{8});
  const auto task = act(present(o));
  ASSERT_TRUE(task);
  EXPECT_EQ(present(task).kind, "level_reading");
  const auto& poured = get<LevelReading>(present(present(task).prefill));
  EXPECT_EQ(poured.method, LevelMethod::glasses);
  EXPECT_EQ(poured.glasses, 8);
  EXPECT_EQ(poured.glass_volume, units::one_glass(us_words.units));
  EXPECT_EQ(poured.keg, scene_.keg);
}

// 6 ft of 3/16 in, a foot up, at 11.5 psi: as registered and set.
TEST_F(SlateOnTap, ItsLineIsFilledInAndItsActsAreOpened) {
  look(day(22));
  for (const char* key : {"pour", "line_length", "line_pressure", "timed_pour"}) {
    const auto o = offer(key);
    ASSERT_TRUE(o) << key;
    EXPECT_EQ(present(o).inputs.get<units::Length>("bore"), units::inches(3.0 / 16)) << key;
    EXPECT_NEAR(units::in_metres(present(o).inputs.get<units::Length>("rise")), 0.3048, 1e-9)
        << key;
    EXPECT_EQ(present(o).inputs.choice("material"), 0) << key;
    EXPECT_NEAR(units::in_psi(present(o).inputs.get<units::PressureDifference>("fittings")), 1,
                1e-9)
        << key;
  }
  EXPECT_NEAR(units::in_psi(present(offer("pour")).inputs.get<units::GaugePressure>("pressure")),
              11.5, 1e-9);
  EXPECT_EQ(present(offer("pour")).inputs.get<units::Length>("length"), units::feet(6));

  const auto length = act(present(offer("line_length")));
  ASSERT_TRUE(length);
  EXPECT_EQ(present(length).kind, "line_record");
  const auto& changed = get<LineRecord>(present(present(length).prefill));
  EXPECT_EQ(changed.name, "Line 1");
  EXPECT_NE(changed.length, units::feet(6));
  const auto pressure = act(present(offer("line_pressure")));
  ASSERT_TRUE(pressure);
  EXPECT_EQ(present(pressure).kind, "gas_set");

  auto timed = offer("timed_pour");
  EXPECT_FALSE(present(timed).inputs.has("seconds")) << "the watch is the person's to read";
  present(timed).inputs.set("seconds", slate::Count{8});
  const auto pour = act(present(timed));
  ASSERT_TRUE(pour);
  EXPECT_EQ(present(pour).kind, "timed_pour");
  EXPECT_EQ(get<TimedPour>(present(present(pour).prefill)).duration, units::seconds(8));
  EXPECT_EQ(get<TimedPour>(present(present(pour).prefill)).line, scene_.line);
  EXPECT_FALSE(act(present(offer("pour")))) << "it only tells something";
}

TEST_F(SlateOnTap, ALineOfSeveralPiecesIsOfferedAsSuch) {
  const PlaceId bar = scene_.place("Bar", 20.0);
  scene_.read(bar, day(20), 20);
  scene_.segment(1, 20, 0.25, scene_.box);
  scene_.segment(2, 4, 3.0 / 16, bar, 3);
  look(day(22));
  EXPECT_FALSE(offer("pour"));
  EXPECT_FALSE(offer("line_length"));
  const auto o = offer("line_pieces");
  ASSERT_TRUE(o);
  EXPECT_EQ(present(o).inputs.get<units::Length>("length"), units::feet(20));
  EXPECT_EQ(present(o).inputs.get<units::Length>("length2"), units::feet(4));
  EXPECT_EQ(present(o).inputs.get<units::Length>("bore2"), units::inches(3.0 / 16));
  EXPECT_FALSE(present(o).inputs.has("length3"));
  EXPECT_FALSE(present(o).inputs.has("bore3"));
  EXPECT_TRUE(answer(present(o)));
  // Where it may foam: the warm piece, three feet up.
  const auto foam = offer("break_out");
  ASSERT_TRUE(foam);
  EXPECT_NEAR(units::in_celsius(present(foam).inputs.get<units::Temperature>("place")), 20, 0.5);
  EXPECT_NEAR(units::in_metres(present(foam).inputs.get<units::Length>("rise")), 3 * 0.3048, 1e-9);
  EXPECT_NEAR(present(foam).inputs.get<units::Co2Volumes>("co2_error").count(),
              present(keg().co2.now).half_width(), 1e-9);
  const slate::Outcome told = answer(present(foam));
  ASSERT_TRUE(told);
  EXPECT_EQ(told->values.front().words, "It breaks out");
}

TEST_F(SlateOnTap, KegsOnOneRegulatorAreAskedTogether) {
  look(day(22));
  EXPECT_FALSE(offer("one_regulator")) << "alone on it, as far as is logged";
  const BatchId stout = scene_.batch("Stout", 1.8, 2.2);
  const KegId other = scene_.Scenario::keg("K02", scene_.box);
  scene_.log(day(-1), Emptied{other});
  scene_.prepare(other, day(0));
  scene_.fill(other, stout, day(0, 3), 18.0, 4);
  RegulatorRecord r;
  r.regulator = scene_.counted.make<RegulatorId>();
  r.name = "R1";
  scene_.log(day(1), r);
  for (const KegId k : {scene_.keg, other})
    scene_.log(day(2), GasSet{k, units::gauge_psi(11.5), GasPurpose::serving, r.regulator, {}, {}});
  look(day(22));
  const auto o = offer("one_regulator");
  ASSERT_TRUE(o);
  EXPECT_NEAR(present(o).inputs.get<units::Co2Volumes>("low").count(), 2.4, 1e-6);
  EXPECT_NEAR(present(o).inputs.get<units::Co2Volumes>("high2").count(), 2.2, 1e-6);
  EXPECT_FALSE(present(o).inputs.has("low3"));
  const auto task = act(present(o));
  ASSERT_TRUE(task);
  EXPECT_EQ(present(task).kind, "gas_set");
}

// What the journal does not know is not offered: a keg put away has no line.
TEST_F(SlateOnTap, OffTheTapNothingOfThisIsOffered) {
  scene_.log(day(22), Untapped{scene_.keg});
  look(day(23));
  for (const char* key : {"run_out", "left_by_glasses", "pour", "line_length", "timed_pour",
                          "break_out", "one_regulator"})
    EXPECT_FALSE(offer(key)) << key;
  EXPECT_TRUE(offer("left_by_weight"));
}

TEST_F(SlateOnTap, EveryOfferAnswersOnceTheReadingsAreTyped) {
  look(day(22));
  for (slate::Offer& o : slate::offers_for({status_, keg(), speaker_})) {
    if (o.computation == "left_by_weight") o.inputs.set("gross", units::kilograms(20));
    if (o.computation == "left_by_glasses") o.inputs.set("glasses", slate::Count{5});
    if (o.computation == "timed_pour") o.inputs.set("seconds", slate::Count{8});
    const slate::Outcome out = answer(o);
    EXPECT_TRUE(out) << o.computation << ": " << (out ? "" : out.error().sentence);
  }
}

}  // namespace
}  // namespace ullage::testing
