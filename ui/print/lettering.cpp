// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/lettering.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "core/units/paper_text.h"
#include "ui/context.h"
#include "ui/print/pages.h"
#include "ui/print/paper.h"

namespace ullage::ui {
namespace {

constexpr double no_text_is_smaller_pt = 2;

// How many characters fit, one at least; a pair of surrogates stays together.
qsizetype characters_that_fit(const QString& word, const QFontMetricsF& metrics, double width) {
  qsizetype fit = 1;
  while (fit < word.size() && metrics.horizontalAdvance(word.left(fit + 1)) <= width) ++fit;
  if (fit < word.size() && word[fit - 1].isHighSurrogate()) fit += fit > 1 ? -1 : 1;
  return fit;
}

constexpr QChar no_break_space(0x00A0);

// The words between which a line may break: a number stays with its unit where
// both fit on one line.
QStringList words_of_line(const QString& paragraph, const QFontMetricsF& metrics, double width) {
  QStringList words;
  const QString held = q(units::held_together(s(paragraph)));
  for (const QString& word : held.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
    if (metrics.horizontalAdvance(word) <= width) {
      words << word;
    } else {
      words << word.split(no_break_space, Qt::SkipEmptyParts);
    }
  }
  return words;
}

// Breaks at spaces alone: a date is not parted at its hyphens.
QStringList broken_paragraph(const QString& paragraph, const QFont& font, double width) {
  const QFontMetricsF metrics(font);
  QStringList lines;
  QString line;
  for (const QString& word : words_of_line(paragraph, metrics, width)) {
    const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
    if (metrics.horizontalAdvance(longer) <= width) {
      line = longer;
      continue;
    }
    if (!line.isEmpty()) lines << line;
    line = word;
    while (line.size() > 1 && metrics.horizontalAdvance(line) > width) {
      const qsizetype fit = characters_that_fit(line, metrics, width);
      lines << line.left(fit);
      line = line.mid(fit);
    }
  }
  lines << line;
  // What is copied out of a PDF has plain spaces.
  lines.replaceInStrings(QString(no_break_space), QStringLiteral(" "));
  return lines;
}

}  // namespace

QSizeF Pages::size() const { return layout().fullRect(QPageLayout::Inch).size() * dots_per_inch; }

QFont printed_font(const QFont& base, double pt, int weight) {
  QFont font = base;
  font.setPixelSize(std::max(1, static_cast<int>(std::lround(points(pt)))));
  font.setWeight(static_cast<QFont::Weight>(weight));
  font.setLetterSpacing(QFont::AbsoluteSpacing, points(0.01));
  // No contextual forms: the raised hyphen and colon between digits have no
  // character of their own, and would be lost to search and copying in a PDF.
  font.setStyleStrategy(QFont::PreferNoShaping);
  return font;
}

QPen printed_line(double pt) { return {QBrush(Qt::black), points(pt)}; }

QStringList broken_lines(const QString& text, const QFont& font, double width) {
  QStringList lines;
  if (text.isEmpty()) return lines;
  for (const QString& paragraph : text.split(QLatin1Char('\n'))) {
    lines << broken_paragraph(paragraph, font, width);
  }
  return lines;
}

double line_height(const QFont& font) { return QFontMetricsF(font).lineSpacing(); }

double paint_lines(QPainter& painter, const QStringList& lines, const QFont& font, double x,
                   double y) {
  const QFontMetricsF metrics(font);
  painter.setFont(font);
  for (const QString& line : lines) {
    if (!line.isEmpty()) painter.drawText(QPointF(x, y + metrics.ascent()), line);
    y += metrics.lineSpacing();
  }
  return y;
}

void paint_fitted(QPainter& painter, const QRectF& area, int alignment, const QString& text,
                  const QFont& base, const FitBetween& fit) {
  if (text.isEmpty()) return;
  double pt = fit.largest_pt;
  while (true) {
    const QFont font = printed_font(base, pt, fit.weight);
    // Above the smallest size whole words are kept: they shrink before they break.
    const QFontMetricsF metrics(font);
    bool words_fit = true;
    for (const QString& word :
         q(units::held_together(s(text.simplified()))).split(QLatin1Char(' '))) {
      words_fit = words_fit && metrics.horizontalAdvance(word) <= area.width();
    }
    const QStringList lines = broken_lines(text, font, area.width());
    const double height = metrics.lineSpacing() * static_cast<double>(lines.size());
    const bool fits = height <= area.height() && (words_fit || pt <= fit.smallest_pt);
    if (fits || pt <= no_text_is_smaller_pt) {
      double y = area.top();
      if (alignment & Qt::AlignVCenter) y += (area.height() - height) / 2;
      if (alignment & Qt::AlignBottom) y += area.height() - height;
      for (const QString& line : lines) {
        const double room = area.width() - metrics.horizontalAdvance(line);
        const double x = alignment & Qt::AlignHCenter ? room / 2
                         : alignment & Qt::AlignRight ? room
                                                      : 0;
        y = paint_lines(painter, {line}, font, area.left() + x, y);
      }
      return;
    }
    pt *= 0.94;
  }
}

}  // namespace ullage::ui
