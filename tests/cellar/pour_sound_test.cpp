// SPDX-License-Identifier: GPL-3.0-or-later
//
// Sound lines of other kinds than one hose, one gas and one keg: nothing above
// information on any of them.
#include <gmock/gmock.h>

#include <functional>

#include "core/cellar/pour_advice.h"
#include "tests/cellar/pour_scene.h"

namespace ullage::testing {
namespace {

struct SoundLine {
  const char* name;
  PourFigures figures;
  std::function<void(PourScene&)> tell;
};

void tower_that_is_cooled(PourScene& s) {
  const PlaceId tower = s.place("Tower");
  s.read(tower, day(20), 6);
  s.segment(1, 5, 3.0 / 16, s.box);
  s.segment(2, 1, 3.0 / 16, tower, 1);
}
void short_tower_in_the_room(PourScene& s) {
  const PlaceId room = s.place("Bar");
  s.read(room, day(20), 21);
  s.segment(1, 5, 3.0 / 16, {});
  s.segment(2, 1, 3.0 / 16, room, 1);  // 5 mL
}
void delivered_a_day_before(PourScene& s) {
  s.log(day(19), Emptied{s.keg});
  const KegId fresh = s.Scenario::keg("K07", s.box);
  s.log(day(19, 1), s.receive(fresh, s.beer, 12, {}));
  s.gas(fresh, day(19, 2), 11.5);
  s.log(day(20, 12), Tapped{fresh, s.line});
}
void two_of_a_kind_on_one_regulator(PourScene& s) {
  RegulatorRecord r;
  r.regulator = s.counted.make<RegulatorId>();
  r.name = "R1";
  s.log(day(-80), r);
  LineRecord driven = s.record;
  driven.regulator = r.regulator;
  s.log(day(-50), driven);
  s.regulator = r.regulator;
  s.put_on(s.Scenario::keg("K02", s.box), s.register_line("Line 2", s.figures), s.figures);
  s.record = driven;
}
void timed_as_it_should_be(PourScene& s) { s.timed(day(21, 2), 9.5); }
void cleaned_by_its_rule(PourScene& s) {
  s.record.clean_every_days = 14;
  s.record.clean_source = "own rule";
  s.log(day(-58), s.record);
  for (const int d : {-5, 9, 20, 33}) {
    LineCleaned cleaned;
    cleaned.line = s.line;
    cleaned.flush_check = FlushCheck::litmus;
    cleaned.flush_passed = true;
    s.log(day(d, 9), cleaned);
  }
}
void colder_than_set(PourScene& s) {
  PlaceRecord box;
  box.place = s.box;
  box.name = "Cold box";
  box.set_temperature = units::celsius(2);
  s.log(day(-59), box);
}

const std::vector<SoundLine> sound_lines{
    {"stout on 30 % CO2, 10 ft",
     {30, 6, 1.05, 1.45, 10, 3.0 / 16, 1, LineMaterial::vinyl, 0, 0.3},
     [](PourScene&) {}},
    {"pieces through a cooled tower", {}, tower_that_is_cooled},
    {"a foot of hose in a warm tower", {}, short_tower_in_the_room},
    {"a delivered keg, tapped a day later", {}, delivered_a_day_before},
    {"two kegs of one beer on one regulator", {}, two_of_a_kind_on_one_regulator},
    {"a timed pour", {}, timed_as_it_should_be},
    {"cleaned as its rule asks", {}, cleaned_by_its_rule},
    {"a box that reads 4 and is set to 2", {}, colder_than_set},
};

TEST(PourSound, LinesOfEveryKindGetNoWarning) {
  for (const SoundLine& sound : sound_lines) {
    PourScene s(sound.figures);
    sound.tell(s);
    for (int d = 22; d < 40; d += 6) {
      const LineStatus line = s.line_now(day(d, 12));
      ASSERT_TRUE(line.pour) << sound.name;
      for (const Advice& a : line.pour->advice) {
        EXPECT_EQ(a.severity, Severity::info)
            << sound.name << " day " << d << ": message "
            << all_messages[static_cast<std::size_t>(a.headline.key)].name;
      }
      EXPECT_THAT(line.advice, ::testing::IsEmpty()) << sound.name << " day " << d;
    }
  }
}

}  // namespace
}  // namespace ullage::testing
