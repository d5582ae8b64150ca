// SPDX-License-Identifier: GPL-3.0-or-later
//
// A label in one of the theme's type sizes and inks, right in both themes and
// when the theme is switched.
#pragma once

#include <QLabel>

#include "ui/theme/theme.h"

namespace ullage::ui {

enum class Ink { text, secondary, accent, danger, warning, success };
[[nodiscard]] QColor ink_of(Ink, const Theme&);

class InkLabel : public QLabel {
  Q_OBJECT
 public:
  explicit InkLabel(const QString& text = {}, TextRole role = TextRole::body, Ink ink = Ink::text,
                    QWidget* parent = nullptr);
  void set_ink(Ink);
  void set_role(TextRole);

 protected:
  void changeEvent(QEvent*) override;

 private:
  void colour();
  Ink ink_;
};

}  // namespace ullage::ui
