// SPDX-License-Identifier: GPL-3.0-or-later
//
// A keg change in one act: the keg on a line comes off (empty, or with beer left
// in it) and another goes on, with its gas. Says so when the line is locked.
#pragma once

#include <optional>

#include "ui/dialogs/change_dialog.h"
#include "ui/widgets/entity_picker.h"
#include "ui/widgets/quantity_edits.h"

namespace ullage::ui {

class ChoiceBar;
class InkLabel;

class KegChange final : public ChangeDialog {
  Q_OBJECT
 public:
  KegChange(const Context& context, std::optional<cellar::LineId> line,
            std::optional<cellar::KegId> on, QWidget* parent = nullptr);

  [[nodiscard]] cellar::Act act() const override;
  void choose(std::optional<cellar::LineId> line, std::optional<cellar::KegId> on);
  [[nodiscard]] QString in_words() const;  // "K07 off, K09 on tap 3"

 protected:
  bool show_faults() override;
  [[nodiscard]] QString logged_words() const override;

 private:
  void build();
  void on_line();
  void on_keg();
  void tell();
  void warn(const cellar::LineStatus*, const cellar::KegStatus* on);
  [[nodiscard]] std::optional<cellar::KegId> coming_off() const;

  LinePicker* line_ = nullptr;
  KegPicker* on_ = nullptr;
  ChoiceBar* off_state_ = nullptr;
  GaugePressureEdit* pressure_ = nullptr;
  RegulatorPicker* regulator_ = nullptr;
  InkLabel* words_ = nullptr;
  InkLabel* off_ = nullptr;
};

}  // namespace ullage::ui
