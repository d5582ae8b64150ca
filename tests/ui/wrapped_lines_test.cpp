// SPDX-License-Identifier: GPL-3.0-or-later
//
// Texts in lines: what stands in each fits, nothing is lost, and the sizes are those
// that Qt itself measures for the same lines.
#include "ui/widgets/wrapped_lines.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFontMetrics>
#include <QLabel>

#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"
#include "ui/widgets/ink_label.h"

namespace ullage::ui {
namespace {

const QStringList texts = {
    "Now 4.7 ± 0.3 g/L, and 0.5 g/L a day at 0.8 bar",
    ("Cleaner may stand in tap 2. Flush it, check what runs out and release it before a glass is "
     "poured. The agent’s label and your local rules go first."),
    "Two paragraphs.\n\nThe second, after an empty line, is longer than the first one.",
    "Kellerbier-Spezialabfüllung/Nachfüllung",
    "עברית stands beside what is written the other way: 2.4 ± 0.2 vol עברית",
    "x",
};

QRect measured(const QStringList& lines, const QFont& font) {
  return QFontMetrics(font).boundingRect(QRect(0, 0, QWIDGETSIZE_MAX, QWIDGETSIZE_MAX),
                                         Qt::AlignLeft | Qt::AlignTop,
                                         lines.join(QLatin1Char('\n')));
}

class WrappedTextTest : public ::testing::TestWithParam<TextRole> {
 protected:
  void SetUp() override { dress(light_theme()); }
  const QFont font_ = font_of(GetParam());
};
INSTANTIATE_TEST_SUITE_P(Roles, WrappedTextTest,
                         ::testing::Values(TextRole::small, TextRole::body, TextRole::title));

// A letter beside a space may lean over by a part of a pixel.
constexpr int leaning = 1;

TEST_P(WrappedTextTest, EveryLineFitsAndNothingIsLost) {
  const QFontMetrics letters(font_);
  for (const QString& text : texts) {
    WrappedText wrapped;
    wrapped.set(text, font_);
    for (int room = wrapped.longest_word() + leaning; room < 700; room += 7) {
      const WrappedText::Lines& lines = wrapped.in(room);
      const QString all = lines.lines.join(QLatin1Char(' '));
      EXPECT_EQ(all, QString(text).replace(QLatin1Char('\n'), QLatin1Char(' ')));
      for (const QString& line : lines.lines) {
        EXPECT_LE(letters.horizontalAdvance(line), room + leaning) << line.toStdString();
      }
    }
  }
}

TEST_P(WrappedTextTest, IsAsHighAndAsWideAsQtMeasuresItsLines) {
  for (const QString& text : texts) {
    WrappedText wrapped;
    wrapped.set(text, font_);
    for (const int room : {0, 90, 180, 320, 1000}) {
      const WrappedText::Lines& lines = wrapped.in(room);
      const QRect by_qt = measured(lines.lines, font_);
      EXPECT_EQ(lines.height, by_qt.height()) << text.toStdString() << " in " << room;
      EXPECT_NEAR(lines.width, by_qt.width(), 2 * leaning) << text.toStdString() << " in " << room;
    }
  }
}

TEST_P(WrappedTextTest, FollowsTextAndFont) {
  WrappedText wrapped;
  wrapped.set("one two", font_);
  EXPECT_EQ(wrapped.in(1000).lines, QStringList("one two"));
  wrapped.set("three", font_);
  EXPECT_EQ(wrapped.in(1000).lines, QStringList("three"));
  const int before = wrapped.in(1000).height;
  QFont larger = font_;
  larger.setPointSizeF(2 * font_.pointSizeF());
  wrapped.set("three", larger);
  EXPECT_GT(wrapped.in(1000).height, before);
  wrapped.set({}, font_);
  EXPECT_EQ(wrapped.in(1000).lines, QStringList(QString()));
}

// A wrapped label takes the room that Qt's own takes.
TEST_P(WrappedTextTest, ALabelWouldBeAsLargeAsQtsOwn) {
  const QFontMetrics letters(font_);
  for (const QString& text : texts) {
    if (text.contains(QLatin1Char('\n')) || text.isRightToLeft()) continue;
    InkLabel ours(text, GetParam());
    ours.setWordWrap(true);
    QLabel qts(text);
    qts.setFont(font_);
    qts.setWordWrap(true);
    EXPECT_NEAR(ours.sizeHint().width(), qts.sizeHint().width(), letters.averageCharWidth() * 6)
        << text.toStdString();
    EXPECT_EQ(ours.sizeHint().height(), qts.sizeHint().height()) << text.toStdString();
    EXPECT_LE(ours.minimumSizeHint().width(), ours.sizeHint().width());
  }
}

}  // namespace
}  // namespace ullage::ui
