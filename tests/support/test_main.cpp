// SPDX-License-Identifier: GPL-3.0-or-later
//
// main() of the tests that open windows: no display needed, nothing of the
// person's own settings read or written, numbers in the C locale.
#include <gtest/gtest.h>

#include <QApplication>
#include <QLocale>
#include <QStandardPaths>
#include <QTemporaryDir>

#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"

int main(int argc, char** argv) {
  QTemporaryDir home;
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  qputenv("XDG_RUNTIME_DIR", home.path().toUtf8());  // QTemporaryDir makes it 0700
  qputenv("XDG_CONFIG_HOME", home.filePath("config").toUtf8());
  qputenv("XDG_DATA_HOME", home.filePath("data").toUtf8());
  qputenv("XDG_CACHE_HOME", home.filePath("cache").toUtf8());
  QStandardPaths::setTestModeEnabled(true);
  QLocale::setDefault(QLocale::c());
  testing::InitGoogleTest(&argc, argv);
  QApplication application(argc, argv);
  QApplication::setApplicationName("ullage-tests");
  ullage::ui::dress(application, ullage::ui::light_theme());
  return RUN_ALL_TESTS();
}
