// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/room_grounds.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/cellar/gas_cellar.h"

namespace ullage::testing {
namespace {

using report::Grounds;
using ::testing::AllOf;
using ::testing::Contains;
using ::testing::HasSubstr;

std::vector<std::string> lines_of_inputs(const Grounds& g) {
  std::vector<std::string> out;
  out.reserve(g.inputs.size());
  for (const report::GroundsInput& i : g.inputs) out.push_back(report::line_of(i));
  return out;
}

// One bottle of 2.27 kg in 20 m3 at 20 °C.
cellar::PlaceSafety cold_box(GasCellar& scene) {
  PlaceRecord p;
  p.place = scene.box;
  p.name = "Cold box";
  p.net_air_volume = units::cubic_metres(20);
  p.air_changes_per_hour = 0.5;
  p.set_temperature = units::celsius(20);
  scene.log(day(-30), p);
  return room_safety(scene.cellar(day(0)), scene.journal).front();
}

// 2.27 kg by 1.839 kg/m3 at 20 °C are 1.234 m3 in 20: 6.2 %, and 20.946 % less that.
TEST(RoomReasons, OfTheAirAreBottlesRoomAndTemperature) {
  GasCellar scene;
  const auto place = cold_box(scene);
  const report::Speaker speaker{};
  const Grounds co2 = report::room_co2_grounds(place, speaker);
  EXPECT_EQ(co2.answer, "6.2 ± 0.7 %");
  EXPECT_THAT(
      lines_of_inputs(co2),
      AllOf(Contains(AllOf(HasSubstr("Bottle 1 holds 2.27 kg when full"), HasSubstr("typed in"))),
            Contains(HasSubstr("Net volume of Cold box, 20 m³")),
            Contains(HasSubstr("Air at 20"))));
  EXPECT_THAT(co2.notes, Contains(HasSubstr("gathers low")));
  EXPECT_THAT(co2.notes, Contains(HasSubstr("never an all-clear")));
  EXPECT_EQ(report::room_oxygen_grounds(place, speaker).answer, "19.7 ± 0.1 %");
  // 1 - exp(-0.0617) = 6.0 %
  EXPECT_EQ(report::room_flowing_grounds(place, speaker).answer, "6.0 ± 0.7 %");
  // 1.234 m3 over 3 %; 5 % of content and 2 K of 293 make 5 %.
  EXPECT_EQ(report::room_wanted_grounds(place, speaker).answer, "41 m³ ± 5 %");
  EXPECT_TRUE(report::room_leak_grounds(place, speaker).empty());
}

TEST(RoomReasons, OfALossAreItsAirChanges) {
  GasCellar scene;
  for (int week = 0; week < 4; ++week) scene.weigh(day(7 * week), 2.0 - 0.14 * week);
  cold_box(scene);
  const auto place = room_safety(scene.cellar(day(22)), scene.journal).front();
  const Grounds g = report::room_leak_grounds(place, report::Speaker{});
  // 20 g/day in 20 m3 at half a change an hour: 45 ppm (docs/physics-gas.md).
  // Air changes to 50 %, the volume to 10, the loss itself to a few: 23.
  EXPECT_EQ(g.answer, "45 ± 23 ppm");
  EXPECT_THAT(lines_of_inputs(g), Contains(HasSubstr("0.5 air changes an hour")));
}

TEST(RoomReasons, OfAPublishedFigureAreItsSourceAndCertainty) {
  GasCellar scene;
  const auto place = cold_box(scene);
  for (const physics::ExposureLimit& limit : physics::exposure_limits()) {
    const Grounds g = report::limit_grounds(limit, place, report::Speaker{});
    EXPECT_THAT(g.name, HasSubstr(std::string(limit.name)));
    EXPECT_EQ(g.certainty,
              limit.certainty == physics::SourceCertainty::verified ? "verified" : "from memory");
    if (!limit.source.empty()) {
      EXPECT_EQ(g.source, limit.source);
    }
    EXPECT_THAT(lines_of_inputs(g), Contains(HasSubstr("if all escapes")));
  }
}

TEST(RoomReasons, WithoutAVolumeThereAreNone) {
  const GasCellar scene;
  const auto place = room_safety(scene.cellar(day(0)), scene.journal).front();
  EXPECT_TRUE(report::room_co2_grounds(place, report::Speaker{}).empty());
  EXPECT_TRUE(report::room_oxygen_grounds(place, report::Speaker{}).empty());
  EXPECT_FALSE(report::room_wanted_grounds(place, report::Speaker{}).empty());
}

}  // namespace
}  // namespace ullage::testing
