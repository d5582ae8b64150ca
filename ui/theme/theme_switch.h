// SPDX-License-Identifier: GPL-3.0-or-later
//
// Puts the chosen theme on the application, now and whenever the choice
// changes: style, typeface, palette. "System" follows the palette the desktop
// gave the program before ours was set.
#pragma once

#include <QObject>

namespace ullage::ui {

class Preferences;
struct Theme;

class ThemeSwitch : public QObject {
  Q_OBJECT
 public:
  // The one application must be there.
  explicit ThemeSwitch(const Preferences&, QObject* parent = nullptr);

 private:
  void apply();
  const Preferences& preferences_;
  bool system_is_dark_ = false;
};

// Makes the program's own typeface known; also where nothing is shown and only
// printed. Once is enough, more does no harm.
void load_typeface();

// Style, typeface and palette of one theme on the one application, once; what
// ThemeSwitch does, for programs and tests that have no preferences.
void dress(const Theme&);

}  // namespace ullage::ui
