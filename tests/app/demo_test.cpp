// SPDX-License-Identifier: GPL-3.0-or-later
//
// The demo cellar is told relative to now: it must hold whenever somebody opens it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <algorithm>
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
  // Nothing was done in a cellar that was not there yet.
  EXPECT_EQ(cellar::kind_of((*made)->journal().story().front()->payload), "cellar_described");
}

// Every state that somebody should meet in it, at whatever hour they open it.
void expect_every_state(const cellar::CellarStatus& status) {
  using cellar::Phase;
  using cellar::ReadinessKind;
  const auto kegs = [&](const char* what, auto is) {
    const auto n = std::count_if(status.kegs.begin(), status.kegs.end(), is);
    EXPECT_GE(n, 1) << "no keg is " << what;
  };
  const auto in = [](Phase phase) {
    return [phase](const cellar::KegStatus& k) { return k.phase == phase; };
  };
  const auto is = [](ReadinessKind kind) {
    return [kind](const cellar::KegStatus& k) { return k.readiness.kind == kind; };
  };
  EXPECT_GE(status.kegs.size(), 12U);
  EXPECT_LE(status.kegs.size(), 18U) << "about a dozen";
  kegs("ready", is(ReadinessKind::ready_now));
  kegs("ready later", is(ReadinessKind::ready_at));
  kegs("carbonating", in(Phase::carbonating));
  kegs("on tap", in(Phase::on_tap));
  kegs("empty and dirty", [](const auto& k) { return k.phase == Phase::dirty && !k.contents; });
  kegs("empty and clean", [](const auto& k) { return k.phase == Phase::clean && !k.contents; });
  kegs("empty and purged", [](const auto& k) { return k.phase == Phase::purged && !k.contents; });
  kegs("found leaking by its hold test", [](const auto& k) { return k.hold_failed; });
  kegs("quarantined", [](const auto& k) { return k.quarantined.has_value(); });
  kegs("lent", [](const auto& k) { return k.lent_to.has_value(); });
  kegs("ours", [](const auto& k) { return k.contents && k.contents->filled_by_us; });
  kegs("received", [](const auto& k) { return k.contents && !k.contents->filled_by_us; });
  kegs("on a locked line", [](const auto& k) { return k.lock.has_value(); });
  const auto lines = [&](const char* what, auto of) {
    EXPECT_TRUE(std::any_of(status.lines.begin(), status.lines.end(), of)) << "no line is " << what;
  };
  lines("locked", [](const auto& l) { return l.lock.has_value(); });
  lines("overdue", [](const auto& l) { return l.overdue; });
  lines("serving", [](const auto& l) { return l.keg && !l.do_not_serve(); });
}

TEST(Demo, ShowsEveryState) {
  const cellar::Instant midnight = std::chrono::sys_days(2026y / 11 / 29);
  for (int hour = 0; hour < 24; hour += 3) {
    const QTemporaryDir folder;
    SetClock clock;
    clock.time = midnight + std::chrono::hours(hour) + 7min;
    CountingIds ids{1};
    SCOPED_TRACE(hour);
    const auto made = app::make_demo((folder.path() + "/demo.cellar").toStdString(), {clock, ids});
    ASSERT_TRUE(made) << store::describe(made.error());
    expect_every_state(*(*made)->status());
  }
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
