// SPDX-License-Identifier: GPL-3.0-or-later
//
// Where a line asks for two people to release it, one person's initials release
// nothing, neither when they are logged nor when they come in a file from elsewhere.
#include <gmock/gmock.h>

#include "core/cellar/register.h"
#include "core/cellar/validate.h"
#include "tests/cellar/scenario.h"

namespace ullage::testing {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

struct SecondInitials : ::testing::Test {
  void ask_for_two(Instant since, bool two) {
    LineRecord record;
    record.line = line;
    record.name = "Line 1";
    record.second_initials_to_release = two;
    scene.log(since, record);
  }
  void lock() { scene.log(day(1), LineLocked{line, LineAgent::caustic, "caustic", "cleaning"}); }
  [[nodiscard]] LineReleased by(const char* first, const char* second) const {
    return {line, FlushCheck::litmus, true, first, second};
  }
  // The fields at which it is refused.
  [[nodiscard]] std::vector<std::string> refused(const LineReleased& release) const {
    const Register reg(scene.journal);
    std::vector<std::string> fields;
    for (const Fault& f :
         validate({.drafts = {{.payload = release, .happened_at = day(2)}}, .by = "AB"},
                  scene.journal, reg, day(2))) {
      EXPECT_EQ(f.why.key, MessageKey::fault_release_needs_second);
      fields.push_back(f.field);
    }
    return fields;
  }
  [[nodiscard]] bool locked() const { return scene.cellar(day(5)).find(line)->lock.has_value(); }

  Scenario scene;
  LineId line = scene.line("Line 1", "1");
};

TEST_F(SecondInitials, AReleaseByOneIsRefusedWhereTwoHaveToSign) {
  ask_for_two(day(0), true);
  lock();
  EXPECT_THAT(refused(by("AB", "")), ElementsAre("countersigned_by"));
  EXPECT_THAT(refused(by("AB", "  ")), ElementsAre("countersigned_by"));
}

TEST_F(SecondInitials, TheSameInitialsTwiceAreOnePerson) {
  ask_for_two(day(0), true);
  lock();
  for (const char* second : {"AB", "ab", " AB "})
    EXPECT_THAT(refused(by("AB", second)), ElementsAre("countersigned_by")) << second;
}

TEST_F(SecondInitials, TwoDifferentOnesReleaseTheLine) {
  ask_for_two(day(0), true);
  lock();
  EXPECT_TRUE(locked());
  EXPECT_THAT(refused(by("AB", "CD")), IsEmpty());
  scene.log(day(2), by("AB", "CD"));
  EXPECT_FALSE(locked());
}

TEST_F(SecondInitials, OneIsEnoughWhereTheLineAsksForNoMore) {
  lock();
  EXPECT_THAT(refused(by("AB", "")), IsEmpty());
  scene.log(day(2), by("AB", ""));
  EXPECT_FALSE(locked());
}

// What is taken over from elsewhere is not checked as what is logged: the lock itself holds.
TEST_F(SecondInitials, TheLockHoldsWhateverCameInUnchecked) {
  ask_for_two(day(0), true);
  lock();
  scene.log(day(2), by("AB", ""));
  EXPECT_TRUE(locked());
  scene.log(day(2, 1), by("AB", "ab"));
  EXPECT_TRUE(locked());
  scene.log(day(2, 2), by("AB", " "));
  EXPECT_TRUE(locked());
  scene.log(day(2, 3), by(" ", "CD"));
  EXPECT_TRUE(locked());
  scene.log(day(2, 4), by("AB", "CD"));
  EXPECT_FALSE(locked());
}

// A rule set on Friday does not lock what one person released on Wednesday, nor does one
// given up release what it held.
TEST_F(SecondInitials, TheRuleCountsAsItStoodAtTheRelease) {
  lock();
  scene.log(day(2), by("AB", ""));
  ask_for_two(day(4), true);
  EXPECT_FALSE(locked());
  scene.log(day(4, 1), LineLocked{line, LineAgent::caustic, "caustic", "cleaning"});
  scene.log(day(4, 2), by("AB", ""));
  EXPECT_TRUE(locked());
  ask_for_two(day(4, 3), false);
  EXPECT_TRUE(locked());
  scene.log(day(4, 4), by("AB", ""));
  EXPECT_FALSE(locked());
}

}  // namespace
}  // namespace ullage::testing
