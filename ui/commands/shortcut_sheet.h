// SPDX-License-Identifier: GPL-3.0-or-later
//
// Every shortcut and what it does, made from the table of commands.
#pragma once

#include <QDialog>

namespace ullage::ui {

class ShortcutSheet : public QDialog {
  Q_OBJECT
 public:
  explicit ShortcutSheet(QWidget* parent = nullptr);
};

}  // namespace ullage::ui
