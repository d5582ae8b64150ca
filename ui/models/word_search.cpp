// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/word_search.h"

#include <algorithm>

namespace ullage::ui {

QString folded(const QString& text) {
  const QString decomposed = text.normalized(QString::NormalizationForm_KD);
  QString plain;
  plain.reserve(decomposed.size());
  for (const QChar c : decomposed) {
    if (c.category() != QChar::Mark_NonSpacing) plain.append(c);
  }
  return plain.toCaseFolded();
}

WordSearch::WordSearch(const QString& typed)
    : words_(folded(typed).split(QLatin1Char(' '), Qt::SkipEmptyParts)) {}

bool WordSearch::finds_folded(const QString& folded_text) const {
  return std::all_of(words_.begin(), words_.end(),
                     [&](const QString& word) { return folded_text.contains(word); });
}

}  // namespace ullage::ui
