// SPDX-License-Identifier: GPL-3.0-or-later
//
// The code on a tag and what a scanner types of it.
#include "core/report/keg_code.h"

#include <gtest/gtest.h>

namespace ullage::report {
namespace {

TEST(KegCode, IsShortAndHoldsTheNumberAlone) { EXPECT_EQ(keg_code("K07"), "ullage:keg:K07"); }

TEST(KegCode, ReadsBackWhatItWrote) {
  for (const std::string tag :
       {"K07", "a", "P-12.b_3", "Fass 7", "50%", "Käse", "100:200", "…", "K\"7"}) {
    EXPECT_EQ(keg_from_scan(keg_code(tag)), tag) << tag;
    for (const char c : keg_code(tag)) EXPECT_LT(static_cast<unsigned char>(c), 0x80U) << tag;
  }
}

TEST(KegCode, SurvivesAnotherCountrysKeyboard) {
  EXPECT_EQ(keg_from_scan("ullageÖkegÖK07"), "K07");
  EXPECT_EQ(keg_from_scan("ULLAGE>keg>K07"), "K07");
  EXPECT_EQ(keg_from_scan("ullage;keg;K07\r\n"), "K07");
  EXPECT_EQ(keg_from_scan("  ullage:keg:K07 "), "K07");
}

TEST(KegCode, IsNotReadIntoAnythingElse) {
  for (const char* text :
       {"", "K07", "ullage", "ullage:", "ullage:keg", "ullage:keg:", "ullagekegK07",
        "ullage:line:1", "xullage:keg:K07", "ullage:keg:K%0", "ullage:keg:%ZZ",
        "ullage:keg:K07 K08", "https://example.org/ullage:keg:K07"}) {
    EXPECT_FALSE(keg_from_scan(text)) << text;
  }
}

}  // namespace
}  // namespace ullage::report
