// SPDX-License-Identifier: GPL-3.0-or-later
//
// When a bottle's next test is due is said alike wherever it is said: the date stamped
// on it, until a test that was passed certifies another.
#include <gmock/gmock.h>

#include "core/report/calendar_feed.h"
#include "core/report/log_rows.h"
#include "core/report/register_lists.h"
#include "core/report/tags.h"
#include "tests/report/logs_fixture.h"

namespace ullage::testing {
namespace {

using ::testing::Each;
using ::testing::HasSubstr;

struct Retest : Logs {
  // Bottle 1's, in every place: list, CSV, gas log, calendar, tag.
  [[nodiscard]] std::vector<std::string> told() const {
    const report::TableSheet list = report::bottle_list(now, speaker, "");
    std::vector<std::string> all{list.rows.at(0).cells.at(5), words(list, 0, "retest_due")};
    const auto log = report::gas_log(journal, now, november, speaker, "");
    for (const report::SheetBox& box : log.boxes) {
      if (box.title == "Bottles") all.push_back(box.lines.at(0));
    }
    for (const report::CalendarItem& item : report::calendar_items(now, journal, speaker)) {
      if (item.summary == "Retest due: Bottle 1") all.push_back(report::iso_day(item.day));
    }
    const auto tag =
        report::warning_tag(report::Warning::gas, subject(book.bottle), journal, now, speaker);
    if (tag) all.push_back(tag->facts.at(0).value);
    return all;
  }
  void test(Date next_due, bool complete) {
    WorkDone done;
    done.work = WorkKind::bottle_retest;
    done.bottle = book.bottle;
    done.next_due = next_due;
    done.complete = complete;
    book.s.log(day(21), done);
    tell_anew();
  }
};

TEST_F(Retest, EveryPlaceTellsTheStampedDateUntilATestCertifiesAnother) {
  ASSERT_EQ(told().size(), 5U);
  EXPECT_THAT(told(), Each(HasSubstr("2029-05-01")));
  test(date(60), false);  // only begun
  EXPECT_THAT(told(), Each(HasSubstr("2029-05-01")));
  test(date(3650), true);
  ASSERT_EQ(told().size(), 5U);
  EXPECT_THAT(told(), Each(HasSubstr(report::iso_day(date(3650)))));
}

TEST_F(Retest, ABottleIsMarkedByTheCertifiedDate) {
  const auto marked = [&] { return report::bottle_list(now, speaker, "").rows.at(0).marked; };
  EXPECT_FALSE(marked());
  test(date(2), true);  // certified for too short
  EXPECT_TRUE(marked()) << "overdue, though the stamp says 2029";
}

}  // namespace
}  // namespace ullage::testing
