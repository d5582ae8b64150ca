// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/theme_switch.h"

#include <QApplication>
#include <QFontDatabase>
#include <QPalette>
#include <QStyleFactory>

#include "ui/preferences.h"
#include "ui/theme/style.h"
#include "ui/theme/theme.h"

namespace ullage::ui {

void load_typeface() {
  QCoreApplication& application = *QCoreApplication::instance();
  if (application.property("ullage_typeface").toBool()) return;
  for (const char* weight : {"Regular", "SemiBold"}) {
    QFontDatabase::addApplicationFont(QStringLiteral(":/fonts/Inter-%1.otf").arg(weight));
  }
  application.setProperty("ullage_typeface", true);
}

void dress(const Theme& theme) {
  load_typeface();
  if (QApplication::style()->objectName() != style_name) QApplication::setStyle(new Style);
  QApplication::setFont(font_of(TextRole::body));
  QApplication::setPalette(palette_of(theme));
}

ThemeSwitch::ThemeSwitch(const Preferences& preferences, QObject* parent)
    : QObject(parent),
      preferences_(preferences),
      system_is_dark_(theme_of(QApplication::palette()).dark) {
  connect(&preferences, &Preferences::theme_changed, this, &ThemeSwitch::apply);
  apply();
}

void ThemeSwitch::apply() {
  const ThemeChoice choice = preferences_.theme();
  const bool dark =
      choice == ThemeChoice::dark || (choice == ThemeChoice::system && system_is_dark_);
  dress(dark ? dark_theme() : light_theme());
}

}  // namespace ullage::ui
