// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/theme.h"

#include <QPalette>
#include <QWidget>
#include <algorithm>
#include <cmath>

namespace ullage::ui {

namespace {

// unknown, dirty, clean, sanitised, purged, carbonating, conditioning, ready, on tap
std::array<PhaseLook, phase_count> light_phases() {
  return {{{"#f5f3ef", "#87857e", 0.30, StripPattern::outline},
           {"#e3ddd1", "#857a66", 0.30, StripPattern::dots},
           {"#dbe6ee", "#5c7d95", 0.30, StripPattern::outline},
           {"#aec6d6", "#48708b", 0.30, StripPattern::solid},
           {"#b5dde2", "#3d7f88", 0.45, StripPattern::solid},
           {"#e5b45c", "#92640a", 0.70, StripPattern::diagonal},
           {"#d9c28f", "#7d652a", 0.70, StripPattern::back_diagonal},
           {"#6aa87a", "#2f6a40", 0.70, StripPattern::solid},
           {"#0b5f63", "#0b5f63", 1.00, StripPattern::solid}}};
}

std::array<PhaseLook, phase_count> dark_phases() {
  return {{{"#1e2322", "#7c8683", 0.30, StripPattern::outline},
           {"#4a443a", "#a3967f", 0.30, StripPattern::dots},
           {"#2b3a45", "#86a9c0", 0.30, StripPattern::outline},
           {"#5b8098", "#93b7cd", 0.30, StripPattern::solid},
           {"#4f8f98", "#8fccd4", 0.45, StripPattern::solid},
           {"#c8913a", "#f3cd8b", 0.70, StripPattern::diagonal},
           {"#94804f", "#dcc790", 0.70, StripPattern::back_diagonal},
           {"#5f9f70", "#9ad5ab", 0.70, StripPattern::solid},
           {"#6cc7c1", "#6cc7c1", 1.00, StripPattern::solid}}};
}

Theme make_light() {
  Theme t;
  t.dark = false;
  t.window = "#f5f3ef";
  t.surface = "#ffffff";
  t.raised = "#fcfbf9";
  t.hover = "#ece9e2";
  t.selected = "#dfebea";
  t.text = "#1c2321";
  t.text_secondary = "#424a47";
  t.accent_ink = "#07484b";
  t.danger_ink = "#8a1a15";
  t.warning_ink = "#633d00";
  t.success_ink = "#124d28";
  t.danger_surface = "#fbecea";
  t.warning_surface = "#fbf1dc";
  t.success_surface = "#e8f3ea";
  t.info_surface = "#e8f0f0";
  t.accent = "#0b5f63";
  t.accent_hover = "#084b4f";
  t.accent_text = "#ffffff";
  t.danger = "#b3261e";
  t.warning = "#a05f00";
  t.success = "#2c7a4b";
  t.control_line = "#85827a";
  t.focus = "#0b7a80";
  t.line = "#dcd8d0";
  t.shadow = QColor(28, 35, 33, 40);
  t.phases = light_phases();
  return t;
}

Theme make_dark() {
  Theme t;
  t.dark = true;
  t.window = "#161a19";
  t.surface = "#1e2322";
  t.raised = "#232927";
  t.hover = "#29302e";
  t.selected = "#203635";
  t.text = "#e9ecea";
  t.text_secondary = "#c3cac7";
  t.accent_ink = "#8adbd5";
  t.danger_ink = "#ffb8b0";
  t.warning_ink = "#f2c772";
  t.success_ink = "#97dcae";
  t.danger_surface = "#3a1f1d";
  t.warning_surface = "#352b14";
  t.success_surface = "#1b3323";
  t.info_surface = "#1f3231";
  t.accent = "#7fd1cb";
  t.accent_hover = "#9adfda";
  t.accent_text = "#06201f";
  t.danger = "#ff897d";
  t.warning = "#e9b04a";
  t.success = "#6fc58c";
  t.control_line = "#7f8986";
  t.focus = "#8adbd5";
  t.line = "#343b39";
  t.shadow = QColor(0, 0, 0, 120);
  t.phases = dark_phases();
  return t;
}

// WCAG 2.1: relative luminance of an sRGB colour.
double luminance(const QColor& c) {
  const auto channel = [](double v) {
    return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
  };
  return 0.2126 * channel(c.redF()) + 0.7152 * channel(c.greenF()) + 0.0722 * channel(c.blueF());
}

}  // namespace

const Theme& light_theme() {
  static const Theme theme = make_light();
  return theme;
}

const Theme& dark_theme() {
  static const Theme theme = make_dark();
  return theme;
}

const Theme& theme_of(const QPalette& palette) {
  return luminance(palette.color(QPalette::Window)) < luminance(palette.color(QPalette::WindowText))
             ? dark_theme()
             : light_theme();
}

const Theme& theme_of(const QWidget* widget) { return theme_of(widget->palette()); }

QPalette palette_of(const Theme& t) {
  QPalette p;
  p.setColor(QPalette::Window, t.window);
  p.setColor(QPalette::WindowText, t.text);
  p.setColor(QPalette::Base, t.surface);
  p.setColor(QPalette::AlternateBase, t.raised);
  p.setColor(QPalette::Text, t.text);
  p.setColor(QPalette::Button, t.surface);
  p.setColor(QPalette::ButtonText, t.text);
  p.setColor(QPalette::BrightText, t.danger_ink);
  p.setColor(QPalette::ToolTipBase, t.raised);
  p.setColor(QPalette::ToolTipText, t.text);
  p.setColor(QPalette::PlaceholderText, t.text_secondary);
  p.setColor(QPalette::Highlight, t.selected);
  p.setColor(QPalette::HighlightedText, t.text);
  p.setColor(QPalette::Link, t.accent_ink);
  p.setColor(QPalette::LinkVisited, t.accent_ink);
  p.setColor(QPalette::Light, t.raised);
  p.setColor(QPalette::Midlight, t.hover);
  p.setColor(QPalette::Mid, t.line);
  p.setColor(QPalette::Dark, t.control_line);
  p.setColor(QPalette::Shadow, t.dark ? QColor("#000000") : QColor("#5a5750"));
  // What can't be used now is still read: the secondary colour, not a faint one.
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
    p.setColor(QPalette::Disabled, role, t.text_secondary);
  }
  p.setColor(QPalette::Disabled, QPalette::Base, t.window);
  p.setColor(QPalette::Disabled, QPalette::Button, t.window);
  return p;
}

