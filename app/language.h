// SPDX-License-Identifier: GPL-3.0-or-later
//
// The language of the windows. English is what the source says, German is begun:
// pages, menus and the first dialogs; what the core says stays English.
#pragma once

#include <QString>

class QCoreApplication;

namespace ullage::app {

// "de" for German; anything else English, whose translation only knows that one
// keg is not "1 kegs". Once, before the first window.
void speak(QCoreApplication& application, const QString& language);

}  // namespace ullage::app
