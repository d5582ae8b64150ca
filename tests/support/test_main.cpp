// SPDX-License-Identifier: GPL-3.0-or-later
//
// main() of the tests that open windows: no display needed but a screen of
// 1024x640, the smallest the program is made for; nothing of the person's own
// settings read or written, numbers in the C locale.
#include <gtest/gtest.h>

#include <QApplication>
#include <QFile>
#include <QLocale>
#include <QStandardPaths>
#include <QTemporaryDir>

#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"

namespace {

void use_a_small_screen(const QTemporaryDir& home) {
  QFile screen(home.filePath("screen.json"));
  if (!screen.open(QIODevice::WriteOnly)) return;
  screen.write(R"({"screens": [{"name": "small", "x": 0, "y": 0, "width": 1024, "height": 640,
                    "logicalDpi": 96, "logicalBaseDpi": 96, "dpr": 1}]})");
  qputenv("QT_QPA_PLATFORM", "offscreen:configfile=" + screen.fileName().toUtf8());
}

}  // namespace

int main(int argc, char** argv) {
  const QTemporaryDir home;
  const QByteArray platform = qgetenv("QT_QPA_PLATFORM");
  if (platform.isEmpty() || platform == "offscreen") use_a_small_screen(home);
  qputenv("XDG_RUNTIME_DIR", home.path().toUtf8());  // QTemporaryDir makes it 0700
  qputenv("XDG_CONFIG_HOME", home.filePath("config").toUtf8());
  qputenv("XDG_DATA_HOME", home.filePath("data").toUtf8());
  qputenv("XDG_CACHE_HOME", home.filePath("cache").toUtf8());
  QStandardPaths::setTestModeEnabled(true);
  QLocale::setDefault(QLocale::c());
  testing::InitGoogleTest(&argc, argv);
  const QApplication application(argc, argv);
  QApplication::setApplicationName("ullage-tests");
  ullage::ui::dress(ullage::ui::light_theme());
  return RUN_ALL_TESTS();
}
