// SPDX-License-Identifier: GPL-3.0-or-later
//
// The design tokens. There are two themes, light and dark, both constants; which
// one a widget is in follows from its palette, so nothing global is asked and a
// live switch needs only a new palette (theme_switch.h). Widgets and delegates
// that paint themselves take every colour from here.
//
// Promise, kept by tests/ui/theme_test.cpp: each text colour stands at least
// 7:1 against every surface it may be put on, and each mark, border and focus
// ring at least 3:1.
#pragma once

#include <QColor>
#include <QFont>
#include <array>

class QPalette;
class QWidget;

namespace ullage::ui {

// What fills a stretch of a keg's life strip. Phases differ by height and
// pattern as well as colour.
enum class StripPattern { outline, dots, diagonal, back_diagonal, solid };
struct PhaseLook {
  QColor fill;
  QColor ink;         // lines, dots and the outline over the fill
  double height = 1;  // of the strip's full height
  StripPattern pattern = StripPattern::solid;
};

// In the order of cellar::Phase, which ui/theme does not include.
inline constexpr std::size_t phase_count = 9;

struct Theme {
  bool dark = false;

  // Surfaces text may stand on.
  QColor window;    // behind everything
  QColor surface;   // panels, fields, the selected row
  QColor raised;    // menus, pop-ups, the rail
  QColor hover;     // under the mouse
  QColor selected;  // selection, the current page in the rail

  // Text on any of these.
  QColor text;
  QColor text_secondary;
  QColor accent_ink;  // links, the current page
  QColor danger_ink, warning_ink, success_ink;

  // Tinted surfaces for banners; text, text_secondary and the matching ink hold
  // 7:1 on them.
  QColor danger_surface, warning_surface, success_surface, info_surface;

  // A filled control and the text on it.
  QColor accent, accent_hover, accent_text;

  // Not text: 3:1 against the surfaces.
  QColor danger, warning, success;  // status marks
  QColor control_line;              // the border of a field or button
  QColor focus;                     // the focus ring

  // Decoration only; nothing depends on seeing it.
  QColor line;
  QColor shadow;

  std::array<PhaseLook, phase_count> phases;
};

[[nodiscard]] const Theme& light_theme();
[[nodiscard]] const Theme& dark_theme();

// The theme a widget, or a delegate's option, is shown in.
[[nodiscard]] const Theme& theme_of(const QWidget*);
[[nodiscard]] const Theme& theme_of(const QPalette&);

[[nodiscard]] QPalette palette_of(const Theme&);

// Forecasts are the same colour, paled towards what is behind.
[[nodiscard]] QColor pale(const QColor& colour, const QColor& behind);
// Contrast ratio of two opaque colours, 1 to 21 (WCAG 2.1, "contrast ratio").
[[nodiscard]] double contrast(const QColor&, const QColor&);

// --- spacing and radii, in device-independent pixels
namespace space {
inline constexpr int xs = 4;
inline constexpr int s = 8;
inline constexpr int m = 12;
inline constexpr int l = 16;
inline constexpr int xl = 24;
inline constexpr int xxl = 32;
}  // namespace space
namespace radius {
inline constexpr int small = 4;
inline constexpr int control = 7;
inline constexpr int card = 10;
}  // namespace radius
inline constexpr int control_height = 34;
inline constexpr int small_icon = 16;
inline constexpr int icon_size = 20;

// --- type, in points so that it follows the screen's resolution
enum class TextRole {
  title,    // the page's name; 15 pt, semibold
  heading,  // a section, a keg's contents; 11.25 pt, semibold
  body,     // 10.5 pt
  strong,   // body, semibold
  small,    // second lines, captions; 9 pt
  number    // a figure that is the point of a panel; 18 pt, semibold
};
[[nodiscard]] QFont font_of(TextRole);

}  // namespace ullage::ui
