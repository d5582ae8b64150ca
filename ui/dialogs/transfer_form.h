// SPDX-License-Identifier: GPL-3.0-or-later
//
// A transfer from the fermenter into a keg, in the order of good practice.
// Steps that the journal already has are found and ticked with their age; the
// rest can be logged here or stay "not done". Everything is one act: logged
// whole, undone whole. While it is filled in, the foot tells when the keg would
// be ready.
#pragma once

#include <QDialog>
#include <QTimer>
#include <memory>
#include <optional>
#include <vector>

#include "ui/context.h"

class QButtonGroup;
class QPushButton;
class QVBoxLayout;

namespace ullage::ui {

class Banner;
class ChoiceBar;
class InkLabel;
class TextEdit;
class TransferStep;
class WhenEdit;

class TransferForm : public QDialog {
  Q_OBJECT
 public:
  TransferForm(const Context& context, std::optional<cellar::KegId> keg, QWidget* parent = nullptr);
  ~TransferForm() override;

  // The whole act as it stands; drafts in the order of the steps.
  [[nodiscard]] cellar::Act act() const;
  bool log();
  [[nodiscard]] QString outlook() const;  // when it would be ready, in words
  void choose_keg(cellar::KegId keg);
  void choose_batch(cellar::BatchId batch);

  void reject() override;

 signals:
  void logged(cellar::ActId act);

 private:
  struct Parts;  // the widgets
  void build();
  QWidget* build_subject();
  void build_steps(QVBoxLayout& all);
  QWidget* build_ending();
  QWidget* build_foot();
  void on_keg();
  void on_batch();
  void on_gas_way();
  void on_changed();
  void tell_outlook();
  [[nodiscard]] bool complete() const;  // all that would be logged is filled in
  void tell_gravity();
  [[nodiscard]] std::vector<TransferStep*> steps() const;
  [[nodiscard]] std::vector<TransferStep*> logging() const;  // those whose entry will be logged
  bool show_faults();
  void show_refusal(const cellar::Refusal& refusal);

  Context context_;
  std::unique_ptr<Parts> parts_;
  QTimer settle_;
  bool touched_ = false;
};

}  // namespace ullage::ui
