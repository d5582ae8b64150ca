// SPDX-License-Identifier: GPL-3.0-or-later
//
// For a widget around a line edit that listens to it. While such a widget is taken
// apart with the keyboard in it, the edit says that the keyboard left; by then the
// listener is half gone. Its destructor stops listening first.
#pragma once

#include <QLineEdit>

namespace ullage::ui {

inline void stop_listening(const QLineEdit* edit, const QObject* listener) {
  if (edit != nullptr) edit->disconnect(listener);
}

}  // namespace ullage::ui
