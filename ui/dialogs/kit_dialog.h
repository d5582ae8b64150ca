// SPDX-License-Identifier: GPL-3.0-or-later
//
// The cleaners as their labels describe them, and the time at hand on a cleaning day;
// folded away, what vessels hold and how long each piece of work takes.
#pragma once

#include <QDialog>
#include <vector>

#include "core/cellar/cleaning_plan.h"
#include "ui/context.h"
#include "ui/widgets/quantity_edits.h"

class QCheckBox;
class QToolButton;

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
                                     const cellar::Cleaner& cleaner) const;
  [[nodiscard]] QWidget* amounts(const cellar::CleaningKit&);
  [[nodiscard]] bool read_amounts(cellar::CleaningKit& into) const;
  [[nodiscard]] bool read(const CleanerFields& fields, cellar::Cleaner& into) const;
  void keep();

  Context context_;
  CleanerFields caustic_, acid_;
  QCheckBox* chlorine_ = nullptr;
  DurationEdit* time_ = nullptr;
  QToolButton* unfold_ = nullptr;
  VolumeEdit* pot_ = nullptr;
  VolumeEdit* keg_fill_ = nullptr;
  WholeNumberEdit* rinses_ = nullptr;
  WholeNumberEdit* purge_cycles_ = nullptr;
  GaugePressureEdit* purge_to_ = nullptr;
  std::vector<DurationEdit*> minutes_;  // as minutes_of_work
};

}  // namespace ullage::ui
