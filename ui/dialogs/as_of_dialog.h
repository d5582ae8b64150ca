// SPDX-License-Identifier: GPL-3.0-or-later
//
// Asks for a past moment, and whether to tell what we now know about it or only
// what had been recorded by then (for inspectors).
#pragma once

#include <QDialog>

#include "ui/context.h"

class QCheckBox;

namespace ullage::ui {

class WhenEdit;

class AsOfDialog : public QDialog {
  Q_OBJECT
 public:
  explicit AsOfDialog(const Context& context, QWidget* parent = nullptr);
  // The moment asked for and, with the switch on, the last entry recorded by
  // then.
  [[nodiscard]] std::optional<cellar::AsOf> as_of() const;

 private:
  Context context_;
  WhenEdit* when_;
  QCheckBox* recorded_only_;
};

}  // namespace ullage::ui
