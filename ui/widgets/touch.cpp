// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/touch.h"

#include <QGuiApplication>
#include <QScreen>
#include <QWidget>
#include <cmath>

namespace ullage::ui {
namespace {

constexpr double millimetres_in_an_inch = 25.4;
constexpr double least_sensible_dpi = 50;
constexpr double most_sensible_dpi = 400;

bool is_sensible(double dpi) { return dpi >= least_sensible_dpi && dpi <= most_sensible_dpi; }

}  // namespace

int touch_pixels(const QScreen& screen) {
  const double real = screen.physicalDotsPerInch();
  const double dpi = is_sensible(real) ? real : screen.logicalDotsPerInch();
  return static_cast<int>(std::ceil(touch_millimetres / millimetres_in_an_inch * dpi));
}

int touch_pixels(const QWidget* widget) {
  const QScreen* screen = widget != nullptr ? widget->screen() : nullptr;
  return touch_pixels(screen != nullptr ? *screen : *QGuiApplication::primaryScreen());
}

}  // namespace ullage::ui
