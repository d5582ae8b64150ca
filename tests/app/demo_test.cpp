// SPDX-License-Identifier: GPL-3.0-or-later
//
// The demo cellar is told relative to now: it must hold whenever somebody opens it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <vector>

#include "app/demo_cellar.h"
#include "tests/app/session_fixture.h"

namespace ullage::testing {
namespace {

using namespace std::chrono_literals;

// The whole demo at this moment; an act refused is an exception.
void expect_told_at(cellar::Instant now) {
  const QTemporaryDir folder;
  SetClock clock;
  clock.time = now;
  CountingIds ids{1};
  SCOPED_TRACE(now.time_since_epoch().count());
  const auto made = app::make_demo((folder.path() + "/demo.cellar").toStdString(), {clock, ids});
  ASSERT_TRUE(made) << store::describe(made.error());
  for (const cellar::Entry& e : (*made)->journal().entries())
    EXPECT_LE(e.header.happened_at, now) << cellar::kind_of(e.payload);
}

TEST(Demo, CanBeToldAtAnyHour) {
  const cellar::Instant midnight = std::chrono::sys_days(2026y / 11 / 29);
  for (int half_hour = 0; half_hour < 48; ++half_hour) {
    ASSERT_NO_FATAL_FAILURE(expect_told_at(midnight + half_hour * 30min + 7min));
  }
}

TEST(Demo, CanBeToldWhenTheClocksChange) {
  for (const auto day : {2026y / 3 / 29, 2026y / 10 / 25}) {
    for (int half_hour = 0; half_hour < 10; ++half_hour) {
      ASSERT_NO_FATAL_FAILURE(
          expect_told_at(std::chrono::sys_days(day) + half_hour * 30min + 7min));
    }
  }
}

}  // namespace
}  // namespace ullage::testing
