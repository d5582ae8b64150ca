// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/demo_cellar.h"

#include <string>

#include "app/surroundings.h"
#include "app/zone_calendar.h"
#include "tests/app/session_fixture.h"

namespace ullage {
namespace {

using std::chrono::hours;
using std::chrono::minutes;

// Whatever the time is when somebody asks for it: just after midnight, what came
// "16 hours ago" came before the hour at which a morning's acts are told.
class DemoCellar : public ::testing::TestWithParam<minutes> {};

TEST_P(DemoCellar, can_be_told_at_any_time_of_day) {
  const QTemporaryDir folder;
  testing::SetClock clock;
  app::RandomIds ids;
  const app::ZoneCalendar calendar("Europe/London");
  const cellar::Date day = calendar.date_of(testing::minute(0));
  clock.time = calendar.to_instant(cellar::LocalTime(day) + GetParam()).value();
  const auto made = app::make_demo((folder.path() + "/demo.cellar").toStdString(), {clock, ids});
  ASSERT_TRUE(made);
  const auto status = (*made)->status();
  EXPECT_EQ(status->kegs.size(), 15U);
  for (const cellar::Entry& entry : (*made)->journal().entries()) {
    EXPECT_LE(entry.header.happened_at, clock.time) << cellar::kind_of(entry.payload);
  }
}

INSTANTIATE_TEST_SUITE_P(hours_of_the_day, DemoCellar,
                         ::testing::Values(minutes(1), minutes(42), hours(1),
                                           hours(2) + minutes(30), hours(7), hours(8) + minutes(10),
                                           hours(12), hours(16), hours(23) + minutes(59)),
                         [](const auto& at) {
                           return "minute_" + std::to_string(at.param.count());
                         });

}  // namespace
}  // namespace ullage
