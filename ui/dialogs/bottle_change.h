// SPDX-License-Identifier: GPL-3.0-or-later
//
// A bottle change in one act: which bottle goes on which regulator, what its tag
// says, washer, secured, the leak test, and the weight of the new one. Logged
// whole, undone whole. A leak found keeps the act: the bottle is on, and leaks.
#pragma once

#include <optional>

#include "ui/dialogs/change_dialog.h"
#include "ui/widgets/entity_picker.h"
#include "ui/widgets/quantity_edits.h"

class QCheckBox;

namespace ullage::ui {

class ChoiceBar;

class BottleChange final : public ChangeDialog {
  Q_OBJECT
 public:
  BottleChange(const Context& context, std::optional<cellar::RegulatorId> regulator,
               std::optional<cellar::BottleId> bottle, QWidget* parent = nullptr);

  [[nodiscard]] cellar::Act act() const override;
  [[nodiscard]] QString warned_of() const;

 protected:
  bool show_faults() override;
  [[nodiscard]] QString logged_words() const override;

 private:
  void build();
  void tell();
  QWidget* build_test();

  RegulatorPicker* regulator_ = nullptr;
  BottlePicker* bottle_ = nullptr;
  FractionEdit* tag_ = nullptr;
  QCheckBox* washer_ = nullptr;
  QCheckBox* secured_ = nullptr;
  ChoiceBar* test_ = nullptr;
  TextEdit* where_ = nullptr;
  MassEdit* weight_ = nullptr;
  InstrumentPicker* scale_ = nullptr;
};

}  // namespace ullage::ui
