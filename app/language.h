// SPDX-License-Identifier: GPL-3.0-or-later
//
// The language of the windows. English is what the source says; German has all
// that goes through tr(): pages, menus, forms, dialogs. What the core says (the
// sentences about a keg, the sheets) stays English.
#pragma once

#include <QString>

class QCoreApplication;

namespace ullage::app {

// "de" for German; anything else English, whose translation only knows that one
// keg is not "1 kegs". Once, before the first window.
void speak(QCoreApplication& application, const QString& language);

}  // namespace ullage::app
