// SPDX-License-Identifier: GPL-3.0-or-later
//
// What is typed to find a row: every word, in any order, each anywhere in its text.
// Capitals, accents and raised or lowered digits make no difference: "marzen" finds
// "Märzen", "co2" finds "CO₂".
#pragma once

#include <QStringList>

namespace ullage::ui {

// A text as it is compared.
[[nodiscard]] QString folded(const QString& text);

class WordSearch {
 public:
  WordSearch() = default;
  explicit WordSearch(const QString& typed);

  [[nodiscard]] bool empty() const { return words_.isEmpty(); }
  [[nodiscard]] bool finds(const QString& text) const { return finds_folded(folded(text)); }
  [[nodiscard]] bool finds_folded(const QString& folded_text) const;

 private:
  QStringList words_;
};

}  // namespace ullage::ui
