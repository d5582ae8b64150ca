// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/theme.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QFontInfo>
#include <QImage>
#include <QPainter>
#include <QPalette>
#include <QSvgRenderer>

#include "ui/theme/icons.h"

namespace ullage::ui {
namespace {

struct Named {
  const char* name;
  QColor colour;
};

class ThemeContrast : public ::testing::TestWithParam<bool> {
 protected:
  [[nodiscard]] const Theme& theme() const { return GetParam() ? dark_theme() : light_theme(); }
};
INSTANTIATE_TEST_SUITE_P(LightAndDark, ThemeContrast, ::testing::Bool(),
                         [](const auto& which) { return which.param ? "dark" : "light"; });

std::vector<Named> surfaces(const Theme& t) {
  return {{"window", t.window},
          {"surface", t.surface},
          {"raised", t.raised},
          {"hover", t.hover},
          {"selected", t.selected},
          {"danger_surface", t.danger_surface},
          {"warning_surface", t.warning_surface},
          {"success_surface", t.success_surface},
          {"info_surface", t.info_surface}};
}

// Two pairs whose ratio is published with the definition (WCAG 2.1 and its
// technique G18): black on white is 21:1, and #777777 on white is 4.48:1 by
// common tables. Certainty: verified, from memory.
TEST(Contrast, AgreesWithPublishedRatios) {
  EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 0.001);
  EXPECT_NEAR(contrast(QColor("#777777"), Qt::white), 4.48, 0.005);
  EXPECT_DOUBLE_EQ(contrast(Qt::white, QColor("#777777")), contrast(QColor("#777777"), Qt::white));
}

TEST_P(ThemeContrast, EveryTextStandsSevenToOneOnEverySurface) {
  const Theme& t = theme();
  const std::vector<Named> inks = {{"text", t.text},
                                   {"text_secondary", t.text_secondary},
                                   {"accent_ink", t.accent_ink},
                                   {"danger_ink", t.danger_ink},
                                   {"warning_ink", t.warning_ink},
                                   {"success_ink", t.success_ink}};
  for (const Named& ink : inks) {
    for (const Named& surface : surfaces(t)) {
      EXPECT_GE(contrast(ink.colour, surface.colour), 7.0) << ink.name << " on " << surface.name;
    }
  }
  EXPECT_GE(contrast(t.accent_text, t.accent), 7.0);
  EXPECT_GE(contrast(t.accent_text, t.accent_hover), 7.0);
}

TEST_P(ThemeContrast, EveryMarkAndBorderStandsThreeToOne) {
  const Theme& t = theme();
  const std::vector<Named> marks = {
      {"danger", t.danger}, {"warning", t.warning},           {"success", t.success},
      {"accent", t.accent}, {"control_line", t.control_line}, {"focus", t.focus}};
  for (const Named& mark : marks) {
    for (const Named& surface : surfaces(t)) {
      EXPECT_GE(contrast(mark.colour, surface.colour), 3.0) << mark.name << " on " << surface.name;
    }
  }
  for (const PhaseLook& phase : t.phases) {
    EXPECT_GE(contrast(phase.ink, t.window), 3.0) << phase.ink.name().toStdString();
    EXPECT_GE(contrast(phase.ink, t.surface), 3.0) << phase.ink.name().toStdString();
  }
}

// Colour is never alone: any two phases that look alike in colour differ in
// height or pattern.
TEST_P(ThemeContrast, PhasesDifferWithoutColour) {
  const auto& phases = theme().phases;
  for (std::size_t a = 1; a < phases.size(); ++a) {
    for (std::size_t b = a + 1; b < phases.size(); ++b) {
      EXPECT_TRUE(phases[a].height != phases[b].height || phases[a].pattern != phases[b].pattern)
          << a << " and " << b;
    }
  }
}

TEST_P(ThemeContrast, PaletteLeadsBackToItsTheme) {
  EXPECT_EQ(&theme_of(palette_of(theme())), &theme());
}

TEST_P(ThemeContrast, PaletteTextIsReadableAlsoWhenDisabled) {
  const QPalette p = palette_of(theme());
  const std::vector<std::pair<QPalette::ColorRole, QPalette::ColorRole>> pairs = {
      {QPalette::WindowText, QPalette::Window},
      {QPalette::Text, QPalette::Base},
      {QPalette::Text, QPalette::AlternateBase},
      {QPalette::ButtonText, QPalette::Button},
      {QPalette::PlaceholderText, QPalette::Base},
      {QPalette::HighlightedText, QPalette::Highlight},
      {QPalette::ToolTipText, QPalette::ToolTipBase},
      {QPalette::Link, QPalette::Base}};
  for (const auto group : {QPalette::Active, QPalette::Inactive, QPalette::Disabled}) {
    for (const auto& [ink, ground] : pairs) {
      EXPECT_GE(contrast(p.color(group, ink), p.color(group, ground)), 7.0)
          << group << ": " << ink << " on " << ground;
    }
  }
}

TEST(Typeface, IsOurs) {
  for (const auto role : {TextRole::title, TextRole::heading, TextRole::body, TextRole::strong,
                          TextRole::small, TextRole::number}) {
    EXPECT_EQ(QFontInfo(font_of(role)).family(), QStringLiteral("Inter"));
  }
}

TEST(Icons, EachIsThereDrawsSomethingAndTakesItsColour) {
  for (int i = 0; i < icon_count; ++i) {
    const auto which = static_cast<Icon>(i);
    QFile file(icon_path(which));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << icon_path(which).toStdString();
    const QByteArray drawing = file.readAll();
    EXPECT_TRUE(QSvgRenderer(drawing).isValid()) << icon_path(which).toStdString();
    EXPECT_TRUE(drawing.contains("currentColor")) << icon_path(which).toStdString();
    const QImage image = icon(which, Qt::red).pixmap(24, 24).toImage();
    int red = 0;
    for (int y = 0; y < image.height(); ++y) {
      for (int x = 0; x < image.width(); ++x) {
        const QColor pixel = image.pixelColor(x, y);
        if (pixel.alpha() > 128) {
          EXPECT_GT(pixel.red(), 200);
          EXPECT_LT(pixel.green(), 60);
          ++red;
        }
      }
    }
    EXPECT_GT(red, 15) << icon_path(which).toStdString();
  }
}

}  // namespace
}  // namespace ullage::ui
