// SPDX-License-Identifier: GPL-3.0-or-later
//
// The form of one journal entry: its fields, when it happened, by whom, a
// remark; the caution where there is one; and, as it is filled in, what it would
// change. Logging is one act. A form that corrects an entry asks why. A line's form
// has the pieces of its hose with it, that of gas set whether the keg was vented to it.
#pragma once

#include <QDialog>
#include <QTimer>
#include <optional>

#include "ui/context.h"
#include "ui/dialogs/forms/entry_fields.h"

class QCheckBox;
class QPushButton;
class QVBoxLayout;

namespace ullage::ui {

class Banner;
class HosePieces;
class InkLabel;
class TagListEdit;
class TextEdit;
class WhenEdit;

class EntryForm : public QDialog {
  Q_OBJECT
 public:
  // A new entry of the task's kind, or a correction. The kind must have a form
  // (form_spec).
  EntryForm(const Context& context, const cellar::SuggestedTask& task, QWidget* parent = nullptr);
  ~EntryForm() override;

  [[nodiscard]] cellar::Payload payload() const;
  // Logs what is typed; false when something was refused, with the sentence at
  // its field.
  bool log();
  [[nodiscard]] QString refusal() const;  // what is told at the foot

  void reject() override;

 signals:
  void logged(cellar::ActId act);

 private:
  [[nodiscard]] bool changes_known(const cellar::SuggestedTask& task) const;
  [[nodiscard]] cellar::Payload starting_payload(const cellar::SuggestedTask& task) const;
  void build(const cellar::SuggestedTask& task);
  void add_pieces(QVBoxLayout& all, const cellar::Payload& start);
  void add_vent(QVBoxLayout& all, const cellar::SuggestedTask& task);
  void add_ending(QVBoxLayout& all);
  void add_to_others(cellar::Act& whole) const;
  [[nodiscard]] QString name_of_draft(std::size_t at) const;
  void on_changed();
  void check_quietly();
  void tell_consequences();
  void warn(const cellar::Advice&);
  bool show_all_faults();
  void show_refusal(const cellar::Refusal& refusal);
  [[nodiscard]] cellar::Act act() const;
  [[nodiscard]] cellar::Outcome<cellar::ActId> send(const cellar::Act& act);

  Context context_;
  const FormSpec& spec_;
  std::optional<cellar::EntryId> corrects_;
  EntryFields* fields_ = nullptr;
  HosePieces* pieces_ = nullptr;  // of a line
  QCheckBox* vented_ = nullptr;   // of gas set: let down to it, as an entry of its own
  TagListEdit* also_ = nullptr;   // more kegs of which the same is logged
  WhenEdit* when_ = nullptr;
  TextEdit* by_ = nullptr;
  TextEdit* note_ = nullptr;
  TextEdit* reason_ = nullptr;  // of a correction
  Banner* refusal_ = nullptr;
  Banner* warning_ = nullptr;
  InkLabel* consequence_ = nullptr;
  QPushButton* log_ = nullptr;
  QTimer settle_;
  bool touched_ = false;
};

}  // namespace ullage::ui
