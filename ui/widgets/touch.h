// SPDX-License-Identifier: GPL-3.0-or-later
//
// Targets for cold, wet fingers: how many pixels 20 mm are on the screen a
// widget is shown on, by the screen's own size.
#pragma once

class QScreen;
class QWidget;

namespace ullage::ui {

inline constexpr double touch_millimetres = 20;

// Device-independent pixels, rounded up. A screen that tells no sensible size
// (under 50 or over 400 dots an inch) is taken by its nominal resolution.
[[nodiscard]] int touch_pixels(const QScreen&);
[[nodiscard]] int touch_pixels(const QWidget*);

}  // namespace ullage::ui
