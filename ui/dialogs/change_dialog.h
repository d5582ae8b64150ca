// SPDX-License-Identifier: GPL-3.0-or-later
//
// A dialog that logs one thing for another (a keg, a gas bottle) in one act. What
// they share: when and by whom, what to be warned of, what refuses the act, and
// that nothing typed is lost by a slip.
#pragma once

#include <QDialog>

#include "ui/context.h"
#include "ui/dialogs/forms/faults_shown.h"
#include "ui/dialogs/leave_guard.h"

namespace ullage::ui {

class Banner;
class FormSection;
class TextEdit;
class WhenEdit;

class ChangeDialog : public QDialog {
  Q_OBJECT
 public:
  ~ChangeDialog() override;

  [[nodiscard]] virtual cellar::Act act() const = 0;
  // False, and the reason shown, when it was refused.
  bool log();
  void reject() override;

 protected:
  ChangeDialog(const Context& context, const QString& title, const QString& name, QWidget* parent);

  // The rows for when and by whom.
  void add_when_and_by(FormSection& form);
  // What is to be filled in above, what is warned of and the buttons below; `words`,
  // if any, tell what will be logged. The last thing of a constructor.
  void lay_out(QWidget* body, QWidget* words = nullptr);
  [[nodiscard]] const Context& context() const { return context_; }
  [[nodiscard]] Banner& warning() const { return *warning_; }
  void forget_refusal();  // something was changed
  // At the time stated: begins an act.
  void did(cellar::Act& act, cellar::Payload payload) const;
  [[nodiscard]] cellar::Act begun() const;

  // Shows every fault of its fields; true when there is one.
  virtual bool show_faults() = 0;
  [[nodiscard]] virtual QString logged_words() const = 0;

  template <class... Edits>
  [[nodiscard]] static bool any_fault(Edits*... edits) {
    return faults_shown(false, edits...);
  }

 private:
  Context context_;
  LeaveGuard guard_;
  WhenEdit* when_;
  TextEdit* by_;
  Banner* warning_;
  Banner* refusal_;
};

}  // namespace ullage::ui
