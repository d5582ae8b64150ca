// SPDX-License-Identifier: GPL-3.0-or-later
//
// What a form says when a tag is scanned before it: which one, and that nothing is
// opened while the form is. It stands over the form's head for some seconds, takes no
// room, no keyboard and no mouse, and changes nothing in the form.
#pragma once

#include <QString>

class QWidget;

namespace ullage::ui {

void tell_scanned(const QString& keg_tag, QWidget& form);

}  // namespace ullage::ui
