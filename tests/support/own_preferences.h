// SPDX-License-Identifier: GPL-3.0-or-later
//
// Preferences of a test: kept in a file that goes when the test does.
#pragma once

#include <QSettings>
#include <QTemporaryDir>

#include "ui/preferences.h"

namespace ullage::testing {

class OwnPreferences {
 public:
  OwnPreferences() { preferences.set_units(units::DisplayUnits::british()); }

 private:
  QTemporaryDir folder_;
  QSettings settings_{folder_.filePath("settings.ini"), QSettings::IniFormat};

 public:
  ui::Preferences preferences{settings_};
};

}  // namespace ullage::testing
