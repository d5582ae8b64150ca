// SPDX-License-Identifier: GPL-3.0-or-later
//
// What new kegs and beers start with, against the tables it was taken from.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <string>

#include "core/cellar/presets.h"
#include "tests/published/csv.h"

namespace ullage::cellar {
namespace {

using published::Row;
using published::table;

// Volumes to the digits printed; weights and pressures as printed.
TEST(KegPresets, AreThePrintedKegs) {
  const std::map<std::string, KegKind> kegs{{"US half barrel", KegKind::us_half_barrel},
                                            {"US sixth barrel", KegKind::us_sixth_barrel},
                                            {"US quarter barrel", KegKind::us_quarter_barrel},
                                            {"DIN 6647 50 L", KegKind::keg_50},
                                            {"DIN 6647 30 L", KegKind::keg_30},
                                            {"DIN 6647 20 L", KegKind::keg_20},
                                            {"5 US gal soda keg", KegKind::ball_lock_19},
                                            {"3 US gal soda keg", KegKind::ball_lock_11},
                                            {"2.5 US gal soda keg", KegKind::ball_lock_9}};
  std::size_t seen = 0;
  for (const Row& row : table("keg_geometry.csv")) {
    const auto at = kegs.find(row.text("keg"));
    if (at == kegs.end()) continue;
    const KegPreset* preset = keg_preset(at->second);
    ASSERT_NE(preset, nullptr);
    EXPECT_NEAR(units::in_litres(preset->nominal), row.number("nominal_volume_L"), 0.0005)
        << at->first;
    EXPECT_GT(preset->brimful, preset->nominal) << at->first;
    if (const auto tare = row.maybe("tare_kg")) {
      EXPECT_NEAR(units::in_kilograms(preset->tare), *tare, 0.005) << at->first;
    }
    if (const auto most = row.maybe("max_working_pressure_psi")) {
      EXPECT_NEAR(units::in_pascals(preset->rated_pressure) / units::pascals_per_psi, *most, 0.5)
          << at->first;
    }
    ++seen;
  }
  EXPECT_EQ(seen, kegs.size());
}

// Two printed lists disagree by up to a volume; a preset is the second list where
// there is one, else the first, widened to a tenth either way where it is a point.
TEST(StylePresets, LieWithinThePrintedLists) {
  const std::map<std::string, std::string> spelled{
      {"American amber/pale ale", "American amber or pale ale"},
      {"Koelsch", "Kölsch"},
      {"Lambic gueuze", "Lambic, gueuze"}};
  int seen = 0;
  for (const Row& row : table("style_carbonation.csv")) {
    const auto other = spelled.find(row.text("style"));
    const StylePreset* style =
        style_preset(other == spelled.end() ? row.text("style") : other->second);
    ASSERT_NE(style, nullptr) << row.text("style");
    const auto low_b = row.maybe("listB_min_volumes"), high_b = row.maybe("listB_max_volumes");
    const double low_a = row.number("listA_min_volumes"), high_a = row.number("listA_max_volumes");
    const double least = std::min(low_a, low_b.value_or(low_a));
    const double most = std::max(high_a, high_b.value_or(high_a));
    EXPECT_GE(style->low.count(), least - 0.101) << row.text("style");
    EXPECT_LE(style->high.count(), most + 0.101) << row.text("style");
    EXPECT_LT(style->low, style->high);
    ++seen;
  }
  EXPECT_EQ(seen, 20);
}

}  // namespace
}  // namespace ullage::cellar
