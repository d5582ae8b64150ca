// SPDX-License-Identifier: GPL-3.0-or-later
//
// A bottle change in one act: which bottle goes on which regulator, what its tag
// says, washer, secured, the leak test, and the weight of the new one. Logged
// whole, undone whole. A leak found keeps the act: the bottle is on, and leaks.
#pragma once

#include <QDialog>
#include <QList>
#include <optional>

#include "ui/context.h"
#include "ui/dialogs/leave_guard.h"
#include "ui/widgets/entity_picker.h"
#include "ui/widgets/quantity_edits.h"

class QCheckBox;

namespace ullage::ui {

class Banner;
class ChoiceBar;
class TextEdit;
class WhenEdit;

class BottleChange : public QDialog {
  Q_OBJECT
 public:
  BottleChange(const Context& context, std::optional<cellar::RegulatorId> regulator,
               std::optional<cellar::BottleId> bottle, QWidget* parent = nullptr);
  ~BottleChange() override;

  [[nodiscard]] cellar::Act act() const;
  bool log();
  [[nodiscard]] QString warning() const;

  void reject() override;

 private:
  LeaveGuard guard_;
  void build();
  void tell();
  QWidget* build_test();
  void assemble(const QList<QWidget*>& parts);  // with the foot

  Context context_;
  RegulatorPicker* regulator_ = nullptr;
  BottlePicker* bottle_ = nullptr;
  FractionEdit* tag_ = nullptr;
  QCheckBox* washer_ = nullptr;
  QCheckBox* secured_ = nullptr;
  ChoiceBar* test_ = nullptr;
  TextEdit* where_ = nullptr;
  MassEdit* weight_ = nullptr;
  InstrumentPicker* scale_ = nullptr;
  WhenEdit* when_ = nullptr;
  TextEdit* by_ = nullptr;
  Banner* warning_ = nullptr;
  Banner* refusal_ = nullptr;
};

}  // namespace ullage::ui
