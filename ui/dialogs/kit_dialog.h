// SPDX-License-Identifier: GPL-3.0-or-later
//
// The cleaners as their labels describe them, and the time at hand on a cleaning day.
#pragma once

#include <QDialog>

#include "core/cellar/cleaning_plan.h"
#include "ui/context.h"
#include "ui/widgets/quantity_edits.h"

class QCheckBox;

namespace ullage::ui {

class FormSection;
class TextEdit;

class KitDialog : public QDialog {
  Q_OBJECT
 public:
  explicit KitDialog(const Context& context, QWidget* parent = nullptr);

 private:
  struct CleanerFields {
    TextEdit* name = nullptr;
    FractionEdit* strength = nullptr;
    FractionEdit* label = nullptr;
    NumberEdit* density = nullptr;
    DurationEdit* contact = nullptr;
  };
  [[nodiscard]] FormSection* section(const QString& heading, CleanerFields& fields,
                                     const cellar::Cleaner& cleaner);
  [[nodiscard]] bool read(const CleanerFields& fields, cellar::Cleaner& into) const;
  void keep();

  Context context_;
  CleanerFields caustic_, acid_;
  QCheckBox* chlorine_ = nullptr;
  DurationEdit* time_ = nullptr;
};

}  // namespace ullage::ui
