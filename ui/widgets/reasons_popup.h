// SPDX-License-Identifier: GPL-3.0-or-later
//
// The reasons behind a number, beside it: what it was worked out from, how, by
// whose equation, what would narrow it. Closes with Esc, its button, or a click
// elsewhere, and gives the keyboard back to the number.
#pragma once

#include <QFrame>

#include "core/report/grounds.h"

class QVBoxLayout;

namespace ullage::ui {

class ReasonsPopup final : public QFrame {
  Q_OBJECT
 public:
  // Shows it at `number`, or at a part of it; deletes itself when closed.
  static ReasonsPopup* open(QWidget* number, const report::Grounds&, QRect part = {});
  ReasonsPopup(const report::Grounds&, QWidget* parent);

 protected:
  void keyPressEvent(QKeyEvent*) override;
  void paintEvent(QPaintEvent*) override;

 private:
  void build(const report::Grounds&);
  void place_at(const QWidget& number, const QRect& part);
  static void add_part(QVBoxLayout&, const QString& heading, const QStringList& lines);
  QWidget* inside_ = nullptr;
};

}  // namespace ullage::ui
