// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/wrapped_lines.h"

#include <QTextBoundaryFinder>
#include <vector>

#include "core/units/paper_text.h"
#include "ui/context.h"

namespace ullage::ui {
namespace {

constexpr QChar held_space(0x00A0);

// What is not parted on its way to a line.
struct Piece {
  QString text;
  bool after_space = true;
};

class Pieces {
 public:
  Pieces(const QFontMetrics& letters, int width) : letters_(letters), width_(width) {}

  std::vector<Piece> of(const QString& paragraph) {
    for (const QString& held : q(units::held_together(s(paragraph))).split(QLatin1Char(' '))) {
      QString word = held;
      word.replace(held_space, QLatin1Char(' '));
      if (fits(word)) {
        pieces_.push_back({word});
      } else {
        for (const QString& part : held.split(held_space)) add(part);
      }
    }
    return std::move(pieces_);
  }

 private:
  [[nodiscard]] bool fits(const QString& word) const {
    return letters_.horizontalAdvance(word) <= width_;
  }
  void add(const QString& word) {
    if (fits(word)) return pieces_.push_back({word});
    QTextBoundaryFinder finder(QTextBoundaryFinder::Line, word);
    qsizetype from = 0;
    for (qsizetype to = finder.toNextBoundary(); to > 0; to = finder.toNextBoundary()) {
      pieces_.push_back({word.mid(from, to - from), from == 0});
      from = to;
    }
    if (from < word.size()) pieces_.push_back({word.mid(from), from == 0});
  }

  const QFontMetrics& letters_;
  int width_;
  std::vector<Piece> pieces_;
};

}  // namespace

QStringList wrapped_lines(const QString& text, const QFontMetrics& letters, int width) {
  QStringList lines;
  for (const QString& paragraph : text.split(QLatin1Char('\n'))) {
    if (letters.horizontalAdvance(paragraph) <= width) {
      lines << paragraph;
      continue;
    }
    QString line;
    for (const Piece& piece : Pieces(letters, width).of(paragraph)) {
      const bool spaced = piece.after_space && !line.isEmpty();
      const QString longer = spaced ? line + QLatin1Char(' ') + piece.text : line + piece.text;
      if (line.isEmpty() || letters.horizontalAdvance(longer) <= width) {
        line = longer;
      } else {
        lines << line;
        line = piece.text;
      }
    }
    lines << line;
  }
  return lines;
}

}  // namespace ullage::ui
