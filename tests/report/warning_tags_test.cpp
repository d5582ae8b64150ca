// SPDX-License-Identifier: GPL-3.0-or-later
//
// Which warnings the cellar gives reason for, and which can be printed without.
#include <gmock/gmock.h>

#include "core/report/tags.h"
#include "core/units/present.h"
#include "tests/report/told_book.h"

namespace ullage::testing {
namespace {

using ::testing::Contains;
using ::testing::Not;

struct WarningTags : ToldBook {
  [[nodiscard]] std::vector<std::string> under_pressure() const {
    std::vector<std::string> kegs;
    for (const auto& tag : report::warning_tags(journal, now, speaker)) {
      if (tag.warning == report::Warning::vent_first) kegs.push_back(tag.subject);
    }
    return kegs;
  }
};

// K01 pours at 7 psi. Empty it is washed next, and somebody opens it.
TEST_F(WarningTags, AnEmptiedKegIsUnderPressureUntilItWasVented) {
  EXPECT_THAT(under_pressure(), Not(Contains("K01"))) << "full, as a keg should be";
  book.s.log(day(22, 13), Emptied{.keg = book.k01});
  book.s.log(day(22, 13.1), GasOff{.keg = book.k01});
  tell_anew();
  EXPECT_THAT(under_pressure(), Contains("K01"));
  book.s.log(day(22, 13.2), Vented{.keg = book.k01});
  tell_anew();
  EXPECT_THAT(under_pressure(), Not(Contains("K01")));
}

TEST_F(WarningTags, AFullKegOutOfServiceIsUnderPressureToo) {
  book.s.log(day(22, 13), Quarantined{.keg = book.k01, .reason = "weeps at the post"});
  tell_anew();
  EXPECT_THAT(under_pressure(), Contains("K01"));
}

TEST_F(WarningTags, OfOneThingThoseThatFitItReasonOrNot) {
  const auto tag = [&](report::Warning kind, SubjectRef about) {
    return report::warning_tag(kind, about, journal, now, speaker);
  };
  using report::Warning;
  EXPECT_EQ(present(tag(Warning::vent_first, subject(book.k02))).title, "UNDER PRESSURE");
  EXPECT_EQ(present(tag(Warning::recalled, subject(book.k02))).facts.at(1).value, "")
      << "not recalled";
  EXPECT_EQ(present(tag(Warning::recalled, subject(book.p01))).facts.at(1).value,
            "supplier’s notice, off flavour");
  EXPECT_EQ(present(tag(Warning::do_not_serve, subject(book.three))).subject, "Line 3, tap 3");
  EXPECT_EQ(present(tag(Warning::gas, subject(book.mixed))).subject, "Stout gas");
  EXPECT_FALSE(tag(Warning::vent_first, subject(book.one)));
  EXPECT_FALSE(tag(Warning::do_not_serve, subject(book.k01)));
  EXPECT_FALSE(tag(Warning::gas, subject(book.k01)));
}

}  // namespace
}  // namespace ullage::testing