QColor pale(const QColor& colour, const QColor& behind) {
  constexpr double kept = 0.42;
  const auto mix = [](double a, double b) { return static_cast<float>(a * kept + b * (1 - kept)); };
  return QColor::fromRgbF(mix(colour.redF(), behind.redF()), mix(colour.greenF(), behind.greenF()),
                          mix(colour.blueF(), behind.blueF()));
}

double contrast(const QColor& a, const QColor& b) {
  const double la = luminance(a);
  const double lb = luminance(b);
  return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

QFont font_of(TextRole role) {
  struct Face {
    double points;
    QFont::Weight weight;
  };
  const Face face = [role]() -> Face {
    switch (role) {
      case TextRole::title:
        return {15.0, QFont::DemiBold};
      case TextRole::heading:
        return {11.25, QFont::DemiBold};
      case TextRole::strong:
        return {10.5, QFont::DemiBold};
      case TextRole::small:
        return {9.0, QFont::Normal};
      case TextRole::number:
        return {18.0, QFont::DemiBold};
      case TextRole::body:
        break;
    }
    return {10.5, QFont::Normal};
  }();
  QFont font("Inter");
  font.setPointSizeF(face.points);
  font.setWeight(face.weight);
  // The same shapes on every machine: no hinting to the local pixel grid.
  font.setHintingPreference(QFont::PreferNoHinting);
  return font;
}

}  // namespace ullage::ui
