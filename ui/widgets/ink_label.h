// SPDX-License-Identifier: GPL-3.0-or-later
//
// A label in one of the theme's type sizes and inks, right in both themes and
// when the theme is switched. Words that wrap do so as wrapped_lines() says; text()
// stays as it was set. One whose text can be selected wraps as Qt does.
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

  [[nodiscard]] QSize sizeHint() const override;
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
  [[nodiscard]] const QStringList& lines_in(int width) const;

  // A layout asks several times about the same width.
  struct Broken {
    QString text;
    QFont font;
    int width = -1;
    QStringList lines;
  };
  Ink ink_;
  mutable Broken broken_;
};

}  // namespace ullage::ui
