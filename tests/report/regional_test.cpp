// SPDX-License-Identifier: GPL-3.0-or-later
//
// Words of the other region: whole words, their capitals and marks kept.
#include "core/report/regional.h"

#include <gtest/gtest.h>

#include <random>
#include <string>
#include <utility>
#include <vector>

namespace ullage::report {
namespace {

std::string us(std::string_view text) { return regional(text, RegionalWords::us); }

TEST(Regional, ChangesWholeWordsAlone) {
  const std::vector<std::pair<std::string, std::string>> said{
      {"Tap above the keg", "Faucet above the keg"},
      {"Hang a sign on the tap as well.", "Hang a sign on the faucet as well."},
      {"the tap’s handle, “tap”", "the faucet’s handle, “faucet”"},
      {"shank and tap", "shank and faucet"},
      {"A flow-control tap loses more.", "A flow-control faucet loses more."},
      {"&Tap", "&Faucet"},
      {"T&ap", "F&aucet"},
      {"Sanitised and sanitiser", "Sanitized and sanitizer"},
      {"Keg S&anitised", "Keg S&anitized"},
      {"half a litre, 3 litres, 2 metres", "half a liter, 3 liters, 2 meters"},
      // Words that hold one of them, and taps that are none.
      {"tape, staple, tapped, Taprobane, pita", "tape, staple, tapped, Taprobane, pita"},
      {"Satanitis, insanitised, centilitres", "Satanitis, insanitised, centilitres"},
      {"diametre_litre, pétap, tapé", "diametre_litre, pétap, tapé"},
      {"On tap, off tap, by tap water and on the tap",
       "On tap, off tap, by tap water and on the faucet"},
      {"a picnic tap", "a picnic tap"},
      {"on. Tap", "on. Faucet"},
      {"Zapfhahn über dem Fass: 2 Liter, Desinfektion, Metall",
       "Zapfhahn über dem Fass: 2 Liter, Desinfektion, Metall"},
      {"a & b &", "a & b &"},
      {"", ""}};
  for (const auto& [british, american] : said) {
    EXPECT_EQ(us(british), american);
    EXPECT_EQ(regional(british, RegionalWords::british), british);
  }
}

// Any bytes, even what is no UTF-8: what has no such word comes back as it was, and a
// text that was changed has nothing left to change.
TEST(Regional, IsDoneAtOnceAndKeepsTheRest) {
  std::mt19937 random(20261129);
  const std::vector<std::string> pieces{"tap", "Tap",  "&",    "litre", "s",        " ",  "’",
                                        "on",  "é",    "\xE2", "\x80",  "sanitise", "ed", "water",
                                        ".",   "T&ap", "\xFF", "metre", "-",        "x",  "\n"};
  for (int i = 0; i < 20000; ++i) {
    std::string any;
    const int length = std::uniform_int_distribution(0, 8)(random);
    for (int n = 0; n < length; ++n) {
      any += pieces.at(std::uniform_int_distribution<std::size_t>(0, pieces.size() - 1)(random));
    }
    ASSERT_EQ(us(us(any)), us(any)) << any;
    std::string without;
    for (const char c : any) {
      if (c != 't' && c != 'T') without += c;  // every such word has a t
    }
    ASSERT_EQ(us(without), without);
  }
}

}  // namespace
}  // namespace ullage::report
