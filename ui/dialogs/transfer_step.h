// SPDX-License-Identifier: GPL-3.0-or-later
//
// One step of a transfer: what it is, whether the journal already has it and
// how old that is, or the fields to log it now. A step that is neither found nor
// logged stays visible as "not done".
#pragma once

#include <QFrame>
#include <optional>

#include "core/cellar/status.h"
#include "ui/context.h"

class QCheckBox;

namespace ullage::ui {

class EntryFields;
class FormSection;
class InkLabel;
class StatusMark;

class TransferStep : public QFrame {
  Q_OBJECT
 public:
  enum class Need { optional_step, always };

  // `left_out` names further fields that this step does not ask.
  TransferStep(const Context& context, int number, const QString& title,
               const cellar::Payload& start, Need need, std::set<std::string> left_out = {},
               QWidget* parent = nullptr);

  ~TransferStep() override;

  // What the journal says of this step for the chosen keg; nullptr when it says
  // nothing.
  void set_found(const cellar::PreparationStep* found);
  void set_subject(const cellar::SubjectRef& subject);
  void set_caution(const QString& sentence);
  // Something computed from what is typed: "5.4 % alcohol, 11.9 °P".
  void set_outcome(const QString& words);

  [[nodiscard]] bool logs_now() const;
  [[nodiscard]] bool done() const;  // found and still counting, or logged now
  [[nodiscard]] EntryFields& fields() { return *fields_; }
  [[nodiscard]] const EntryFields& fields() const { return *fields_; }
  [[nodiscard]] QString state_words() const;

 signals:
  void changed();

 private:
  void tell_state();

  Context context_;
  Need need_;
  std::optional<cellar::PreparationStep> found_;
  InkLabel* title_ = nullptr;
  InkLabel* state_ = nullptr;
  InkLabel* outcome_ = nullptr;
  QCheckBox* now_ = nullptr;
  EntryFields* fields_ = nullptr;
  FormSection* caution_ = nullptr;
};

}  // namespace ullage::ui
