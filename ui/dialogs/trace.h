// SPDX-License-Identifier: GPL-3.0-or-later
//
// A batch both ways: every keg that has or had it, when, and through which
// lines; and beneath each of these kegs what else it has held.
#pragma once

#include <QDialog>

#include "core/cellar/trace.h"
#include "ui/context.h"

class QVBoxLayout;

namespace ullage::ui {

// "K07: 12 Nov to 20 Nov, on tap 3"
[[nodiscard]] QString stint_words(const cellar::Stint&, const cellar::CellarStatus&,
                                  const report::Speaker&);
[[nodiscard]] QString batch_words(cellar::BatchId, const cellar::CellarStatus&);

class TraceDialog final : public QDialog {
  Q_OBJECT
 public:
  TraceDialog(const Context& context, cellar::BatchId batch, QWidget* parent = nullptr);

 private:
  void add_line(QVBoxLayout&, const QString& text, bool strong);
  Context context_;
};

}  // namespace ullage::ui
