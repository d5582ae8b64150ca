// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which strikes and corrections would end a line's lock without a check.
#include "core/cellar/lock_end.h"

#include <gmock/gmock.h>

#include "tests/cellar/scenario.h"

namespace ullage::testing {
namespace {

using ::testing::IsEmpty;
using ::testing::SizeIs;

struct LockEnd : ::testing::Test {
  EntryId lock(double hour = 8) {
    return scene.log(day(1, hour), LineLocked{line, LineAgent::caustic, "caustic", "cleaning"});
  }
  [[nodiscard]] std::vector<LineLock> ended_by(const Act& act) const {
    return locks_ended_by(act, scene.journal);
  }
  [[nodiscard]] static Act strike(EntryId id) {
    return {{{Payload(Struck{id, {}}), day(3), {}, {}}}, {}};
  }
  [[nodiscard]] static Act correct(EntryId id, Payload as, Instant when) {
    return {{{std::move(as), when, {}, id}}, {}};
  }
  [[nodiscard]] LineCleaned cleaned_with(LineAgent agent) const {
    LineCleaned c;
    c.line = line;
    c.agent = agent;
    return c;
  }

  Scenario scene;
  LineId line = scene.line("Line 1", "1");
  LineId other = scene.line("Line 2", "2");
};

TEST_F(LockEnd, AStrikeOfTheLockEndsIt) {
  const EntryId id = lock();
  const auto ended = ended_by(strike(id));
  ASSERT_THAT(ended, SizeIs(1));
  EXPECT_EQ(ended.front().line, line);
  EXPECT_EQ(ended.front().entry, id);
}

TEST_F(LockEnd, AStrikeOfOneOfTwoThatLockItDoesNot) {
  const EntryId first = lock(8);
  const EntryId second = lock(9);
  EXPECT_THAT(ended_by(strike(first)), IsEmpty());
  EXPECT_THAT(ended_by(strike(second)), IsEmpty());
}

TEST_F(LockEnd, ACorrectionThatNamesAnotherLineEndsIt) {
  const EntryId id = lock();
  LineLocked elsewhere{other, LineAgent::caustic, "caustic", "cleaning"};
  const auto ended = ended_by(correct(id, elsewhere, day(1, 8)));
  ASSERT_THAT(ended, SizeIs(1));
  EXPECT_EQ(ended.front().line, line);
}

TEST_F(LockEnd, ACorrectionOfTheReasonOrTheAgentDoesNot) {
  const EntryId id = lock();
  const LineLocked acid{line, LineAgent::acid, "acid", "stone"};
  EXPECT_THAT(ended_by(correct(id, acid, day(1, 8))), IsEmpty());
}

// A release that came before the lock is not a check of what went in after it.
TEST_F(LockEnd, ACorrectionThatMovesTheLockBeforeAnEarlierReleaseEndsIt) {
  lock(6);
  scene.log(day(1, 7), LineReleased{line, FlushCheck::litmus, true, "AB", {}});
  const EntryId id = lock(8);
  const LineLocked same{line, LineAgent::caustic, "caustic", "cleaning"};
  EXPECT_THAT(ended_by(correct(id, same, day(1, 7.5))), IsEmpty());
  EXPECT_THAT(ended_by(correct(id, same, day(1, 6.5))), SizeIs(1));
}

TEST_F(LockEnd, ACleaningCorrectedToWaterEndsTheLockItWas) {
  const EntryId id = scene.log(day(1, 8), cleaned_with(LineAgent::caustic));
  EXPECT_THAT(ended_by(correct(id, cleaned_with(LineAgent::acid), day(1, 8))), IsEmpty());
  EXPECT_THAT(ended_by(correct(id, cleaned_with(LineAgent::water), day(1, 8))), SizeIs(1));
}

TEST_F(LockEnd, WhatIsReleasedOrAnotherLinesEndsNothing) {
  const EntryId id = lock();
  scene.log(day(1, 10), LineReleased{line, FlushCheck::litmus, true, "AB", {}});
  EXPECT_THAT(ended_by(strike(id)), IsEmpty());
  const EntryId remark = scene.log(day(1, 11), Noted{});
  EXPECT_THAT(ended_by(strike(remark)), IsEmpty());
}

// Struck by mistake and brought back: bringing the strike again ends the lock once more.
TEST_F(LockEnd, UndoAndRedoAreSeenThrough) {
  const EntryId id = lock();
  const ActId locking = scene.journal.find(id)->header.act;
  EXPECT_THAT(ended_by(undoing(locking, scene.journal)), SizeIs(1));
  scene.strike(id);
  const Entry* strike_entry = scene.journal.struck_by(id);
  ASSERT_NE(strike_entry, nullptr);
  const EntryId strike_id = strike_entry->header.id;
  const ActId striking = strike_entry->header.act;
  EXPECT_THAT(ended_by(undoing(striking, scene.journal)), IsEmpty()) << "it brings the lock back";
  scene.strike(strike_id);
  EXPECT_THAT(ended_by(redoing(striking, scene.journal)), SizeIs(1));
}

}  // namespace
}  // namespace ullage::testing
