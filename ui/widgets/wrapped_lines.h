// SPDX-License-Identifier: GPL-3.0-or-later
//
// A text in the lines of any width, broken at spaces: "g/L" is not parted at its slash,
// and a number stays with its unit where both fit on one line. Only a word that is wider
// than the line is parted, after a hyphen or the like.
//
// Setting letters side by side is what costs time, and a layout asks about many widths
// before it has settled. So the text is set once, on lines without an end, and only
// where its words stand there decides what fits.
#pragma once

#include <QFont>
#include <QStringList>
#include <vector>

namespace ullage::ui {

class WrappedText {
 public:
  struct Lines {
    int room = 0;  // the width asked for
    QStringList lines;
    int width = 0;   // of the longest
    int height = 0;  // of all, as QPainter sets them below one another
  };

  // What the widget shows now; forgets what was known of another text or font.
  void set(const QString& text, const QFont& font);
  [[nodiscard]] const Lines& in(int room);
  // The widest of the words, which no narrower line holds in one piece.
  [[nodiscard]] int longest_word() const;

 private:
  struct Word {
    qsizetype from = 0, to = 0;  // in its paragraph
    double left = 0, right = 0;  // on a line without an end
    bool holds_next = false;     // is kept together with the next word where both fit
    bool after_space = true;
  };
  struct Paragraph {
    QString text;
    double height = 0;  // of each of its lines
    std::vector<Word> words;
  };
  [[nodiscard]] Paragraph set_out(const QString& paragraph) const;
  void part(const Paragraph&, const Word&, std::vector<Word>& into) const;
  [[nodiscard]] std::vector<Word> pieces(const Paragraph&, int room) const;
  [[nodiscard]] Lines broken(int room) const;

  QString text_;
  QFont font_;
  std::vector<Paragraph> paragraphs_;
  std::vector<Lines> known_;  // of the widths asked for lately
};

}  // namespace ullage::ui
