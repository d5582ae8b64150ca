// SPDX-License-Identifier: GPL-3.0-or-later
//
// A keg change in one act: the keg on a line comes off (empty, or with beer left
// in it) and another goes on, with its gas. Says so when the line is locked.
#pragma once

#include <QDialog>
#include <optional>

#include "ui/context.h"
#include "ui/dialogs/leave_guard.h"
#include "ui/widgets/entity_picker.h"
#include "ui/widgets/quantity_edits.h"

namespace ullage::ui {

class Banner;
class ChoiceBar;
class InkLabel;
class TextEdit;
class WhenEdit;

class KegChange : public QDialog {
  Q_OBJECT
 public:
  KegChange(const Context& context, std::optional<cellar::LineId> line,
            std::optional<cellar::KegId> on, QWidget* parent = nullptr);

  ~KegChange() override;

  [[nodiscard]] cellar::Act act() const;
  bool log();
  void choose(std::optional<cellar::LineId> line, std::optional<cellar::KegId> on);
  [[nodiscard]] QString in_words() const;  // "K07 off, K09 on tap 3"

  void reject() override;

 private:
  LeaveGuard guard_;
  void build();
  void on_line();
  void on_keg();
  void tell();
  [[nodiscard]] std::optional<cellar::KegId> coming_off() const;

  Context context_;
  LinePicker* line_ = nullptr;
  KegPicker* on_ = nullptr;
  ChoiceBar* off_state_ = nullptr;
  GaugePressureEdit* pressure_ = nullptr;
  RegulatorPicker* regulator_ = nullptr;
  WhenEdit* when_ = nullptr;
  TextEdit* by_ = nullptr;
  InkLabel* words_ = nullptr;
  InkLabel* off_ = nullptr;
  Banner* warning_ = nullptr;
  Banner* refusal_ = nullptr;
};

}  // namespace ullage::ui
