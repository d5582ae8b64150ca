// SPDX-License-Identifier: GPL-3.0-or-later
//
// A label in one of the theme's type sizes and inks, right in both themes and
// when the theme is switched. Words that wrap do so as WrappedText says; text()
// stays as it was set. One whose text can be selected wraps as Qt does.
#pragma once

#include <QLabel>

#include "ui/theme/theme.h"
#include "ui/widgets/wrapped_lines.h"

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

  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] int heightForWidth(int width) const override;
  // What stands in each line, in the width that the label has.
  [[nodiscard]] QStringList lines() const;

 protected:
  void changeEvent(QEvent*) override;
  void paintEvent(QPaintEvent*) override;

 private:
  void colour();
  [[nodiscard]] bool breaks_lines() const;
  [[nodiscard]] QSize around() const;  // what the margins take
  [[nodiscard]] const WrappedText::Lines& lines_in(int width) const;

  Ink ink_;
  mutable WrappedText wrapped_;
};

}  // namespace ullage::ui
