// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/wrapped_lines.h"

#include <QFontMetricsF>
#include <QTextBoundaryFinder>
#include <QTextLayout>
#include <algorithm>
#include <cmath>

#include "core/units/paper_text.h"
#include "ui/context.h"

namespace ullage::ui {
namespace {

constexpr QChar held_space(0x00A0);
constexpr std::size_t widths_kept = 8;
constexpr double without_end = 1e6;

// As QFontMetrics rounds what it measures.
int whole(double width) { return qRound(width); }

bool runs_to_the_left(QChar letter) {
  return letter.direction() == QChar::DirR || letter.direction() == QChar::DirAL;
}

}  // namespace

void WrappedText::set(const QString& text, const QFont& font) {
  if (!paragraphs_.empty() && text == text_ && font == font_) return;
  text_ = text;
  font_ = font;
  known_.clear();
  paragraphs_.clear();
  for (const QString& paragraph : text.split(QLatin1Char('\n'))) {
    paragraphs_.push_back(set_out(paragraph));
  }
}

WrappedText::Paragraph WrappedText::set_out(const QString& paragraph) const {
  Paragraph out{paragraph, 0, {}};
  if (paragraph.isEmpty()) {
    const QFontMetricsF letters(font_);
    out.height = letters.ascent() + letters.descent();
    return out;
  }
  QTextLayout layout(paragraph, font_);
  layout.beginLayout();
  QTextLine line = layout.createLine();
  line.setLineWidth(without_end);
  layout.endLayout();
  out.height = line.ascent() + line.descent();
  // Where writing runs both ways the letters do not stand in the order they are read.
  const bool one_way = std::none_of(paragraph.begin(), paragraph.end(), runs_to_the_left);
  const QFontMetricsF letters(font_);
  const auto reach = [&](qsizetype at) {
    return one_way ? line.cursorToX(static_cast<int>(at))
                   : letters.horizontalAdvance(paragraph.left(at));
  };
  // Held together by spaces of another kind, but letter for letter the same.
  const QString held = q(units::held_together(s(paragraph)));
  const auto is_space = [&](qsizetype at) {
    return held[at] == QLatin1Char(' ') || held[at] == held_space;
  };
  for (qsizetype from = 0; from <= held.size();) {
    qsizetype to = from;
    while (to < held.size() && !is_space(to)) ++to;
    const bool holds_next = to < held.size() && held[to] == held_space;
    out.words.push_back({from, to, reach(from), reach(to), holds_next});
    from = to + 1;
  }
  return out;
}

// A word wider than its line, parted where a line may break within it.
void WrappedText::part(const Paragraph& in, const Word& word, std::vector<Word>& into) const {
  const QString text = in.text.mid(word.from, word.to - word.from);
  QTextBoundaryFinder finder(QTextBoundaryFinder::Line, text);
  const QFontMetricsF letters(font_);
  qsizetype from = 0;
  double left = word.left;
  for (qsizetype to = finder.toNextBoundary(); to > 0 && to < text.size();
       to = finder.toNextBoundary()) {
    const double right = left + letters.horizontalAdvance(text.mid(from, to - from));
    into.push_back({word.from + from, word.from + to, left, right, false, from == 0});
    from = to;
    left = right;
  }
  into.push_back({word.from + from, word.to, left, word.right, false, from == 0});
}

// What is not parted on its way to a line.
std::vector<WrappedText::Word> WrappedText::pieces(const Paragraph& in, int room) const {
  std::vector<Word> out;
  for (auto first = in.words.begin(); first != in.words.end();) {
    auto last = first;
    while (last->holds_next) ++last;
    if (whole(last->right - first->left) <= room) {
      out.push_back({first->from, last->to, first->left, last->right, false});
    } else {
      for (auto word = first; word <= last; ++word) {
        if (whole(word->right - word->left) <= room) {
          out.push_back(*word);
        } else {
          part(in, *word, out);
        }
      }
    }
    first = last + 1;
  }
  return out;
}

WrappedText::Lines WrappedText::broken(int room) const {
  Lines out{room, {}, 0, 0};
  double height = 0;
  const double leading = QFontMetricsF(font_).leading();
  const auto add = [&](const Paragraph& from, const QString& line, double width) {
    if (!out.lines.isEmpty()) height += leading;
    height = std::ceil(height) + from.height;  // each line stands on a whole pixel
    out.lines << line;
    out.width = std::max(out.width, static_cast<int>(std::ceil(width)));
  };
  for (const Paragraph& paragraph : paragraphs_) {
    const std::vector<Word> all = pieces(paragraph, room);
    for (auto first = all.begin(); first != all.end();) {
      auto next = first + 1;
      while (next != all.end() && whole(next->right - first->left) <= room) ++next;
      const Word& last = *(next - 1);
      add(paragraph, paragraph.text.mid(first->from, last.to - first->from),
          last.right - first->left);
      first = next;
    }
    if (all.empty()) add(paragraph, {}, 0);
  }
  out.height = static_cast<int>(std::ceil(height));
  return out;
}

const WrappedText::Lines& WrappedText::in(int room) {
  const auto found = std::find_if(known_.begin(), known_.end(),
                                  [room](const Lines& lines) { return lines.room == room; });
  if (found != known_.end()) return *found;
  if (known_.size() == widths_kept) known_.erase(known_.begin());
  return known_.emplace_back(broken(room));
}

int WrappedText::longest_word() const {
  double longest = 0;
  for (const Paragraph& paragraph : paragraphs_) {
    for (const Word& word : paragraph.words) longest = std::max(longest, word.right - word.left);
  }
  return whole(longest);
}

}  // namespace ullage::ui
