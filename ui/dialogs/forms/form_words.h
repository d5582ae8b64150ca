// SPDX-License-Identifier: GPL-3.0-or-later
//
// The words of the form tables (form_spec.h) in the language of the windows.
#pragma once

#include <QCoreApplication>
#include <QString>

namespace ullage::ui {

// Of a text marked QT_TRANSLATE_NOOP("Forms", ...); nothing for an empty one.
[[nodiscard]] inline QString form_words(const char* english) {
  return *english ? QCoreApplication::translate("Forms", english) : QString();
}

}  // namespace ullage::ui
