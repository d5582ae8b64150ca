// SPDX-License-Identifier: GPL-3.0-or-later
//
// Nothing typed is lost by a slip: a dialog that is left with something typed in
// it asks first.
//
//   KegChange::KegChange(...) { build(); guard_.watch(*this); }
//   void KegChange::reject() { if (guard_.lets_go(context_, this)) QDialog::reject(); }
#pragma once

#include <QObject>

class QWidget;

namespace ullage::ui {

struct Context;

class LeaveGuard : public QObject {
 public:
  // Notes from now on whatever a person types or picks inside; what the program
  // itself puts into a field does not count.
  void watch(QWidget& inside);
  void forget() { touched_ = false; }
  // True when nothing was typed, or the person leaves it all the same.
  [[nodiscard]] bool lets_go(const Context&, QWidget* dialog) const;
  // The question itself, for a dialog that knows whether something was typed.
  [[nodiscard]] static bool ask(const Context&, QWidget* dialog);

 private:
  bool touched_ = false;
};

}  // namespace ullage::ui
