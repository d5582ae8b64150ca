// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/word_search.h"

#include <gtest/gtest.h>

namespace ullage::ui {
namespace {

TEST(WordSearch, FindsEveryWordInAnyOrderAnywhere) {
  const QString text = QStringLiteral("K07\nPale ale, carbonating in the cold box");
  for (const char* typed : {"k07", "ale pale", "BOX  k0", "arbon", "", "  "})
    EXPECT_TRUE(WordSearch(QString::fromUtf8(typed)).finds(text)) << typed;
  for (const char* typed : {"k08", "pale stout", "k07 pale stout"})
    EXPECT_FALSE(WordSearch(QString::fromUtf8(typed)).finds(text)) << typed;
}

TEST(WordSearch, AccentsAndRaisedDigitsMakeNoDifference) {
  const QString text = QStringLiteral("Märzen, 2.4 vol CO₂, Straße");
  for (const char* typed : {"marzen", "MÄRZEN", "co2", "CO₂", "straße"})
    EXPECT_TRUE(WordSearch(QString::fromUtf8(typed)).finds(text)) << typed;
  EXPECT_FALSE(WordSearch(QStringLiteral("co3")).finds(text));
}

TEST(WordSearch, IsEmptyWhenNothingButBlanksIsTyped) {
  EXPECT_TRUE(WordSearch().empty());
  EXPECT_TRUE(WordSearch(QStringLiteral("  ")).empty());
  EXPECT_FALSE(WordSearch(QStringLiteral(" a ")).empty());
}

}  // namespace
}  // namespace ullage::ui
