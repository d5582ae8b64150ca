// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/context.h"

#include "ui/preferences.h"

namespace ullage::ui {

units::Printer Context::printer() const {
  return {preferences.units(), preferences.number_style()};
}

units::Parser Context::parser() const { return {preferences.units(), preferences.number_style()}; }

report::Speaker Context::speaker() const {
  return {printer(), &cellar.calendar(), preferences.words(), cellar.now()};
}

QString q(const std::string& text) { return QString::fromStdString(text); }
std::string s(const QString& text) { return text.toStdString(); }

}  // namespace ullage::ui
